import type { Degree, Millimetre } from '../units.ts'

/** A diameter at a depth and, seen along the axis, in a direction from azimuth 0. */
export type LocalSize = { readonly depth?: Millimetre; readonly direction?: Degree; readonly value: Millimetre }

/** Of an oval as a vector: half angle between it and azimuth 0 is where the largest diameter lies. */
export type Oval = { readonly a: Millimetre; readonly c: Millimetre; readonly ovality: Millimetre; readonly at: Degree }

export type SurfaceForm = {
  readonly least: Millimetre
  readonly most: Millimetre
  readonly levels: readonly {
    readonly depth?: Millimetre
    readonly mean: Millimetre
    readonly ovality?: Millimetre
    readonly oval?: Oval
    /** Largest less smallest only: fewer directions than show an oval, so the oval may be more. */
    readonly lowerBound: boolean
  }[]
  readonly mean: Millimetre
  readonly ovality?: Millimetre
  readonly lowerBound: boolean
  /** Largest less smallest level mean, positive where it widens with depth, over the height between the two. */
  readonly taper?: { readonly by: Millimetre; readonly over: Millimetre }
  /** Level mean nearest the middle less the straight line between the ends. */
  readonly barrel?: Millimetre
  /** Cylindricity is this at the least: it can be proved out of limits, never in. */
  readonly cylindricityAtLeast: Millimetre
}

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0)
const mean = (values: readonly number[]): number => total(values) / values.length
const turned = (direction: Degree): Degree => ((direction % 180) + 180) % 180

/**
 * The oval of one level: exact from four directions at 45°, or three at 60°, of D(θ) = D₀ + (o/2)·cos 2(θ − φ). Nothing from other
 * directions, or where the four do not fit an oval within `noise`.
 */
export function ovalOf(sizes: readonly LocalSize[], noise: Millimetre = 0.004): Oval | undefined {
  const at = (direction: Degree): number | undefined => {
    const values = sizes.flatMap(size =>
      size.direction !== undefined && Math.abs(turned(size.direction) - direction) < 1e-6 ? [size.value] : [],
    )
    return values.length > 0 ? mean(values) : undefined
  }
  const [d0, d45, d60, d90, d120, d135] = [0, 45, 60, 90, 120, 135].map(at)
  if (d0 === undefined) return undefined
  if (d45 !== undefined && d90 !== undefined && d135 !== undefined) {
    const fits = Math.abs(d0 + d90 - d45 - d135) <= noise
    return fits ? vector(d0 - d90, d45 - d135) : undefined
  }
  if (d60 === undefined || d120 === undefined) return undefined
  return vector((4 / 3) * (d0 - (d60 + d120) / 2), (2 * (d60 - d120)) / Math.sqrt(3))
}

const vector = (a: Millimetre, c: Millimetre): Oval => {
  const at = ((Math.atan2(c, a) / 2) * 180) / Math.PI
  return { a, c, ovality: Math.hypot(a, c), at: at < 0 ? at + 180 : at }
}

/** What diameters at heights and directions tell of a bore or an outside. */
export function formOf(sizes: readonly LocalSize[]): SurfaceForm {
  const values = sizes.map(({ value }) => value)
  const depths = [...new Set(sizes.map(({ depth }) => depth))].toSorted((one, other) => (one ?? 0) - (other ?? 0))
  const levels = depths.map(depth => {
    const here = sizes.filter(size => size.depth === depth)
    const read = here.map(({ value }) => value)
    const oval = ovalOf(here)
    const ovality = oval?.ovality ?? (read.length > 1 ? Math.max(...read) - Math.min(...read) : undefined)
    return {
      ...(depth !== undefined && { depth }),
      mean: mean(read),
      ...(ovality !== undefined && { ovality }),
      ...(oval && { oval }),
      lowerBound: oval === undefined,
    }
  })
  const ovals = levels.flatMap(({ ovality }) => (ovality === undefined ? [] : [ovality]))
  const placed = levels.flatMap(level => (level.depth === undefined ? [] : [{ depth: level.depth, mean: level.mean }]))
  return {
    least: Math.min(...values),
    most: Math.max(...values),
    levels,
    mean: mean(levels.map(level => level.mean)),
    ...(ovals.length > 0 && { ovality: Math.max(...ovals) }),
    lowerBound: levels.some(({ lowerBound }) => lowerBound),
    ...taperOf(placed),
    cylindricityAtLeast: (Math.max(...values) - Math.min(...values)) / 2,
  }
}

function taperOf(
  levels: readonly { readonly depth: Millimetre; readonly mean: Millimetre }[],
): Pick<SurfaceForm, 'taper' | 'barrel'> {
  const sorted = levels.toSorted((one, other) => one.mean - other.mean)
  const [small, large, first, last] = [sorted[0], sorted.at(-1), levels[0], levels.at(-1)]
  if (!small || !large || !first || !last || small === large) return {}
  const over = Math.abs(large.depth - small.depth)
  const taper = { by: large.depth > small.depth ? large.mean - small.mean : small.mean - large.mean, over }
  const middle = (first.depth + last.depth) / 2
  const between = levels.slice(1, -1)
  const [nearest] = between.toSorted((one, other) => Math.abs(one.depth - middle) - Math.abs(other.depth - middle))
  if (!nearest) return { taper }
  const share = (nearest.depth - first.depth) / (last.depth - first.depth)
  return { taper, barrel: nearest.mean - (first.mean + share * (last.mean - first.mean)) }
}
