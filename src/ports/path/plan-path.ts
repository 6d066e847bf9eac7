import type { Millimetre } from '../../units.ts'
import { BREAK_THROUGH } from '../plan-window.ts'
import type { PortWindow } from '../port.ts'
import { drilledTo, highestUnder } from './drill-depth.ts'
import { inside, type Loop, outwardNormals, respaced, startingNear } from './offset-loops.ts'
import type { Pass, TipPlace, ToolPath } from './tool-path.ts'
import { type WindowWalls, windowWalls } from './window-walls.ts'

export type PathChoice = {
  /** Axial step of roughing. */
  readonly depth: Millimetre
  readonly slug?: 'cleared' | 'kept'
  /** Left on the wall by roughing. */
  readonly stock?: Millimetre
}

/** Stock on the walls for the finishing pass; skin that keeps a slug. Common practice, no source. */
const STOCK: Millimetre = 0.1
const SKIN: Millimetre = 0.2
/** The last cut through steps sideways by less, since a slanting wall is deeper on one side of the cutter. */
const LAST_STEP_OVER = 0.25
/** Roughing runs every second of those loops: half the cutter sideways. */
const ROUGH_EVERY = 2
const FINISH_DEPTH = 1
/** Longest stretch of a pass. */
const LONGEST: Millimetre = 3
const ROUGH_TOLERANCE: Millimetre = 0.02
const FINISH_TOLERANCE: Millimetre = 0.001

/** Every pass of one window: roughing in steps that follow the curved wall, the cut through, finishing and a spring pass. */
export function planPath(window: PortWindow, choice: PathChoice): ToolPath {
  const { cutter, entryHole } = window
  const walls = windowWalls(window)
  const slug = choice.slug ?? 'cleared'
  const stock = choice.stock ?? STOCK
  const outline = window.outline.cutterPlane.map(({ x, y }) => ({ x: window.x + x, y: window.crossOffset + y }))
  const entry = { x: entryHole.x, y: entryHole.y }
  const coarse = respaced(outline, ROUGH_TOLERANCE, Number.POSITIVE_INFINITY)
  const lastStep = LAST_STEP_OVER * cutter
  const nest = nested(inside(coarse, cutter / 2 + stock), lastStep, slug === 'kept' ? 0 : Number.POSITIVE_INFINITY)
  const spaced = (loop: Loop): Loop => startingNear(respaced(loop, ROUGH_TOLERANCE, LONGEST), entry)
  const through = (loop: Loop, step: Millimetre, innermost: boolean): Pass =>
    throughPass(walls, loop, cutter, step, innermost)

  const floors = nest
    .filter(({ turn }) => turn % ROUGH_EVERY === 0)
    .map(({ loop }) => {
      const floor = through(spaced(loop), 0, false)
      return slug === 'kept' ? floor.map(place => ({ ...place, z: place.z + BREAK_THROUGH + SKIN })) : floor
    })
  const rough = inSteps(walls, floors, cutter, choice.depth)
  const last = slug === 'kept' ? [] : nest.map(({ loop, innermost }) => through(spaced(loop), lastStep, innermost))
  const finishLoops = inside(outline, cutter / 2).map(loop =>
    startingNear(respaced(loop, FINISH_TOLERANCE, LONGEST), entry),
  )
  const finish = inSteps(
    walls,
    finishLoops.map(loop => through(loop, lastStep, false)),
    cutter,
    FINISH_DEPTH * cutter,
  )
  const spring = finish.at(-1) ?? []
  const drillTo = drilledTo(walls, entryHole)
  const passes = [...rough, ...last.toReversed(), ...finish]
  return {
    cutter,
    entry,
    feedFrom: highestUnder(walls, entry, cutter) + 1,
    drill: { diameter: entryHole.diameter, to: drillTo },
    rough: [...rough, ...last.toReversed()],
    finish,
    spring,
    slug,
    deepest: lowestOf(passes, drillTo),
  }
}

function lowestOf(passes: readonly Pass[], lowest: Millimetre): Millimetre {
  let found = lowest
  for (const pass of passes) for (const { z } of pass) if (z < found) found = z
  return found
}

type Nested = { readonly loop: Loop; readonly turn: number; readonly innermost: boolean }

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
 * The tip just past the bore wherever the cutter's rim is to cut through: at the rim, and inward to where the next loop's rim
 * begins; the innermost loop on to its own middle.
 */
function throughPass(walls: WindowWalls, loop: Loop, cutter: Millimetre, step: Millimetre, last: boolean): Pass {
  const normals = outwardNormals(loop)
  const reaches = [cutter / 2, cutter / 2 - step, ...(last ? [0, -step] : [])]
  const pass = loop.map((at, i): TipPlace => {
    const normal = normals[i] ?? { x: 0, y: 0 }
    const z = Math.min(...reaches.map(reach => walls.bore(at.x + reach * normal.x, at.y + reach * normal.y)))
    return { x: at.x, y: at.y, z: z - BREAK_THROUGH }
  })
  return closed(pass)
}

const closed = (pass: Pass): Pass => (pass[0] ? [...pass, pass[0]] : pass)

/** The floors approached in equal steps from the outside, innermost loop first on each level. */
function inSteps(walls: WindowWalls, floors: readonly Pass[], cutter: Millimetre, depth: Millimetre): readonly Pass[] {
  const tops = floors.map(floor => floor.map(place => highestUnder(walls, place, cutter)))
  const depths = floors.flatMap((floor, i) => floor.map(({ z }, j) => (tops[i]?.[j] ?? z) - z))
  const levels = Math.max(1, Math.ceil(Math.max(0, ...depths) / depth - 1e-9))
  return Array.from({ length: levels }, (_, level) =>
    floors
      .map((floor, i) =>
        floor.map((place, j) => {
          const top = tops[i]?.[j] ?? place.z
          return { x: place.x, y: place.y, z: top - ((top - place.z) * (level + 1)) / levels }
        }),
      )
      .toReversed(),
  ).flat()
}
