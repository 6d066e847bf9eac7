import { type Elastic, shellOfBands } from '../handbook/shell-of-bands.ts'
import type { Part } from '../part/part.ts'
import type { Millimetre } from '../units.ts'
import { faceLoads, shellBands, type WallSection } from './walls-along.ts'

/**
 * How far the wall moves outward at one place along the part: `s_0 (linear N + square N²)` for a mean stress in MPa and a
 * depth N. The force of the case goes with both, its lever about the middle of the wall with half the depth less.
 */
export type PlaceMovement = { readonly z: Millimetre; readonly linear: number; readonly square: number }

export const movedOut = ({ linear, square }: PlaceMovement, s_0: number, N: Millimetre): Millimetre =>
  s_0 * (linear + square * N) * N

/** Every half millimetre; of a solid part at the ends and the middle of every length, each by its own section. */
export function wallMovement(part: Part, sections: readonly WallSection[], elastic: Elastic): readonly PlaceMovement[] {
  const found = solvedFor.get(part) ?? movementOf(part, sections, elastic)
  solvedFor.set(part, found)
  return found
}

/** Stock is settled by trial, and every trial asks for the same part: it is solved once. */
const solvedFor = new WeakMap<Part, readonly PlaceMovement[]>()

function movementOf(part: Part, sections: readonly WallSection[], elastic: Elastic): readonly PlaceMovement[] {
  if (sections.some(({ bore }) => bore === undefined)) return solid(sections, elastic)
  const faces = faceLoads(part, sections)
  const linear = shellOfBands(shellBands(sections, 0), faces, elastic)
  const both = shellOfBands(shellBands(sections, 1), faces, elastic)
  return linear.map(({ z, w }, index) => ({ z, linear: w, square: (both[index]?.w ?? w) - w }))
}

const solid = (sections: readonly WallSection[], { modulus: E, poisson: nu }: Elastic): readonly PlaceMovement[] =>
  sections.flatMap(({ from, to, R, t, treated }) => {
    const linear = treated.outside ? (R * (1 - nu)) / (E * t) : 0
    return [from, (from + to) / 2, to].map(z => ({ z, linear, square: 0 }))
  })

/** From one place to another, both with them, and those between. */
export function movementBetween(
  places: readonly PlaceMovement[],
  from: Millimetre,
  to: Millimetre,
): readonly PlaceMovement[] {
  const inside = places.filter(({ z }) => z > from + TOUCHING && z < to - TOUCHING)
  return [movementAt(places, from), ...inside, movementAt(places, to)]
}

const TOUCHING: Millimetre = 1e-6

function movementAt(places: readonly PlaceMovement[], z: Millimetre): PlaceMovement {
  const after = places.findIndex(place => place.z >= z - TOUCHING)
  const b = places[after] ?? places.at(-1)
  const a = after > 0 ? places[after - 1] : b
  if (!a || !b) return { z, linear: 0, square: 0 }
  const share = b.z - a.z < TOUCHING ? 1 : Math.min(1, (z - a.z) / (b.z - a.z))
  const mixed = (of: (place: PlaceMovement) => number) => of(a) + share * (of(b) - of(a))
  return { z, linear: mixed(({ linear }) => linear), square: mixed(({ square }) => square) }
}

/** By the length that each place stands for. */
export function meanOver(places: readonly PlaceMovement[], of: (place: PlaceMovement) => number): number {
  const [first, last] = [places[0], places.at(-1)]
  if (!first || !last) return 0
  if (last.z - first.z < TOUCHING) return of(first)
  const sum = places.slice(1).reduce((total, place, index) => {
    const before = places[index] ?? place
    return total + ((of(place) + of(before)) / 2) * (place.z - before.z)
  }, 0)
  return sum / (last.z - first.z)
}
