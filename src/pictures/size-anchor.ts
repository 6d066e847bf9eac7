import type { OperationSize } from '../operation-size.ts'
import type { Shape } from '../shape.ts'
import type { Millimetre } from '../units.ts'
import { around } from './box.ts'
import { type DrawnDatum, datumUp } from './datum-marks.ts'
import { featureAnchor } from './feature-marks.ts'
import type { XY } from './marks.ts'
import { datumRuns, type PartView, windowRuns } from './part-view.ts'
import type { Start } from './place-labels.ts'
import { boreOf, type Gap, outsideOf, radiusAt, type Stretch } from './profile.ts'

/** Where a leader touches what it is about, and which way its label is looked for first. */
export type Anchor = Start & { readonly spread: number; readonly orFrom?: readonly Start[] }

/** A length along the part that is drawn as a dimension line: two depths. */
export function dimensionedDepths(
  { feature, measure, edge, lower, upper }: OperationSize,
  shape: Shape,
): readonly [Millimetre, Millimetre] | undefined {
  if (measure !== 'length' && measure !== 'depth') return undefined
  const band = outsideOf(shape).find(({ name }) => name === feature)
  if (feature === 'length' || feature === 'top' || feature === 'bottom') return [shape.top, shape.bottom]
  if (edge !== undefined || measure === 'depth') return [shape.top, shape.top + (lower + upper) / 2]
  return band ? [band.from, band.to] : undefined
}

export function sizeAnchor(feature: string, view: PartView): Anchor | undefined {
  const { shape, at, gaps, datum } = view
  if (datum && feature === datum.name) return datumAnchorOf(datum, view)
  const own = featureAnchor(view, feature)
  if (own) return { anchor: own.anchor, toward: own.up ? -80 : 80, spread: 84 }
  const outside = outsideOf(shape).find(({ name }) => name === feature)
  if (outside) return { anchor: at(clearMiddle(outside, gaps, 'outer'), outside.radius), toward: -80, spread: 84 }
  const bore = boreOf(shape).find(({ name, radius }) => name === feature && radius > 0)
  if (bore) return { anchor: at(clearMiddle(bore, gaps, 'inner'), bore.radius), toward: 80, spread: 84 }
  const face = feature === 'top' ? shape.top : feature === 'bottom' || feature === 'length' ? shape.bottom : undefined
  if (face !== undefined) {
    return { anchor: at(face, -radiusAt(outsideOf(shape), face) / 2), toward: feature === 'top' ? 180 : 0, spread: 72 }
  }
  return portAnchor(feature, view)
}

/** On its outline where that is seen; else where it stands, or on the rim of its band with the clock to say that it lies behind. */
function datumAnchorOf(datum: DrawnDatum, view: PartView): Anchor {
  const { place } = datum
  const seen = datumRuns(view).flat()
  if (seen.length > 0) return { ...aroundOutline(seen), spread: 120 }
  const middle = (place.from + place.to) / 2
  const up = datumUp(datum, view.view.section)
  return { anchor: view.at(middle, up), toward: up > 0 ? -80 : 80, spread: 120 }
}

function clearMiddle(stretch: Stretch, gaps: readonly Gap[], edge: 'inner' | 'outer'): Millimetre {
  const [from, to] = longestClear(stretch, gaps, edge)
  return (from + to) / 2
}

/** The longest part of a stretch that no window interrupts. */
export function longestClear(
  { from, to }: Stretch,
  gaps: readonly Gap[],
  edge: 'inner' | 'outer',
): readonly [Millimetre, Millimetre] {
  const ends = [from, ...gaps.flatMap(gap => [...gap[edge]]), to].filter(depth => depth >= from && depth <= to)
  const sorted = ends.toSorted((a, b) => a - b)
  let best: readonly [Millimetre, Millimetre] = [from, to]
  let longest = 0
  for (let index = 0; index + 1 < sorted.length; index++) {
    const [start, end] = [sorted[index] ?? from, sorted[index + 1] ?? to]
    const inWindow = gaps.some(gap => (start + end) / 2 > gap[edge][0] && (start + end) / 2 < gap[edge][1])
    if (!inWindow && end - start > longest) [best, longest] = [[start, end], end - start]
  }
  return best
}

/** A port is pointed at on the outside where it is seen there, else in the section, else on the far bore wall. */
function portAnchor(name: string, view: PartView): Anchor | undefined {
  const { ports, gaps, at, shape } = view
  const port = ports.find(port => port.name === name)
  const level = at(0, 0).y
  const points = (port?.windows ?? []).flatMap(window => windowRuns(view, window).flat())
  const below = points.filter(({ y }) => y > level + 1)
  const gap = gaps.find(({ port }) => port === name)
  if (below.length > 0) return { ...aroundOutline(below), spread: 72 }
  if (gap) {
    const [inner, outer] = [gap.inner[1], gap.outer[1]]
    const middle = (radiusAt(boreOf(shape), inner) + radiusAt(outsideOf(shape), outer)) / 2
    return { anchor: at((inner + outer) / 2, middle), toward: -80, spread: 84 }
  }
  return points.length > 0 ? { ...aroundOutline(points), spread: 120 } : undefined
}

/** The middles of the four sides of an outline: right, left, below, above. */
function aroundOutline(points: readonly XY[]): Start & { readonly orFrom: readonly Start[] } {
  const box = around(points)
  const side = (toward: number, off: (point: XY) => number): Start => {
    const near = points.filter(point => off(point) < 1)
    const middle = near.length > 0 ? around(near) : box
    const want = { x: middle.x + middle.width / 2, y: middle.y + middle.height / 2 }
    const far = (point: XY): number => Math.hypot(point.x - want.x, point.y - want.y)
    return { toward, anchor: points.reduce((best, point) => (far(point) < far(best) ? point : best)) }
  }
  const right = side(0, ({ x }) => box.x + box.width - x)
  const orFrom = [
    side(180, ({ x }) => x - box.x),
    side(90, ({ y }) => box.y + box.height - y),
    side(-90, ({ y }) => y - box.y),
  ]
  return { ...right, orFrom }
}
