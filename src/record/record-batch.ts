import type { Finding } from '../finding.ts'
import { oneSidedToleranceFactor, toleranceFactor } from '../handbook/noncentral-t.ts'
import type { Characteristic } from '../inspection/characteristic.ts'
import { PIECE } from '../part/results.ts'
import type { ResultsEntry } from './book.ts'
import { type Capability, capability, SHARE } from './capability.ts'
import type { IssuedPlan } from './characteristic-of.ts'
import { type FaceList, faceList } from './face-take-off.ts'
import { type GrindingList, grindingLists } from './in-hand.ts'
import { type FinerGauge, type Judged, judgeResults } from './judge-results.ts'
import { type Learnt, learn } from './learn.ts'
import { meanOf, spreadOf } from './learnt-growth.ts'
import { askAgain, leanOf, type RunChart, runChart, type Trend, trendOf } from './run-of-pieces.ts'
import { type Standing, standingOf, type Yields } from './standing.ts'

/** One characteristic over the batch. */
export type Column = {
  readonly characteristic: number
  readonly name: string
  readonly feature: string
  readonly after: number
  readonly unit: string
  readonly places: number
  readonly lower?: number
  readonly upper?: number
  readonly guard: number
  /** In the order of making: the middle of a piece, and its verdict. */
  readonly pieces: readonly {
    readonly serial: string
    readonly least: number
    readonly most: number
    readonly verdict: Judged['verdict']
  }[]
  readonly inLimits: number
  readonly inDoubt: number
  readonly out: number
  /** Not of form, run-out or what was sorted; absent of fewer than five. */
  readonly capability?: Capability
  readonly chart?: RunChart
  /** Where it is sure to one in twenty. */
  readonly trend?: Trend
}

/** All that the results of a batch say. */
export type Recorded = {
  readonly judged: readonly Judged[]
  readonly columns: readonly Column[]
  readonly grinding: readonly GrindingList[]
  readonly face?: FaceList
  readonly learnt?: Learnt
  readonly standing: Standing
  /** Of the coupon or certificate, HV: the least read, and what 95 % of readings lie over with a confidence of 95 %. */
  readonly hardness?: { readonly readings: number; readonly least: number; readonly over?: number }
  readonly findings: readonly Finding[]
}

/** Judges a batch by its plan as issued and by all that its book holds. */
export function recordBatch({
  plan,
  entries,
  yields,
  gaugesFor,
}: {
  readonly plan: IssuedPlan
  readonly entries: readonly ResultsEntry[]
  readonly yields: Yields
  readonly gaugesFor: (characteristic: Characteristic) => readonly FinerGauge[]
}): Recorded {
  const readings = entries.flatMap(entry => entry.readings)
  const lost = entries.flatMap(entry => entry.lost)
  const hardness = entries.findLast(entry => entry.hardness)?.hardness
  const judged = judgeResults(plan, readings, gaugesFor)
  const columns = columnsOf(judged)
  const learnt = learn(plan, judged, readings)
  const alive = judged.filter(({ serial }) => !lost.some(piece => piece.serial === serial))
  const grinding = grindingLists({ plan, judged: alive, readings, hardness })
  const face = faceList(plan, alive)
  return {
    judged,
    columns,
    grinding,
    ...(face && { face }),
    ...(learnt && { learnt }),
    ...(hardness && hardness.surface.length > 0 && { hardness: hardnessOf(hardness.surface) }),
    standing: standingOf({ plan, judged, grinding, lost, yields }),
    findings: [...(learnt?.findings ?? []), ...columns.flatMap(column => again(column, judged))],
  }
}

function hardnessOf(surface: readonly number[]): NonNullable<Recorded['hardness']> {
  const n = surface.length
  const least = Math.min(...surface)
  if (n < 3) return { readings: n, least }
  return { readings: n, least, over: meanOf(surface) - oneSidedToleranceFactor(n, SHARE, SHARE) * spreadOf(surface) }
}

function columnsOf(judged: readonly Judged[]): readonly Column[] {
  // One factor for so many pieces, however many columns have as many.
  const factors = new Map<number, number>()
  const factorOf = (n: number): number => {
    const known = factors.get(n) ?? toleranceFactor(n, SHARE, SHARE)
    factors.set(n, known)
    return known
  }
  const groups = new Map<string, Judged[]>()
  for (const one of judged) {
    const key = `${one.after} ${one.characteristic}`
    groups.set(key, [...(groups.get(key) ?? []), one])
  }
  return [...groups.values()]
    .flatMap((group): readonly Column[] => {
      const [first] = group
      if (!first) return []
      const { characteristic, name, feature, after, unit, places, lower, upper, guard } = first
      const limits = { ...(lower !== undefined && { lower }), ...(upper !== undefined && { upper }) }
      const pieces = group.filter(({ serial }) => PIECE.test(serial))
      const middles = pieces.map(({ form }) => form.mean)
      // A size with two limits: form and run-out are skewed and end at nought.
      const sized = lower !== undefined && upper !== undefined
      const lean = sized ? leanOf(middles) : undefined
      const trend = lean && lean.chance < 0.05 ? trendOf(middles) : undefined
      const able =
        sized && !trend
          ? capability(middles, limits, middles.length > 1 ? factorOf(middles.length) : undefined)
          : undefined
      const chart = sized ? runChart(middles) : undefined
      const count = (verdict: Judged['verdict']) => group.filter(one => one.verdict === verdict).length
      return [
        {
          characteristic,
          name,
          feature,
          after,
          unit,
          places,
          ...limits,
          guard,
          pieces: group.map(({ serial, form, verdict }) => ({ serial, least: form.least, most: form.most, verdict })),
          inLimits: count('in limits'),
          inDoubt: count('in doubt'),
          out: count('out'),
          ...(able && { capability: able }),
          ...(chart && { chart }),
          ...(trend && { trend }),
        },
      ]
    })
    .toSorted((one, other) => one.after - other.after || one.characteristic - other.characteristic)
}

/** A value that stands off is asked for again, and kept whatever comes. */
function again(column: Column, judged: readonly Judged[]): readonly Finding[] {
  if (column.lower === undefined || column.upper === undefined || column.trend) return []
  const off = askAgain(column.pieces.map(({ least, most }) => (least + most) / 2))
  const piece = off && column.pieces[off.index]
  const at = judged.find(one => one.serial === piece?.serial && one.characteristic === column.characteristic)?.at
  if (!off || !piece || !at) return []
  return [
    {
      code: 'results/measure-again',
      severity: 'warning',
      message: `${column.name}: piece ${piece.serial} stands ${off.spreads.toFixed(1)} spreads from the others`,
      at,
      hint: 'measure it again; both results stay in the book',
    },
  ]
}
