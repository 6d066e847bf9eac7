import type { Millimetre } from '../../units.ts'
import { radians } from '../../units.ts'
import { BREAK_THROUGH } from '../plan-window.ts'
import type { PortWindow } from '../port.ts'
import { apart, distanceTo, type Flat, farFrom, type Loop } from './closed-line.ts'
import { highestUnder } from './drill-depth.ts'
import { type Floor, type FloorPlace, LAST_STEP_OVER, LONGEST, leadTo, outlineOf, through } from './floors.ts'
import { inside, outside, outwardNormals, respaced, startingBeside } from './offset-loops.ts'
import { remembered } from './remembered.ts'
import { windowWalls } from './window-walls.ts'

/** A place of the cutter's middle, and the way from there square to the wall, outward. */
export type WallPlace = Flat & { readonly normal: Flat }

/** An open line along the wall, counter-clockwise: climb milling. */
export type WallLine = readonly WallPlace[]

export const FINISH_TOLERANCE: Millimetre = 0.001
/** A way all round goes on past its start by this, so that no mark is left where the cutter came to the wall. Common practice, no source. */
const OVERLAP: Millimetre = 0.5
/** Radius of the arcs over the cutter's diameter, the first that has room. Common practice, no source. */
const ARCS = [0.5, 0.35, 0.25, 0.15] as const
/** A quarter of a turn, in as many straight moves: within 0.004 of its radius. */
const ARC_CHORDS = 9
/** Nearer than this to the wall a way beside it would mark it: the chords of offset and line alone stand off by so much. */
const TOUCHES: Millimetre = 0.002

/** The wall as far as a cutter finishes it: all of it, or with its corners rounded for one that is too large for them. */
export function wallLoops(window: PortWindow, cutter: Millimetre, rounded?: Millimetre): readonly Loop[] {
  return remembered(window, `wall ${cutter} ${rounded}`, () => {
    const r = cutter / 2
    const outline = outlineOf(window)
    return rounded === undefined
      ? inside(outline, r)
      : inside(outline, rounded).flatMap(loop => outside(loop, rounded - r))
  })
}

/** All round the wall, as far as a cutter finishes it, from beside the entry hole and a little farther. */
export const roundTheWall = (window: PortWindow, cutter: Millimetre, rounded?: Millimetre): readonly WallLine[] =>
  remembered(window, `round the wall ${cutter} ${rounded}`, () =>
    wallLoops(window, cutter, rounded).map(loop =>
      closed(withNormals(startingBeside(respaced(loop, FINISH_TOLERANCE, LONGEST), entryOf(window)))),
    ),
  )

/** All round, and on past the start. */
export function closed(line: WallLine): WallLine {
  const [first] = line
  return first ? [...line, first, ...along(line.slice(1), first, OVERLAP)] : line
}

export function withNormals(loop: Loop): WallLine {
  const normals = outwardNormals(loop)
  return loop.map(({ x, y }, i) => ({ x, y, normal: normals[i] ?? { x: 0, y: 0 } }))
}

/** The first of the places that lie on, as far as a length goes; the last by its share of a stretch. */
function along(line: WallLine, start: WallPlace, length: Millimetre): WallLine {
  const taken: WallPlace[] = []
  let [from, left] = [start, length]
  for (const to of line) {
    const stretch = apart(from, to)
    if (stretch >= left) return [...taken, between(from, to, left / stretch)]
    taken.push(to)
    left -= stretch
    from = to
  }
  return taken
}

function between(from: WallPlace, to: WallPlace, share: number): WallPlace {
  const mid = (a: number, b: number): number => a + (b - a) * share
  const [x, y] = [mid(from.normal.x, to.normal.x), mid(from.normal.y, to.normal.y)]
  const size = Math.hypot(x, y) || 1
  return { x: mid(from.x, to.x), y: mid(from.y, to.y), normal: { x: x / size, y: y / size } }
}

/** Largest arc on which a cutter comes to every line and leaves it again without touching any wall; 0 where none does. */
export function arcFor(window: PortWindow, cutter: Millimetre, lines: readonly WallLine[]): Millimetre {
  const outline = outlineOf(window)
  const free = farFrom([outline], cutter / 2 - TOUCHES)
  const fits = (radius: Millimetre): boolean =>
    lines.every(line => [...arcTo(line[0], radius, 'in'), ...arcTo(line.at(-1), radius, 'out')].every(free))
  return ARCS.map(share => share * cutter).find(fits) ?? 0
}

/**
 * A quarter of a circle that touches the line at its end: to it from inside the window, or from it inward. The contact with
 * the wall stays to the right of the way, so the middle of the arc lies to the left.
 */
function arcTo(end: WallPlace | undefined, radius: Millimetre, way: 'in' | 'out'): WallLine {
  if (!end || radius === 0) return []
  const { normal } = end
  // Along the way at the end: the wall's side turned left by a quarter.
  const ahead = { x: -normal.y, y: normal.x }
  const middle = { x: end.x - radius * normal.x, y: end.y - radius * normal.y }
  const sense = way === 'in' ? -1 : 1
  const places = Array.from({ length: ARC_CHORDS }, (_, i) => {
    const turn = radians((90 * (i + 1)) / ARC_CHORDS)
    const [out, on] = [radius * Math.cos(turn), sense * radius * Math.sin(turn)]
    return { x: middle.x + out * normal.x + on * ahead.x, y: middle.y + out * normal.y + on * ahead.y, normal }
  })
  return way === 'in' ? places.toReversed() : places
}

/**
 * One level along all lines in turn, the cutter's way between them over what is cut already. `cleared`: where the middle of a larger
 * cutter went before, if one did.
 */
export function floorAlong(
  window: PortWindow,
  {
    cutter,
    arc,
    cleared,
  }: { readonly cutter: Millimetre; readonly arc: Millimetre; readonly cleared: readonly Loop[] },
  lines: readonly WallLine[],
): Floor {
  const walls = windowWalls(window)
  const reaches = [cutter / 2, cutter / 2 - LAST_STEP_OVER * cutter]
  const entry = entryOf(window)
  const withTop = (place: Omit<FloorPlace, 'top'>): FloorPlace => ({
    ...place,
    top: highestUnder(walls, place, cutter),
  })
  const overCut = (at: Flat): FloorPlace => withTop({ ...at, z: walls.bore(at.x, at.y) - BREAK_THROUGH, clear: true })
  const room = { free: farFrom([outlineOf(window)], cutter / 2 - TOUCHES), entry, cleared }
  let from: Flat = entry
  const loop = lines.flatMap(line => {
    const way = [...arcTo(line[0], arc, 'in'), ...line, ...arcTo(line.at(-1), arc, 'out')].map(at => ({
      ...withTop(through(walls, at, at.normal, reaches)),
    }))
    const [first] = way
    if (!first) return []
    const across = acrossTo(from, first, room).map(overCut)
    from = way.at(-1) ?? first
    // Without an arc the last of the way to the wall is cut.
    return [...across, arc === 0 ? first : { ...first, clear: true as const }, ...way.slice(1)]
  })
  const back = loop.length === 0 ? [] : acrossTo(from, entry, room).map(overCut)
  return { lead: [overCut(entry)], loop, back: [...back, overCut(entry)] }
}

type Across = { readonly free: (at: Flat) => boolean; readonly entry: Flat; readonly cleared: readonly Loop[] }

/**
 * Straight to just before a place, or by way of the entry hole where the wall stands between, or, where it stands in both ways, along
 * the way of the larger cutter: nothing is left there.
 */
function acrossTo(from: Flat, to: Flat, { free, entry, cleared }: Across): readonly Flat[] {
  const straight = leadTo(from, to).slice(1)
  const byEntry = [...leadTo(from, entry).slice(1), ...leadTo(entry, to)]
  return [straight, byEntry].find(way => way.every(free)) ?? alongCleared(from, to, cleared) ?? byEntry
}

/** The shorter way round the loop that passes nearest. */
function alongCleared(from: Flat, to: Flat, cleared: readonly Loop[]): readonly Flat[] | undefined {
  const nearest = (loop: Loop, at: Flat): number => {
    const off = loop.map(place => apart(place, at))
    return off.indexOf(Math.min(...off))
  }
  const [loop] = cleared.toSorted((one, other) => distanceTo(one, from) - distanceTo(other, from))
  if (!loop || loop.length === 0) return undefined
  const [start, end] = [nearest(loop, from), nearest(loop, to)]
  const count = loop.length
  const round = (step: 1 | -1): readonly Flat[] => {
    const steps = ((((end - start) * step) % count) + count) % count
    return Array.from({ length: steps + 1 }, (_, i) => loop[(start + step * i + count * count) % count] ?? from)
  }
  const lengthOf = (way: readonly Flat[]): number =>
    way.slice(1).reduce((sum, at, i) => sum + apart(way[i] ?? at, at), 0)
  const [one, other] = [round(1), round(-1)]
  const places = [from, ...(lengthOf(one) <= lengthOf(other) ? one : other), to]
  return places
    .slice(1)
    .flatMap((at, i) => leadTo(places[i] ?? at, at))
    .slice(1)
}

export const entryOf = ({ entryHole }: PortWindow): Flat => ({ x: entryHole.x, y: entryHole.y })
