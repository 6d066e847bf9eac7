import { type DrawnSize, middleOf } from '../limits.ts'
import { wrapped } from '../units.ts'
import { readSize } from './drawn-size.ts'
import { present } from './open-document.ts'
import { barsOf, type Corner, type DrawnPort, type GeneralTolerance, type Port, type PortRole } from './part.ts'
import { PORT_ROLES, roleNamed } from './port-role.ts'
import { plainSigns, rangeFault, readQuantity, tidy } from './quantity.ts'
import type { View } from './view.ts'

export type PortContext = { readonly general: GeneralTolerance; readonly hasEngine: boolean }

/** A mirrored port becomes two: the second is named `…, mirrored`, so that the first keeps the name it was given. */
export function readPorts(root: View, context: PortContext): readonly Port[] {
  return root.each('ports').flatMap(view => {
    const port = readPort(view, context)
    if (!port) return []
    if (!view.flag('mirror')) return [port]
    if (onAxis(port.at)) {
      const message = `${port.name} at ${port.at} is its own mirror image`
      view.report({ code: 'input/port', message, hint: 'delete mirror' }, 'mirror')
      return [port]
    }
    const name = `${port.name}, mirrored`
    return [
      { ...port, mirrorOf: name },
      { ...port, ...mirroredBars(port), name, at: -port.at, mirrorOf: port.name },
    ]
  })
}

const onAxis = (at: number): boolean => at === 0 || at === 180
const LENGTH = { over: 0, upTo: 1000 }
/** No end mill on sale is smaller than a tenth: common practice, no source. */
const CORNER = { from: 0.05, upTo: 1000 }
const TURNED = { over: -80, under: 80 }

function readPort(view: View, { general, hasEngine }: PortContext): Port | undefined {
  const name = view.text('name')
  const at = view.quantity('at', 'angle', { from: -360, upTo: 360 })
  const opening = readOpening(view)
  const duration = view.quantity('duration', 'angle', { over: 0, under: 360 })
  const arc = view.quantity('arc', 'angle', { over: 0, under: 180 })
  const up = view.quantity('up', 'angle', TURNED) ?? 0
  const back = view.quantity('back', 'angle', TURNED) ?? 0
  const bridge = readBridge(view)
  const corner = readCorner(view)
  const lengths = readLengths(view, general)
  const { top, height, bottom, width } = lengths.nominal

  for (const [one, other] of CHOICES) chooseOne(view, one, other)
  if (!view.has('corner') && !view.misspelt) {
    const message = `${name ?? 'a port'} has no corner: a cutter leaves none sharp`
    view.report({ code: 'input/missing-key', message, hint: 'corner: 2, or corner: {cut: 1.5}' })
  }
  const timed = ['opens', 'duration'].find(key => view.has(key))
  if (timed !== undefined && !hasEngine) {
    const message = `${name ?? 'a port'} opens at a crank angle, but the part has no engine`
    view.report(
      { code: 'input/needs-engine', message, hint: 'add engine: {stroke: …, rod: …}, or give top: in mm' },
      timed,
    )
  }
  if (name === undefined || at === undefined || corner === undefined) return undefined
  if (back !== 0 && onAxis(wrapped(at))) {
    const message = `${name} at ${at} has no side to be turned back to: back must be 0 there, got ${back}`
    view.report({ code: 'input/port', message, hint: 'delete back, or move the port off the axis' }, 'back')
  }
  const bars = barsOf({ ...(bridge !== undefined && { bridge }) })
  const barred = bars.reduce((sum, bar) => sum + bar, 0)
  if (bars.length > 0 && width !== undefined && barred >= width) {
    const message = `the bridge of ${name}, ${tidy(barred)} mm, takes the whole width of ${width} mm`
    view.report(
      { code: 'input/port', message, hint: 'the width goes from side edge to side edge, bridge and all' },
      'bridge',
    )
  }
  if (top !== undefined && bottom !== undefined && bottom <= top) {
    const message = `${name} ends at ${bottom} mm, above its top edge at ${top} mm`
    view.report({ code: 'input/port', message, hint: 'depths count down from the top face' }, 'bottom')
  }
  const window = width === undefined ? undefined : (width - barred) / (bars.length + 1)
  const room = Math.min(height ?? Number.POSITIVE_INFINITY, window ?? Number.POSITIVE_INFINITY)
  if (room > 0 && 2 * corner.radius > room) {
    const message = `two corners of ${corner.radius} mm do not fit into ${tidy(room)} mm of ${name}`
    view.report({ code: 'input/port', message, hint: `corner at most ${tidy(room / 2)}` }, 'corner')
  }
  return {
    name,
    role: readRole(view, name, hasEngine),
    at: wrapped(at),
    corner,
    up,
    back,
    cut: view.text('cut') === 'straight' ? 'straight' : 'level',
    path: view.path,
    ...present({
      opens: opening?.nominal,
      duration,
      top,
      height,
      bottom,
      width,
      arc,
      bridge,
      drawn: opening?.drawn ? { ...lengths.drawn, opens: opening.drawn } : lengths.drawn,
    }),
  }
}

const CHOICES = [
  ['opens', 'top'],
  ['height', 'bottom'],
  ['width', 'arc'],
] as const

function chooseOne(view: View, one: string, other: string): void {
  const name = view.text('name') ?? 'the port'
  if (view.has(one) && view.has(other)) {
    const message = `${name} gives both ${one} and ${other}`
    view.report({ code: 'input/choose-one', message, hint: `delete ${one} or ${other}` }, other)
  }
  if (!view.has(one) && !view.has(other) && !view.misspelt) {
    const message = `${name} gives neither ${one} nor ${other}`
    view.report({ code: 'input/choose-one', message, hint: `add ${one} or ${other}` })
  }
}

/** An angle and its tolerance: `106 ±0.25`, or its two deviations as on a drawing, `106 +0.5/0`. */
const EVEN = /^([^±]+)±(.+)$/
const UNEVEN = /^(.*[\d°g])\s*([+-]\s*[\d.]+)\s*[/\s]\s*([+-]?\s*[\d.]+)$/

/** Crank degrees, bare or with a tolerance of their own; the middle of their limits is aimed at. */
function readOpening(
  view: View,
): { readonly nominal: number; readonly drawn?: NonNullable<DrawnPort['opens']> } | undefined {
  const written = view.raw('opens')
  const signs = typeof written === 'string' ? plainSigns(written) : ''
  const [, first, half] = EVEN.exec(signs) ?? []
  const [, angle, ...deviations] = UNEVEN.exec(signs) ?? []
  const texts = half === undefined ? deviations : [half, half]
  const nominalText = first ?? angle
  if (typeof written !== 'string' || nominalText === undefined) {
    const nominal = view.quantity('opens', 'angle', OPENING)
    return nominal === undefined ? undefined : { nominal }
  }
  const read = [nominalText, ...texts.map(text => text.replace(/[+\s]/g, ''))].map(text =>
    readQuantity(text.trim(), 'angle', 'opens'),
  )
  const [nominal, one, other] = read.map(value => ('value' in value ? value.value : Number.NaN))
  const fault =
    read.flatMap(value => ('fault' in value ? [value.fault] : []))[0] ??
    rangeFault(nominal ?? Number.NaN, OPENING, 'angle', 'opens') ??
    rangeFault(
      Math.max(...[one, other].map(by => Math.abs(by ?? 0))),
      { over: 0, upTo: 5 },
      'angle',
      'tolerance of opens',
    )
  if (fault || nominal === undefined || one === undefined || other === undefined) {
    if (fault) view.report(fault, 'opens')
    return undefined
  }
  const limits = (half === undefined ? [one, other] : [-one, one]).map(by => tidy(nominal + by))
  const drawn = { nominal, lower: Math.min(...limits), upper: Math.max(...limits), written }
  return { nominal: tidy(middleOf(drawn)), drawn }
}

const OPENING = { over: 0, under: 180 }

const LENGTHS = ['top', 'height', 'bottom', 'width'] as const

/** Bare lengths; one that has a tolerance of its own is kept as drawn besides, and the middle of its limits is aimed at. */
function readLengths(view: View, general: GeneralTolerance) {
  const drawn: Partial<Record<(typeof LENGTHS)[number], DrawnSize>> = {}
  const nominal: Partial<Record<(typeof LENGTHS)[number], number>> = {}
  for (const key of LENGTHS) {
    const written = view.raw(key)
    const size = typeof written === 'string' ? readSize(written, { name: key, of: 'length', general }) : undefined
    const toleranced = typeof written === 'string' && /±|\+|\d\s*\/|\s-/.test(written)
    if (size && 'value' in size && toleranced) {
      drawn[key] = size.value
      nominal[key] = tidy(middleOf(size.value))
    } else {
      const value = view.quantity(key, 'length', key === 'top' ? { from: 0, upTo: 1000 } : LENGTH)
      if (value !== undefined) nominal[key] = value
    }
  }
  const port: DrawnPort | undefined = Object.keys(drawn).length > 0 ? drawn : undefined
  return { nominal, drawn: port }
}

function readCorner(view: View): Corner | undefined {
  const inPlane = view.into('corner')
  const radius = inPlane ? inPlane.quantity('cut', 'length', CORNER) : view.quantity('corner', 'length', CORNER)
  return radius === undefined ? undefined : { on: inPlane ? 'cutter' : 'bore', radius }
}

/** One bar, or a list of one or two. */
function readBridge(view: View): Port['bridge'] {
  const [first, second, ...more] = view.quantities('bridge', 'length', LENGTH)
  if (more.length > 0) return undefined
  if (first !== undefined && second !== undefined) return [first, second]
  return first ?? view.quantity('bridge', 'length', LENGTH)
}

/** The bars of the mirror image stand the other way about. */
const mirroredBars = ({ bridge }: Port): Pick<Port, 'bridge'> =>
  typeof bridge === 'object' ? { bridge: [bridge[1], bridge[0]] } : {}

/** As written, else as the name says. An engine's port that neither tells is left out of all that is judged by role. */
function readRole(view: View, name: string, hasEngine: boolean): PortRole {
  const written = view.text('role')
  const role = PORT_ROLES.find(role => role === written) ?? roleNamed(name)
  if (role === undefined && hasEngine && written === undefined) {
    const message = `the name "${name}" does not say what flows through the port: blowdown, areas and streams leave it out`
    const known = PORT_ROLES.filter(role => role !== 'other').join(', ')
    view.report(
      { code: 'input/port-role', message, hint: `add role: one of ${known}; role: other if it is none of them` },
      'name',
      'warning',
    )
  }
  return role ?? 'other'
}
