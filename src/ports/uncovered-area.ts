import type { Degree, Millimetre, SquareMillimetre } from '../units.ts'
import type { Contour } from './contour.ts'
import { type CutFrame, heightOn } from './cut-frame.ts'

/** Flow area of a port above a height of the crown's edge above the finished top face. */
export type Uncovered = (crown: Millimetre) => SquareMillimetre

/** Parts of each piece: many, since the crown's edge makes a bend where it crosses a corner. */
const PARTS = 40
/** Two-point Gauss-Legendre quadrature in each. */
const POINTS = [0.5 - Math.sqrt(3) / 6, 0.5 + Math.sqrt(3) / 6]

/**
 * The area seen along the stream that lies above the crown's edge. At each l it reaches up to the roof from the floor or the
 * crown, so the area is the line integral round the contour of
 *
 *     −cos β · max(z, crown) dl
 *
 * Source: derived, Green's theorem.
 */
export function uncoveredArea(frame: CutFrame, radius: Millimetre, contours: readonly Contour[]): Uncovered {
  const strips: { readonly z: Millimetre; readonly width: Millimetre }[] = []
  for (const piece of contours.flat()) {
    for (let part = 0; part < PARTS; part++) {
      for (const at of POINTS) {
        const point = piece(part / PARTS + at / PARTS)
        const width = (-frame.cos * point.dl) / (2 * PARTS)
        if (width !== 0) strips.push({ z: heightOn(frame, radius, point), width })
      }
    }
  }
  strips.sort((a, b) => a.z - b.z)
  // Above the crown the strips count with their own height, below it with the crown's.
  const own: number[] = [0]
  const widths: number[] = [0]
  for (const [i, { z, width }] of strips.entries()) {
    own.push((own[i] ?? 0) + z * width)
    widths.push((widths[i] ?? 0) + width)
  }
  const all = own.at(-1) ?? 0
  return crown => {
    let [low, high] = [0, strips.length]
    while (low < high) {
      const middle = (low + high) >> 1
      if ((strips[middle]?.z ?? 0) < crown) low = middle + 1
      else high = middle
    }
    return all - (own[low] ?? 0) + crown * (widths[low] ?? 0)
  }
}

/** Panels of Simpson's rule over the open period; even. */
const PANELS = 240

/** Integral of the uncovered area over the crank angle, mm²·deg: Simpson's rule. */
export function angleArea(area: (angle: Degree) => SquareMillimetre, from: Degree, to: Degree): number {
  const step = (to - from) / PANELS
  let sum = 0
  for (let panel = 0; panel <= PANELS; panel++) {
    const weight = panel === 0 || panel === PANELS ? 1 : panel % 2 === 1 ? 4 : 2
    sum += weight * area(from + panel * step)
  }
  return (sum * step) / 3
}
