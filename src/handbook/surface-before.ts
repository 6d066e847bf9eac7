import type { Micrometre, Millimetre } from '../units.ts'

/** What a step leaves: roughness height and damaged layer, µm, and the tolerance grades it holds. */
export type SurfaceLeft = {
  readonly step: string
  readonly grades: readonly [number, number]
  readonly Rz: readonly [Micrometre, Micrometre]
  readonly T: readonly [Micrometre, Micrometre]
}

/**
 * Source: memory: Kosilova & Meshcheryakov, vol. 1. No page was seen, and an older set after Kovan gives about half for
 * rough turning (Rz 50, T 50 to 70).
 */
export const SURFACES_LEFT: readonly SurfaceLeft[] = [
  { step: 'rough turn', grades: [14, 14], Rz: [125, 125], T: [120, 120] },
  { step: 'semi-finish turn', grades: [12, 12], Rz: [63, 63], T: [60, 60] },
  { step: 'finish turn', grades: [10, 11], Rz: [20, 32], T: [30, 30] },
  { step: 'fine turn', grades: [7, 9], Rz: [3.2, 6.3], T: [0, 15] },
  { step: 'drill up to 25 mm', grades: [12, 13], Rz: [40, 63], T: [60, 70] },
  { step: 'ream', grades: [9, 9], Rz: [10, 20], T: [20, 25] },
  { step: 'rough grind', grades: [8, 9], Rz: [10, 10], T: [20, 20] },
  { step: 'finish grind', grades: [7, 8], Rz: [6.3, 6.3], T: [12, 12] },
  { step: 'fine grind', grades: [5, 6], Rz: [0.8, 3.2], T: [2, 6] },
  { step: 'hone', grades: [6, 7], Rz: [0.8, 3], T: [2, 5] },
]

/** Radial setting error in a three-jaw chuck, µm, over one diameter up to and with the next. */
export type ChuckSetting = {
  readonly over: Millimetre
  readonly upTo: Millimetre
  readonly machined: Micrometre
  readonly finishMachined: Micrometre
  readonly hotRolled: Micrometre
}

/** Source: reprint of the setting-error table for the values; the diameters over the columns are from memory. */
export const CHUCK_SETTING: readonly ChuckSetting[] = [
  { over: 10, upTo: 18, machined: 50, finishMachined: 25, hotRolled: 220 },
  { over: 18, upTo: 30, machined: 60, finishMachined: 30, hotRolled: 270 },
  { over: 30, upTo: 50, machined: 70, finishMachined: 35, hotRolled: 320 },
  { over: 50, upTo: 80, machined: 80, finishMachined: 40, hotRolled: 370 },
  { over: 80, upTo: 120, machined: 100, finishMachined: 50, hotRolled: 420 },
  { over: 120, upTo: 180, machined: 120, finishMachined: 60, hotRolled: 500 },
  { over: 180, upTo: 260, machined: 140, finishMachined: 70, hotRolled: 600 },
]
