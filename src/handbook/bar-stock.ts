import type { Micrometre, Millimetre } from '../units.ts'
import type { MaterialGroup } from './materials.ts'

export type BarSize = {
  readonly diameter: Millimetre
  /** Width of the tolerance above and below the listed diameter. */
  readonly above: Millimetre
  readonly below: Millimetre
  /** Depth of the skin that must come off each side. */
  readonly skin: Millimetre
  readonly note?: string
}

/** A form in which round bar is bought, with what its surface is like. */
export type BarForm = {
  readonly name: string
  readonly surface: 'rough' | 'machined'
  /** Roughness height and damaged layer. */
  readonly Rz: Micrometre
  readonly T: Micrometre
  /** Bow, µm for each mm. */
  readonly bow: number
  /** Whether seams and laps of rolling must be allowed for. */
  readonly rolled: boolean
  readonly sizes: readonly BarSize[]
  readonly source: string
}

/** Roughness, damaged layer and bow of a form; skin that must come off. */
export const SURFACE_SOURCE = 'memory: Kosilova and Meshcheryakov, vol. 1'
export const SKIN_SOURCE = 'common practice, no source'

const EN_10060 = 'EN 10060, normal tolerance, as reprinted by a rolling mill'
const symmetrical = (diameters: readonly Millimetre[], tolerance: Millimetre, skin: Millimetre): readonly BarSize[] =>
  diameters.map(diameter => ({ diameter, above: tolerance, below: tolerance, skin }))

/**
 * The skin is the decarburised layer: 1.0 to 1.5 mm a side, common practice, no source. Roughness, layer and bow: memory,
 * Kosilova vol. 1. Sizes from 135 mm and the tolerance of 125 mm are from memory of the standard: the reprint has ±1.5
 * for 125 mm.
 */
export const HOT_ROLLED: BarForm = {
  name: 'hot-rolled round bar, EN 10060',
  surface: 'rough',
  Rz: 150,
  T: 150,
  bow: 1.5,
  rolled: true,
  sizes: [
    ...symmetrical([16, 18, 19, 20, 22, 24, 25], 0.5, 1.25),
    ...symmetrical([26, 27, 28, 30, 32, 35], 0.6, 1.25),
    ...symmetrical([38, 40, 42, 45, 48, 50], 0.8, 1.25),
    ...symmetrical([52, 55, 60, 63, 65, 70, 73, 75, 80], 1, 1.25),
    ...symmetrical([85, 90, 95, 100], 1.3, 1.25),
    ...symmetrical([105, 110, 115, 120], 1.5, 1.25),
    ...symmetrical([125, 130, 135, 140, 145, 150, 155, 160], 2, 1.25),
    ...symmetrical([165, 170, 175, 180, 190, 200], 2.5, 1.25),
    ...symmetrical([210, 220, 230, 240, 250], 3, 1.25),
  ],
  source: EN_10060,
}

const bright = (diameters: readonly Millimetre[], h11: Millimetre): readonly BarSize[] =>
  diameters.map(diameter => ({ diameter, above: 0, below: h11, skin: 0.5 }))

/**
 * Peeled or turned. The standard fixes tolerances, not a stock list: the sizes are common practice, no source, and so is
 * what is left of the skin. Roughness and layer as after semi-finish turning, memory: Kosilova vol. 1. Bow: EN 10278,
 * 1.5 mm in 1 m for carbon, alloy and quenched and tempered rounds.
 */
export const BRIGHT: BarForm = {
  name: 'bright peeled round bar h11, EN 10278',
  surface: 'machined',
  Rz: 63,
  T: 60,
  bow: 1.5,
  rolled: false,
  sizes: [
    ...bright([12, 14, 15, 16, 18], 0.11),
    ...bright([20, 22, 25, 28, 30], 0.13),
    ...bright([32, 35, 40, 45, 50], 0.16),
    ...bright([55, 60, 65, 70, 75, 80], 0.19),
    ...bright([90, 100], 0.22),
  ],
  source: 'EN 10278, tolerance h11',
}

const inFives = (from: Millimetre, to: Millimetre): readonly Millimetre[] =>
  Array.from({ length: (to - from) / 5 + 1 }, (_, index) => from + 5 * index)

/** The chilled skin and the sizes are common practice, no source; roughness and layer: memory, castings of the first class. */
export const CONTINUOUS_CAST: BarForm = {
  name: 'continuous-cast iron bar with its skin',
  surface: 'rough',
  Rz: 200,
  T: 300,
  bow: 3,
  rolled: false,
  sizes: [
    ...symmetrical(inFives(30, 50), 0.8, 2),
    ...symmetrical(inFives(55, 100), 1, 2.5),
    ...symmetrical(inFives(105, 150), 1.5, 3.5),
    ...symmetrical([160, 170, 180, 190, 200], 2, 3.5),
    ...symmetrical([220, 240, 260, 280, 300], 3, 4),
  ],
  source: 'common practice, no source: ask the foundry for its list',
}

/** Sizes and skin common practice, no source. */
export const EXTRUDED: BarForm = {
  name: 'extruded round bar, EN 755-3',
  surface: 'machined',
  Rz: 63,
  T: 60,
  bow: 2,
  rolled: false,
  sizes: [
    ...symmetrical([20, 25], 0.25, 0.5),
    ...symmetrical([30, 35, 40], 0.3, 0.5),
    ...symmetrical([45, 50], 0.35, 0.5),
    ...symmetrical([55, 60, 65], 0.4, 0.5),
    ...symmetrical([70, 75, 80], 0.45, 0.5),
    ...symmetrical([90, 100], 0.55, 0.5),
    ...symmetrical([110, 120], 0.65, 0.5),
    ...symmetrical([130, 140, 150, 160], 0.8, 0.5),
    ...symmetrical([180, 200], 1, 0.5),
    ...symmetrical([220, 250], 1.2, 0.5),
  ],
  source: 'memory: EN 755-3',
}

/** Sizes, tolerance and skin common practice, no source: solid to 200 mm by fives, 1 to 2 mm over its name. */
const CAST_BRONZE: BarForm = {
  name: 'continuous-cast bronze bar',
  surface: 'rough',
  Rz: 100,
  T: 100,
  bow: 3,
  rolled: false,
  sizes: [
    ...bright(inFives(15, 100), 0).map(size => ({ ...size, above: 1.5 })),
    ...symmetrical(inFives(105, 200), 1.5, 1),
  ],
  source: 'common practice, no source: ask the foundry for its list',
}

/** Gravity-cast round billet. Sizes and skin common practice, no source. */
const CAST_BILLET: BarForm = {
  name: 'cast billet',
  surface: 'rough',
  Rz: 200,
  T: 200,
  bow: 3,
  rolled: false,
  sizes: symmetrical(inFives(30, 160), 1, 1.5),
  source: 'common practice, no source: ask the foundry for its list',
}

const IRON = [CONTINUOUS_CAST] as const
const STEEL = [HOT_ROLLED, BRIGHT] as const

/** Forms that a group of materials is bought in, the cheaper first. */
export const BAR_FORMS: Readonly<Record<MaterialGroup, readonly BarForm[]>> = {
  'heat-treatable steel': STEEL,
  'nitriding steel': STEEL,
  'case-hardening steel': STEEL,
  'unalloyed steel': STEEL,
  'microalloyed steel': STEEL,
  'bearing steel': STEEL,
  'free-cutting steel': STEEL,
  'structural steel': STEEL,
  'stainless steel': STEEL,
  'grey iron': IRON,
  'ductile iron': IRON,
  'wrought aluminium': [EXTRUDED],
  'cast aluminium': [CAST_BILLET],
  bronze: [CAST_BRONZE],
}
