import { type Fill, LINE, type Mark, onPaper, type PathStep, type Point, type Stroke } from './picture.ts'

/** A place on the picture: origin top left, y down. */
export type XY = { readonly x: Point; readonly y: Point }

export const THIN: Stroke = { width: LINE.thin }
export const OUTLINE: Stroke = { width: LINE.outline }
export const CUT: Stroke = { width: LINE.cut }
/** Edges that are there but hidden, or there for now: ISO 128 dashed narrow line. */
export const DASHED: Stroke = { width: LINE.thin, dash: [onPaper(1.5), onPaper(0.75)] }
export const DOTTED: Stroke = { width: LINE.thin, dash: [onPaper(0.3), onPaper(0.7)] }
/** ISO 128 long-dashed dotted narrow line. */
export const CENTRE_LINE: Stroke = { width: LINE.thin, dash: [onPaper(6), onPaper(0.75), onPaper(0.25), onPaper(0.75)] }
/** ISO 128 long-dashed dotted wide line: where a treatment is asked for. */
export const TREATED: Stroke = { width: LINE.cut, dash: [onPaper(5), onPaper(1.2), onPaper(0.5), onPaper(1.2)] }

/** Areas of our paper are never darker than this. */
export const SHADE: Fill = { grey: 0.88 }
export const BLACK: Fill = { grey: 0 }

/** The size of lettering in a picture. */
export const SMALL: Point = 8

export const line = (from: XY, to: XY, stroke: Stroke = THIN): Mark => ({
  kind: 'line',
  x1: from.x,
  y1: from.y,
  x2: to.x,
  y2: to.y,
  stroke,
})

const steps = (points: readonly XY[]): readonly PathStep[] =>
  points.map(({ x, y }, index) => ({ to: index === 0 ? 'move' : 'line', x, y }))

export const polyline = (points: readonly XY[], stroke: Stroke = THIN): Mark => ({
  kind: 'path',
  steps: steps(points),
  stroke,
})

export const polygon = (points: readonly XY[], drawn: { readonly stroke?: Stroke; readonly fill?: Fill }): Mark => ({
  kind: 'path',
  steps: [...steps(points), { to: 'close' }],
  ...drawn,
})

export const circle = (
  { x, y }: XY,
  radius: Point,
  drawn: { readonly stroke?: Stroke; readonly fill?: Fill } = { stroke: THIN },
): Mark => ({ kind: 'circle', x, y, radius, ...drawn })

export type Lettering = {
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly size?: Point
  readonly bold?: boolean
  readonly turned?: number
}

export const text = ({ x, y }: XY, words: string, lettering: Lettering = {}): Mark => {
  const { anchor = 'start', size = SMALL, bold, turned } = lettering
  return {
    kind: 'text',
    x,
    y,
    size,
    text: words,
    anchor,
    ...(bold && { bold }),
    ...(turned !== undefined && { turned }),
  }
}

/** A filled head, 15° either side of the line, with its point at `tip`. */
export function arrowHead(tip: XY, from: XY, size: Point = onPaper(2)): Mark {
  const way = Math.atan2(tip.y - from.y, tip.x - from.x)
  const corner = (turn: number): XY => ({
    x: tip.x - size * Math.cos(way + turn),
    y: tip.y - size * Math.sin(way + turn),
  })
  return polygon([tip, corner(0.22), corner(-0.22)], { fill: BLACK })
}

export const arrow = (from: XY, tip: XY, stroke: Stroke = THIN): readonly Mark[] => [
  line(from, tip, stroke),
  arrowHead(tip, from),
]

/** Points along an arc, angles in degrees clockwise from three o'clock as the page has y down; both ends included. */
export function arcPoints({
  centre,
  radius,
  from,
  to,
  step = 2,
}: {
  readonly centre: XY
  readonly radius: Point
  readonly from: number
  readonly to: number
  readonly step?: number | undefined
}): readonly XY[] {
  const count = Math.max(1, Math.ceil(Math.abs(to - from) / step))
  return Array.from({ length: count + 1 }, (_, index) => {
    const angle = ((from + ((to - from) * index) / count) * Math.PI) / 180
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) }
  })
}

function movedStep(step: PathStep, by: XY): PathStep {
  if (step.to === 'close') return step
  const end = { x: step.x + by.x, y: step.y + by.y }
  if (step.to !== 'curve') return { to: step.to, ...end }
  return { ...step, ...end, x1: step.x1 + by.x, y1: step.y1 + by.y, x2: step.x2 + by.x, y2: step.y2 + by.y }
}

export function moved(mark: Mark, by: XY): Mark {
  switch (mark.kind) {
    case 'line':
      return { ...mark, x1: mark.x1 + by.x, y1: mark.y1 + by.y, x2: mark.x2 + by.x, y2: mark.y2 + by.y }
    case 'path':
      return { ...mark, steps: mark.steps.map(step => movedStep(step, by)) }
    case 'circle':
    case 'text':
      return { ...mark, x: mark.x + by.x, y: mark.y + by.y }
  }
}
