import { bandAt, overlap } from '../band.ts'
import { fixed } from '../figures.ts'
import type { Spread } from '../limits.ts'
import type { Part } from '../part/part.ts'
import type { AsMilled } from '../stock/stock.ts'
import { type Millimetre, radians } from '../units.ts'
import { type Contour, offsetBy } from './contour.ts'
import { heightOn } from './cut-frame.ts'
import { edgesOn } from './edges-on.ts'
import { stepped } from './extreme.ts'
import type { PortDesign } from './port-design.ts'
import type { Resolved } from './port-edges.ts'
import type { PortFault } from './port-finding.ts'
import type { Shoulder } from './reach-needed.ts'
import { topStockAt } from './top-stock-at.ts'

/** The cylinders of the part as the ports are milled. */
export type AsCut = {
  readonly bore: Millimetre
  readonly outside: Millimetre
  /** How far the top face stands above the finished one, as the port's top edge comes to see it. */
  readonly topStock: Millimetre
  /** A side, of the window's own wall in hardening: it is milled larger by the middle of it. */
  readonly growth?: Spread
  /** Larger bands either side of the port's. */
  readonly shoulders: readonly Shoulder[]
}

/** The contour that is milled: after hardening its wall stands where the drawing has it. */
export const milledContour = (contour: Contour, { growth }: Pick<AsCut, 'growth'>): Contour =>
  growth ? stepped(offsetBy(contour, wallMoves(growth))) : contour

/** What is milled aims at the middle of the growth. */
export const wallMoves = ({ least, most }: Pick<Spread, 'least' | 'most'>): Millimetre => (least + most) / 2

/** Over this share of the radius the side of a window leaves a knife edge. Common practice, no source. */
const KNIFE_EDGE = 0.92

/** The bore and the one outside band that a port breaks through. */
export function wallsAsMilled(
  part: Part,
  design: PortDesign,
  asMilled: AsMilled,
): Resolved<AsCut> & { faults: readonly PortFault[] } {
  const { top, bottom, frame, windows, radius } = design
  const middle = (top + bottom) / 2
  const spanned = part.bore.filter(band => overlap(band, { from: top, to: bottom }))
  if (spanned.length > 1) {
    const message = `runs over the bores ${spanned.map(({ name }) => name).join(' and ')}`
    return { faults: [{ code: 'ports/two-bore-bands', message, hint: 'keep a port within one bore diameter' }] }
  }
  const boreBand = part.bore.length > 1 ? bandAt(asMilled.shape.bore, middle) : undefined
  const bore = (boreBand?.diameter ?? asMilled.boreDiameter) / 2
  const bands = asMilled.shape.outside
  const edge = Math.max(
    ...windows.flatMap(({ from, to }) => [from, to].map(a => Math.abs(radius * Math.sin(radians(a))))),
  )
  const centreOutside = (outside: Millimetre): Millimetre => {
    const l = radius * Math.sin(radians(design.heading))
    const b = frame.sin * Math.sqrt(radius ** 2 - l ** 2) - frame.cos * middle
    return -heightOn(frame, outside, { l, b })
  }
  const first = bandAt(bands, middle)
  const band = first && bandAt(bands, centreOutside(first.diameter / 2))
  if (!band || !(edge < band.diameter / 2)) {
    const message = `comes out of the outside ${band ? 'past its tangent' : 'beyond the ends of the part'}`
    return { faults: [{ code: 'ports/misses-outside', message, hint: 'draw a flatter or narrower port' }] }
  }
  if (!(edge < bore)) {
    const message = `reaches ${fixed(edge, 3)} mm from the axis, past the bore as cut, radius ${fixed(bore, 3)} mm`
    return { faults: [{ code: 'ports/misses-bore', message, hint: 'make the port narrower or turn it back less' }] }
  }
  const shoulders = bands
    .filter(({ diameter }) => diameter > band.diameter)
    .map(
      ({ diameter, from, to }): Shoulder => ({
        radius: diameter / 2,
        depth: to <= band.from ? to : from,
        side: to <= band.from ? 'above' : 'below',
      }),
    )
  const { wallGrowth } = asMilled
  const asCut = {
    bore,
    outside: band.diameter / 2,
    topStock: topStockAt(asMilled, top),
    shoulders,
    ...(wallGrowth && { growth: wallGrowth }),
  }
  const faults: PortFault[] = []
  if (edge > KNIFE_EDGE * radius) {
    const message = `reaches ${fixed(edge, 2)} mm from the axis of a bore of radius ${fixed(radius, 3)} mm: the wall runs out to a knife edge`
    faults.push({ code: 'ports/knife-edge', severity: 'warning', message, key: 'back' })
  }
  for (const { contour } of windows) {
    const outside = edgesOn({ frame, contour, radius: asCut.outside, middle: 0, above: 0 })
    for (const [depth, next] of [
      [outside.highest, bands.find(({ to }) => to === band.from)],
      [outside.lowest, bands.find(({ from }) => from === band.to)],
    ] as const) {
      if (depth >= band.from && depth <= band.to) continue
      if (!next) {
        const message = `breaks out ${fixed(depth, 2)} mm below the top face, beyond the end of the part`
        faults.push({ code: 'ports/misses-outside', message })
      } else {
        const message = `breaks out ${fixed(depth, 2)} mm below the top face, into the ${next.name}, which ends at ${next.to <= band.from ? next.to : next.from} mm`
        faults.push({
          code: next.diameter > band.diameter ? 'ports/reaches-flange' : 'ports/two-outside-bands',
          message,
          hint: 'lower the port, or draw it flatter',
        })
      }
    }
  }
  return { value: asCut, faults: faults.slice(0, 2) }
}
