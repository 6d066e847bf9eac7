import { type Friction, HOLDING, slipForce, tiltForce } from '../handbook/holding.ts'
import { fromHandbook, type Told, told, worked } from '../known.ts'
import type { Millimetre, Newton, NewtonMetre } from '../units.ts'
import type { About, Notebook } from '../working.ts'

/** What a cut does to a part that is held, each with where it comes from. */
export type Push = {
  /** About the part's axis. */
  readonly moment: Told<NewtonMetre>
  /** Out of the jaws; nought where a stop takes it. */
  readonly pull: Told<Newton>
  /** Square to the axis, and its arm from the middle of the grip. */
  readonly side: Told<Newton>
  readonly arm: Told<Millimetre>
}

export type Held = { readonly diameter: Millimetre; readonly length: Millimetre }

export type HoldNeeded = { readonly slip: Newton; readonly tilt: Newton; readonly together: Newton }

/** No chuck is set finer than to the hundred. Common practice, no source. */
export const toSet = (force: Newton): Newton => Math.ceil(force / 100 - 1e-9) * 100

const SAFETY = fromHandbook('VDI 3106 as quoted in chuck manuals')
const HELD = worked('what the jaws hold')

/** All jaws together against a push, its safety in: that the part does not slip, does not tilt, and does neither at once. */
export function slipAndTilt({
  use,
  about,
  held,
  friction: { tangential, axial, source },
  levers,
  push,
}: {
  readonly use: Notebook['use']
  readonly about: About
  readonly held: Held
  readonly friction: Friction
  readonly levers: { readonly k: number; readonly c: number }
  readonly push: Push
}): HoldNeeded {
  const S = told(SAFETY, { S: HOLDING.safety })
  const rub = told(fromHandbook(source), { mu_a: axial })
  const on = told(HELD, { d_g: held.diameter })
  const { moment: M, pull: T, side: P, arm: h } = push
  const slip = use(slipForce, { ...S, M, T, ...told(fromHandbook(source), { mu: tangential }), ...rub, ...on }, about)
  const tilt =
    P.value === 0
      ? 0
      : use(
          tiltForce,
          {
            ...S,
            P,
            h,
            ...told(fromHandbook('derived'), levers),
            ...told(HELD, { l_g: held.length }),
            ...rub,
            ...on,
          },
          about,
        )
  return { slip, tilt, together: Math.hypot(slip, tilt) }
}
