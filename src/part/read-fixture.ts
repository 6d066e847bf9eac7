import type { Fixture } from '../shop/shop.ts'
import { readQuantity } from './quantity.ts'
import type { View } from './view.ts'

/** The fixture's own values, and the given ones where it has none. */
export function readFixture(root: View, built: Fixture): Fixture {
  const view = root.into('fixture')
  if (!view) return built
  const head = view.text('head-faces')
  const rotary = view.text('positive-rotary')
  return {
    headFaces: head === '+X' || head === '-X' ? head : built.headFaces,
    faceDistance: view.quantity('face-distance', 'length', { from: -5000, upTo: 5000 }) ?? built.faceDistance,
    pivotHeight: view.quantity('pivot-height', 'length', { from: -5000, upTo: 5000 }) ?? built.pivotHeight,
    positiveRotary: rotary === 'Y to Z' || rotary === 'Z to Y' ? rotary : built.positiveRotary,
    rotaryLimits: limits(view, 'rotary-limits', 3600) ?? built.rotaryLimits,
    tiltLimits: limits(view, 'tilt-limits', 180) ?? built.tiltLimits,
  }
}

/** Least and most, in that order. */
function limits(view: View, key: string, furthest: number): readonly [number, number] | undefined {
  const list = view.raw(key)
  if (!Array.isArray(list)) return undefined
  const ends = list.map(entry => readQuantity(entry, 'angle', key))
  const [least, most] = ends.map(end => ('value' in end ? end.value : undefined))
  const fault = ends.find(end => 'fault' in end)
  if (fault && 'fault' in fault) view.report(fault.fault, key)
  if (least === undefined || most === undefined) return undefined
  if (least < most && least >= -furthest && most <= furthest) return [least, most]
  const message = `${key} must rise and stay within ±${furthest}°, got ${least} to ${most}`
  view.report({ code: 'input/out-of-range', message, hint: 'the least first' }, key)
  return undefined
}
