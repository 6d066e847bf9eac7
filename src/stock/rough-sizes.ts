import { between, type Limits, middleOf } from '../limits.ts'
import type { Part } from '../part/part.ts'
import { isNarrowRecess, roughedWith } from '../route/running-band.ts'
import type { Shop } from '../shop/shop.ts'
import type { AxialSizes } from './axial-sizes.ts'
import type { Sized } from './operation-sizes.ts'
import type { SolvedChain } from './solve-chain.ts'

/** Stock for finish turning lies outside the soft limits; roughing's own tolerance outside that. */
export function roughLimits(soft: Limits, inside: boolean, { habits }: Shop): Limits {
  const { roughingAllowance, roughTurningTolerance } = habits
  if (inside) {
    const upper = soft.lower - 2 * roughingAllowance
    return between(upper - roughTurningTolerance, upper)
  }
  const lower = soft.upper + 2 * roughingAllowance
  return between(lower, lower + roughTurningTolerance)
}

/**
 * As roughing leaves a diameter: with stock for the finish cut, but for a bore that stays as drilled; a narrow recess as the band
 * beside it, since it is cut once, later.
 */
export function roughedTo({ part, chains, shop }: Sized, { chain, soft }: SolvedChain): Limits {
  if (chain.drilled) return soft
  const beside = roughedWith(part, chain.surface)
  const roughed = chains.find(other => other.chain.kind === chain.kind && other.chain.surface === beside)
  return roughLimits(roughed?.soft ?? soft, chain.kind === 'bore', shop)
}

/** A step that looks down is left standing lower, a step that looks up higher, each by the allowance; so is the top face. */
export function roughDepth(soft: Limits, looks: 'up' | 'down', { habits }: Shop): Limits {
  const middle = middleOf(soft) + (looks === 'down' ? 2 * habits.roughingAllowance : 0)
  return between(middle - habits.roughTurningTolerance / 2, middle + habits.roughTurningTolerance / 2)
}

/** Neither end of a narrow recess is roughed. */
export function isRoughed(part: Part, { band }: AxialSizes['steps'][number]): boolean {
  const bands = part.bore.includes(band) ? part.bore : part.outside
  const next = bands[bands.indexOf(band) + 1]
  return ![band, next].some(one => one !== undefined && isNarrowRecess(part, one.name))
}
