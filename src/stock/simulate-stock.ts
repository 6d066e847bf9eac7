import type { Spread } from '../limits.ts'
import { type Limits, middleOf, toleranceOf } from '../limits.ts'
import type { Millimetre } from '../units.ts'
import { bell, offCentre, type Random, seededRandom } from './random.ts'
import type { SolvedChain } from './solve-chain.ts'

/** One piece of a batch: what each finish takes on diameter, and per side where least and most is taken. */
export type SimulatedPiece = {
  readonly onDiameter: readonly Millimetre[]
  readonly least: readonly Millimetre[]
  readonly most: readonly Millimetre[]
  /** Case left at the worst place, where a case is ordered. */
  readonly caseLeft?: Millimetre
}

const within = (limits: Limits, random: Random): Millimetre =>
  middleOf(limits) + (toleranceOf(limits) / 2) * bell(random)

function withinSpread({ least, nominal, most }: Spread, random: Random): Millimetre {
  const at = bell(random)
  return nominal + at * (at < 0 ? nominal - least : most - nominal)
}

/** Pieces of a batch, each with its own sizes, growth and set-ups; the same ones for the same seed. */
export function simulateStock(
  { chain, growth, soft, after }: SolvedChain,
  pieces: number,
  seed: number,
  ordered?: Spread,
): readonly SimulatedPiece[] {
  const random = seededRandom(seed)
  return Array.from({ length: pieces }, () => {
    const g = withinSpread(growth, random)
    let before = within(soft, random) + (chain.kind === 'bore' ? -2 * g : 2 * g)
    const onDiameter: Millimetre[] = []
    const least: Millimetre[] = []
    const most: Millimetre[] = []
    for (const [index, { eccentricity, form }] of chain.finishes.entries()) {
      const now = within(after[index] ?? chain.final, random)
      const taken = (chain.kind === 'bore' ? now - before : before - now) * (chain.kind === 'face' ? 2 : 1)
      const strays = eccentricity.value * offCentre(random) + form.value * random()
      onDiameter.push(taken)
      least.push(taken / 2 - strays)
      most.push(taken / 2 + strays)
      before = now
    }
    const depth = ordered && withinSpread(ordered, random)
    return {
      onDiameter,
      least,
      most,
      ...(depth !== undefined && { caseLeft: depth - most.reduce((total, taken) => total + taken, 0) }),
    }
  })
}

/** The middle 99.73 % of a list: what three sigma hold of a normal one. */
export function middleOfPieces(values: readonly number[]): { readonly least: number; readonly most: number } {
  const sorted = Float64Array.from(values).sort()
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.round(share * (sorted.length - 1)))] ?? 0
  return { least: at(0.00135), most: at(0.99865) }
}
