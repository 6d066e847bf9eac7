import { type Degree, type Millimetre, radians, wrapped } from '../../units.ts'
import type { EdgePoint } from '../port.ts'

/** An outline on a cylinder with the box round it. */
export type Boxed = { readonly outline: readonly EdgePoint[]; readonly box: Box }

type Box = { readonly middle: Degree; readonly half: Degree; readonly top: Millimetre; readonly bottom: Millimetre }

/**
 * Wall between two windows on a cylinder, developed: 0 where they run into each other. Side edges are axial, so the boxes
 * round the outlines tell the arc between them; where the boxes overlap the outlines themselves are measured.
 */
export function landBetween(a: Boxed, b: Boxed, radius: Millimetre): Millimetre {
  const [boxA, boxB] = [a.box, b.box]
  const arc = Math.abs(wrapped(boxA.middle - boxB.middle)) - boxA.half - boxB.half
  const across = Math.max(0, radius * radians(arc))
  const along = Math.max(0, boxA.top - boxB.bottom, boxB.top - boxA.bottom)
  return across > 0 || along > 0
    ? Math.hypot(across, along)
    : betweenOutlines(a.outline, b.outline, radius, boxA.middle)
}

export const boxed = (outline: readonly EdgePoint[]): Boxed => ({ outline, box: boxOf(outline) })

function boxOf(outline: readonly EdgePoint[]): Box {
  const start = outline[0]?.azimuth ?? 0
  const turns = outline.map(({ azimuth }) => wrapped(azimuth - start))
  const depths = outline.map(({ depth }) => depth)
  const [low, high] = [Math.min(...turns), Math.max(...turns)]
  return {
    middle: wrapped(start + (low + high) / 2),
    half: (high - low) / 2,
    top: Math.min(...depths),
    bottom: Math.max(...depths),
  }
}

type Flat = readonly [number, number]

function betweenOutlines(
  a: readonly EdgePoint[],
  b: readonly EdgePoint[],
  radius: Millimetre,
  about: Degree,
): Millimetre {
  const flat = ({ azimuth, depth }: EdgePoint): Flat => [radius * radians(wrapped(azimuth - about)), depth]
  const [flatA, flatB] = [a.map(flat), b.map(flat)]
  const overlaps = flatA.some(point => inside(point, flatB)) || flatB.some(point => inside(point, flatA))
  if (overlaps) return 0
  const leastFrom = ([x, y]: Flat): Millimetre => Math.min(...flatB.map(([x2, y2]) => Math.hypot(x - x2, y - y2)))
  return Math.min(...flatA.map(leastFrom))
}

/** Whether a ray from the point crosses the outline an odd number of times. */
function inside([x, y]: Flat, outline: readonly Flat[]): boolean {
  let odd = false
  for (const [i, [x1, y1]] of outline.entries()) {
    const [x2, y2] = outline[(i + 1) % outline.length] ?? [x1, y1]
    if (y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) odd = !odd
  }
  return odd
}
