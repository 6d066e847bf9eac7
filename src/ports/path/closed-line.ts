import type { Millimetre } from '../../units.ts'

export type Flat = { readonly x: Millimetre; readonly y: Millimetre }

/** A closed line, counter-clockwise, its first point not repeated. */
export type Loop = readonly Flat[]

/** Widest gap between a rounded offset and its chords. */
export const ARC_TOLERANCE: Millimetre = 0.001

/** Plainly: lengths of a window neither overflow nor vanish, and a general routine takes several times as long. */
export function apart(a: Flat, b: Flat): Millimetre {
  const [x, y] = [a.x - b.x, a.y - b.y]
  return Math.sqrt(x * x + y * y)
}

/** From a place to the nearest of a closed line's stretches. */
export function distanceTo(outline: Loop, at: Flat): Millimetre {
  let nearest = Number.POSITIVE_INFINITY
  let from = outline.at(-1)
  for (const to of outline) {
    if (from) nearest = Math.min(nearest, squareToStretch(at, from, to))
    from = to
  }
  return Math.sqrt(nearest)
}

/**
 * Whether a place is farther than a distance from every closed line: the first stretch that is not tells. Places are asked in the
 * order of a way, so the stretch that told of the last is asked first.
 */
export function farFrom(loops: readonly Loop[], distance: Millimetre): (at: Flat) => boolean {
  const square = distance * distance
  const stretches = loops.flatMap(loop => loop.map((to, i) => ({ from: loop.at(i - 1) ?? to, to })))
  let told = 0
  return at => {
    for (let i = 0; i < stretches.length; i++) {
      const index = (told + i) % stretches.length
      const stretch = stretches[index]
      if (stretch && squareToStretch(at, stretch.from, stretch.to) <= square) {
        told = index
        return false
      }
    }
    return true
  }
}

function squareToStretch(at: Flat, from: Flat, to: Flat): number {
  const dx = to.x - from.x
  const dy = to.y - from.y
  const square = dx * dx + dy * dy
  const along = square === 0 ? 0 : ((at.x - from.x) * dx + (at.y - from.y) * dy) / square
  const t = Math.min(1, Math.max(0, along))
  const x = at.x - from.x - t * dx
  const y = at.y - from.y - t * dy
  return x * x + y * y
}
