import type { Millimetre } from '../units.ts'
import type { HardnessRow } from './cutting-grades.ts'

export type MillingRow = HardnessRow & {
  /** Coated solid carbide, m/min. */
  readonly speed: { readonly least: number; readonly start: number; readonly most: number }
  /** Feed per tooth in a slot over diameter. */
  readonly feed: number
  /** Axial depth in a slot over diameter, as far as strength and bend go. */
  readonly slotDepth: SlotDepth
  /** Cut length that a 2 mm cutter lasts, m. */
  readonly life: number
  /** Share of the feed down a ramp. */
  readonly rampFeed: number
  readonly source: string
}

/** A short cutter of 3 mm or more, a slender one of 3 mm or more, and a smaller one. */
export type SlotDepth = { readonly stub: number; readonly slender: number; readonly small: number }

const PRACTICE = 'common practice, no source'
const END_MILL_GUIDE = 'ISCAR solid-carbide end-mill user guide 2022, p. 92'

const SOFT = { slotDepth: { stub: 0.5, slender: 0.2, small: 0.1 }, rampFeed: 0.5 } as const
/** In tempered steel. */
export const SLOT_DEPTH = { stub: 0.3, slender: 0.1, small: 0.075 } as const
const HARD = { slotDepth: SLOT_DEPTH, rampFeed: 0.5 } as const

const annealed = (family: HardnessRow['family'], share = 1): MillingRow => ({
  family,
  over: 0,
  upTo: 250,
  speed: { least: 80 * share, start: 100 * share, most: 140 * share },
  feed: 0.005,
  ...SOFT,
  life: 8,
  source: PRACTICE,
})

const tempered = (family: HardnessRow['family'], share = 1): MillingRow => ({
  family,
  over: 250,
  upTo: 325,
  speed: { least: 60 * share, start: 70 * share, most: 90 * share },
  feed: 0.004,
  ...HARD,
  life: 4,
  source: PRACTICE,
})

/** Bar at the hard end of its range: slower again, by the ratio of the turning rows. */
const hardBar = (family: HardnessRow['family'], share = 1): MillingRow => ({
  ...tempered(family, 0.8 * share),
  over: 325,
  upTo: 375,
  life: 3,
})

/** End mills of 1 to 6 mm, starting values, spread ±50 %. Lives: common practice, no source; a works logs its own. */
export const MILLING_ROWS: readonly MillingRow[] = [
  annealed('low-alloy steel'),
  tempered('low-alloy steel'),
  hardBar('low-alloy steel'),
  annealed('aluminium-alloyed nitriding steel', 0.85),
  tempered('aluminium-alloyed nitriding steel', 0.85),
  hardBar('aluminium-alloyed nitriding steel', 0.85),
  annealed('case-hardening steel'),
  annealed('bearing steel', 0.85),
  annealed('unalloyed steel'),
  tempered('unalloyed steel'),
  annealed('free-cutting steel'),
  annealed('stainless steel', 0.6),
  tempered('stainless steel', 0.7),
  {
    family: 'grey iron',
    over: 0,
    upTo: 260,
    speed: { least: 100, start: 150, most: 275 },
    feed: 0.006,
    ...SOFT,
    life: 8,
    source: END_MILL_GUIDE,
  },
  {
    family: 'ductile iron',
    over: 0,
    upTo: 270,
    speed: { least: 60, start: 90, most: 150 },
    feed: 0.005,
    ...SOFT,
    life: 6,
    source: END_MILL_GUIDE,
  },
  {
    family: 'ductile iron',
    over: 270,
    upTo: 305,
    speed: { least: 50, start: 70, most: 110 },
    feed: 0.004,
    ...HARD,
    life: 4,
    source: PRACTICE,
  },
  {
    family: 'aluminium',
    over: 0,
    upTo: 130,
    speed: { least: 100, start: 200, most: 400 },
    feed: 0.008,
    ...SOFT,
    life: 20,
    source: PRACTICE,
  },
  {
    family: 'silicon aluminium',
    over: 0,
    upTo: 130,
    speed: { least: 100, start: 150, most: 300 },
    feed: 0.008,
    ...SOFT,
    life: 10,
    source: PRACTICE,
  },
  {
    family: 'bronze',
    over: 0,
    upTo: 200,
    speed: { least: 60, start: 120, most: 200 },
    feed: 0.005,
    ...SOFT,
    life: 8,
    source: PRACTICE,
  },
]

/** Source: common practice, no source, but where said. */
export const MILLING_STARTS = {
  /** Left on the wall by roughing, over diameter, and at least, mm. */
  wallStock: { share: 0.05, least: 0.03 },
  /** The least that a larger cutter leaves, over its diameter: 0.03 to 0.05. */
  leastWallStock: 0.03,
  /** Axial depth of a finishing level over diameter. */
  finishDepth: 1,
  /** Thickest chip of the finishing pass against the slot's feed per tooth: careful. */
  finishChip: 0.9,
  /** Straight down, as a share of the feed: 0.2 to 0.3. */
  plungeFeed: 0.25,
  /** The same along a wall, where the end of the cutter meets only the stock: as on a ramp. */
  wallPlungeFeed: 0.5,
  /** Over what is cut already, at depth, mm/min: as quick as a hand stays on the override. */
  clearFeed: 1000,
  /** Radial depth over diameter of a pass along the wall at a depth of one diameter: 0.07 in tempered steel, 0.10 in annealed. */
  profileStep: 0.07,
  /** Degrees. */
  ramp: 2,
  /** Flutes and relief over diameter from which a cutter counts as slender; and its diameter. */
  slender: { overDiameter: 3, under: 3 },
  /** Under this cutting speed coated carbide builds up an edge, m/min. */
  builtUpEdgeUnder: 35,
  helix: 35,
  radialShare: 0.5,
  /** Runout to hold, as a share of the feed per tooth, and the least that a good collet holds, mm. */
  runout: { share: 0.3, least: 0.003 },
  /** Roughing may bend the cutter by this share of the stock on the wall. */
  bendOfWallStock: 0.5,
  elasticModulus: 580_000,
  /** A slot deeper than this many diameters packs with chips. */
  chipPacking: 2,
} as const

/** The depth of a row that a cutter of a diameter may take in a slot, with so much below its shank, over its diameter. */
export function slotDepthOf(row: SlotDepth, D: Millimetre, flutes: Millimetre): number {
  const { under, overDiameter } = MILLING_STARTS.slender
  if (D < under) return row.small
  return flutes > overDiameter * D ? row.slender : row.stub
}
