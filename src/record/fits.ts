import { REFERENCE_TEMPERATURE } from '../handbook/thermal-expansion.ts'
import type { Millimetre } from '../units.ts'

/** Gap of a ring in a bore, from its gap in a master: it follows the circumference of the mean diameter. */
export const ringGap = (inMaster: Millimetre, master: Millimetre, meanDiameter: Millimetre): Millimetre =>
  inMaster + Math.PI * (meanDiameter - master)

/** Temperature, °C, and expansion, 1/K, of one of the two. */
export type Hot = { readonly temperature: number; readonly expansion: number }

const longerBy = (diameter: Millimetre, { temperature, expansion }: Hot): Millimetre =>
  diameter * expansion * (temperature - REFERENCE_TEMPERATURE)

/** What the gap becomes when liner and ring are hot. */
export const hotRingGap = (gap: Millimetre, diameter: Millimetre, liner: Hot, ring: Hot): Millimetre =>
  gap + Math.PI * (longerBy(diameter, liner) - longerBy(diameter, ring))

/** Clearance of a piston in a liner, both hot, from the sizes at 20 °C. */
export const hotClearance = (bore: Millimetre, piston: Millimetre, liner: Hot, alloy: Hot): Millimetre =>
  bore + longerBy(bore, liner) - piston - longerBy(piston, alloy)
