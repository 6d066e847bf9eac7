import type { ClockingDatum } from '../cutting/clocking-datum.ts'
import { length, type Units, unitOf } from '../figures.ts'
import type { EdgePoint } from '../ports/port.ts'
import { type Degree, degrees, type Millimetre, radians } from '../units.ts'
import type { LabelRow } from './label.ts'
import { circle, OUTLINE, polyline, THIN, type XY } from './marks.ts'
import { type Mark, onPaper } from './picture.ts'

/** A datum that the drawing gives, with what of the part carries it. A key in a window is the window's own outline. */
export type DrawnDatum = ClockingDatum & { readonly place: NonNullable<ClockingDatum['place']> }

export const drawnDatum = (datum: ClockingDatum | undefined): DrawnDatum | undefined =>
  datum?.drawn && datum.place ? { ...datum, place: datum.place } : undefined

/** Name and sizes, as its label has them. */
export function datumRows(
  { kind, name, depth = 0, width = 0, clock, place }: DrawnDatum,
  units: Units,
): readonly LabelRow[] {
  const size = (value: Millimetre, places: number): string =>
    `${length(value, units, units === 'mm' ? places : places + 1)} ${unitOf(units)}`
  const across = kind === 'dowel hole' ? `Ø${size(width, 0)}` : `${size(width, 1)} wide`
  const where = place.radius === undefined ? '' : `, ${size(place.radius, 2)} from the axis`
  return [{ lines: [name], bold: true }, { lines: [`${across}, ${size(depth, 2)} deep`, `at ${clock}${where}`] }]
}

/** Half the angle that it takes of its band. */
const halfOf = ({ width = 0, place: { diameter } }: DrawnDatum): Degree =>
  degrees(Math.asin(Math.min(1, width / diameter)))

/** Its outline on the cylinder of its band; nothing for a hole, which lies under it. */
export function datumOutline(datum: DrawnDatum): readonly EdgePoint[] {
  if (datum.kind === 'dowel hole') return []
  const half = halfOf(datum)
  const { from, to } = datum.place
  const side = (depth: Millimetre, way: 1 | -1): readonly EdgePoint[] =>
    [-1, -0.5, 0, 0.5, 1].map(part => ({ azimuth: datum.at + way * part * half, depth }))
  return [...side(from, 1), ...side(to, -1)]
}

/** In plan from the head: the rim of its band with the flat or the notch in it, or the hole. */
export function datumInPlan(
  datum: DrawnDatum,
  at: (azimuth: Degree, radius: Millimetre) => XY,
  scale: number,
): readonly Mark[] {
  const { kind, place, depth = 0, width = 0 } = datum
  const rim = place.diameter / 2
  const half = kind === 'dowel hole' ? 0 : halfOf(datum)
  const arc = Array.from({ length: 181 }, (_, step) => at(datum.at + half + ((360 - 2 * half) * step) / 180, rim))
  if (place.radius !== undefined)
    return [polyline(arc, THIN), circle(at(datum.at, place.radius), onPaper((width / 2) * scale), { stroke: OUTLINE })]
  const foot = (side: 1 | -1): XY => {
    const across = width / 2
    const floor = rim - depth
    return at(datum.at + side * degrees(Math.atan2(across, floor)), Math.hypot(across, floor))
  }
  const cut =
    kind === 'flat'
      ? [at(datum.at - half, rim), at(datum.at + half, rim)]
      : [at(datum.at - half, rim), foot(-1), foot(1), at(datum.at + half, rim)]
  return [polyline(arc, THIN), polyline(cut, OUTLINE)]
}

/** Where a leader touches it in plan. */
export const datumAnchor = (
  { at: azimuth, place, depth = 0 }: DrawnDatum,
  at: (azimuth: Degree, radius: Millimetre) => XY,
): XY => at(azimuth, place.radius ?? place.diameter / 2 - depth)

/** How far above the centre line it is seen from the side. */
export const datumUp = ({ at, place }: DrawnDatum, section: Degree): Millimetre =>
  (place.radius ?? place.diameter / 2) * Math.cos(radians(at - section))
