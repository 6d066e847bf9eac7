import type { Process } from '../process.ts'
import type { Gauge, GaugeKind, Machine } from '../shop/shop.ts'
import { present } from './open-document.ts'
import type { View } from './view.ts'

/** No machine of a works has less, kW: common practice, no source. */
const POWER = { from: 0.1, upTo: 1000 }
const TIME = { from: 0, upTo: 10_000 }
const QUEUE = { from: 0, upTo: 250 }
/** A works that says nothing of its set-ups: common practice, no source. */
const SETUP = 30
const HANDLING = 2

export function readMachines(root: View): readonly Machine[] {
  const machines = root.each('machines').flatMap(view => {
    const workCentre = view.text('work-centre')
    const name = view.text('name')
    const options = present({
      speedLimit: view.quantity('speed-limit', 'speed', { over: 0, upTo: 500_000 }),
      chuckLimit: view.quantity('chuck-limit', 'speed', { over: 0, upTo: 500_000 }),
      power: view.quantity('power', 'power', POWER),
      queue: view.quantity('queue', 'days', QUEUE),
    })
    const setup = view.quantity('setup', 'minutes', TIME) ?? SETUP
    const handling = view.quantity('handling', 'minutes', TIME) ?? HANDLING
    if (workCentre === undefined || name === undefined) return []
    return [{ workCentre, name, processes: processesOf(view), setup, handling, ...options }]
  })
  noneTwice(root.each('machines'), 'work-centre')
  return machines
}

export function readGauges(root: View): readonly Gauge[] {
  const gauges = root.each('gauges').flatMap(view => {
    const name = view.text('name')
    const kind = view.text('kind') as GaugeKind | undefined
    const [from, to, resolution, uncertainty] = ['from', 'to', 'resolution', 'uncertainty'].map(key => {
      const value = view.raw(key)
      return typeof value === 'number' ? value : undefined
    })
    if (name === undefined || kind === undefined || from === undefined || to === undefined) return []
    if (resolution === undefined || uncertainty === undefined) return []
    if (from >= to) {
      view.report(
        { code: 'input/out-of-range', message: `${name} measures from ${from} to ${to}: from must be the less` },
        'to',
      )
    }
    return [{ name, kind, from, to, resolution, uncertainty }]
  })
  noneTwice(root.each('gauges'), 'name')
  return gauges
}

/** The schema knows the processes, so what passed it is one. */
export const processesOf = (view: View): readonly Process[] => view.texts('processes') as readonly Process[]

/** Entries of a list go by their names. */
export function noneTwice(views: readonly View[], key: string): void {
  const seen = new Set<string>()
  for (const view of views) {
    const name = view.text(key)
    if (name === undefined) continue
    if (seen.has(name)) {
      view.report(
        { code: 'input/name-twice', message: `"${name}" is in the list twice`, hint: 'give each its own name' },
        key,
      )
    }
    seen.add(name)
  }
}
