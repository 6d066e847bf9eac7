import { fixed, hours } from '../../figures.ts'
import type { PlacedPlating } from '../../inspection/size-places.ts'
import type { Spread } from '../../limits.ts'
import type { StockEntry } from '../../stock/stock.ts'
import { DASH, type PaperFigures } from './paper-figures.ts'

type Row = { readonly what: string; readonly value: string }

/** What is to spare of the case or of the plating that must be left. */
export const under = ({ case: held, plating }: StockEntry['margin'], length: PaperFigures['length']): string => {
  const spare = held ?? plating
  return spare === undefined ? DASH : length(spare)
}

export function leftHead(entries: readonly StockEntry[]): string {
  const plated = entries.some(({ margin }) => margin.plating !== undefined)
  const cased = entries.some(({ margin }) => margin.case !== undefined)
  return plated ? (cased ? 'Spare case, plating' : 'Spare plating') : 'Spare case'
}

const limitsOf = (size: PlacedPlating['before'], { limits, unit }: PaperFigures): string =>
  `${limits(size, 'hole', size.places)} ${unit}`

const between = ({ least, nominal, most }: Spread, { length, unit }: PaperFigures): string =>
  `${length(nominal)} (${length(least)} to ${length(most)}) ${unit} a side`

/** `0.056 mm a side or more`, or the two limits. */
const asked = ({ asked: { least, most } }: PlacedPlating, { length, unit }: PaperFigures): string =>
  most === undefined ? `${length(least)} ${unit} a side or more` : `${length(least)} to ${length(most)} ${unit} a side`

/** What the plater is asked for and what is left of it, a line each. */
export function platingRows(plating: PlacedPlating, figures: PaperFigures): readonly Row[] {
  const { process, surface, before, plated, layer, left, time, masked } = plating
  return [
    { what: 'Process', value: `${process} on ${surface}` },
    { what: 'Bore before', value: limitsOf(before, figures) },
    { what: 'Bore as plated', value: limitsOf(plated, figures) },
    { what: 'Layer as plated', value: between(layer, figures) },
    { what: 'Layer left after honing', value: between(left, figures) },
    { what: 'Layer asked for', value: asked(plating, figures) },
    { what: 'Masked', value: masked.join(', ') },
    ...bakeRows(plating),
    ...(time ? [{ what: 'Time in the bath, estimate', value: `${hours(time.least)} to ${hours(time.most)} h` }] : []),
    { what: 'Honing', value: plating.honedWith },
    { what: 'Rings', value: plating.ringPartner },
  ]
}

function bakeRows({ bake: { hours, least, most, startWithin } }: PlacedPlating): readonly Row[] {
  const value = `${fixed(hours, 0)} h or more at ${fixed(least, 0)} to ${fixed(most, 0)} °C, begun within ${fixed(startWithin, 0)} h`
  return [{ what: 'Bake after plating', value: hours > 0 ? value : 'none' }]
}
