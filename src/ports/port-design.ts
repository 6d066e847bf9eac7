import { fixed, inWords } from '../figures.ts'
import { LEAST_END_LAND, PROCESS_LIMITS_SOURCE } from '../handbook/process-limits.ts'
import { barsOf, type Part, type Port } from '../part/part.ts'
import { type Degree, degrees, type Millimetre, radians, wrapped } from '../units.ts'
import { type Contour, roundedRectangle } from './contour.ts'
import { type CutFrame, cutFrame, heightOn } from './cut-frame.ts'
import { greatest, least, stepped } from './extreme.ts'
import type { PortEdges, Resolved } from './port-edges.ts'
import type { PortFault } from './port-finding.ts'
import { type BoreWindow, filletsOverrun, levelContour, levelContourCutCorners } from './window-contour.ts'

/** One window in the cutter's plane. */
export type WindowDesign = BoreWindow & {
  /** Azimuth of its middle, and the same from the cutter's side. */
  readonly at: Degree
  readonly middle: Degree
  /** Height of its centre above the finished top face: half way between the edges at its middle azimuth. */
  readonly centreHeight: Millimetre
  readonly contour: Contour
  /** The same window with another corner radius. */
  readonly withCorner: (radius: Millimetre) => Contour
}

export type PortDesign = PortEdges & {
  readonly frame: CutFrame
  readonly heading: Degree
  readonly bottom: Millimetre
  readonly height: Millimetre
  readonly windows: readonly WindowDesign[]
}

/** Azimuth 0 and 180 lie on the plane of symmetry and have no side. */
export const sideOf = (at: Degree): -1 | 0 | 1 => (at === 180 || at === 0 ? 0 : at > 0 ? 1 : -1)

/** The port's windows on the finished bore, carried into the cutter's plane. */
export function designPort(part: Part, port: Port, edges: PortEdges): Resolved<PortDesign> {
  const { radius, arc } = edges
  const faults = directionFaults(port, edges)
  if (faults.length > 0) return { faults }
  const heading = sideOf(port.at) * port.back
  const frame = cutFrame(port.at, heading, port.up)
  const spans = spansOf({ port, radius, from: heading - arc / 2, to: heading + arc / 2, heading })
  const sized = port.cut === 'level' ? levelEdges(port, edges) : straightEdges(port, edges, frame, spans)
  if (!(sized.height > 0)) {
    const message = `the bottom edge, ${fixed(sized.bottom, 3)} mm, does not lie below the top edge, ${fixed(edges.top, 3)} mm`
    return { faults: [{ code: 'ports/edges-crossed', message, key: 'bottom' }] }
  }
  const { length } = part
  if (!(edges.top >= LEAST_END_LAND && sized.bottom <= length.nominal - LEAST_END_LAND)) {
    const message = `edges at ${fixed(edges.top, 3)} and ${fixed(sized.bottom, 3)} mm do not lie within the length of ${length.nominal} mm with ${LEAST_END_LAND} mm of land at either end (${PROCESS_LIMITS_SOURCE})`
    return { faults: [{ code: 'ports/beyond-part', message }] }
  }
  const room = cornerFault({ port, radius, spans, height: sized.height, frame })
  if (room) return { faults: [room] }
  const windows = spans.map(span => windowOf({ port, frame, radius, span, top: edges.top, sized }))
  if (port.cut === 'level' && port.corner.on === 'cutter' && windows.some(({ contour }) => filletsOverrun(contour))) {
    const message = `corners of ${inWords(port.corner.radius)} mm in the cutter's plane meet before the edges end`
    return { faults: [{ code: 'ports/corner-too-large', message, hint: 'draw smaller corners', key: 'corner' }] }
  }
  return { value: { ...edges, frame, heading, bottom: sized.bottom, height: sized.height, windows } }
}

type Span = { readonly from: Degree; readonly to: Degree }

/**
 * A bridge is a bar with sides parallel to the stream: its thickness is measured across them. One stands on the port's centre
 * line; two leave three windows of one width across the stream.
 */
function spansOf({
  port: { bridge },
  radius,
  from,
  to,
  heading,
}: {
  readonly port: Port
  readonly radius: Millimetre
  readonly from: Degree
  readonly to: Degree
  readonly heading: Degree
}): readonly Span[] {
  if (bridge === undefined) return [{ from, to }]
  if (typeof bridge === 'object') return threeSpans(bridge, radius, { from, to })
  const middle = radius * Math.sin(radians(heading))
  const edge = (l: Millimetre): Degree => degrees(Math.asin(l / radius))
  return [
    { from, to: edge(middle - bridge / 2) },
    { from: edge(middle + bridge / 2), to },
  ]
}

function threeSpans(
  [first, second]: readonly [Millimetre, Millimetre],
  radius: Millimetre,
  { from, to }: Span,
): readonly Span[] {
  const across = (angle: Degree): Millimetre => radius * Math.sin(radians(angle))
  const edge = (l: Millimetre): Degree => degrees(Math.asin(l / radius))
  const window = (across(to) - across(from) - first - second) / 3
  const one = across(from) + window
  const two = one + first + window
  return [
    { from, to: edge(one) },
    { from: edge(one + first), to: edge(two) },
    { from: edge(two + second), to },
  ]
}

type Sized = { readonly bottom: Millimetre; readonly height: Millimetre; readonly roof: Millimetre }

function levelEdges(port: Port, { top }: PortEdges): Sized {
  const bottom = port.bottom ?? top + (port.height ?? 0)
  return { bottom, height: port.height ?? bottom - top, roof: 0 }
}

/** The plain rectangle stands where its highest point on the finished bore is the top edge. */
function straightEdges(port: Port, { top, radius }: PortEdges, frame: CutFrame, spans: readonly Span[]): Sized {
  const corner = port.corner.radius
  const tall = 4 * corner + 1
  const at = (b: Millimetre): readonly Contour[] =>
    spans.map(span => rectangle({ radius, span, floor: b - tall, roof: b, corner }))
  const on = (point: { l: number; b: number }): number => heightOn(frame, radius, point)
  const roof = frame.cos * (-top - Math.max(...at(0).map(contour => greatest(contour, on, 0).value)))
  const fall = Math.min(...at(tall).map(contour => least(contour, on, 0).value))
  if (port.bottom !== undefined) {
    return { bottom: port.bottom, height: (roof - frame.cos * (-port.bottom - fall)) / frame.cos, roof }
  }
  const height = port.height ?? 0
  return { bottom: -((roof - frame.cos * height) / frame.cos + fall), height, roof }
}

const rectangle = ({
  radius,
  span: { from, to },
  floor,
  roof,
  corner,
}: {
  readonly radius: number
  readonly span: Span
  readonly floor: number
  readonly roof: number
  readonly corner: number
}): Contour =>
  roundedRectangle(
    { l: radius * Math.sin(radians(from)), b: floor },
    { l: radius * Math.sin(radians(to)), b: roof },
    corner,
  )

function windowOf({
  port,
  frame,
  radius,
  span,
  top,
  sized,
}: {
  readonly port: Port
  readonly frame: CutFrame
  readonly radius: number
  readonly span: Span
  readonly top: number
  readonly sized: Sized
}): WindowDesign {
  const middle = (span.from + span.to) / 2
  const place = { at: wrapped(frame.toCutter + middle), middle, radius, ...span }
  if (port.cut === 'straight') {
    const floor = sized.roof - frame.cos * sized.height
    const l = radius * Math.sin(radians(middle))
    const withCorner = (corner: Millimetre): Contour => rectangle({ radius, span, floor, roof: sized.roof, corner })
    const height = (b: Millimetre): Millimetre => heightOn(frame, radius, { l, b })
    return {
      ...place,
      roof: height(sized.roof),
      floor: height(floor),
      centreHeight: height((floor + sized.roof) / 2),
      contour: stepped(withCorner(port.corner.radius)),
      withCorner,
    }
  }
  const window: BoreWindow = { radius, ...span, roof: -top, floor: -sized.bottom }
  const shape = port.corner.on === 'bore' ? levelContour : levelContourCutCorners
  const withCorner = (corner: Millimetre): Contour => shape(frame, window, corner)
  return {
    ...place,
    ...window,
    centreHeight: -(top + sized.bottom) / 2,
    contour: stepped(withCorner(port.corner.radius)),
    withCorner,
  }
}

function directionFaults(port: Port, { radius, arc }: PortEdges): readonly PortFault[] {
  if (sideOf(port.at) === 0 && port.back !== 0) {
    const message = `a port at ${inWords(port.at)}° lies on the plane of symmetry and cannot be turned back by ${inWords(port.back)}°`
    return [{ code: 'ports/back-on-centre-line', message, hint: 'leave `back` out', key: 'back' }]
  }
  if (!(Math.abs(port.up) < 85)) {
    const message = `a stream rising by ${inWords(port.up)}° runs along the wall`
    return [{ code: 'ports/too-steep', message, key: 'up' }]
  }
  const side = Math.abs(port.back) + arc / 2
  if (!(side < 90)) {
    const message = `with ${inWords(port.back)}° back and ${fixed(arc / 2, 2)}° half width, the far side edge lies past the tangent of the bore`
    return [{ code: 'ports/misses-bore', message, hint: 'make the port narrower or turn it back less', key: 'back' }]
  }
  const bars = barsOf(port)
  const barred = bars.reduce((sum, bar) => sum + bar, 0)
  // Across the stream, as the bars are: from one side edge to the other.
  const across = 2 * radius * Math.sin(radians(arc / 2)) * (bars.length > 1 ? Math.cos(radians(port.back)) : 1)
  if (bars.some(bar => !(bar > 0)) || (bars.length > 0 && !(barred < across))) {
    const message = `a bridge of ${bars.map(inWords).join(' and ')} mm leaves no window in the width`
    return [{ code: 'ports/bridge-too-wide', message, key: 'bridge' }]
  }
  return []
}

/** Two corners must fit into the height and into the width of every window. */
function cornerFault({
  port,
  radius,
  spans,
  height,
  frame,
}: {
  readonly port: Port
  readonly radius: Millimetre
  readonly spans: readonly Span[]
  readonly height: Millimetre
  readonly frame: CutFrame
}): PortFault | undefined {
  const inPlane = port.cut === 'straight' || port.corner.on === 'cutter'
  const widths = spans.map(({ from, to }) =>
    inPlane ? radius * (Math.sin(radians(to)) - Math.sin(radians(from))) : radius * radians(to - from),
  )
  const room = Math.min(height * (inPlane ? frame.cos : 1), ...widths)
  const corner = port.corner.radius
  if (corner > 0 && 2 * corner <= room + 1e-9) return undefined
  const message = `corners of ${corner} mm need ${2 * corner} mm, but the window is ${fixed(room, 3)} mm ${inPlane ? "in the cutter's plane" : 'on the bore'}`
  return {
    code: 'ports/corner-too-large',
    message,
    hint: `draw corners up to ${fixed(Math.max(0, room / 2), 2)} mm`,
    key: 'corner',
  }
}
