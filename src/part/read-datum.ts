import type { Datum } from './part.ts'
import type { View } from './view.ts'

const KINDS: readonly Datum['kind'][] = ['flat', 'notch', 'dowel hole']

/** What brings azimuth 0 back after the part has left the machine. */
export function readDatum(view: View): Datum | undefined {
  const kind = KINDS.find(known => known === view.text('kind'))
  const on = view.text('on')
  const depth = view.quantity('depth', 'length', { over: 0, upTo: 50 })
  const at = view.quantity('at', 'angle', { from: -360, upTo: 360 }) ?? 0
  if (!kind || on === undefined || depth === undefined) return undefined
  return { kind, on, at, depth, path: view.path }
}
