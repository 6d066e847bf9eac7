import { type Millimetre, radians } from '../../units.ts'
import type { PortWindow } from '../port.ts'
import { apart } from './closed-line.ts'
import { deepestOf, type FloorPlace, lastFloors, roughFloors } from './floors.ts'
import { dive, passAt } from './pass.ts'
import type { CutShape, TipPlace, Visit } from './tool-path.ts'

export type Roughing = Extract<CutShape, { kind: 'rough' | 'cut through' }>

export function roughing(window: PortWindow, shape: Roughing, visit: Visit): void {
  const { cutter, wallStock, slug, levels, throughLevels, down } = shape
  const floors = roughFloors(window, cutter, wallStock, slug)
  const roughed = levels - throughLevels
  const rules = { ...shape, entryShare: shape.kind === 'rough' ? shape.downShare : 1 }
  const [first, last] = shape.kind === 'rough' ? [1, roughed] : [roughed + 1, levels]
  if (down)
    rampedLevels(
      floors.map(({ loop }) => loop),
      { ...shape, down },
      [first, last],
      visit,
    )
  else
    for (let level = first; level <= last; level++)
      for (const floor of floors) passAt({ floor }, level / levels, rules, visit)
  if (shape.kind === 'rough' || slug === 'kept') return
  // From the end of a ramped way across to the middle: what stands there is cut on the way down.
  const across = down ? { ...rules, entryShare: shape.downShare } : rules
  for (const floor of lastFloors(window, cutter, wallStock)) passAt({ floor }, 1, across, visit)
}

/** Where a ramp begins: beside the entry hole's place, on the innermost way round. */
export const rampStart = (window: PortWindow, { cutter, wallStock, slug }: Roughing): FloorPlace | undefined =>
  roughFloors(window, cutter, wallStock, slug)[0]?.loop[0]

/** Length of the innermost way round, on which the ramp goes down. */
export function rampLength(window: PortWindow, { cutter, wallStock, slug }: Omit<Roughing, 'kind'>): Millimetre {
  const loop = roughFloors(window, cutter, wallStock, slug)[0]?.loop ?? []
  return loop.reduce((sum, at, i) => sum + apart(loop[i - 1] ?? at, at), 0)
}

type Ramped = Roughing & { readonly down: NonNullable<Roughing['down']> }

/**
 * Level by level without leaving the slot: down the ramp along the innermost loop, on round to where it began, and out from
 * loop to loop. The next ramp begins there and takes off the wedge that this one has left, nowhere deeper than a level; only
 * the last is followed all round on its floor.
 */
function rampedLevels(
  loops: readonly (readonly FloorPlace[])[],
  shape: Ramped,
  [first, last]: readonly [number, number],
  visit: Visit,
): void {
  const { levels, down, clearShare } = shape
  const [inner = [], ...outer] = loops
  const round = inner.slice(1)
  const length = deepestOf([{ lead: [], loop: inner }]) / levels / Math.tan(radians(down.angle))
  // Place `i` of the loop, counted on round after round.
  const innerAt = (i: number): FloorPlace =>
    inner[i === 0 ? 0 : ((i - 1) % round.length) + 1] ?? { x: 0, y: 0, z: 0, top: 0 }
  let index = 0
  let from = atDepth(innerAt(0), (first - 1) / levels)
  const go = (to: TipPlace, share: number): void => {
    visit(to, Math.min(share, dive(from, to, shape.downShare)), false)
    from = to
  }
  visit(from, 1, true)
  for (let level = first; level <= last; level++) {
    const began = index
    const back = atDepth(innerAt(index), (level - 1) / levels)
    // Over what the level before has cut.
    if (level > first && outer.length > 0) {
      visit(back, clearShare, true)
      from = back
    }
    for (let gone = 0; gone < length; ) {
      const next = innerAt(index + 1)
      gone += apart(innerAt(index), next)
      index++
      go(atDepth(next, (level - 1 + Math.min(1, gone / length)) / levels), down.share)
    }
    const end = (level === last ? index : began) + round.length
    while (index < end) go(atDepth(innerAt(++index), level / levels), 1)
    for (const loop of outer) for (const place of fromNearest(loop, from)) go(atDepth(place, level / levels), 1)
  }
  if (shape.kind === 'rough' || shape.slug === 'kept') return
  // Back along what is cut to where the loop begins, beside the entry: straight across from anywhere else a wall may bow in.
  const outermost = outer.at(-1) ?? inner
  for (const place of fromNearest(outermost, from).slice(1)) {
    if (apart(from, outermost[0] ?? from) < 1e-9) break
    from = atDepth(place, last / levels)
    visit(from, clearShare, true)
  }
}

/** All round from the place that is nearest. */
function fromNearest(loop: readonly FloorPlace[], at: TipPlace): readonly FloorPlace[] {
  const round = loop.slice(1)
  const offs = round.map(place => apart(place, at))
  const nearest = offs.indexOf(Math.min(...offs))
  return [...round.slice(nearest), ...round.slice(0, nearest + 1)]
}

const atDepth = ({ x, y, z, top }: FloorPlace, part: number): TipPlace => ({ x, y, z: top - (top - z) * part })
