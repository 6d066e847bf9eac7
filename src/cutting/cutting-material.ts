import type { Finding } from '../finding.ts'
import { CUTTING_FAMILY, type CuttingFamily, rowAt, STEELS, USUAL_HARDNESS } from '../handbook/cutting-grades.ts'
import { DRILLING_ROWS, type DrillingRow } from '../handbook/drilling-speeds.ts'
import { convertedFrom, SOFT_BRINELL } from '../handbook/hardness-conversion.ts'
import { FORCE_FACTORS_SOURCE } from '../handbook/kienzle.ts'
import { MILLING_ROWS, type MillingRow } from '../handbook/milling-speeds.ts'
import {
  SPECIFIC_FORCE_ROWS,
  SPECIFIC_FORCE_SOURCE,
  type SpecificForceRow,
  TEXTBOOK_FORCE,
} from '../handbook/specific-force.ts'
import { TURNING_ROWS, type TurningRow } from '../handbook/turning-speeds.ts'
import { fromHandbook, type Told, told } from '../known.ts'
import { type Part, placeOf } from '../part/part.ts'
import type { Vickers } from '../units.ts'

/** The work as it is cut: its rows in the tables, found by family and hardness as delivered. */
export type CuttingMaterial = {
  readonly grade: string
  readonly family: CuttingFamily
  readonly HB: number
  readonly force: SpecificForceRow
  readonly textbook?: { readonly kc11: number; readonly mc: number }
  readonly turning: TurningRow
  readonly drilling: DrillingRow
  /** None where the bar is too hard for small end mills. */
  readonly milling?: MillingRow
}

/** The specific force of the row, with what wear and the way of cutting make of it. */
export const specificForceOf = (
  { force: { kc11, mc } }: Pick<CuttingMaterial, 'force'>,
  K: number,
): { readonly kc11: Told; readonly mc: Told; readonly K: Told } => ({
  ...told(fromHandbook(SPECIFIC_FORCE_SOURCE), { kc11, mc }),
  ...told(fromHandbook(FORCE_FACTORS_SOURCE), { K }),
})

export type KnownMaterial = { readonly material?: CuttingMaterial; readonly findings: readonly Finding[] }

/** The rows for the part's grade at its hardness, or the findings that say why there are none. */
export function cuttingMaterial(part: Part): KnownMaterial {
  const { grade, hardness } = part.material
  const family = CUTTING_FAMILY[grade]
  if (family === undefined) {
    return refused(
      part,
      'grade',
      `no cutting data for ${grade}`,
      `grades with data: ${Object.keys(CUTTING_FAMILY).join(', ')}`,
    )
  }
  const HB = hardness === undefined ? USUAL_HARDNESS[grade]?.HB : brinell(hardness)
  if (HB === undefined) {
    return {
      findings: [
        {
          code: 'cutting/hardness-missing',
          severity: 'error',
          message: `${grade} without a hardness: annealed and tempered differ by a quarter in speed and half in tool life`,
          at: placeOf(part, '/material'),
          hint: 'give `hardness:` as delivered, for example `hardness: 300 HV`',
        },
      ],
    }
  }
  const force = rowAt(SPECIFIC_FORCE_ROWS, family, HB)
  const turning = rowAt(TURNING_ROWS, family, HB)
  const drilling = rowAt(DRILLING_ROWS, family, HB)
  const milling = rowAt(MILLING_ROWS, family, HB)
  if (!force || !turning || !drilling) {
    const most = Math.max(...SPECIFIC_FORCE_ROWS.filter(row => row.family === family).map(({ upTo }) => upTo))
    return refused(
      part,
      'hardness',
      `no cutting data for ${grade} at ${Math.round(HB)} HB`,
      `the tables reach to ${most} HB${STEELS.has(family) ? '; over it, buy the bar softer' : ''}`,
    )
  }
  const textbook = TEXTBOOK_FORCE[grade]
  return {
    material: {
      grade,
      family,
      HB,
      force,
      turning,
      drilling,
      ...(textbook ? { textbook } : {}),
      ...(milling ? { milling } : {}),
    },
    findings: [],
  }
}

/** By the table; beyond it by the ratio that holds over all of it. Memory: ISO 18265, HB = 0.95 HV. */
const brinell = (hardness: Vickers): number => convertedFrom('HV', hardness)?.HB ?? SOFT_BRINELL * hardness

const refused = (part: Part, key: string, message: string, hint: string): KnownMaterial => ({
  findings: [{ code: 'cutting/no-data', severity: 'error', message, at: placeOf(part, `/material/${key}`), hint }],
})
