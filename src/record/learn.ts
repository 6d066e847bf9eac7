import type { Finding } from '../finding.ts'
import { BOW, type Reading } from '../part/results.ts'
import type { StockEntry } from '../stock/stock.ts'
import type { Millimetre } from '../units.ts'
import type { IssuedPlan } from './characteristic-of.ts'
import { hardeningOf } from './in-hand.ts'
import type { Judged } from './judge-results.ts'
import { grownBy, type LearntGrowth, learnGrowth, type Pair } from './learnt-growth.ts'
import {
  type LearntOvality,
  NOT_SEEN,
  ovalityFromLengths,
  ovalityFromTwo,
  ovalityFromVectors,
} from './learnt-ovality.ts'

/** What hardening did, surface by surface, from the same pieces before and after. */
export type Learnt = {
  readonly operation: number
  readonly firm: string
  readonly date?: string
  /** The next load is taken to have as many pieces. */
  readonly more: number
  readonly surfaces: readonly {
    readonly surface: string
    readonly kind: 'outside' | 'bore'
    readonly growth?: LearntGrowth
    /** Those that it was learnt from, with what each of them grew a side. */
    readonly pieces: readonly (Pair & { readonly growth: Millimetre })[]
    readonly planned?: { readonly least: Millimetre; readonly nominal: Millimetre; readonly most: Millimetre }
    /** As found after hardening. */
    readonly ovality?: SeenOvality
  }[]
  readonly length?: LearntGrowth
  /** Largest seen, and what all of a like load stay below: a bow is a vector, as an oval is. */
  readonly bow?: { readonly pieces: number; readonly most: Millimetre; readonly all: Millimetre }
  readonly findings: readonly Finding[]
}

/** Ovality of the pieces; from two directions it is a lower bound, and below what noise shows it is not seen. */
export type SeenOvality = LearntOvality & { readonly lowerBound: boolean; readonly seen: boolean }

/** A growth is learnt from two pieces at the least. */
const ENOUGH = 2

export function learn(plan: IssuedPlan, judged: readonly Judged[], readings: readonly Reading[]): Learnt | undefined {
  const operation = hardeningOf(plan)
  const hardened = plan.operations.find(({ number }) => number === operation)
  if (operation === undefined || !hardened) return undefined
  const more = plan.batch.start
  const findings: Finding[] = []
  const after = judged.filter(one => one.after === operation)
  const kinds = new Map(plan.stock.map(({ surface, kind }): [string, StockEntry['kind']] => [surface, kind]))
  for (const { feature, kind } of hardened.sizes) if (kind && kind !== 'port') kinds.set(feature, kind)
  const surfaces = hardened.sizes.flatMap(({ feature }) => {
    const kind = kinds.get(feature)
    const back = after.filter(one => one.feature === feature)
    if ((kind !== 'outside' && kind !== 'bore') || back.length === 0) return []
    const { pairs, alone } = pairsOf(judged, feature, operation, back)
    for (const { serial, at } of alone)
      findings.push({
        code: 'results/no-partner',
        severity: 'note',
        message: `${feature} of piece ${serial} was measured after hardening and not before: it teaches nothing about growth`,
        at,
      })
    const growth =
      pairs.length >= ENOUGH ? learnGrowth({ kind, pairs, more, repeatability: meanRepeatability(back) }) : undefined
    if (growth?.exchanged) {
      const at = back.find(({ serial }) => serial === growth.exchanged?.[0])?.at
      if (at)
        findings.push({
          code: 'results/exchanged',
          severity: 'warning',
          message: `${feature}: pieces ${growth.exchanged.join(' and ')} stand off to opposite sides, and exchanging their later sizes puts both right`,
          at,
          hint: 'read the numbers on both again',
        })
    }
    const planned = plan.case?.growth[kind]
    const ovality = ovalityOf(back, more)
    return [
      {
        surface: feature,
        kind,
        ...(growth && { growth }),
        pieces: pairs.map(pair => ({ ...pair, growth: grownBy(kind, pair) })),
        ...(planned && { planned: { least: planned.least, nominal: planned.nominal, most: planned.most } }),
        ...(ovality && { ovality }),
      },
    ]
  })
  const lengths = pairsOf(
    judged,
    'length',
    operation,
    after.filter(({ feature }) => feature === 'length'),
  ).pairs
  const bows = readings.filter(({ of }) => of === BOW)
  const dates = after.flatMap(({ dates }) => dates).toSorted()
  const [date] = dates.slice(-1)
  if (surfaces.length === 0 && bows.length === 0) return undefined
  return {
    operation,
    firm: hardened.workCentre,
    ...(date !== undefined && { date }),
    more,
    surfaces,
    // A length grows as a whole: twice what a side of an outside would.
    ...(lengths.length >= ENOUGH && { length: doubled(learnGrowth({ kind: 'outside', pairs: lengths, more })) }),
    ...(bows.length > 0 && {
      bow: {
        pieces: bows.length,
        most: Math.max(...bows.map(({ value }) => value)),
        all: ovalityFromLengths(
          bows.map(({ value }) => value),
          more,
        ).all,
      },
    }),
    findings,
  }
}

const doubled = ({ mean, spread, ofMean, ofNext, ofAll, ...rest }: LearntGrowth): LearntGrowth => ({
  ...rest,
  mean: 2 * mean,
  spread: 2 * spread,
  ofMean: 2 * ofMean,
  ofNext: 2 * ofNext,
  ofAll: 2 * ofAll,
})

/** The latest sizes before hardening, at the places that were measured both times. */
function pairsOf(
  judged: readonly Judged[],
  feature: string,
  operation: number,
  back: readonly Judged[],
): { readonly pairs: readonly Pair[]; readonly alone: readonly Judged[] } {
  const before = judged.filter(one => one.feature === feature && one.after < operation)
  const latest = Math.max(...before.map(({ after }) => after), 0)
  const pairs: Pair[] = []
  const alone: Judged[] = []
  for (const piece of back) {
    const partner = before.find(({ serial, after }) => serial === piece.serial && after === latest)
    if (!partner) {
      alone.push(piece)
      continue
    }
    const [was, is] = atCommonPlaces(partner, piece)
    pairs.push({ serial: piece.serial, before: was, after: is })
  }
  return { pairs, alone: before.length === 0 ? [] : alone }
}

function atCommonPlaces(before: Judged, after: Judged): readonly [Millimetre, Millimetre] {
  const common = before.form.levels.flatMap(level => {
    const same = after.form.levels.find(({ depth }) => depth === level.depth)
    return same ? [[level.mean, same.mean] as const] : []
  })
  if (common.length === 0) return [before.form.mean, after.form.mean]
  const mean = (index: 0 | 1) => common.reduce((sum, pair) => sum + pair[index], 0) / common.length
  return [mean(0), mean(1)]
}

/** Of the mean of the readings of a surface, where the gauge's repeatability is given. */
function meanRepeatability(back: readonly Judged[]): Millimetre | undefined {
  const [first] = back
  return first?.repeatability === undefined ? undefined : first.repeatability / Math.sqrt(first.sizes.length)
}

/** The largest oval of each piece: as vectors where every one has a direction, from one difference each where only two were read. */
function ovalityOf(back: readonly Judged[], more: number): SeenOvality | undefined {
  const ovals = back.flatMap(({ form }) => {
    const level = form.levels.toSorted((one, other) => (other.ovality ?? 0) - (one.ovality ?? 0))[0]
    return level?.ovality === undefined ? [] : [{ ...level, ovality: level.ovality }]
  })
  if (ovals.length < ENOUGH) return undefined
  const lengths = ovals.map(({ ovality }) => ovality)
  const vectors = ovals.flatMap(({ oval }) => (oval ? [oval] : []))
  const lowerBound = vectors.length < ovals.length
  const noise = back[0]?.repeatability
  const seen = noise === undefined || Math.max(...lengths) >= NOT_SEEN * noise
  if (!lowerBound) return { ...ovalityFromVectors(vectors, more), lowerBound, seen }
  const differences = back.flatMap(acrossTwo)
  const plain = ovalityFromLengths(lengths, more)
  if (differences.length < back.length) return { ...plain, lowerBound, seen }
  // Two directions see one component of the oval, which has the same spread.
  const { sigma, most } = ovalityFromTwo(differences)
  return { ...plain, sigma, most, lowerBound, seen }
}

/** Difference of two diameters square to each other, the largest of a piece. */
function acrossTwo({ sizes, form }: Judged): readonly Millimetre[] {
  const found = form.levels.flatMap(({ depth }) => {
    const [one, other, more] = sizes.filter(size => size.depth === depth)
    if (!one || !other || more || one.direction === undefined || other.direction === undefined) return []
    return Math.abs(Math.abs(one.direction - other.direction) - 90) < 1e-6 ? [one.value - other.value] : []
  })
  const [largest] = found.toSorted((one, other) => Math.abs(other) - Math.abs(one))
  return largest === undefined ? [] : [largest]
}
