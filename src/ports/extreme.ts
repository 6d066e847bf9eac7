import type { Contour, Jet, Piece } from './contour.ts'

export type Extreme = { readonly value: number; readonly point: Jet }

const SAMPLES = 16

/** A contour whose pieces keep the points at the steps that every search walks. */
export const stepped = (contour: Contour): Contour =>
  contour.map(piece => {
    const known: Jet[] = []
    return parameter => {
      const step = parameter * SAMPLES
      if (!Number.isInteger(step)) return piece(parameter)
      const point = known[step] ?? piece(parameter)
      known[step] = point
      return point
    }
  })
/** Values nearer than this are one flat stretch, of which the point nearest the middle is taken. */
const FLAT = 1e-10

/**
 * Where a function of the points of a contour is greatest. Each piece is walked in steps and the neighbourhood of the best
 * step is narrowed by the golden section, so the function may have one greatest value between two neighbouring steps.
 */
export function greatest(contour: Contour, of: (point: Jet) => number, middle: number): Extreme {
  let best: Extreme | undefined
  const found: Found[] = []
  for (const piece of contour) {
    let bestOfPiece: Found | undefined
    for (let step = 0; step <= SAMPLES; step++) {
      const point = piece(step / SAMPLES)
      const value = of(point)
      const better =
        best === undefined ||
        value > best.value + FLAT ||
        (value > best.value - FLAT && Math.abs(point.l - middle) < Math.abs(best.point.l - middle))
      if (better) best = { value, point }
      if (bestOfPiece === undefined || value > bestOfPiece.value) bestOfPiece = { value, point, piece, step }
    }
    if (bestOfPiece) found.push(bestOfPiece)
  }
  if (best === undefined) throw new RangeError('a contour has at least one piece')
  // Where two pieces meet both have the best step, and the peak may lie on either.
  for (const candidate of found) {
    if (candidate.value < best.value - FLAT) continue
    const narrowed = narrow(candidate, of)
    if (narrowed.value > best.value + FLAT) best = narrowed
  }
  return best
}

/** Where it is least. */
export function least(contour: Contour, of: (point: Jet) => number, middle: number): Extreme {
  const { value, point } = greatest(contour, at => -of(at), middle)
  return { value: -value, point }
}

type Found = Extreme & { readonly piece: Piece; readonly step: number }

const GOLDEN = (Math.sqrt(5) - 1) / 2

/** After this many turns the place is known to 1e-7 of the piece, and the value, flat there, far better. */
const TURNS = 30

function narrow({ piece, step }: Found, of: (point: Jet) => number): Extreme {
  const at = (place: number): number => of(piece(place))
  let low = Math.max(0, step - 1) / SAMPLES
  let high = Math.min(SAMPLES, step + 1) / SAMPLES
  let left = high - GOLDEN * (high - low)
  let right = low + GOLDEN * (high - low)
  let atLeft = at(left)
  let atRight = at(right)
  for (let turn = 0; turn < TURNS; turn++) {
    if (atLeft > atRight) {
      high = right
      right = left
      atRight = atLeft
      left = high - GOLDEN * (high - low)
      atLeft = at(left)
    } else {
      low = left
      left = right
      atLeft = atRight
      right = low + GOLDEN * (high - low)
      atRight = at(right)
    }
  }
  const point = piece((low + high) / 2)
  return { value: of(point), point }
}
