import { DEEPEST_CASE, ONE_SIDE_MORE, WALL_LIMIT_SOURCE, wallLimit } from '../handbook/case-limits.ts'
import { type DepthTerm, upperTolerance } from '../handbook/case-tolerance.ts'
import { WALL_IN_DEPTHS } from '../handbook/induction.ts'
import type { Part } from '../part/part.ts'
import type { Millimetre } from '../units.ts'
import type { CaseLimit } from './case-plan.ts'
import { boreOf, treatedSides } from './case-surfaces.ts'

/** Depths are ordered in steps of this. */
export const DEPTH_STEP: Millimetre = 0.05

/** What the wall bears. */
export type WallRoom = {
  /** Sides that take case. */
  readonly sides: 1 | 2
  /** Case a side, most. */
  readonly most: Millimetre
  /** The same for all treated sides together. */
  readonly together: Millimetre
  /** `together`, written out. */
  readonly expression: string
  readonly source: string
}

/** The case that leaves a core in the wall. Nothing for a solid part, and for a wall so thin that there is no rule. */
export function wallRoom(part: Part, term: DepthTerm, wall: Millimetre): WallRoom | undefined {
  if (!boreOf(part)) return undefined
  const { outside, bore } = treatedSides(part)
  if (!outside && !bore) return undefined
  const sides = outside && bore ? 2 : 1
  const t = Number(wall.toPrecision(8))
  if (term === 'SHD') {
    const most = wall / WALL_IN_DEPTHS
    const expression = `${sides} * ${t} / ${WALL_IN_DEPTHS}`
    return { sides, most, together: sides * most, expression, source: 'common practice, no source' }
  }
  const limit = wallLimit(wall)
  if (!limit) return undefined
  const cap = Math.max(limit.share * wall, limit.notUnder)
  const capText = limit.notUnder === 0 ? `${limit.share} * ${t}` : `max(${limit.share} * ${t}, ${limit.notUnder})`
  if (sides === 2 || term === 'NHD') {
    return { sides, most: cap / sides, together: cap, expression: capText, source: WALL_LIMIT_SOURCE }
  }
  const most = Math.min(cap, cap / 2 + ONE_SIDE_MORE * wall)
  const expression = `min(${capText}, ${capText} / 2 + ${ONE_SIDE_MORE} * ${t})`
  return { sides, most, together: most, expression, source: `${WALL_LIMIT_SOURCE}; one side alone: estimate` }
}

/** The deepest order, by what the process reaches and by what the wall bears at the upper end of the depth ordered. */
export function caseLimit(part: Part, process: string, term: DepthTerm, wall: Millimetre): CaseLimit {
  const { depth, source } = DEEPEST_CASE[term]
  const room = wallRoom(part, term, wall)
  const byWall = room ? deepestWithin(term, room.most) : Number.POSITIVE_INFINITY
  if (!room || byWall >= depth) {
    return { least: depth, by: 'process', because: `${process} is ordered to ${depth} mm at most`, source }
  }
  const borne = `${Number(room.together.toFixed(2))} mm of case`
  const because = `the wall of ${wall.toFixed(2)} mm bears ${room.sides === 2 ? `${borne} on both sides together` : `${borne} on one side`}`
  return { least: byWall, by: 'wall', because, source: room.source }
}

/** The deepest step whose upper end is within. */
export function deepestWithin(term: DepthTerm, most: Millimetre): Millimetre {
  let steps = Math.floor(most / DEPTH_STEP + 1e-6)
  while (steps > 0 && steps * DEPTH_STEP + upperTolerance(term, steps * DEPTH_STEP) > most + 1e-9) steps--
  return Number((steps * DEPTH_STEP).toFixed(2))
}
