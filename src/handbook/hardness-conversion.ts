import { type Formula, formula } from '../formula.ts'
import type { Vickers } from '../units.ts'
import { CONVERSION_ROWS, type ConversionRow } from './hardness-conversion-rows.ts'

/**
 * Conversion by table, linear between rows. ISO 18265 warns in its scope that tensile estimates are the least reliable and
 * that a converted value never replaces a direct test: every converted value is labelled so. A nitrided case is never
 * quoted in HRC.
 */
export type HardnessScale = 'HV' | 'HB' | 'HRC'

const CONVERSION_SOURCE = 'DIN 50150 conversion tables; over 450 HV memory: ISO 18265 Table A.1'

/** Under the tables Brinell over Vickers stays as in their softest row, 190 over 200. Memory: ISO 18265 has it so from 80 HV. */
export const SOFT_BRINELL = 0.95

const SOFTEST = Math.min(...CONVERSION_ROWS.flatMap(({ HB }) => HB ?? []))

/** Where a conversion to Vickers comes from. */
export const conversionSource = (scale: HardnessScale, value: number): string =>
  scale === 'HB' && value < SOFTEST
    ? 'memory: ISO 18265, HB = 0.95 HV; of metals that are not steel about'
    : CONVERSION_SOURCE

/** The Vickers hardness for one in another scale; softer than the tables Brinell goes on at its ratio. */
export function vickersFrom(scale: HardnessScale, value: number): Vickers | undefined {
  if (scale === 'HV') return value
  const listed = convertedFrom(scale, value)
  if (listed || scale === 'HRC') return listed?.HV
  return value < SOFTEST ? value / SOFT_BRINELL : undefined
}

/** The row at a hardness, interpolated; what either neighbour lacks is absent. Nothing outside the column. */
export function convertedFrom(scale: HardnessScale, value: number): ConversionRow | undefined {
  const listed = CONVERSION_ROWS.filter(row => row[scale] !== undefined)
  const index = listed.findIndex(row => (row[scale] ?? 0) >= value)
  const above = listed[index]
  if (!above) return undefined
  if (above[scale] === value) return above
  const below = listed[index - 1]
  if (!below) return undefined
  const low = below[scale] ?? 0
  const share = (value - low) / ((above[scale] ?? 0) - low)
  const between = (a: number, b: number): number => a + share * (b - a)
  const column = <K extends keyof ConversionRow>(key: K): { [k in K]?: number } => {
    const [a, b] = [below[key], above[key]]
    return a === undefined || b === undefined ? {} : ({ [key]: between(a, b) } as { [k in K]?: number })
  }
  return { HV: between(below.HV, above.HV), ...column('HB'), ...column('HRC'), ...column('strength') }
}

/** A check on the table, not a substitute: within 0.9 % of ASTM E140 up to 67 HRC, 1.4 % at 68. */
export const vickersFromRockwell: Formula<{ HRC: 'HRC' }, 'HV'> = formula({
  symbol: 'HV',
  meaning: 'Vickers hardness for a Rockwell C hardness, converted',
  unit: 'HV',
  expression: '(223 * HRC + 14500) / (100 - HRC)',
  inputs: { HRC: { meaning: 'Rockwell C hardness', unit: 'HRC', from: 20, upTo: 68 } },
  source: 'formula beside a copy of the DIN 50150 conversion tables',
  example: { given: { HRC: 60 }, gives: 697, digits: 1 },
  value: ({ HRC }) => (223 * HRC + 14_500) / (100 - HRC),
})
