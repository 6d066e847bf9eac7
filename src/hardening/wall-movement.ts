import { type Elastic, shellOfBands } from '../handbook/shell-of-bands.ts'
import type { Spread } from '../limits.ts'
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
  const shallow = shellBands(sections, 0)
  const moved = shellOfBands(shallow, elastic)
  const linear = moved(shallow, faces)
  const both = moved(shellBands(sections, 1), faces)
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

/** Least and most at a depth, of all places and stresses. */
export function rangeOver(
  places: readonly PlaceMovement[],
  stresses: readonly number[],
  N: Millimetre,
): Omit<Spread, 'nominal'> {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const s_0 of stresses)
    for (const place of places) {
      const moved = movedOut(place, s_0, N)
      if (moved < least) least = moved
      if (moved > most) most = moved
    }
  return { least, most }
}

/** By the length that each place stands for. */
export function meanOver(places: readonly PlaceMovement[], of: (place: PlaceMovement) => number): number {
  const [first, last] = [places[0], places.at(-1)]
  if (!first || !last) return 0
  if (last.z - first.z < TOUCHING) return of(first)
  let sum = 0
  let [before, ofBefore] = [first, of(first)]
  for (const place of places.slice(1)) {
    const ofPlace = of(place)
    sum += ((ofPlace + ofBefore) / 2) * (place.z - before.z)
    before = place
    ofBefore = ofPlace
  }
  return sum / (last.z - first.z)
}
