import type { Degree, Millimetre } from '../units.ts'
import { type NominalRange, rowFor } from './nominal-range.ts'

/** Place of a port's middle round the liner, either way: two of a mirrored pair are then within 0.2° of each other. */
export const PORT_PLACE: { readonly deviation: Degree; readonly source: string } = {
  deviation: 0.1,
  source: 'common practice, no source',
}

/** A stream without a tolerance of its own: the wall that shows it is the shorter side of the angle. */
export const STREAM_ANGLE: {
  readonly source: string
  readonly rows: readonly (NominalRange & { readonly deviation: Degree })[]
} = {
  source: 'ISO 2768-1:1989, angular sizes, class m, from public reprints',
  rows: [
    { over: 0, upTo: 10, deviation: 1 },
    { over: 10, upTo: 50, deviation: 0.5 },
    { over: 50, upTo: 120, deviation: 1 / 3 },
  ],
}

/** Inside corners have no row in the standard: that of outside radii stands for them. */
export const CORNER_RADIUS: {
  readonly source: string
  readonly note: string
  readonly rows: readonly (NominalRange & { readonly deviation: Millimetre })[]
} = {
  source: 'ISO 2768-1:1989, outside radii and chamfer heights, class m, from public reprints',
  note: 'under 0.5 mm the standard gives none: half the radius, common practice, no source',
  rows: [
    { over: 0.4, upTo: 3, deviation: 0.2 },
    { over: 3, upTo: 6, deviation: 0.5 },
    { over: 6, upTo: 1000, deviation: 1 },
  ],
}

export const streamDeviation = (wall: Millimetre): Degree => rowFor(STREAM_ANGLE.rows, wall)?.deviation ?? 1

export const cornerDeviation = (radius: Millimetre): Millimetre =>
  rowFor(CORNER_RADIUS.rows, radius)?.deviation ?? radius / 2
