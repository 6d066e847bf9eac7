import { REFERENCE_TEMPERATURE } from '../handbook/thermal-expansion.ts'
import type { Millimetre } from '../units.ts'

/** Of a thing: its temperature, °C, and its thermal expansion, 1/K. */
export type Warm = { readonly temperature: number; readonly expansion: number }

/** Sizes are those at 20 °C. Source: memory: ISO 1. */
const longer = ({ temperature, expansion }: Warm): number => 1 + expansion * (temperature - REFERENCE_TEMPERATURE)

/** Size at 20 °C of a part read with an instrument that has a scale of its own. */
export const sizeByScale = (read: Millimetre, gauge: Warm, part: Warm): Millimetre =>
  (read * longer(gauge)) / longer(part)

/** Size at 20 °C of a part that a comparator shows `deviation` over a master of certified size. */
export const sizeByMaster = (
  { master, deviation }: { readonly master: Millimetre; readonly deviation: Millimetre },
  gauge: Warm,
  part: Warm,
): Millimetre => {
  const size = master * longer(gauge) + deviation
  return size - part.expansion * size * (part.temperature - REFERENCE_TEMPERATURE)
}

/** Minutes in which a wall cooled on both sides comes down to a third of what it is warm by. */
export const soakTime = ({
  wall,
  density,
  heat,
  transfer,
}: {
  /** mm */ readonly wall: Millimetre
  /** kg/m³ */ readonly density: number
  /** J/(kg K) */ readonly heat: number
  /** W/(m² K) */ readonly transfer: number
}): number => (density * heat * (wall / 2000)) / transfer / 60

/** Minutes from one temperature down to another, air at 20 °C. */
export const soakFrom = (tau: number, from: number, to: number): number =>
  tau * Math.log((from - REFERENCE_TEMPERATURE) / (to - REFERENCE_TEMPERATURE))
