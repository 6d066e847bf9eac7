import { chordOf, spannedAngle } from '../handbook/port-window.ts'
import type { Engine } from '../part/part.ts'
import type { BenchPort } from '../part/read-bench.ts'
import { wrapped } from '../units.ts'
import { SCRATCH } from '../working.ts'
import type { PlannedPort } from './port.ts'
import { crankOf } from './timing.ts'

/** A figure as planned and as measured; `by` is how much larger it is than planned. */
export type Held = { readonly planned: number; readonly measured: number; readonly by: number }

export type BenchPortHeld = {
  readonly name: string
  /** mm below the top face. */
  readonly top?: Held
  readonly bottom?: Held
  /** mm, chord, and degrees. */
  readonly width?: Held
  readonly arc?: Held
  readonly at?: Held
  /** Crank degrees after top dead centre, and how long open. */
  readonly opens?: Held
  readonly duration?: Held
}

export const held = (planned: number, measured: number, by: number = measured - planned): Held => ({
  planned,
  measured,
  by,
})

/** A port measured on the bench, held against the plan in mm and crank degrees. */
export function portHeld(
  measured: BenchPort,
  planned: PlannedPort,
  bore: number,
  engine: Engine | undefined,
): BenchPortHeld {
  const { name, top, bottom, at } = measured
  const r = bore / 2
  const arc =
    measured.arc ??
    (measured.width !== undefined && measured.width < bore ? spannedAngle.value({ c: measured.width, r }) : undefined)
  const width = measured.width ?? (arc === undefined ? undefined : chordOf.value({ w: arc, r }))
  return {
    name,
    ...(top !== undefined && { top: held(planned.top, top), ...timesHeld(planned, top, engine) }),
    ...(bottom !== undefined && { bottom: held(planned.bottom, bottom) }),
    ...(width !== undefined && { width: held(planned.width, width) }),
    ...(arc !== undefined && { arc: held(planned.arc, arc) }),
    ...(at !== undefined && { at: held(planned.at, at, wrapped(at - planned.at)) }),
  }
}

/** When the crown's edge passes the top edge as measured; nothing for what the crown does not time. */
function timesHeld(
  planned: PlannedPort,
  top: number,
  engine: Engine | undefined,
): Pick<BenchPortHeld, 'opens' | 'duration'> {
  const { opens, duration, name } = planned
  if (!engine || opens === undefined || duration === undefined) return {}
  const travel = top - engine.crownBelowTop
  if (!(travel > 0 && travel < engine.stroke)) return {}
  const crank = crankOf(engine, SCRATCH)
  const about = { about: name }
  const opened = crank.opensAt(top, about)
  return { opens: held(opens, opened), duration: held(duration, crank.closesAt(top, about) - opened) }
}
