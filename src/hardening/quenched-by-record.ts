import type { KnownSpread } from '../known.ts'
import type { Spread } from '../limits.ts'
import { measuredOrigin } from '../shop/measured.ts'
import { boreOf, seatOf } from './case-surfaces.ts'
import type { BandGrowth, Growth } from './growth.ts'
import type { ByRecord } from './measured-growth.ts'
import { recordedGrowth } from './recorded-growth.ts'

/** A quenched part by its record: every length and diameter by its own, as the record has it. */
export function quenchedByRecord({ notebook, part, row, reckoned }: ByRecord): Growth {
  const origin = measuredOrigin(row)
  const { outside, bore, length, alike } = recordedGrowth(notebook, row, reckoned)
  const [seat, hole] = [seatOf(part), boreOf(part)]
  const D = row.diameter ?? seat?.size.nominal ?? 1
  const d =
    row.wall !== undefined && row.diameter !== undefined ? row.diameter - 2 * row.wall : (hole?.size.nominal ?? D)
  const around = outside ?? alike
  const bands = reckoned.bands.map((band): BandGrowth => {
    const nominal = part[band.side].find(({ name }) => name === band.surface)?.size.nominal ?? D
    if (band.side === 'outside')
      return around ? { ...band, growth: { ...scaled(around, nominal / D), ...origin } } : band
    if (bore) return { ...band, growth: { ...scaled(bore, nominal / d), ...origin } }
    // The bore opens as the outside gets larger.
    return around ? { ...band, growth: { ...scaled(around, -nominal / D), ...origin } } : band
  })
  const of = (side: BandGrowth['side'], name: string | undefined): KnownSpread =>
    bands.find(band => band.side === side && band.surface === name)?.growth ?? reckoned[side]
  const along = length ? scaled(length, 1 / (row.length ?? part.length.nominal)) : around && scaled(around, 2 / D)
  return {
    ...reckoned,
    outside: of('outside', seat?.name),
    bore: of('bore', hole?.name),
    bands,
    along: along ? { ...along, ...origin } : reckoned.along,
  }
}

function scaled({ least, nominal, most }: Spread, by: number): Spread {
  const ends = [least * by, most * by]
  return { least: Math.min(...ends), nominal: nominal * by, most: Math.max(...ends) }
}
