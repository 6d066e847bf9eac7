import { toleranceOf } from '../limits.ts'
import type { Part } from '../part/part.ts'
import type { AxialLocator } from './operation.ts'

/**
 * The top face is ground from the face whose distance to it the drawing holds closest, so that this distance is one
 * working dimension and its chain has a single term.
 */
export function axialLocator({ outside, length }: Pick<Part, 'outside' | 'length'>): AxialLocator {
  const shoulders = outside.flatMap((band, index) => {
    const below = outside[index + 1]
    return below && below.size.nominal < band.size.nominal ? [band] : []
  })
  const closest = shoulders.toSorted((a, b) => toleranceOf(a.to) - toleranceOf(b.to))[0]
  return closest && toleranceOf(closest.to) < toleranceOf(length)
    ? { face: 'shoulder', band: closest.name }
    : { face: 'bottom' }
}
