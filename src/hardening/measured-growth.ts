import { type KnownSpread, type Origin, worked } from '../known.ts'
import type { Spread } from '../limits.ts'
import type { Part } from '../part/part.ts'
import { measuredOrigin } from '../shop/measured.ts'
import type { Measured } from '../shop/record.ts'
import { type Millimetre, micrometres } from '../units.ts'
import type { Notebook } from '../working.ts'
import { boreOf, seatOf, treatedSides } from './case-surfaces.ts'
import type { BandGrowth, Growth } from './growth.ts'
import { type Recorded, recordedGrowth } from './recorded-growth.ts'

export type ByRecord = {
  readonly notebook: Notebook
  readonly part: Part
  readonly row: Measured
  /** What the handbook makes of this part: what a record does not say is taken from its shape. */
  readonly reckoned: Growth
  /** Least depth ordered. */
  readonly depth: Millimetre
}

/**
 * A nitrided part by its record. Both sides measured are parted into free growth, which no wall changes, and the movement of
 * the wall, which goes with mean radius, wall and force of the case; other bands move as the shell has them beside the one that
 * was measured. With one side measured the other is told by the reckoned movement of the wall.
 */
export function growthByRecord(given: ByRecord): Growth {
  const { notebook, part, row, reckoned, depth } = given
  const origin = measuredOrigin(row)
  const recorded = recordedGrowth(notebook, row, reckoned)
  const { outside, bore, alike } = recorded
  if (alike && !outside && !bore) {
    noteAlike(notebook, alike, origin)
    return allAlike(reckoned, { ...alike, ...origin })
  }
  const main = movementOf(reckoned, 'outside', seatOf(part)?.name)
  const scale = outside && bore ? scaleOf(part, row, depth) : 1
  const free = freeOf({ outside, bore, main })
  const wall = outside && bore ? apart(outside, bore) : main
  noteRecord(notebook, { row, free, wall, scale })
  const bands = reckoned.bands.map((band): BandGrowth => {
    const outward = band.side === 'outside' ? 1 : -1
    // As the shell has this band beside the one that the record is of.
    const shape = main.nominal === 0 ? 1 : band.wallMoves.nominal / main.nominal
    const moves = wall.nominal * scale * shape
    const own = band.side === 'outside' ? outside : bore
    const { takesCase } = band
    const nominal = (takesCase ? free.nominal : 0) + outward * moves
    const either = own && takesCase ? own : spreadOfOther({ free, main, wall, takesCase, outward })
    const growth: KnownSpread = {
      ...origin,
      least: nominal - (either.nominal - either.least),
      nominal,
      most: nominal + (either.most - either.nominal),
    }
    return {
      ...band,
      growth,
      wallMoves: { least: wall.least * scale * shape, nominal: moves, most: wall.most * scale * shape },
    }
  })
  const of = (side: BandGrowth['side'], name: string | undefined): KnownSpread =>
    bands.find(band => band.side === side && band.surface === name)?.growth ?? reckoned[side]
  return {
    ...reckoned,
    outside: of('outside', seatOf(part)?.name),
    bore: of('bore', boreOf(part)?.name),
    bands,
    face: { ...free, ...origin },
    along: alongOf({ part, row, recorded, reckoned, free, depth, origin }),
  }
}

const movementOf = (growth: Growth, side: BandGrowth['side'], name: string | undefined): Spread =>
  growth.bands.find(band => band.side === side && band.surface === name)?.wallMoves ?? { least: 0, nominal: 0, most: 0 }

/** A load that grows less outside grows less in the bore: ends go together in the free growth. */
function freeOf({
  outside,
  bore,
  main,
}: {
  readonly outside: Spread | undefined
  readonly bore: Spread | undefined
  readonly main: Spread
}): Spread {
  const at = (end: keyof Spread) => {
    if (outside && bore) return (outside[end] + bore[end]) / 2
    return outside ? outside[end] - main.nominal : (bore?.[end] ?? 0) + main.nominal
  }
  return { least: at('least'), nominal: at('nominal'), most: at('most') }
}

/** Movement of the wall, half of what outside and bore are apart. */
function apart(outside: Spread, bore: Spread): Spread {
  const nominal = (outside.nominal - bore.nominal) / 2
  const ends = [(outside.least - bore.least) / 2, (outside.most - bore.most) / 2]
  return { least: Math.min(nominal, ...ends), nominal, most: Math.max(nominal, ...ends) }
}

/** Of a surface that the record has no figure of. */
function spreadOfOther({
  free,
  main,
  wall,
  takesCase,
  outward,
}: {
  readonly free: Spread
  readonly main: Spread
  readonly wall: Spread
  readonly takesCase: boolean
  readonly outward: 1 | -1
}): Spread {
  const move = wall === main ? main : wall
  const own = takesCase ? free : { least: 0, nominal: 0, most: 0 }
  const twice = takesCase ? 2 : 1
  const [low, high] =
    outward === 1
      ? [move.nominal - move.least, move.most - move.nominal]
      : [move.most - move.nominal, move.nominal - move.least]
  return { least: own.least - twice * low, nominal: own.nominal, most: own.most + twice * high }
}

/** Mean radius, wall and force of the case of the part, to those of the record; what it does not say is as on the part. */
export function scaleOf(part: Part, { wall, diameter, depth }: Measured, ordered: Millimetre): number {
  const seat = seatOf(part)
  const bore = boreOf(part)
  if (!seat || !bore) return 1
  const own = (seat.size.nominal - bore.size.nominal) / 2
  const R = (seat.size.nominal + bore.size.nominal) / 4
  const t = wall ?? own
  const its = ((diameter ?? seat.size.nominal) - t) / 2
  const sides = treatedSides(part)
  const open = (Number(sides.outside) + Number(sides.bore)) / 2
  return (R / its) * (t / own) * (ordered / (depth ?? ordered)) * open
}

function alongOf({
  part,
  row,
  recorded,
  reckoned,
  free,
  depth,
  origin,
}: {
  readonly part: Part
  readonly row: Measured
  readonly recorded: Recorded
  readonly reckoned: Growth
  readonly free: Spread
  readonly depth: Millimetre
  readonly origin: Origin
}): Growth['along'] {
  const { outside, bore, length } = recorded
  const [seat, hole] = [seatOf(part), boreOf(part)]
  const L = row.length ?? part.length.nominal
  const stretch = (end: keyof Spread): number | undefined => {
    if (length) return (length[end] - 2 * free[end]) / L
    if (!outside || !bore || !seat || !hole) return undefined
    const wall = row.wall ?? (seat.size.nominal - hole.size.nominal) / 2
    const R = ((row.diameter ?? seat.size.nominal) - wall) / 2
    return (outside[end] - bore[end]) / (2 * R)
  }
  const ends = (['least', 'nominal', 'most'] as const).map(stretch)
  if (ends.some(end => end === undefined)) return reckoned.along
  const own = seat && hole ? (seat.size.nominal - hole.size.nominal) / 2 : 1
  const scale = ((row.wall ?? own) / own) * (depth / (row.depth ?? depth))
  const found = ends.map(end => (end ?? 0) * scale)
  return { ...origin, least: Math.min(...found), nominal: found[1] ?? 0, most: Math.max(...found) }
}

/** One figure for every treated surface, as a record gives it that does not part them; a masked one moves as reckoned. */
function allAlike(reckoned: Growth, measured: KnownSpread): Growth {
  const bands = reckoned.bands.map(band => (band.takesCase ? { ...band, growth: measured } : band))
  const none = worked('the record does not part it from growth')
  return {
    ...reckoned,
    outside: measured,
    bore: measured,
    bands,
    face: measured,
    along: { least: 0, nominal: 0, most: 0, ...none },
    sections: [],
  }
}

function noteAlike(notebook: Notebook, { least, nominal, most }: Spread, { source }: Origin): void {
  notebook.note({
    about: 'growth',
    symbol: 'g',
    meaning: 'growth per side, as measured',
    value: nominal,
    unit: 'mm',
    expression: `${least} to ${most}`,
    source,
  })
}

function noteRecord(
  notebook: Notebook,
  {
    row,
    free,
    wall,
    scale,
  }: { readonly row: Measured; readonly free: Spread; readonly wall: Spread; readonly scale: number },
): void {
  const { source } = measuredOrigin(row)
  const range = ({ least, most }: Spread) => `${micrometres(least).toFixed(1)} to ${micrometres(most).toFixed(1)} µm`
  const note = (symbol: string, meaning: string, value: number, expression: string) =>
    notebook.note({ about: 'growth', symbol, meaning, value, unit: 'mm', expression, source })
  note('g', 'free growth, half the sum of both sides as measured', free.nominal, range(free))
  note('w', 'movement of the wall, half the difference of both sides as measured', wall.nominal, range(wall))
  if (Math.abs(scale - 1) > 1e-6)
    note(
      'w_2',
      'movement of the wall on this part: by mean radius, wall and depth',
      wall.nominal * scale,
      `${micrometres(wall.nominal).toFixed(1)} * ${scale.toFixed(3)} µm`,
    )
}
