import type { Millimetre } from '../../units.ts'
import { apart } from './closed-line.ts'
import type { Floor, FloorPlace } from './floors.ts'
import type { TipPlace, Visit } from './tool-path.ts'

/** The control slows no further in a corner. */
const LEAST_CORNER_SHARE = 0.1

export type Rules = {
  readonly downShare: number
  readonly clearShare: number
  /** Of the feed, on the way down at the beginning: through metal, to the floor of a slot, or where all is open. */
  readonly entryShare: number
}

/** A way along the floor; `corners`: the share of the feed on each of its stretches, where its corners are slowed. */
type Pass = { readonly floor: Floor; readonly corners?: readonly number[] }

/** Down in the entry hole, across to the pass, along it, and back. `part`: how much of the way down is cut. */
export function passAt({ floor, corners }: Pass, part: number, rules: Rules, visit: Visit): void {
  const { downShare, clearShare, entryShare } = rules
  const { lead, loop, back } = floor
  const atDepth = ({ x, y, z, top }: FloorPlace): TipPlace => ({ x, y, z: top - (top - z) * part })
  let from: TipPlace | undefined
  const go = (place: FloorPlace, share: number): void => {
    const to = atDepth(place)
    if (!from) visit(to, entryShare, true)
    else if (place.clear) visit(to, clearShare, true)
    else visit(to, Math.min(share, dive(from, to, downShare)), false)
    from = to
  }
  for (const place of lead) go(place, 1)
  for (let i = 0; i < loop.length; i++) {
    const place = loop[i]
    if (place) go(place, corners?.[i] ?? 1)
  }
  for (const place of back) go(place, 1)
}

/** Share of the feed on a way that falls, so that the cutter goes down no faster than straight down. */
export const dive = (from: TipPlace, to: TipPlace, downShare: number): number =>
  Math.min(1, downShare / Math.max(1e-9, (from.z - to.z) / distance(from, to)))

/**
 * Share of the feed on the way to each place, so that the rim and not the centre of the cutter keeps it: ρ/(ρ + r), with ρ
 * the radius that the centre goes round and r the cutter's. Source: derived, geometry.
 */
export function cornerShares(loop: readonly FloorPlace[], r: Millimetre): readonly number[] {
  const stretches = loop.map((to, i) => {
    const from = loop[i - 1]
    return from && !to.clear
      ? { length: apart(from, to), heading: Math.atan2(to.y - from.y, to.x - from.x) }
      : undefined
  })
  const turnInto = (i: number): number => {
    const [here, before] = [stretches[i], stretches[i - 1]]
    if (!here || !before) return 0
    const turn = here.heading - before.heading
    return Math.max(0, Math.atan2(Math.sin(turn), Math.cos(turn)))
  }
  return stretches.map((stretch, i) => {
    const bend = Math.max(turnInto(i), turnInto(i + 1))
    if (!stretch || bend === 0) return 1
    const radius = stretch.length / bend
    return Math.max(LEAST_CORNER_SHARE, radius / (radius + r))
  })
}

export const distance = (a: TipPlace, b: TipPlace): Millimetre =>
  Math.sqrt((a.x - b.x) ** 2 + (a.y - b.y) ** 2 + (a.z - b.z) ** 2)
