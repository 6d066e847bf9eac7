import type { Millimetre } from '../units.ts'
import { axisOf, type Closest, closestPlace, type Setting, type Standing, stepsAbove } from './closest-place.ts'
import { heightUnder } from './height-under.ts'
import { type Remedies, remediesFor } from './held-remedies.ts'

/** A cutter in its holder at the lowest that it goes, against all that turns with the rotary. */
export type HeldCutter = Closest & {
  readonly stickOut: Millimetre
  /** That clears everything by the works' margin. */
  readonly stickOutNeeded: Millimetre
  readonly shank: Millimetre
  /** Below the shank; absent where the works does not say. */
  readonly flutes?: Millimetre
  /** What would clear by the margin, each alone; absent where it clears. */
  readonly remedies?: Remedies
}

/** Stick-out with which holder and spindle clear every body by a margin, below and beside. */
export function stickOutNeeded(setting: Setting, cutter: Millimetre, margin: Millimetre): Millimetre {
  const { fixture, tilt, bodies, tip } = setting
  const swept = axisOf(setting.window, cutter)
  return Math.max(
    ...stepsAbove(fixture).flatMap(({ radius, above }) =>
      bodies.map(body => {
        const beside = heightUnder({ fixture, tilt, body, swept, tool: radius + margin })
        if (beside === Number.NEGATIVE_INFINITY) return beside
        return Math.max(beside, heightUnder({ fixture, tilt, body, swept, tool: radius }) + margin) - tip - above
      }),
    ),
  )
}

export function heldCutter(setting: Setting, standing: Standing, stickOut: Millimetre, margin: Millimetre): HeldCutter {
  const { diameter, shank, flutes } = standing
  const closest = closestPlace(setting, standing, stickOut)
  const needed = stickOutNeeded(setting, diameter, margin)
  return {
    stickOut,
    stickOutNeeded: needed,
    shank,
    ...(flutes === undefined ? {} : { flutes }),
    ...closest,
    ...(closest.room < margin - 1e-6 ? { remedies: remediesFor(setting, standing, stickOut, margin) } : {}),
  }
}
