import { type Band, nearestBandAt, overlap, type Stretch } from './band.ts'
import type { Millimetre } from './units.ts'

/** A band of a shape, at the diameter that it has; or of the drawing, at its nominal size. */
type Round = Stretch & ({ readonly diameter: Millimetre } | Pick<Band, 'size'>)

type Walled<B extends Round> = { readonly outside: readonly B[]; readonly bore: readonly B[] }

export const diameterOf = (band: Round): Millimetre => ('diameter' in band ? band.diameter : band.size.nominal)

/** Half of what the outside is larger than the bore at a depth, as drawn or as it stands. Nothing where there is no bore. */
export function wallAt<B extends Round>({ outside, bore }: Walled<B>, depth: Millimetre): Millimetre | undefined {
  const [around, hole] = [nearestBandAt(outside, depth), nearestBandAt(bore, depth)]
  return around && hole && wallBetween(around, hole)
}

/** Every band of the outside with every band of the bore inside it. */
export const wallsOf = <B extends Round>({
  outside,
  bore,
}: Walled<B>): readonly { readonly outside: B; readonly bore: B; readonly wall: Millimetre }[] =>
  outside.flatMap(around =>
    bore
      .filter(hole => overlap(around, hole))
      .map(hole => ({ outside: around, bore: hole, wall: wallBetween(around, hole) })),
  )

/** The thinnest wall of the part, or over one stretch of it. A solid part has the radius of its outside. */
export function thinnestWall<B extends Round>({ outside, bore }: Walled<B>, along?: Stretch): Millimetre {
  const within = (bands: readonly B[]): readonly B[] => (along ? bands.filter(band => overlap(band, along)) : bands)
  const part = { outside: within(outside), bore: within(bore) }
  const walls = wallsOf(part).map(({ wall }) => wall)
  return walls.length > 0 ? Math.min(...walls) : Math.min(...part.outside.map(band => diameterOf(band) / 2))
}

const wallBetween = (around: Round, hole: Round): Millimetre => (diameterOf(around) - diameterOf(hole)) / 2
