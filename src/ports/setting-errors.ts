import { edgePerX, sidePerRotary, xPerTilt } from '../handbook/pick-up.ts'
import { fromBuiltIn, fromPart, type Origin, told, worked } from '../known.ts'
import type { Degree, Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { PlannedPort, PortWindow } from './port.ts'

/** What an error of the setting does to a window; crank degrees where the port is timed by the crown. */
export type SettingErrors = {
  /** Of top and bottom edge, by an error in X. */
  readonly x: EdgeShift
  /** Likewise by an error of the tilt where X is not picked up again. */
  readonly tilt: EdgeShift
  /** Of the side edges round the bore, by an error of the rotary: heights and timing stay. */
  readonly rotary: { readonly side: Millimetre }
}

export type EdgeShift = { readonly edge: Millimetre; readonly crank?: Degree }

/** Errors to reckon with: of a touch, of a tilt, of a rotary. */
export const SETTING_ERROR = { x: 0.01, tilt: 0.01, rotary: 0.1 } as const

const TO_RECKON_WITH = fromBuiltIn('common practice, no source')

export function settingErrors(port: PlannedPort, window: PortWindow, notebook: Notebook): SettingErrors {
  const about = { about: port.name }
  const shift = (dX: Millimetre, by: Origin): EdgeShift => {
    const edge = notebook.use(
      edgePerX,
      { ...told(by, { dX: Math.abs(dX) }), ...told(fromPart(`${port.name}, up`), { beta: port.up }) },
      about,
    )
    return port.dAnglePerTenth === undefined ? { edge } : { edge, crank: (edge * port.dAnglePerTenth) / TENTH }
  }
  return {
    x: shift(SETTING_ERROR.x, TO_RECKON_WITH),
    tilt: shift(
      notebook.use(xPerTilt, { Z: window.z, ...told(TO_RECKON_WITH, { dtilt: SETTING_ERROR.tilt }) }, about),
      worked('error in X by an error of the tilt'),
    ),
    rotary: {
      side: notebook.use(
        sidePerRotary,
        {
          ...told(worked('bore, finished'), { r: window.walls.finished }),
          ...told(TO_RECKON_WITH, { dA: SETTING_ERROR.rotary }),
        },
        about,
      ),
    },
  }
}

/** `dAnglePerTenth` counts for so much of the edge. */
const TENTH: Millimetre = 0.1
