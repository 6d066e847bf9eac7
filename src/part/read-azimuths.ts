import { type Degree, wrapped } from '../units.ts'
import type { View } from './view.ts'

/** `at`, its mirror image with `mirror: true`, or `count` of them evenly round. */
export function azimuthsOf(view: View): readonly Degree[] {
  const at = view.quantity('at', 'angle', { from: -360, upTo: 360 }) ?? 0
  const count = view.count('count') ?? 1
  if (count > 1) return Array.from({ length: count }, (_, turn) => wrapped(at + (360 * turn) / count))
  const own = wrapped(at)
  return view.flag('mirror') && own !== 0 && own !== 180 ? [own, wrapped(-at)] : [own]
}
