import type { Micrometre, Millimetre } from '../units.ts'

/** Radial setting error in a three-jaw chuck, µm, over one diameter up to and with the next. */
export type ChuckSetting = {
  readonly over: Millimetre
  readonly upTo: Millimetre
  readonly machined: Micrometre
  readonly finishMachined: Micrometre
  readonly hotRolled: Micrometre
}

export const CHUCK_SETTING_SOURCE = 'reprint of the setting-error table; the diameters over its columns from memory'

export const CHUCK_SETTING: readonly ChuckSetting[] = [
  { over: 10, upTo: 18, machined: 50, finishMachined: 25, hotRolled: 220 },
  { over: 18, upTo: 30, machined: 60, finishMachined: 30, hotRolled: 270 },
  { over: 30, upTo: 50, machined: 70, finishMachined: 35, hotRolled: 320 },
  { over: 50, upTo: 80, machined: 80, finishMachined: 40, hotRolled: 370 },
  { over: 80, upTo: 120, machined: 100, finishMachined: 50, hotRolled: 420 },
  { over: 120, upTo: 180, machined: 120, finishMachined: 60, hotRolled: 500 },
  { over: 180, upTo: 260, machined: 140, finishMachined: 70, hotRolled: 600 },
]
