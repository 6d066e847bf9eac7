import { type LostPiece, PIECE } from '../part/results.ts'
import type { IssuedPlan } from './characteristic-of.ts'
import type { GrindingList } from './in-hand.ts'
import type { Judged } from './judge-results.ts'

/** Where a batch stands. */
export type Standing = {
  readonly wanted: number
  /** Started for good ones: set-up pieces and coupons are not among them. */
  readonly started: number
  readonly extras: number
  readonly lost: readonly { readonly serial: string; readonly operation?: number; readonly why?: string }[]
  /** Out of limits by their last reading, or past grinding, and not yet given up. */
  readonly out: readonly { readonly serial: string; readonly names: readonly string[] }[]
  readonly doubtful: readonly { readonly serial: string; readonly names: readonly string[] }[]
  /** Neither lost nor out. */
  readonly left: number
  /** The last operation that anything was measured after. */
  readonly upTo?: number
  /** That the pieces left give the number wanted. */
  readonly chance: number
  /** Pieces to start now for the chance that the works wants; absent where none are needed. */
  readonly startMore?: number
}

export type Yields = {
  /** Of the whole route, and of what is still to come. */
  readonly whole: number
  readonly ahead: (upTo: number | undefined) => number
  /** Chance that the works wants. */
  readonly confidence: number
}

/** More than so many at once is another batch. */
const MOST_MORE = 200

export function standingOf({
  plan,
  judged,
  grinding,
  lost,
  yields,
}: {
  readonly plan: IssuedPlan
  readonly judged: readonly Judged[]
  readonly grinding: readonly GrindingList[]
  readonly lost: readonly LostPiece[]
  readonly yields: Yields
}): Standing {
  const { batch } = plan
  const extras = batch.extras.reduce((sum, { pieces }) => sum + pieces, 0)
  const started = batch.numbered
  const gone = new Map(lost.map(piece => [piece.serial, piece]))
  const last = lastReadings(judged).filter(({ serial }) => !gone.has(serial) && PIECE.test(serial))
  // A surface that is still to be ground is judged by what it can be ground to, not by what was expected back.
  const saved = ({ feature, after, received }: Judged): boolean =>
    received === 'not as expected' &&
    plan.stock.some(({ surface, operation }) => surface === feature && operation > after)
  const doomed = (one: Judged): boolean =>
    grinding.some(({ surface, lost }) => surface === one.feature && lost.some(({ serial }) => serial === one.serial))
  const by = (verdict: Judged['verdict']) => {
    const serials = new Map<string, string[]>()
    for (const one of last)
      if (verdict === 'out' ? doomed(one) || (one.verdict === 'out' && !saved(one)) : one.verdict === verdict)
        serials.set(one.serial, [...(serials.get(one.serial) ?? []), one.name])
    return [...serials].map(([serial, names]) => ({ serial, names }))
  }
  const out = by('out')
  const lostOf = [...gone.values()].filter(({ serial }) => PIECE.test(serial))
  const left = started - lostOf.length - out.length
  const afters = judged.map(({ after }) => after)
  const upTo = afters.length > 0 ? Math.max(...afters) : undefined
  const ahead = yields.ahead(upTo)
  const chance = chanceOf(batch.quantity, [[left, ahead]])
  const startMore = chance >= yields.confidence ? undefined : moreNeeded(batch.quantity, left, ahead, yields)
  return {
    wanted: batch.quantity,
    started,
    extras,
    lost: lostOf.map(({ serial, operation, why }) => ({
      serial,
      ...(operation !== undefined && { operation }),
      ...(why !== undefined && { why }),
    })),
    out,
    doubtful: by('in doubt'),
    left,
    ...(upTo !== undefined && { upTo }),
    chance,
    ...(startMore !== undefined && { startMore }),
  }
}

/** Of each surface the last state counts: a size that was ground since is judged no more. */
function lastReadings(judged: readonly Judged[]): readonly Judged[] {
  const last = new Map<string, Judged>()
  for (const one of judged) {
    const key = `${one.serial}\n${one.feature}\n${one.name}`
    const before = last.get(key)
    if (!before || one.after >= before.after) last.set(key, one)
  }
  return [...last.values()]
}

function moreNeeded(wanted: number, left: number, ahead: number, { whole, confidence }: Yields): number {
  for (let more = 1; more < MOST_MORE; more++)
    if (
      chanceOf(wanted, [
        [left, ahead],
        [more, whole],
      ]) >= confidence
    )
      return more
  return MOST_MORE
}

/** That of lots of pieces, each with its own share of good ones, so many come out good in all. */
function chanceOf(wanted: number, lots: readonly (readonly [pieces: number, share: number])[]): number {
  let chances: readonly number[] = [1]
  for (const [pieces, share] of lots) for (let piece = 0; piece < pieces; piece++) chances = oneMore(chances, share)
  return chances.slice(wanted).reduce((sum, chance) => sum + chance, 0)
}

/** Chances of 0, 1, 2 … good pieces, with one piece more. */
const oneMore = (chances: readonly number[], share: number): readonly number[] =>
  Array.from(
    { length: chances.length + 1 },
    (_, good) => (chances[good] ?? 0) * (1 - share) + (chances[good - 1] ?? 0) * share,
  )
