import { fixed } from '../figures.ts'
import type { OperationSize } from '../operation-size.ts'
import type { Habits } from '../shop/shop.ts'
import { type Millimetre, radians, wrapped } from '../units.ts'
import type { PlannedPort } from './port.ts'

/**
 * What the milling must hold, as it can be measured there: the depth of the highest edge on the bore as cut from the top
 * face as it stands, the height at any one azimuth, which grinding the bore leaves alone, and the chord on the bore as cut.
 */
export function portSizes(
  port: PlannedPort,
  bore: Millimetre,
  topStock: Millimetre,
  habits: Habits,
): readonly OperationSize[] {
  const { name, windows, height, top, width } = port
  const highest = Math.min(...windows.map(({ edges }) => edges.asCut.highest))
  const size = (nominal: Millimetre, tolerance: Millimetre): Pick<OperationSize, 'nominal' | 'lower' | 'upper'> => ({
    nominal,
    lower: nominal - tolerance / 2,
    upper: nominal + tolerance / 2,
  })
  const moved = topStock !== 0 || Math.abs(highest - top) > 5e-4
  return [
    {
      feature: name,
      measure: 'depth',
      edge: 'top',
      ...size(highest, habits.portEdgeTolerance),
      ...(moved ? { drawn: `${fixed(top, 3)} finished` } : {}),
    },
    { feature: name, measure: 'height', ...size(height, habits.portFloorTolerance) },
    {
      feature: name,
      measure: 'width',
      ...size(chordAsCut(port, bore), habits.portWidthTolerance),
      drawn: fixed(width, 3),
    },
  ]
}

/** Over all windows, side edge to side edge, on the bore as cut. */
function chordAsCut({ windows, at }: PlannedPort, bore: Millimetre): Millimetre {
  const azimuths = windows.flatMap(({ outline }) => outline.asCut.map(({ azimuth }) => wrapped(azimuth - at)))
  const span = Math.max(...azimuths) - Math.min(...azimuths)
  return 2 * bore * Math.sin(radians(span / 2))
}
