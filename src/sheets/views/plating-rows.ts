import { placesFor } from '../../decimal-places.ts'
import { fixed, hours } from '../../figures.ts'
import type { Spread } from '../../limits.ts'
import { asked, RELIEF } from '../../orders/plating-order.ts'
import type { Plan, PlannedOperation } from '../../plan/plan.ts'
import type { PlatingPlan } from '../../plating/plating-plan.ts'
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

const limitsOf = (size: PlatingPlan['before'], { limits, unit }: PaperFigures): string =>
  `${limits(size, 'hole', placesFor(size))} ${unit}`

const between = ({ least, nominal, most }: Spread, { length, unit }: PaperFigures): string =>
  `${length(nominal)} (${length(least)} to ${length(most)}) ${unit} a side`

/** What the plater is asked for and what is left of it, a line each. */
export function platingRows(plating: PlatingPlan, figures: PaperFigures): readonly Row[] {
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

function bakeRows({ bake: { hours, least, most, startWithin } }: PlatingPlan): readonly Row[] {
  const value = `${fixed(hours, 0)} h or more at ${fixed(least, 0)} to ${fixed(most, 0)} °C, begun within ${fixed(startWithin, 0)} h`
  return [{ what: 'Bake after plating', value: hours > 0 ? value : 'none' }]
}

/** What the honer must know of the layer. */
export const layerHeld = (plating: PlatingPlan, figures: PaperFigures): readonly Row[] => [
  { what: 'Plating', value: `${plating.process}, ${between(plating.layer, figures)}` },
  { what: 'To be left', value: asked(plating, figures) },
  { what: 'Honing', value: plating.honedWith },
]

/** Lines of the plating that its own order repeats elsewhere, or that the plater does not work by. */
const OURS: ReadonlySet<string> = new Set(['Bore as plated', 'Time in the bath, estimate', 'Honing', 'Rings'])

/** What the order of the plating, or of one of the two heats beside it, asks for. */
export function platingTreatment(
  { plating, operations, material }: Plan,
  { purpose }: PlannedOperation,
  figures: PaperFigures,
): readonly Row[] {
  if (!plating) return []
  if (purpose === 'plate') return platingRows(plating, figures).filter(({ what }) => !OURS.has(what))
  const { hardness, temper } = plating.base
  const plate = operations.find(operation => operation.purpose === 'plate')
  const visit = { what: 'Together with', value: `operation ${plate?.number} ${plate?.name}: one visit, one firm` }
  if (purpose === 'relieve-for-plating') {
    return [
      visit,
      {
        what: 'Relieve',
        value: `as ${RELIEF} ask for ${material.grade}${hardness === undefined ? '' : ` of ${fixed(hardness, 0)} HV`}`,
      },
      {
        what: 'Not over',
        value: `what would soften it: well below the temper${temper === undefined ? ' on the bar certificate' : ` of ${fixed(temper, 0)} °C`}`,
      },
    ]
  }
  return purpose === 'bake-after-plating' ? [visit, ...bakeRows(plating)] : []
}
