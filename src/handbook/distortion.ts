import type { Millimetre } from '../units.ts'

/** How far a thin sleeve, 40 to 80 mm across with a wall of 3 to 6 mm, is out of true, and how far a process bends it. */
export type Distortion = {
  readonly condition: string
  /** Largest less smallest diameter. */
  readonly ovality: Millimetre
  /** Bow of the axis for each 100 mm of length. */
  readonly bow: Millimetre
  readonly source: string
}

const COMMON_PRACTICE = 'common practice, no source'

/** What a bore that is ground and then honed may be out of round: the hone's stock rests on it. Common practice, no source. */
export const GROUND_ROUNDNESS: Millimetre = 0.002

export const DISTORTION: Readonly<
  Record<
    | 'stressRelieved'
    | 'notStressRelieved'
    | 'quenchedSleeve'
    | 'quenchedPin'
    | 'turned'
    | 'fineBored'
    | 'ground'
    | 'fineGround',
    Distortion
  >
> = {
  stressRelieved: {
    condition: 'hardened, stress relieved before finish turning, hung or stood on end',
    ovality: 0.03,
    bow: 0.02,
    source: `${COMMON_PRACTICE}: ovality 0.01 to 0.03, bow 0.01 to 0.02`,
  },
  notStressRelieved: {
    condition: 'hardened without stress relief',
    ovality: 0.06,
    bow: 0.04,
    source: `${COMMON_PRACTICE}: ovality 0.03 to 0.08, bow 0.03 to 0.06`,
  },
  quenchedSleeve: {
    condition: 'thin sleeve, quenched free',
    ovality: 0.1,
    bow: 0.05,
    source: `${COMMON_PRACTICE}: ovality 0.05 to 0.20, in a press or on a plug 0.02 to 0.05`,
  },
  quenchedPin: {
    condition: 'pin with a stout wall, quenched free and hanging',
    ovality: 0.02,
    bow: 0.04,
    source: COMMON_PRACTICE,
  },
  turned: {
    condition: 'finish turned, not hardened: sprung by the chuck',
    ovality: 0.02,
    bow: 0.01,
    source: COMMON_PRACTICE,
  },
  // Honed next: the hone follows the axis, so no bow counts, and the limits of size hold what is oval; lobes they miss.
  fineBored: {
    condition: 'fine bored for honing: three lobes of the chuck, which no two-point size shows',
    ovality: 0.01,
    bow: 0,
    source: COMMON_PRACTICE,
  },
  ground: {
    condition: 'ground for honing: lobes of the chuck, which no two-point size shows; the order asks for no more',
    // The radius of a bore that is GROUND_ROUNDNESS out of round varies by half of that either way, an oval's by a quarter.
    ovality: 2 * GROUND_ROUNDNESS,
    bow: 0,
    source: COMMON_PRACTICE,
  },
  fineGround: {
    condition: 'ground for lapping: lobes of half a micrometre, which no two-point size shows',
    ovality: 0.001,
    bow: 0,
    source: COMMON_PRACTICE,
  },
}

/** A pin ground for lapping. */
export const FINE_GROUND = {
  /** On diameter: IT4 at 20 mm, as a centreless grinder holds. */
  tolerance: 0.005,
  /** Roughness height, µm: the better end of fine grinding. Lapping takes the ridges alone, not the layer under them. */
  roughness: 0.8,
  source: 'memory: Kosilova & Meshcheryakov, vol. 1: fine grinding Rz 0.8 to 3.2; tolerance common practice, no source',
} as const

/** A bore that is honed straight from the boring bar. */
export const FINE_BORED = {
  /** On diameter: IT7 at 60 mm. */
  tolerance: 0.03,
  /** Roughness height and damaged layer, µm. */
  roughness: 6.3,
  layer: 10,
  source: 'memory: Kosilova & Meshcheryakov, vol. 1: fine boring IT 7 to 9, Rz 3.2 to 6.3, T 0 to 15',
} as const
