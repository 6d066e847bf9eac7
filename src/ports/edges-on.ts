import type { Millimetre } from '../units.ts'
import type { Contour, Jet } from './contour.ts'
import { azimuthOn, type CutFrame, heightOn } from './cut-frame.ts'
import { type Extreme, greatest, least } from './extreme.ts'
import type { Edges } from './port.ts'

/** The highest and the lowest point of a contour on a cylinder. A level edge gives the point nearest l = `middle`. */
export function extremesOn(
  frame: CutFrame,
  contour: Contour,
  radius: Millimetre,
  middle: Millimetre,
): { readonly highest: Extreme; readonly lowest: Extreme } {
  const height = (point: Jet): number => heightOn(frame, radius, point)
  return { highest: greatest(contour, height, middle), lowest: least(contour, height, middle) }
}

/** Their depths below a top face that stands `above` the finished one, and their azimuths. */
export function edgesOn({
  frame,
  contour,
  radius,
  middle,
  above,
}: {
  readonly frame: CutFrame
  readonly contour: Contour
  readonly radius: Millimetre
  readonly middle: Millimetre
  readonly above: Millimetre
}): Edges & { readonly highestAt: number; readonly lowestAt: number } {
  const { highest, lowest } = extremesOn(frame, contour, radius, middle)
  return {
    highest: above - highest.value,
    lowest: above - lowest.value,
    highestAt: azimuthOn(frame, radius, highest.point.l),
    lowestAt: azimuthOn(frame, radius, lowest.point.l),
  }
}
