import { wrapped } from '../units.ts'
import { present } from './open-document.ts'
import type { Engine, Rings } from './part.ts'
import { isWritten, readQuantity } from './quantity.ts'
import type { View } from './view.ts'

const LENGTH = { over: 0, upTo: 2000 }
/** No engine turns slower: common practice, no source. */
const SPEED = { from: 10, upTo: 50_000 }

export function readEngine(engine: View): Engine | undefined {
  const stroke = engine.quantity('stroke', 'length', LENGTH)
  const rod = engine.quantity('rod', 'length', LENGTH)
  const pinOffset = engine.quantity('pin-offset', 'length', { from: -1000, upTo: 1000 }) ?? 0
  const crownBelowTop = engine.quantity('crown-below-top', 'length', { from: -1000, upTo: 1000 }) ?? 0
  const speed = engine.quantity('speed', 'speed', SPEED)
  const headVolume = engine.quantity('head-volume', 'volume', { over: 0, upTo: 100_000 })
  const skirt = engine.quantity('skirt', 'length', LENGTH)
  const rings = readRings(engine)
  if (stroke === undefined || rod === undefined) return undefined
  if (rod <= stroke / 2 + Math.abs(pinOffset)) {
    const crank = stroke / 2
    const message = `the crank cannot turn: rod ${rod} mm must be longer than crank ${crank} mm plus offset ${Math.abs(pinOffset)} mm`
    engine.report({ code: 'input/linkage', message, hint: 'rod is measured from centre to centre' }, 'rod')
  }
  return { stroke, rod, pinOffset, crownBelowTop, ...present({ speed, headVolume, skirt, rings }) }
}

function readRings(engine: View): Engine['rings'] {
  const view = engine.into('rings')
  if (!view) {
    const word = engine.text('rings')
    if (word === undefined || word === 'none') return word
    const hint = 'rings: none, or rings: {from: 2.5, to: 8, pegs: [150]}'
    engine.report({ code: 'input/unreadable', message: `rings cannot be read: "${word}"`, hint }, 'rings')
    return undefined
  }
  const from = view.quantity('from', 'length', { from: 0, upTo: 1000 })
  const to = view.quantity('to', 'length', LENGTH)
  if (from !== undefined && to !== undefined && to <= from) {
    const message = `the rings end at ${to} mm, above their beginning at ${from} mm`
    view.report({ code: 'input/out-of-range', message, hint: 'both count down from the crown’s edge' }, 'to')
  }
  return { ...present({ from, to }), pegs: readPegs(view) }
}

function readPegs(view: View): Rings['pegs'] {
  const list = view.raw('pegs')
  if (!Array.isArray(list)) return []
  return list.flatMap(entry => {
    if (!isWritten(entry)) return []
    const read = readQuantity(entry, 'angle', 'a peg')
    if ('value' in read) return [wrapped(read.value)]
    view.report(read.fault, 'pegs')
    return []
  })
}
