import { toleranceOf } from '../limits.ts'
import type { Hour, Millimetre } from '../units.ts'
import type { Finish } from './finish-chain.ts'
import type { SolvedChain } from './solve-chain.ts'

/** How far each input may be off, alone, before the surface fails. What is not among the inputs of a finish is absent. */
export type Bears = {
  /** Radial: how far off centre the surface may run. */
  readonly runout?: Millimetre
  /** Largest less smallest diameter. */
  readonly ovality?: Millimetre
  /** Of the axis over the length. */
  readonly bow?: Millimetre
  /** Beyond the range that it is planned with, a side: less where the surface would not clean up, more where its case would go. */
  readonly growth?: Millimetre
}

/** The input that asks for most stock, of those that can be held closer, and what half of it would save. */
export type Eats = {
  readonly input: 'run-out' | 'ovality and bow' | 'spread of growth' | 'tolerance before' | 'tolerance after'

  /** Of the stock on diameter. */
  readonly stock: Millimetre
  readonly halved: {
    /** On diameter. */
    readonly stock: Millimetre
    /** Depth to order. */
    readonly case?: Millimetre
    /** In the furnace, where this surface decides the depth. */
    readonly hours?: Hour
  }
}

/** The margin that fails first. */
export const spareOf = (cleanUp: Millimetre, held: Millimetre | undefined): Millimetre =>
  Math.min(cleanUp, held ?? Number.POSITIVE_INFINITY)

const figureOf = ({ rests }: Finish, figure: string): Millimetre | undefined => {
  const found = rests.find(rest => rest.figure === figure)
  return found && found.unit === 'mm' ? Number(found.value) : undefined
}

/** Eccentricity counts whole, ovality a quarter, bow half; growth once: what is spare may go to any one of them. */
export function bearsOf({ chain, growth }: SolvedChain, index: number, spare: Millimetre): Bears | undefined {
  const finish = chain.finishes[index]
  if (!finish || spare < 0) return undefined
  const { eccentricity } = finish
  const ovality = figureOf(finish, 'ovality')
  const bow = figureOf(finish, 'bow')
  const face = chain.kind === 'face'
  const grows = index === 0 && (growth.least !== 0 || growth.most !== 0)
  return {
    ...(eccentricity.value > 0 && { runout: eccentricity.value + spare }),
    ...(ovality !== undefined && !face && { ovality: ovality + 4 * spare }),
    ...(bow !== undefined && bow > 0 && !face && { bow: bow + 2 * spare }),
    ...(grows && { growth: spare }),
  }
}

/**
 * Every input with the stock on diameter that it asks for, and what of the case order it asks for beside: an error of place
 * counts on the thin side and again on the deep one, a tolerance and the spread of growth half on each.
 */
export function eatsMost(
  solved: SolvedChain,
  index: number,
  hoursFor: (lessCase: Millimetre) => Hour | undefined,
): Eats | undefined {
  const { chain, growth, soft, after } = solved
  const finish = chain.finishes[index]
  if (!finish || chain.kind === 'face') return undefined
  const { eccentricity, form } = finish
  const before = toleranceOf(after[index - 1] ?? soft)
  const now = toleranceOf(after[index] ?? chain.final)
  const [less, more] = index === 0 ? [growth.nominal - growth.least, growth.most - growth.nominal] : [0, 0]
  const rows: readonly { readonly input: Eats['input']; readonly stock: Millimetre; readonly depth: Millimetre }[] = [
    { input: 'run-out', stock: 2 * eccentricity.value, depth: 2 * eccentricity.value },
    { input: 'ovality and bow', stock: 2 * form.value, depth: 2 * form.value },
    { input: 'spread of growth', stock: 2 * less, depth: less + more },
    { input: 'tolerance before', stock: before / 2, depth: before / 2 },
    { input: 'tolerance after', stock: now / 2, depth: now / 2 },
  ]
  const [most] = rows.toSorted((a, b) => b.stock - a.stock)
  if (!most || most.stock <= 0) return undefined
  const lessCase = chain.cased ? most.depth / 2 : undefined
  const hours = lessCase === undefined ? undefined : hoursFor(lessCase)
  return {
    input: most.input,
    stock: most.stock,
    halved: {
      stock: most.stock / 2,
      ...(lessCase !== undefined && { case: lessCase }),
      ...(hours !== undefined && { hours }),
    },
  }
}
