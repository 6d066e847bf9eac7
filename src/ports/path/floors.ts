import type { Millimetre } from '../../units.ts'
import { BREAK_THROUGH } from '../plan-window.ts'
import type { PortWindow } from '../port.ts'
import { apart, type Flat, type Loop } from './closed-line.ts'
import { highestUnder } from './drill-depth.ts'
import { hasInside, inside, outwardNormals, respaced, startingBeside } from './offset-loops.ts'
import { remembered } from './remembered.ts'
import type { Slug, TipPlace } from './tool-path.ts'
import { type WindowWalls, windowWalls } from './window-walls.ts'

/**
 * A place of a pass with the tip at its lowest, and the highest place of the outside under the cutter. `clear`: nothing is
 * cut on the way to it.
 */
export type FloorPlace = TipPlace & { readonly top: Millimetre; readonly clear?: true }

/** One pass at full depth: to it from the entry hole, along it, and back. */
export type Floor = {
  readonly lead: readonly FloorPlace[]
  readonly loop: readonly FloorPlace[]
  readonly back: readonly FloorPlace[]
}

/** The last cut through steps sideways by less, since a slanting wall is deeper on one side of the cutter. */
export const LAST_STEP_OVER = 0.25
/** Roughing runs every second of those loops: half the cutter sideways. */
const ROUGH_EVERY = 2
/** Longest stretch of a pass, and of the way to it, which crosses the crown. */
export const LONGEST: Millimetre = 3
const LONGEST_LEAD: Millimetre = 1
const ROUGH_TOLERANCE: Millimetre = 0.02

/** Outline of the window in machine X and Y. */
export const outlineOf = ({ outline, x: x0, crossOffset }: PortWindow): Loop =>
  outline.cutterPlane.map(({ x, y }) => ({ x: x0 + x, y: crossOffset + y }))

/** Loops of roughing that leave a stock on the wall: none where the window is hardly larger than the cutter. */
export const roughLoops = (window: PortWindow, cutter: Millimetre, wallStock: Millimetre): readonly Loop[] =>
  remembered(window, `rough loops ${cutter} ${wallStock}`, () => inside(coarse(window), cutter / 2 + wallStock))

/** Whether a slot round the window leaves a piece inside that is wider than the cutter: a narrower one is cut away. */
export const slugOf = (window: PortWindow, cutter: Millimetre, wallStock: Millimetre): Slug =>
  hasInside(coarse(window), 1.5 * cutter + wallStock) ? 'kept' : 'cut away'

/** Roughing, innermost first: one slot round a slug, or loop within loop until nothing is left. */
export function roughFloors(
  window: PortWindow,
  cutter: Millimetre,
  wallStock: Millimetre,
  slug: Slug,
): readonly Floor[] {
  return remembered(window, `rough ${cutter} ${wallStock} ${slug}`, () => {
    const { walls, floor } = floorsIn(window, cutter, ROUGH_TOLERANCE)
    return nestOf(window, cutter, wallStock, slug)
      .filter(({ turn }) => turn % ROUGH_EVERY === 0)
      .map(({ loop }) => floor(loop, places => throughPass(walls, places, [cutter / 2])))
      .toReversed()
  })
}

/** The cut through of a window without a slug: over its whole floor. */
export function lastFloors(window: PortWindow, cutter: Millimetre, wallStock: Millimetre): readonly Floor[] {
  return remembered(window, `last ${cutter} ${wallStock}`, () => {
    const { walls, floor } = floorsIn(window, cutter, ROUGH_TOLERANCE)
    const step = LAST_STEP_OVER * cutter
    return nestOf(window, cutter, wallStock, 'cut away')
      .map(({ loop, innermost }) =>
        floor(loop, places =>
          throughPass(walls, places, [cutter / 2, cutter / 2 - step, ...(innermost ? [0, -step] : [])]),
        ),
      )
      .toReversed()
  })
}

/** From outside to floor where that is most and least on the way round; most with the way to it. */
export const deepestOf = (floors: readonly Pick<Floor, 'lead' | 'loop'>[]): Millimetre =>
  Math.max(0, ...floors.flatMap(({ lead, loop }) => [...lead, ...loop].map(({ top, z }) => top - z)))

export const shallowestOf = (floors: readonly Pick<Floor, 'loop'>[]): Millimetre =>
  Math.min(...floors.flatMap(({ loop }) => loop.map(({ top, z }) => top - z)))

export const coarse = (window: PortWindow): Loop =>
  remembered(window, 'coarse', () => respaced(outlineOf(window), ROUGH_TOLERANCE, Number.POSITIVE_INFINITY))

function floorsIn(window: PortWindow, cutter: Millimetre, tolerance: Millimetre) {
  const walls = windowWalls(window)
  const entry = { x: window.entryHole.x, y: window.entryHole.y }
  const withTop = (place: TipPlace): FloorPlace => ({ ...place, top: highestUnder(walls, place, cutter) })
  const floor = (loop: Loop, through: (places: Loop) => readonly TipPlace[]): Floor => {
    const places = startingBeside(respaced(loop, tolerance, LONGEST), entry)
    const [start = entry] = places
    const lead = leadTo(entry, start)
      .map(at => ({ ...at, z: walls.bore(at.x, at.y) - BREAK_THROUGH }))
      .map(withTop)
    return {
      lead,
      loop: through(places).map(withTop),
      // Over what has just been cut.
      back: lead.toReversed().map(place => ({ ...place, clear: true })),
    }
  }
  return { walls, floor }
}

/** Straight from the entry hole to just before a place. */
export function leadTo(entry: Flat, start: Flat): readonly Flat[] {
  const parts = Math.max(1, Math.ceil(apart(entry, start) / LONGEST_LEAD))
  return Array.from({ length: parts }, (_, part) => ({
    x: entry.x + ((start.x - entry.x) * part) / parts,
    y: entry.y + ((start.y - entry.y) * part) / parts,
  }))
}

type Nested = { readonly loop: Loop; readonly turn: number; readonly innermost: boolean }

const nestOf = (window: PortWindow, cutter: Millimetre, wallStock: Millimetre, slug: Slug): readonly Nested[] =>
  nested(roughLoops(window, cutter, wallStock), LAST_STEP_OVER * cutter, slug === 'kept' ? 0 : Number.POSITIVE_INFINITY)

/**
 * Loops from the outermost inward, until none is left. Each is offset from the one round it: one long step would turn the
 * small corners inside out and cost the library much sorting.
 */
function nested(loops: readonly Loop[], step: Millimetre, most: number, turn = 0): readonly Nested[] {
  const within = loops.map(loop => (turn < most ? inside(loop, step) : []))
  const here = loops.map((loop, i) => ({ loop, turn, innermost: within[i]?.length === 0 }))
  return here.length === 0 ? [] : [...here, ...nested(within.flat(), step, most, turn + 1)]
}

/**
 * The tip just past the bore wherever the cutter is to cut through: at its rim, and inward to where the next loop's rim begins;
 * the innermost loop on to its own middle. `reaches` are those places, outward from the middle of the cutter.
 */
function throughPass(walls: WindowWalls, loop: Loop, reaches: readonly Millimetre[]): readonly TipPlace[] {
  const normals = outwardNormals(loop)
  const pass = loop.map((at, i) => through(walls, at, normals[i] ?? { x: 0, y: 0 }, reaches))
  return pass[0] ? [...pass, pass[0]] : pass
}

export function through(walls: WindowWalls, at: Flat, normal: Flat, reaches: readonly Millimetre[]): TipPlace {
  let z = Number.POSITIVE_INFINITY
  for (const reach of reaches) z = Math.min(z, walls.bore(at.x + reach * normal.x, at.y + reach * normal.y))
  return { x: at.x, y: at.y, z: z - BREAK_THROUGH }
}
