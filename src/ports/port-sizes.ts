import { fixed } from '../figures.ts'
import { type Limits, middleOf } from '../limits.ts'
import type { OperationSize } from '../operation-size.ts'
import { barsOf, type Port } from '../part/part.ts'
import type { Habits } from '../shop/shop.ts'
import { type Millimetre, radians } from '../units.ts'
import type { PlannedPort } from './port.ts'
import { wallMoves } from './walls-as-milled.ts'

type Sized = {
  readonly port: Port
  readonly planned: PlannedPort
  readonly topStock: Millimetre
  readonly habits: Habits
}

/** What the milling must hold, and what the finished port must, each as a gauge can reach it. */
export type PortSizes = { readonly milled: readonly OperationSize[]; readonly finished: readonly OperationSize[] }

const about = (nominal: Millimetre, tolerance: Millimetre): Limits => ({
  nominal,
  lower: nominal - tolerance / 2,
  upper: nominal + tolerance / 2,
})

/**
 * The depth of the highest edge on the bore from the top face as it stands; the height at any one place round the bore,
 * which grinding the bore leaves alone; the width and the bars square to the stream, where a pin or a bar is gauged, which
 * grinding leaves alone too.
 */
export function portSizes(sized: Sized): PortSizes {
  const { planned, topStock, habits } = sized
  const { name, windows, top } = planned
  const highest = Math.min(...windows.map(({ edges }) => edges.asCut.highest))
  const elsewhere = topStock !== 0 || Math.abs(highest - top) > 5e-4
  return {
    milled: [
      {
        feature: name,
        measure: 'depth',
        edge: 'top',
        ...about(highest, habits.portEdgeTolerance),
        ...(elsewhere ? { drawn: `${fixed(top, 3)} finished` } : {}),
      },
      ...windowSizes(sized, 'milled'),
    ],
    finished: windowSizes(sized, 'finished'),
  }
}

function windowSizes({ port, planned, habits }: Sized, state: keyof PortSizes): readonly OperationSize[] {
  const { name, height, width } = planned
  const { portFloorTolerance, portWidthTolerance } = habits
  const growth = planned.windows[0]?.walls.growth
  const by = growth ? wallMoves(growth) : 0
  const slot = slotOf(planned) - 2 * by
  // Milled, a window is larger and a bar thinner by what their walls grow.
  const [open, along] = state === 'milled' ? [2 * by, (2 * by) / Math.cos(radians(planned.up))] : [0, 0]
  // Chord and slot stand in one ratio, whatever the tolerance.
  const share = slot / width
  const oblique = Math.abs(share - 1) > 5e-4
  const bars = barsOf(port)
  const { drawn } = port
  const chord = drawn?.width?.written ?? fixed(width, 3)
  return [
    {
      feature: name,
      measure: 'height',
      ...moved(held(height, portFloorTolerance, drawn?.height, state), along),
      ...(along > 0 && { drawn: drawn?.height?.written ?? fixed(height, 3) }),
    },
    {
      feature: name,
      measure: 'width',
      ...moved(scaled(held(width, portWidthTolerance, drawn?.width, state), share), open),
      ...(oblique ? { across: 'the stream' as const, drawn: `${chord} chord` } : { drawn: chord }),
    },
    // Nothing changes a bar once it is milled.
    ...(state === 'finished' ? [] : bars).map(
      (bar, index): OperationSize => ({
        feature: name,
        measure: 'width',
        item: bars.length > 1 ? `bridge ${index + 1}` : 'bridge',
        ...moved(about(bar, portWidthTolerance), -open),
        drawn: fixed(bar, 3),
      }),
    ),
  ]
}

/** The works' habit, inside the drawing's own limits where it has any; the finished port is judged by those. */
function held(nominal: Millimetre, tolerance: Millimetre, drawn: Limits | undefined, state: keyof PortSizes): Limits {
  if (!drawn) return about(nominal, tolerance)
  const { lower, upper } = drawn
  if (state === 'finished') return { nominal, lower, upper }
  const middle = middleOf(drawn)
  const half = Math.min(tolerance, upper - lower) / 2
  return { nominal, lower: middle - half, upper: middle + half }
}

const moved = ({ nominal, lower, upper }: Limits, by: Millimetre): Limits => ({
  nominal: nominal + by,
  lower: lower + by,
  upper: upper + by,
})

const scaled = ({ nominal, lower, upper }: Limits, by: number): Limits => ({
  nominal: nominal * by,
  lower: lower * by,
  upper: upper * by,
})

/** Over all windows, side edge to side edge, square to the stream: the sides of one port are parallel to it. */
function slotOf({ windows }: PlannedPort): Millimetre {
  const across = windows.flatMap(({ crossOffset, outline }) => outline.cutterPlane.map(({ y }) => crossOffset + y))
  return Math.max(...across) - Math.min(...across)
}
