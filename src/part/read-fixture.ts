import type { Fixture } from '../shop/shop.ts'
import { present } from './open-document.ts'
import { isWritten, readQuantity } from './quantity.ts'
import type { View } from './view.ts'

/** The fixture's own values, and the given ones where it has none. */
export function readFixture(root: View, built: Fixture): Fixture {
  const view = root.into('fixture')
  if (!view) return built
  const head = view.text('head-faces')
  const rotary = view.text('positive-rotary')
  const tilt = view.text('positive-tilt')
  return {
    headFaces: head === '+X' || head === '-X' ? head : built.headFaces,
    faceDistance: view.quantity('face-distance', 'length', { from: -5000, upTo: 5000 }) ?? built.faceDistance,
    pivotHeight: view.quantity('pivot-height', 'length', { from: -5000, upTo: 5000 }) ?? built.pivotHeight,
    positiveRotary: rotary === 'Y to Z' || rotary === 'Z to Y' ? rotary : built.positiveRotary,
    positiveTilt: tilt === 'Z to X' || tilt === 'X to Z' ? tilt : built.positiveTilt,
    rotaryLimits: limits(view, 'rotary-limits', 3600) ?? built.rotaryLimits,
    tiltLimits: limits(view, 'tilt-limits', 180) ?? built.tiltLimits,
    sineBar: view.quantity('sine-bar', 'length', SIZE) ?? built.sineBar,
    ball: view.quantity('ball', 'length', { over: 0, upTo: 50 }) ?? built.ball,
    holder: readHolder(view.into('holder'), built.holder),
    chuck: readChuck(view.into('chuck'), built.chuck),
    ...present({
      rotary: readRotary(view.into('rotary')),
      plate: readPlate(view.into('plate')),
      head: readHead(view.into('head')),
    }),
  }
}

const SIZE = { over: 0, upTo: 1000 }
const PLACE = { from: -5000, upTo: 5000 }
/** As thick as nothing that is screwed down is thinner: common practice, no source. */
const PLATE_THICKNESS = 20

function readRotary(view: View | undefined): Fixture['rotary'] {
  const diameter = view?.quantity('diameter', 'length', SIZE)
  const length = view?.quantity('length', 'length', SIZE)
  return diameter === undefined || length === undefined ? undefined : { diameter, length }
}

function readPlate(view: View | undefined): Fixture['plate'] {
  if (!view) return undefined
  const [from, to, top] = (['from', 'to', 'top'] as const).map(key => view.quantity(key, 'length', PLACE))
  const width = view.quantity('width', 'length', SIZE)
  const thickness = view.quantity('thickness', 'length', SIZE) ?? PLATE_THICKNESS
  if (from === undefined || to === undefined || top === undefined || width === undefined) return undefined
  if (from < to) return { from, to, width, top, thickness }
  const message = `the plate goes from ${from} to ${to}: from must be the less`
  view.report(
    { code: 'input/out-of-range', message, hint: 'X of both its ends from the pivot, the chuck end first' },
    'to',
  )
  return undefined
}

function readHead(view: View | undefined): Fixture['head'] {
  const diameter = view?.quantity('diameter', 'length', SIZE)
  const spindleLength = view?.quantity('spindle-length', 'length', { from: 0, upTo: 1000 })
  if (diameter === undefined || spindleLength === undefined) return undefined
  return { diameter, spindleLength, ...present({ fullyUp: view?.quantity('fully-up', 'length', PLACE) }) }
}

function readHolder(view: View | undefined, built: Fixture['holder']): Fixture['holder'] {
  if (!view) return built
  return {
    diameter: view.quantity('diameter', 'length', SIZE) ?? built.diameter,
    length: view.quantity('length', 'length', SIZE) ?? built.length,
    spindleDiameter: view.quantity('spindle-diameter', 'length', SIZE) ?? built.spindleDiameter,
  }
}

function readChuck(view: View | undefined, built: Fixture['chuck']): Fixture['chuck'] {
  if (!view) return built
  const faceDistance = view.quantity('face-distance', 'length', { from: -5000, upTo: 5000 })
  const kind = view.text('kind')
  return {
    diameter: view.quantity('diameter', 'length', SIZE) ?? built.diameter,
    length: view.quantity('length', 'length', SIZE) ?? built.length,
    ...present({
      kind: kind === 'jaws' || kind === 'collet' ? kind : undefined,
      faceDistance,
      force: view.quantity('force', 'force', { over: 0, upTo: 1e6 }),
    }),
  }
}

/** Least and most, in that order. */
function limits(view: View, key: string, furthest: number): readonly [number, number] | undefined {
  const list = view.raw(key)
  if (!Array.isArray(list)) return undefined
  const ends = list.filter(isWritten).map(entry => readQuantity(entry, 'angle', key))
  const [least, most] = ends.map(end => ('value' in end ? end.value : undefined))
  const fault = ends.find(end => 'fault' in end)
  if (fault && 'fault' in fault) view.report(fault.fault, key)
  if (least === undefined || most === undefined) return undefined
  if (least < most && least >= -furthest && most <= furthest) return [least, most]
  const message = `${key} must rise and stay within ±${furthest}°, got ${least} to ${most}`
  view.report({ code: 'input/out-of-range', message, hint: 'the least first' }, key)
  return undefined
}
