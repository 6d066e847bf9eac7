import type { Mark, Measure, Picture } from '../../src/pictures/picture.ts'
import { LINE } from '../../src/pictures/picture.ts'

type Text = Mark & { readonly kind: 'text' }
type Room = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number }

/** Figures and capitals of DejaVu Sans rise 0.73 of the size; only tails go below the baseline. */
export function roomOf(text: Text, measure: Measure): Room {
  if (text.turned) throw new Error('turned lettering is not checked here')
  const width = measure(text.text, text.size, text.bold)
  const left = text.x - (text.anchor === 'start' ? 0 : text.anchor === 'middle' ? width / 2 : width)
  return {
    left,
    right: left + width,
    top: text.y - 0.73 * text.size,
    bottom: text.y + (/^[\d.°]+$/.test(text.text) ? 0 : 0.2) * text.size,
  }
}

/** Points along every stroked line of a mark, a fifth of a point apart: no clever geometry to be wrong in. */
export function* pointsAlong(mark: Mark): Generator<readonly [number, number]> {
  if (mark.kind === 'text' || (mark.kind === 'path' && !mark.stroke) || (mark.kind === 'circle' && !mark.stroke)) return
  if (mark.kind === 'circle') {
    for (let turn = 0; turn < 2 * Math.PI; turn += 0.02) {
      yield [mark.x + mark.radius * Math.cos(turn), mark.y + mark.radius * Math.sin(turn)]
    }
    return
  }
  const ends: [number, number, number, number][] = []
  if (mark.kind === 'line') ends.push([mark.x1, mark.y1, mark.x2, mark.y2])
  else {
    let [x, y, startX, startY] = [0, 0, 0, 0]
    for (const step of mark.steps) {
      if (step.to === 'curve') throw new Error('curves are not checked here')
      const [toX, toY] = step.to === 'close' ? [startX, startY] : [step.x, step.y]
      if (step.to === 'move') [startX, startY] = [toX, toY]
      else ends.push([x, y, toX, toY])
      ;[x, y] = [toX, toY]
    }
  }
  for (const [x1, y1, x2, y2] of ends) {
    const steps = Math.max(1, Math.ceil(Math.hypot(x2 - x1, y2 - y1) * 5))
    for (let step = 0; step <= steps; step++) yield [x1 + ((x2 - x1) * step) / steps, y1 + ((y2 - y1) * step) / steps]
  }
}

/** Everything on a picture that would be hard to read at the machine, in words. */
export function faultsOf({ width, height, marks }: Picture, measure: Measure): readonly string[] {
  const texts = marks.filter((mark): mark is Text => mark.kind === 'text')
  const rooms = texts.map(text => ({ text: text.text, ...roomOf(text, measure) }))
  const faults: string[] = []
  const slack = 0.01
  for (const { text, left, right, top, bottom } of rooms) {
    if (left < -slack || right > width + slack || top < -slack || bottom > height + slack)
      faults.push(`"${text}" leaves the picture`)
  }
  rooms.forEach((a, index) => {
    for (const b of rooms.slice(index + 1)) {
      if (a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom) {
        faults.push(`"${a.text}" lies on "${b.text}"`)
      }
    }
  })
  for (const mark of marks) {
    for (const [x, y] of pointsAlong(mark)) {
      if (!(x >= -slack && x <= width + slack && y >= -slack && y <= height + slack)) {
        faults.push(`a ${mark.kind} leaves the picture at ${x.toFixed(1)}, ${y.toFixed(1)}`)
        break
      }
      const struck = rooms.find(room => x > room.left && x < room.right && y > room.top && y < room.bottom)
      if (struck) {
        faults.push(`a ${mark.kind} strikes "${struck.text}" at ${x.toFixed(1)}, ${y.toFixed(1)}`)
        break
      }
    }
  }
  return [...faults, ...styleFaults(marks)]
}

function styleFaults(marks: readonly Mark[]): readonly string[] {
  const widths = Object.values(LINE)
  return marks.flatMap(mark => {
    if (mark.kind === 'text') return mark.size === 8 || mark.size === 10 ? [] : [`"${mark.text}" is ${mark.size} pt`]
    const stroke = mark.stroke
    const fill = mark.kind === 'line' ? undefined : mark.fill
    return [
      ...(stroke && !widths.includes(stroke.width) ? [`a line is ${stroke.width} pt wide`] : []),
      ...(fill && fill.grey !== 0 && fill.grey < 0.88 ? [`an area is ${fill.grey} grey`] : []),
    ]
  })
}

/** True when a text prints two limits, in either order, each to within one unit of its own last place. */
export function showsLimits(words: string, lower: number, upper: number): boolean {
  const match = /(\d+\.(\d+)) \/ (\d+\.\d+)/.exec(words)
  if (!match) return false
  const [small, large] = [Number(match[1]), Number(match[3])].toSorted((a, b) => a - b)
  const place = 10 ** -(match[2]?.length ?? 0) + 1e-9
  return Math.abs((small ?? 0) - lower) < place && Math.abs((large ?? 0) - upper) < place
}
