import type { Spread } from '../../src/limits.ts'
import { type Limits, middleOf, toleranceOf } from '../../src/limits.ts'
import type { SolvedChain } from '../../src/stock/solve-chain.ts'
import type { Millimetre } from '../../src/units.ts'
import { AT_THE_LIMITS, type Draws, seededRandom } from './random.ts'

/** One piece of a batch: what each finish takes on diameter, and per side where least and most is taken. */
export type DrawnPiece = {
  readonly onDiameter: readonly Millimetre[]
  readonly least: readonly Millimetre[]
  readonly most: readonly Millimetre[]
  /** Case left at the worst place, where a case is ordered. */
  readonly caseLeft?: Millimetre
}

const within = (limits: Limits, at: number): Millimetre => middleOf(limits) + (toleranceOf(limits) / 2) * at

function withinSpread({ least, nominal, most }: Spread, at: number): Millimetre {
  return nominal + at * (at < 0 ? nominal - least : most - nominal)
}

/** Pieces of a batch, each with its own sizes, growth and set-ups; the same ones for the same seed. */
export function drawnPieces(
  { chain, growth, soft, after }: SolvedChain,
  pieces: number,
  seed: number,
  { ordered, draws = AT_THE_LIMITS }: { readonly ordered?: Spread; readonly draws?: Draws } = {},
): readonly DrawnPiece[] {
  const random = seededRandom(seed)
  return Array.from({ length: pieces }, () => {
    const g = withinSpread(growth, draws.growth(random))
    let before = within(soft, draws.size(random)) + (chain.kind === 'bore' ? -2 * g : 2 * g)
    const onDiameter: Millimetre[] = []
    const least: Millimetre[] = []
    const most: Millimetre[] = []
    for (const [index, { eccentricity, form }] of chain.finishes.entries()) {
      const now = within(after[index] ?? chain.final, draws.size(random))
      const taken = (chain.kind === 'bore' ? now - before : before - now) * (chain.kind === 'face' ? 2 : 1)
      const strays = eccentricity.value * draws.runout(random) + form.value * draws.form(random)
      onDiameter.push(taken)
      least.push(taken / 2 - strays)
      most.push(taken / 2 + strays)
      before = now
    }
    const depth = ordered && withinSpread(ordered, draws.size(random))
    return {
      onDiameter,
      least,
      most,
      ...(depth !== undefined && { caseLeft: depth - most.reduce((total, taken) => total + taken, 0) }),
    }
  })
}
