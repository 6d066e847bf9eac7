import type { Millimetre } from '../units.ts'
import type { Contour } from './contour.ts'
import { type CutFrame, nearWall } from './cut-frame.ts'
import { greatest, least } from './extreme.ts'

/** A shoulder of the outside that stands higher than the port's own band: its corner faces the cutter. */
export type Shoulder = { readonly radius: Millimetre; readonly depth: Millimetre; readonly side: 'above' | 'below' }

/**
 * Room square to the cutter between a shank of a radius, at the window's edge, and a shoulder beside the port: negative where
 * the shank strikes it on the way down. `shankEnd` is how far the shank's end goes along the stream; a shank that stays
 * outside the shoulder counts as no thicker than the cutter.
 */
export function shoulderRoom({
  frame,
  contour,
  shoulder,
  cutter,
  shank,
  shankEnd,
}: {
  readonly frame: CutFrame
  readonly contour: Contour
  readonly shoulder: Shoulder
  readonly cutter: Millimetre
  readonly shank: Millimetre
  readonly shankEnd: Millimetre
}): Millimetre {
  const crown = -frame.sin * shoulder.depth - frame.cos * shoulder.radius
  const overhang = shankEnd > crown ? Math.max(0, (shank - cutter) / 2) : 0
  const [right, left] = [greatest(contour, ({ l }) => l, 0).value, least(contour, ({ l }) => l, 0).value]
  const corner = (l: Millimetre): Millimetre => frame.sin * nearWall(shoulder.radius, l) - frame.cos * shoulder.depth
  const places = [left, right, ...(left < 0 && right > 0 ? [0] : [])].map(corner)
  return shoulder.side === 'above'
    ? Math.min(...places) - greatest(contour, ({ b }) => b, 0).value - overhang
    : least(contour, ({ b }) => b, 0).value - Math.max(...places) - overhang
}
