import { type Box, enters, grown, meet, type Segment } from './box.ts'
import { type FreeRoom, openRoom } from './free-room.ts'
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
  /** Its leader cannot but cross lines: what it is about lies within others. */
  readonly mayCross?: boolean
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
  const crossesLine = crossing(around.lines)
  let best: readonly (Found | undefined)[] = []
  let least = Number.POSITIVE_INFINITY
  for (const attempt of [order, crowded, order.toReversed()]) {
    const found = placeInOrder(labels, attempt, around, crossesLine)
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
  crossesLine: Test,
): readonly (Found | undefined)[] {
  const room = openRoom(frame)
  for (const segment of lines) room.takeLine(segment)
  for (const box of boxes) room.takeBox(box)
  const places: (Found | undefined)[] = labels.map(() => undefined)
  const letterings = boxes.map(box => grown(box, GAP / 2))
  const leaders: Segment[] = []
  const fits = ({ leader }: Placed): boolean =>
    !letterings.some(other => enters(leader, other)) &&
    !leaders.some(other => meet(other, leader)) &&
    !lines.some(other => runsAlong(leader, other))
  for (const index of order) {
    const label = labels[index]
    const found =
      label && findPlace({ label, room, fits, crossesLine, farthest: Math.hypot(frame.width, frame.height) })
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

function findPlace({
  label,
  room,
  fits,
  crossesLine,
  farthest,
}: {
  readonly label: Wanted
  readonly room: FreeRoom
  readonly fits: Test
  readonly crossesLine: Test
  readonly farthest: Point
}): Found | undefined {
  let fitting: Placed | undefined
  const clear = firstPlace(label, room, place => {
    const crosses = !label.mayCross && crossesLine(place)
    if ((crosses && fitting) || !fits(place)) return false
    fitting ??= place
    return !crosses
  })
  if (clear) return { place: clear, fault: 0 }
  if (fitting) return { place: fitting, fault: 1 }
  const far = firstPlace({ ...label, spread: 180, reach: [2 * STEP, farthest] }, room, fits)
  return far && { place: far, fault: 3 }
}

/** Width of the upright strips that lines are kept by: what a leader crosses lies in a strip of its own. */
const STRIP: Point = 20

/** Whether a leader crosses one of the lines. A drawing has thousands of them. */
function crossing(lines: readonly Segment[]): Test {
  const strips = new Map<number, Segment[]>()
  const stripsOf = ({ from, to }: Segment): readonly [number, number] => [
    Math.floor((Math.min(from.x, to.x) - 1) / STRIP),
    Math.floor((Math.max(from.x, to.x) + 1) / STRIP),
  ]
  for (const line of lines) {
    const [first, last] = stripsOf(line)
    for (let strip = first; strip <= last; strip++) {
      const here = strips.get(strip)
      if (here) here.push(line)
      else strips.set(strip, [line])
    }
  }
  return ({ leader }) => {
    const open = tail(leader)
    const [first, last] = stripsOf(open)
    for (let strip = first; strip <= last; strip++) {
      if (strips.get(strip)?.some(line => meet(line, open))) return true
    }
    return false
  }
}

/** The leader without its first points, which stand on the line it is about. */
const tail = ({ from, to }: Segment): Segment => {
  const part = Math.min(0.5, (2 * GAP) / Math.hypot(to.x - from.x, to.y - from.y))
  return { from: { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) }, to }
}

/** True when a leader could be taken for the continuation of a line: under 8° to it and, where it lies beside it, close. */
function runsAlong(leader: Segment, { from, to }: Segment): boolean {
  const x = leader.to.x - leader.from.x
  const y = leader.to.y - leader.from.y
  const across = x * (to.y - from.y) - y * (to.x - from.x)
  const along = x * (to.x - from.x) + y * (to.y - from.y)
  if (Math.abs(across) > 0.14 * Math.abs(along)) return false
  const length = Math.hypot(x, y)
  const offFrom = (from.x - leader.from.x) * y - (from.y - leader.from.y) * x
  const offTo = (to.x - leader.from.x) * y - (to.y - leader.from.y) * x
  if (Math.min(Math.abs(offFrom), Math.abs(offTo)) >= GAP * length) return false
  const start = (from.x - leader.from.x) * x + (from.y - leader.from.y) * y
  const end = (to.x - leader.from.x) * x + (to.y - leader.from.y) * y
  return Math.max(start, end) > GAP * length && Math.min(start, end) < length * length
}

/** Nearest first; at one distance the way wanted first, then turning away from it to both sides. */
function firstPlace(label: Wanted, room: FreeRoom, fits: Test): Placed | undefined {
  const [nearest, farthest] = label.reach ?? [2 * STEP, 30 * STEP]
  const turns = TURNS.filter(turn => Math.abs(turn) <= (label.spread ?? 180))
  const starts = [label, ...(label.orFrom ?? [])]
  let ways = turns.flatMap(turn => starts.map(({ anchor, toward }) => ({ anchor, ...wayOf(toward + turn) })))
  for (let reach = nearest; reach <= farthest && ways.length > 0; reach += STEP) {
    let gone = false
    for (const way of ways) {
      const box = boxAt(way, label, reach)
      if (!room.isFree(box.x, box.y, box.width, box.height)) {
        gone ||= hasLeft(box, way, room.frame)
        continue
      }
      const { anchor, right, down } = way
      const end = { x: anchor.x + reach * right, y: anchor.y + reach * down }
      const place = { box, leader: { from: anchor, to: end } }
      if (fits(place)) return place
    }
    // What has left the frame the way it goes does not come back.
    if (gone) ways = ways.filter(way => !hasLeft(boxAt(way, label, reach), way, room.frame))
  }
  return undefined
}

/** 0, 12, -12, 24, -24 … 180. */
const TURNS: readonly number[] = [
  ...Array.from({ length: 180 / TURN }, (_, index) => index * TURN).flatMap(turn => (turn === 0 ? [0] : [turn, -turn])),
  180,
]

type Way = { readonly anchor: XY; readonly right: number; readonly down: number }

/** One step that way, degrees clockwise from three o'clock. */
function wayOf(degrees: number): Omit<Way, 'anchor'> {
  const way = (degrees * Math.PI) / 180
  return { right: Math.cos(way), down: Math.sin(way) }
}

/** The label hangs on the end of its leader by the middle of the side that faces the anchor. */
function boxAt(way: Way, { width, height }: Wanted, reach: number): Box {
  const { anchor, right, down } = way
  const [x, y] = [anchor.x + reach * right, anchor.y + reach * down]
  const upright = Math.abs(right) < 0.3
  return {
    x: upright ? x - width / 2 : right > 0 ? x + GAP : x - GAP - width,
    y: upright ? (down > 0 ? y + GAP : y - GAP - height) : y - height / 2,
    width,
    height,
  }
}

const hasLeft = ({ x, y, width, height }: Box, { right, down }: Way, frame: Box): boolean =>
  (right > 0 ? x + width > frame.x + frame.width : right < 0 && x < frame.x) ||
  (down > 0 ? y + height > frame.y + frame.height : down < 0 && y < frame.y)
