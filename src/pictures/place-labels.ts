import { type Box, enters, grown, meet, type Segment } from './box.ts'
import { openRoom } from './free-room.ts'
import type { XY } from './marks.ts'
import type { Point } from './picture.ts'

/** Where a leader may start, and the way to look first from there, degrees clockwise from three o'clock. */
export type Start = { readonly anchor: XY; readonly toward: number }

/** A label about the thing at its anchor. */
export type Wanted = Start & {
  readonly width: Point
  readonly height: Point
  /** Other places of the same thing that its leader may as well start from. */
  readonly orFrom?: readonly Start[]
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
 * leader. Each label goes to the nearest place whose leader crosses no line, else to the nearest place, else to any
 * within the frame. A label that finds none is `undefined`; then the drawing shrinks.
 */
export function placeLabels(labels: readonly Wanted[], around: Surroundings): readonly (Placed | undefined)[] {
  const order = labels.map((_, index) => index)
  const crowded = order.toSorted((a, b) => (labels[b]?.width ?? 0) - (labels[a]?.width ?? 0) || a - b)
  let best: readonly (Found | undefined)[] = []
  let least = Number.POSITIVE_INFINITY
  for (const attempt of [order, crowded, order.toReversed()]) {
    const found = placeInOrder(labels, attempt, around)
    const fault = found.reduce((sum, place) => sum + (place ? place.fault : WORST), 0)
    if (fault < least) [best, least] = [found, fault]
    if (fault === 0) break
  }
  return best.map(found => found?.place)
}

/** 0: its leader crosses no line; 1: it does; 3: it was found far away or the wrong way round. */
type Found = { readonly place: Placed; readonly fault: number }
const WORST = 1000

function placeInOrder(
  labels: readonly Wanted[],
  order: readonly number[],
  { frame, lines, boxes }: Surroundings,
): readonly (Found | undefined)[] {
  const room = openRoom(frame)
  for (const segment of lines) room.takeLine(segment)
  for (const box of boxes) room.takeBox(box)
  const places: (Found | undefined)[] = labels.map(() => undefined)
  const letterings = boxes.map(box => grown(box, GAP / 2))
  const leaders: Segment[] = []
  const fits = ({ box, leader }: Placed): boolean =>
    room.isFree(box) &&
    !letterings.some(other => enters(leader, other)) &&
    !leaders.some(other => meet(other, leader)) &&
    !lines.some(other => runsAlong(leader, other))
  const isClear = (place: Placed): boolean => fits(place) && !lines.some(other => meet(tail(place.leader), other))
  for (const index of order) {
    const label = labels[index]
    const found = label && findPlace(label, fits, isClear, Math.hypot(frame.width, frame.height))
    if (!found) continue
    places[index] = found
    room.takeBox(found.place.box)
    room.takeLine(found.place.leader)
    letterings.push(grown(found.place.box, GAP / 2))
    leaders.push(found.place.leader)
  }
  return places
}

type Test = (place: Placed) => boolean

function findPlace(label: Wanted, fits: Test, isClear: Test, farthest: Point): Found | undefined {
  const clear = firstPlace(label, isClear)
  if (clear) return { place: clear, fault: 0 }
  const fitting = firstPlace(label, fits)
  if (fitting) return { place: fitting, fault: 1 }
  const far = firstPlace({ ...label, spread: 180, reach: [2 * STEP, farthest] }, fits)
  return far && { place: far, fault: 3 }
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
        for (const start of [label, ...(label.orFrom ?? [])]) {
          const place = placeAt({ ...label, anchor: start.anchor, toward: start.toward }, reach, way)
          if (fits(place)) return place
        }
      }
    }
  }
  return undefined
}

/** The label hangs on the end of its leader by the middle of the side that faces the anchor. */
function placeAt({ anchor, toward, width, height }: Wanted, reach: Point, turn: number): Placed {
  const way = ((toward + turn) * Math.PI) / 180
  const [right, down] = [Math.cos(way), Math.sin(way)]
  const end = { x: anchor.x + reach * right, y: anchor.y + reach * down }
  const upright = Math.abs(right) < 0.3
  const x = upright ? end.x - width / 2 : right > 0 ? end.x + GAP : end.x - GAP - width
  const y = upright ? (down > 0 ? end.y + GAP : end.y - GAP - height) : end.y - height / 2
  return { box: { x, y, width, height }, leader: { from: anchor, to: end } }
}
