import type { Celsius, Megapascal, Vickers } from '../units.ts'
import { convertedFrom } from './hardness-conversion.ts'

/**
 * What a temper leaves. Two published tables for one steel differ by about 120 K at one strength, by section, composition
 * and time, so a temper is never computed from a hardness: both estimates are shown and the certificate decides.
 */
export type TemperResponse = {
  readonly grade: string
  readonly source: string
  readonly rows: readonly { readonly temper: Celsius; readonly strength: Megapascal }[]
}

const row = (temper: Celsius, strength: Megapascal) => ({ temper, strength })

/** Tensile strength, MPa. */
export const TEMPER_RESPONSES: readonly TemperResponse[] = [
  {
    grade: '42CrMo4',
    source: 'Lucefin technical card 42CrMo4 (EN 10083-3:2006; ISO 683-2:2018): 10 mm round, oil from 850 °C',
    rows: [
      row(100, 2200),
      row(150, 2180),
      row(200, 2030),
      row(250, 1910),
      row(300, 1800),
      row(350, 1700),
      row(400, 1590),
      row(450, 1480),
      row(500, 1350),
      row(550, 1220),
      row(600, 1100),
      row(650, 980),
      row(700, 880),
    ],
  },
  {
    grade: '42CrMo4',
    source: 'eFunda alloy-steel data, AISI 4140, oil quenched',
    rows: [row(205, 1772), row(315, 1551), row(425, 1248), row(540, 951), row(650, 758)],
  },
]

/** Temper that leaves a strength, linear between the rows; nothing outside them. */
export function temperForStrength(response: TemperResponse, strength: Megapascal): Celsius | undefined {
  const { rows } = response
  const index = rows.findIndex(({ strength: reached }) => reached <= strength)
  const below = rows[index]
  const above = rows[index - 1]
  if (!below) return undefined
  if (!above) return below.strength === strength ? below.temper : undefined
  return (
    above.temper + ((above.strength - strength) / (above.strength - below.strength)) * (below.temper - above.temper)
  )
}

/** One estimate a table, for the hardness of the bar; nothing where there are fewer than two to compare. */
export function temperEstimates(
  grade: string,
  hardness: Vickers,
): readonly { readonly temper: Celsius; readonly source: string }[] | undefined {
  const strength = convertedFrom('HV', hardness)?.strength
  if (strength === undefined) return undefined
  const estimates = TEMPER_RESPONSES.filter(response => response.grade === grade).flatMap(response => {
    const temper = temperForStrength(response, strength)
    return temper === undefined ? [] : [{ temper, source: response.source }]
  })
  return estimates.length < 2 ? undefined : estimates
}
