import type { Engine } from './part.ts'
import type { View } from './view.ts'

const LENGTH = { over: 0, upTo: 2000 }

export function readEngine(engine: View): Engine | undefined {
  const stroke = engine.quantity('stroke', 'length', LENGTH)
  const rod = engine.quantity('rod', 'length', LENGTH)
  const pinOffset = engine.quantity('pin-offset', 'length', { from: -1000, upTo: 1000 }) ?? 0
  const crownBelowTop = engine.quantity('crown-below-top', 'length', { from: -1000, upTo: 1000 }) ?? 0
  const speed = engine.quantity('speed', 'speed', { over: 0, upTo: 50_000 })
  if (stroke === undefined || rod === undefined) return undefined
  if (rod <= stroke / 2 + Math.abs(pinOffset)) {
    const crank = stroke / 2
    const message = `the crank cannot turn: rod ${rod} mm must be longer than crank ${crank} mm plus offset ${Math.abs(pinOffset)} mm`
    engine.report({ code: 'input/linkage', message, hint: 'rod is measured from centre to centre' }, 'rod')
  }
  return { stroke, rod, pinOffset, crownBelowTop, ...(speed !== undefined && { speed }) }
}
