import type { PlannedFeature } from '../features/feature-plan.ts'
import type { Millimetre } from '../units.ts'
import type { ProfilePoint } from './profile.ts'

type Side = NonNullable<PlannedFeature['side']>
type Line = readonly ProfilePoint[]

/** The lines of turned features on one side of the wall. */
export const linesOn = (features: readonly PlannedFeature[], side: Side): readonly Line[] =>
  features.flatMap(feature => (feature.side === side && feature.line && feature.line.length > 1 ? [feature.line] : []))

/** An outline as far as it stands, and a line that cuts into it: of an outside what is smaller of the two, of a bore what is larger. */
export function cutBy(outline: Line, lines: readonly Line[], side: Side): Line {
  return lines.reduce((present, line) => met(present, line, side).points, outline)
}

/** Where a line cuts into an outline: from which depth to which; nothing where it does not. */
export function reachOf(outline: Line, line: Line, side: Side): readonly [Millimetre, Millimetre] | undefined {
  const { cut } = met(outline, line, side)
  return cut.length === 0 ? undefined : [Math.min(...cut), Math.max(...cut)]
}

function met(outline: Line, line: Line, side: Side): { readonly points: Line; readonly cut: readonly Millimetre[] } {
  const depths = [...new Set([...outline, ...line].map(({ depth }) => depth))].toSorted((a, b) => a - b)
  const points: ProfilePoint[] = []
  const cut: Millimetre[] = []
  const add = (depth: Millimetre, radius: Millimetre): void => {
    const last = points.at(-1)
    if (!last || Math.abs(last.depth - depth) > SAME || Math.abs(last.radius - radius) > SAME)
      points.push({ depth, radius })
  }
  for (const [index, from] of depths.entries()) {
    const to = depths[index + 1]
    if (to === undefined) break
    const base = between(outline, from, to)
    if (!base) continue
    const other = between(line, from, to)
    if (!other) {
      add(from, base[0])
      add(to, base[1])
      continue
    }
    const over = [0, 1].map(end => (side === 'outside' ? 1 : -1) * ((base[end] ?? 0) - (other[end] ?? 0)))
    const [before = 0, after = 0] = over
    const won = (end: 0 | 1): Millimetre => ((over[end] ?? 0) > 0 ? other[end] : base[end])
    add(from, won(0))
    if (before > SAME) cut.push(from)
    if (before * after < 0) {
      const part = before / (before - after)
      const depth = from + part * (to - from)
      add(depth, base[0] + part * (base[1] - base[0]))
      cut.push(depth)
    }
    add(to, won(1))
    if (after > SAME) cut.push(to)
  }
  return { points, cut }
}

/** Radii of a line just within a stretch of depth that none of its corners lies in. */
function between(points: Line, from: Millimetre, to: Millimetre): readonly [Millimetre, Millimetre] | undefined {
  const index = points.findIndex((point, at) => {
    const next = points[at + 1]
    return next !== undefined && point.depth <= from + SAME && next.depth >= to - SAME && next.depth > point.depth
  })
  const [a, b] = [points[index], points[index + 1]]
  if (!a || !b) return undefined
  const radius = (depth: Millimetre): Millimetre =>
    a.radius + ((depth - a.depth) / (b.depth - a.depth)) * (b.radius - a.radius)
  return [radius(from), radius(to)]
}

const SAME: Millimetre = 1e-7
