import { type Box, enters, grown, meet, type Segment } from './box.ts'
import { openRoom } from './free-room.ts'
import type { XY } from './marks.ts'
import type { Point } from './picture.ts'

export type Wanted = {
  /** What the label is about: its leader starts here. */
  readonly anchor: XY
  readonly width: Point
  readonly height: Point
  /** Way to look first, degrees clockwise from three o'clock. */
  readonly toward: number
  /** Farthest turn from that way, degrees; all round when left out. */
  readonly spread?: number
  /** Nearest and farthest that the leader may reach. */
  readonly reach?: readonly [Point, Point]
}

export type Placed = { readonly box: Box; readonly leader: Segment }

export type Surroundings = {
  readonly frame: Box
  /** Lines that labels keep off. Leaders may cross them. */
  readonly lines: readonly Segment[]
  /** Lettering already there: labels and leaders keep off. */
  readonly boxes: readonly Box[]
}

const STEP: Point = 6
const TURN = 12
/** Between the end of a leader and its label, and between two labels. */
const GAP: Point = 2

/**
 * A place for every label: inside the frame, on white paper, off every other label; no leader crosses a label or another
 * leader. Each label goes to the nearest such place. A label that finds none is `undefined`; then the drawing shrinks.
 */
export function placeLabels(labels: readonly Wanted[], around: Surroundings): readonly (Placed | undefined)[] {
  const order = labels.map((_, index) => index)
  const crowded = order.toSorted((a, b) => (labels[b]?.width ?? 0) - (labels[a]?.width ?? 0) || a - b)
  let best: readonly (Placed | undefined)[] = []
  let left = Number.POSITIVE_INFINITY
  for (const attempt of [order, order.toReversed(), crowded]) {
    const placed = placeInOrder(labels, attempt, around)
    const missing = placed.filter(place => !place).length
    if (missing < left) [best, left] = [placed, missing]
    if (missing === 0) break
  }
  return best
}

function placeInOrder(
  labels: readonly Wanted[],
  order: readonly number[],
  { frame, lines, boxes }: Surroundings,
): readonly (Placed | undefined)[] {
  const room = openRoom(frame)
  for (const segment of lines) room.takeLine(segment)
  for (const box of boxes) room.takeBox(box)
  const placed: (Placed | undefined)[] = labels.map(() => undefined)
  const letterings = boxes.map(box => grown(box, GAP / 2))
  const leaders: Segment[] = []
  for (const index of order) {
    const label = labels[index]
    if (!label) continue
    const fits = ({ box, leader }: Placed): boolean =>
      room.isFree(box) &&
      !letterings.some(other => enters(leader, other)) &&
      !leaders.some(other => meet(other, leader)) &&
      !lines.some(other => runsAlong(leader, other))
    const isClear = (place: Placed): boolean => fits(place) && !lines.some(other => meet(tail(place.leader), other))
    const place = firstPlace(label, isClear) ?? firstPlace(label, fits)
    if (!place) continue
    placed[index] = place
    room.takeBox(place.box)
    room.takeLine(place.leader)
    letterings.push(grown(place.box, GAP / 2))
    leaders.push(place.leader)
  }
  return placed
}

/** The leader without its first points, which stand on the line it is about. */
const tail = ({ from, to }: Segment): Segment => {
  const part = Math.min(0.5, (2 * GAP) / Math.hypot(to.x - from.x, to.y - from.y))
  return { from: { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) }, to }
}

/** True when a leader could be taken for the continuation of a line: under 8° to it and, where it lies beside it, close. */
function runsAlong(leader: Segment, { from, to }: Segment): boolean {
  const [x, y] = [leader.to.x - leader.from.x, leader.to.y - leader.from.y]
  const length = Math.hypot(x, y)
  const [across, along] = [x * (to.y - from.y) - y * (to.x - from.x), x * (to.x - from.x) + y * (to.y - from.y)]
  if (Math.abs(across) > 0.14 * Math.abs(along)) return false
  const place = (point: XY): number => ((point.x - leader.from.x) * x + (point.y - leader.from.y) * y) / length
  const off = (point: XY): number => ((point.x - leader.from.x) * y - (point.y - leader.from.y) * x) / length
  const [start, end] = [Math.min(place(from), place(to)), Math.max(place(from), place(to))]
  return end > GAP && start < length && Math.min(Math.abs(off(from)), Math.abs(off(to))) < GAP
}

/** Nearest first; at one distance the way wanted first, then turning away from it to both sides. */
function firstPlace(label: Wanted, fits: (place: Placed) => boolean): Placed | undefined {
  const [nearest, farthest] = label.reach ?? [2 * STEP, 30 * STEP]
  const spread = label.spread ?? 180
  for (let reach = nearest; reach <= farthest; reach += STEP) {
    for (let turn = 0; turn <= spread; turn += TURN) {
      for (const way of turn === 0 || turn === 180 ? [turn] : [turn, -turn]) {
        const place = placeAt(label, reach, label.toward + way)
        if (fits(place)) return place
      }
    }
  }
  return undefined
}

/** The label hangs on the end of its leader by the middle of the side that faces the anchor. */
function placeAt({ anchor, width, height }: Wanted, reach: Point, way: number): Placed {
  const [right, down] = [Math.cos((way * Math.PI) / 180), Math.sin((way * Math.PI) / 180)]
  const end = { x: anchor.x + reach * right, y: anchor.y + reach * down }
  const upright = Math.abs(right) < 0.3
  const x = upright ? end.x - width / 2 : right > 0 ? end.x + GAP : end.x - GAP - width
  const y = upright ? (down > 0 ? end.y + GAP : end.y - GAP - height) : end.y - height / 2
  return { box: { x, y, width, height }, leader: { from: anchor, to: end } }
}
