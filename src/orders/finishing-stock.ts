import { setUpStop, USUAL_STOP } from '../handbook/set-up-stop.ts'
import { fromHandbook, told, worked } from '../known.ts'
import type { StockEntry } from '../stock/stock.ts'
import type { Visit } from './order-source.ts'
import { length } from './quantity.ts'
import { type Draft, point, type Said, say } from './say.ts'

type Cut = StockEntry & { readonly called: string; readonly state: string }

/** The stock of the visit's operations. A surface that is cut twice is told with what is done to it. */
function cutsOf({ source, operations }: Visit): readonly Cut[] {
  const entries = source.stock.filter(({ operation }) => operations.some(({ number }) => number === operation))
  return entries.map(entry => {
    const name = operations.find(({ number }) => number === entry.operation)?.name ?? ''
    const twice = entries.filter(({ surface }) => surface === entry.surface).length > 1
    return { ...entry, called: twice ? `${entry.surface} (${name})` : entry.surface, state: name }
  })
}

/** A lap or a fine hone takes micrometres. */
const FINE = 0.01
const placesOf = (side: number): number => (side < FINE ? 4 : 3)

export const stockFound = (visit: Visit): readonly Draft[] =>
  point(
    'Stock',
    ...cutsOf(visit).map(({ called, state, onDiameter, perSide }): Said => {
      const places = placesOf(perSide.most)
      const side = (label: string, value: number) =>
        length('planned', `${label}, ${called}`, { value }, { state, places })
      return say`${called}: ${side('stock a side', onDiameter.nominal / 2)} a side in the middle, ${side('stock a side at the thinnest place', perSide.least)} at the thinnest place; ${side('to clean up, a side', perSide.needed)} must go for it to clean up.`
    }),
    'Write down the sizes found before starting.',
  )

const STOPS = {
  case: 'Stop and ring where more would have to go: the case is measured in tenths, and the hardest of it goes first.',
  plating:
    'Stop and ring where more would have to go: the layer is measured in hundredths, and the base shows under it.',
} as const

export const mostOff = (visit: Visit, under: keyof typeof STOPS | undefined): readonly Draft[] =>
  point(
    'Take no more than',
    ...cutsOf(visit).map(({ called, state, perSide: { most } }): Said => {
      const limit = length('asked', `taken off a side, ${called}`, { most }, { state, places: placesOf(most) })
      return say`${called}: ${limit} a side, at any place.`
    }),
    under ? STOPS[under] : 'Stop and ring where more would have to go, or where it does not clean up.',
  )

/** The set-up may be off by what it is planned for and by what the smaller margin has to spare, never over the usual stop. */
export function eccentricity(visit: Visit): readonly Draft[] {
  const { operations, notebook } = visit
  const offAxis = cutsOf(visit).filter(({ kind, eccentricity }) => kind !== 'face' && eccentricity > 0)
  return point(
    'Eccentricity',
    ...offAxis.map((cut): Said => {
      const { called, surface, operation, state, eccentricity: e, margin } = cut
      const spare = Math.min(
        margin.cleanUp,
        margin.case ?? Number.POSITIVE_INFINITY,
        margin.plating ?? Number.POSITIVE_INFINITY,
      )
      const stop = notebook.use(
        setUpStop,
        {
          ...told(worked('off axis as planned for, and margin to spare'), { e, m: spare }),
          ...told(fromHandbook('common practice, no source'), { e_0: USUAL_STOP }),
        },
        { operation, about: surface },
      )
      const planned = length('planned', `off axis as planned for, ${called}`, { value: e }, { state, places: 4 })
      const most = length('asked', `off axis at set-up, ${called}`, { most: stop }, { state })
      return say`${called}: planned for ${planned} off axis, radial. Stop and ring over ${most}.`
    }),
    operations.some(({ process }) => process === 'hone') && 'A hone follows the bore: it corrects no position.',
  )
}
