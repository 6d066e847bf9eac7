import Module, { type Manifold, type ManifoldToplevel, type Mat4, type Vec2, type Vec3 } from 'manifold-3d'
import { inv, type Matrix, matrix, multiply } from 'mathjs'
import type { AsMilled } from '../../../src/stock/stock.ts'
import type { Move, NcRead, Place } from './nc-reader.ts'

const wasm = await Module()
wasm.setup()
export const Solid: ManifoldToplevel['Manifold'] = wasm.Manifold
export const CrossSection: ManifoldToplevel['CrossSection'] = wasm.CrossSection

/** Sides of the bore as a polygon: within 0.0005 mm of the true circle. */
const BORE_SIDES = 360
export const FAR = 600

/** Part frame: z out of the head, origin in the middle of the top face as it stands. */
export function blankOf({ shape, topStock, boreDiameter }: AsMilled): Manifold {
  const outside = shape.outside.flatMap(({ from, to, diameter }, i): Vec2[] => [
    [diameter / 2, i === 0 ? 0 : -(from + topStock)],
    [diameter / 2, -(to + topStock)],
  ])
  const bottom = outside.at(-1)?.[1] ?? 0
  const profile: Vec2[] = [[0, bottom], ...outside.toReversed(), [0, 0]]
  return Solid.revolve([profile], 128).subtract(boreOf(boreDiameter))
}

/** The bore as a solid to take away, its facets no farther from the true cylinder inside than outside. */
export function boreOf(diameter: number): Manifold {
  const radius = diameter / 2 / Math.sqrt(Math.cos(Math.PI / BORE_SIDES))
  return Solid.cylinder(2 * FAR, radius, radius, BORE_SIDES, true)
}

/** The tilt of a program, Z toward X: where it sends the tilt axis, in its own sense, or what the head says is set by hand. */
export function tiltOf({ head, tilts }: NcRead): number {
  const sent = tilts[0]?.to
  if (sent === undefined) return Number(head.get('tilt'))
  return head.get('positive-tilt') === 'X to Z' ? -sent : sent
}

const tilting = (tilt: number): Matrix => {
  const t = (tilt * Math.PI) / 180
  return matrix([
    [Math.cos(t), 0, Math.sin(t), 0],
    [0, 1, 0, 0],
    [-Math.sin(t), 0, Math.cos(t), 0],
    [0, 0, 0, 1],
  ])
}

const columns = (from: Matrix): Mat4 => {
  const rows = from.toArray() as number[][]
  return [0, 1, 2, 3].flatMap(column => rows.map(row => row[column] ?? 0)) as unknown as Mat4
}

/** What stands on the plate at zero tilt, tilted. */
export const turnedBy = (tilt: number): Mat4 => columns(tilting(tilt))

/** From the machine back into the part, built from the words of the program alone. */
export const intoPart = (read: NcRead, rotary: number): Mat4 =>
  columns(inv(standing(read.head, rotary, tiltOf(read))) as Matrix)

export const outOfPart = (head: NcRead['head'], rotary: number, tilt: number): Mat4 =>
  columns(standing(head, rotary, tilt))

function standing(head: NcRead['head'], rotary: number, tilt: number): Matrix {
  const number = (key: string): number => Number(head.get(key))
  const s = head.get('head-faces') === '+X' ? 1 : -1
  const sense = head.get('positive-rotary') === 'Y to Z' ? 1 : -1
  const a = (sense * rotary * Math.PI) / 180
  const placed = matrix([
    [1, 0, 0, number('face-distance')],
    [0, Math.cos(a), -Math.sin(a), 0],
    [0, Math.sin(a), Math.cos(a), number('pivot-height')],
    [0, 0, 0, 1],
  ])
  const chucking = matrix([
    [0, 0, s, 0],
    [0, -s, 0, 0],
    [1, 0, 0, 0],
    [0, 0, 0, 1],
  ])
  return multiply(multiply(tilting(tilt), placed), chucking) as Matrix
}

/** What the cutter takes on its way, in the machine frame: every straight move of a cylinder sweeps a convex body. */
export function swept(moves: readonly Move[], diameter: number, sides: number = sidesOf(diameter)): Manifold {
  const bodies = [...deepestOnly(moves).values()].map(({ from, to }) =>
    from.x === to.x && from.y === to.y
      ? plunged(from, to, diameter, sides)
      : Solid.hull([...rim(from, diameter, sides), ...rim(to, diameter, sides)]),
  )
  const whole = Solid.union(bodies)
  for (const body of bodies) body.delete()
  return whole
}

/** Straight down or up. As a prism, since a hull of so many points on upright lines may lose some of them. */
function plunged(from: Place, to: Place, diameter: number, sides: number): Manifold {
  const low = Math.min(from.z, to.z)
  const radius = radiusOf(diameter, sides)
  return Solid.cylinder(FAR - low, radius, radius, sides).translate([from.x, from.y, low])
}

/** Of the polygon that stands for the cutter's circle: of the same area to the second order. */
const radiusOf = (diameter: number, sides: number): number => diameter / 2 / Math.sqrt(Math.cos(Math.PI / sides))

/** Of moves over the same stretch of the plane the lowest: what the others take lies within its own. */
function deepestOnly(moves: readonly Move[]): ReadonlyMap<string, Move> {
  const deepest = new Map<string, Move>()
  for (const move of moves) {
    const ends = [move.from, move.to].map(({ x, y }) => `${x},${y}`).toSorted()
    const key = ends.join(' ')
    const known = deepest.get(key)
    const flip = known && (known.from.x !== move.from.x || known.from.y !== move.from.y)
    const [from, to] = flip ? [move.to, move.from] : [move.from, move.to]
    if (!known) deepest.set(key, { ...move, from, to })
    else {
      const lower = (a: Place, b: Place): Place => (a.z < b.z ? a : b)
      const both = from.z <= known.from.z === to.z <= known.to.z
      if (both) deepest.set(key, { ...move, from: lower(from, known.from), to: lower(to, known.to) })
      else deepest.set(`${key} ${deepest.size}`, move)
    }
  }
  return deepest
}

/** Sides of the cutter as a polygon: within 0.003 mm of the true circle. */
const sidesOf = (diameter: number): number => Math.ceil(Math.PI / Math.acos(1 - 0.006 / (diameter / 2)))

function rim({ x, y, z }: Place, diameter: number, sides: number): Vec3[] {
  const radius = radiusOf(diameter, sides)
  return Array.from({ length: sides }, (_, i) => {
    const turn = (2 * Math.PI * i) / sides
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)] as const
  }).flatMap(([px, py]): Vec3[] => [
    [px, py, z],
    [px, py, FAR],
  ])
}
