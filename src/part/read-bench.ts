import { byPlace, type Finding, hasErrors, type Place } from '../finding.ts'
import { type Degree, type Millimetre, wrapped } from '../units.ts'
import { readHardness } from './hardness.ts'
import { openDocument, present } from './open-document.ts'
import { validateBench } from './validators.ts'
import type { View } from './view.ts'
import { openYaml } from './yaml-source.ts'

export type BenchPort = {
  readonly name: string
  readonly top?: Millimetre
  readonly bottom?: Millimetre
  readonly arc?: Degree
  readonly width?: Millimetre
  readonly at?: Degree
  readonly corner?: Millimetre
  /** Bars left down the middle, one or two. */
  readonly bridge?: readonly Millimetre[]
  readonly up?: Degree
  readonly back?: Degree
  readonly place: Place
}

/** A liner as it was measured on the bench. */
export type Bench = {
  readonly part?: string
  readonly piece?: string
  readonly date?: string
  readonly bore?: Millimetre
  readonly crownBelowTop?: Millimetre
  readonly length?: Millimetre
  /** Bands from the top face down; the last ends at the length. */
  readonly outside?: readonly { readonly size: Millimetre; readonly to?: Millimetre; readonly name?: string }[]
  readonly grade?: string
  /** Of the core, HV. */
  readonly hardness?: number
  readonly engine?: { readonly stroke: Millimetre; readonly rod: Millimetre; readonly pinOffset: Millimetre }
  readonly ports: readonly BenchPort[]
}

const DEPTH = { from: 0, upTo: 1000 }
const LENGTH = { over: 0, upTo: 1000 }
const TURNED = { over: -80, under: 80 }

/** Reads a bench file. `file` is what findings call it. */
export function readBench(
  text: string,
  file: string,
): { readonly bench?: Bench; readonly findings: readonly Finding[] } {
  const { source, findings } = openYaml(text, file)
  if (!source) return { findings }
  const { root, findings: found } = openDocument(source, validateBench)
  const head = root.into('bench')
  const ports = root.each('ports').flatMap(view => {
    const place = source.places.get(view.path) ?? { file, line: 1, column: 1 }
    const name = view.text('name')
    const sides = sidesOf(view)
    const measured = {
      top: view.quantity('top', 'length', DEPTH),
      bottom: view.quantity('bottom', 'length', DEPTH),
      arc: sides?.arc ?? view.quantity('arc', 'angle', { over: 0, under: 180 }),
      width: view.quantity('width', 'length', LENGTH),
      at: sides?.at ?? azimuthOf(view, 'at'),
      corner: view.quantity('corner', 'length', LENGTH),
      bridge: barsOf(view),
      up: view.quantity('up', 'angle', TURNED),
      back: view.quantity('back', 'angle', TURNED),
    }
    return name === undefined ? [] : [{ name, place, ...present(measured) }]
  })
  const bench = {
    ports,
    ...present({
      part: head?.label('part'),
      piece: head?.label('piece'),
      date: head?.text('date'),
      bore: root.quantity('bore', 'length', LENGTH),
      crownBelowTop: root.quantity('crown-below-top', 'length', { from: -100, upTo: 1000 }),
      length: root.quantity('length', 'length', LENGTH),
      outside: outsideOf(root),
      grade: root.text('grade'),
      hardness: readHardness(root, 'hardness')?.HV,
      engine: engineOf(root.into('engine')),
    }),
  }
  const sorted = byPlace(found)
  return hasErrors(sorted) ? { findings: sorted } : { bench, findings: sorted }
}

function barsOf(view: View): readonly Millimetre[] | undefined {
  const listed = view.quantities('bridge', 'length', LENGTH)
  if (listed.length > 0) return listed
  const one = view.quantity('bridge', 'length', LENGTH)
  return one === undefined ? undefined : [one]
}

function outsideOf(root: View): Bench['outside'] {
  const bands = root.each('outside').flatMap(view => {
    const size = view.quantity('size', 'length', LENGTH)
    const to = view.quantity('to', 'length', LENGTH)
    return size === undefined || to === undefined ? [] : [{ size, to, ...present({ name: view.text('name') }) }]
  })
  if (bands.length > 0) return bands
  const size = root.quantity('outside', 'length', LENGTH)
  return size === undefined ? undefined : [{ size }]
}

function engineOf(view: View | undefined): Bench['engine'] {
  const stroke = view?.quantity('stroke', 'length', LENGTH)
  const rod = view?.quantity('rod', 'length', LENGTH)
  if (stroke === undefined || rod === undefined) return undefined
  return { stroke, rod, pinOffset: view?.quantity('pin-offset', 'length', { from: -1000, upTo: 1000 }) ?? 0 }
}

/** Middle and arc of a port from its two side edges. */
function sidesOf(view: View): { readonly at: Degree; readonly arc: Degree } | undefined {
  const [from, to] = [azimuthOf(view, 'from'), azimuthOf(view, 'to')]
  for (const [one, other] of [
    ['from', 'to'],
    ['to', 'from'],
  ] as const)
    if (view.has(one) && !view.has(other))
      view.report(
        { code: 'input/choose-one', message: `${one} without ${other}`, hint: `add ${other}, or give at and arc` },
        one,
      )
  for (const key of ['at', 'arc', 'width'])
    if (view.has(key) && view.has('from'))
      view.report(
        { code: 'input/choose-one', message: `both ${key} and from`, hint: `delete ${key}, or from and to` },
        key,
      )
  if (from === undefined || to === undefined) return undefined
  const across = wrapped(to - from)
  if (across === 0 || across === 180) {
    view.report({ code: 'input/port', message: 'the side edges are at one place, or half a turn apart' }, 'to')
    return undefined
  }
  return { at: wrapped(from + across / 2), arc: Math.abs(across) }
}

/** Degrees, counter-clockwise seen from the head; or hours and minutes of a clock seen from there, 12 at azimuth 0. */
function azimuthOf(view: View, key: string): Degree | undefined {
  const raw = view.raw(key)
  const clock = typeof raw === 'string' ? /^(\d{1,2}):(\d{2})$/.exec(raw.trim()) : null
  if (!clock) {
    const degrees = view.quantity(key, 'angle', { from: -360, upTo: 360 })
    return degrees === undefined ? undefined : wrapped(degrees)
  }
  const [hours, minutes] = clock.slice(1).map(Number)
  if (hours === undefined || minutes === undefined || hours > 12 || minutes > 59) {
    view.report(
      { code: 'input/out-of-range', message: `${key} ${raw} is on no clock`, hint: 'from 0:00 to 12:59' },
      key,
    )
    return undefined
  }
  return wrapped(0 - 30 * (hours + minutes / 60))
}
