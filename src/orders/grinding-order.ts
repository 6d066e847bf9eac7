import { fixed } from '../figures.ts'
import { GRINDING_SAFETY, PLATED_DUST } from '../handbook/hardening-safety.ts'
import type { CasePlan } from '../hardening/case-plan.ts'
import type { PlatingPlan } from '../plating/plating-plan.ts'
import type { StockEntry } from '../stock/stock.ts'
import {
  arrivingSizes,
  identity,
  listed,
  type OrderedOperation,
  type OrderField,
  type OrderFigures,
  type OrderSource,
  sentence,
} from './outside-order.ts'
import { platedArrival, platedIn, portEdges } from './plated-honing-order.ts'

/** Grinding on an axis farther off than this is stopped whatever the stock, radial. Common practice, no source. */
const STOP_ECCENTRICITY = 0.03
/** What setting on the unground surface reaches. Common practice, no source. */
const SET_TRUE = 0.005

/** The order to the grinder or honer, thirteen points. Common practice, no source. */
export function grindingOrder(
  plan: OrderSource,
  operation: OrderedOperation,
  figures: OrderFigures,
): readonly OrderField[] {
  const entries = plan.stock.filter(entry => entry.operation === operation.number)
  const hone = operation.process === 'hone'
  const plated = platedIn(plan, operation)
  const cased = plated ? undefined : plan.case
  return [
    { label: 'Condition on arrival', text: [...identity(plan), ...arrival(plan, plated, operation, figures)] },
    {
      label: 'Datums and set-up',
      text: [
        `${operation.holding}.`,
        ...(operation.locatedBy.length > 0 ? [`Locate by ${listed(operation.locatedBy)}.`] : []),
        ...(hone || !cased ? [] : ['Set on the surface as hardened or as ground, never on old centres.']),
      ],
    },
    { label: 'Finish sizes', text: finish(plan, operation, entries, figures) },
    { label: 'Stock', text: stock(entries, figures) },
    { label: 'Take no more than', text: most(entries, figures, plated ? 'plating' : cased ? 'case' : undefined) },
    {
      label: 'Eccentricity',
      text: hone ? ['A hone follows the bore: it corrects no position.'] : eccentricity(entries, figures),
    },
    {
      label: hone ? 'Stones and oil' : 'Wheel and coolant',
      text: plated ? [`${sentence(plated.honedWith)}.`] : tool(hone, cased),
    },
    { label: 'Port edges', text: portEdges(plan, operation, plated, figures) },
    { label: 'Burn and cracks', text: burn(cased, hone) },
    {
      label: 'Report',
      text: [
        'Each piece before and after, by its number: least and most stock found, least and most taken off a side, finished sizes.',
      ],
    },
    {
      label: 'Packing',
      text: ['Demagnetised, clean, oiled; each piece in its own sleeve, stood on end, never stacked.'],
    },
    {
      label: 'Set-up piece',
      text: [
        cased
          ? 'Set up on the piece that is marked for it. The coupon is ground to the same depth and read: it decides in a dispute.'
          : 'Set up on the piece that is marked for it.',
      ],
    },
    {
      label: plated ? 'Short of plating or size' : 'Short of case or size',
      text: [
        cased
          ? 'A piece with less case or hardness than asked, or that does not clean up, is reported and kept apart, not shipped as good.'
          : plated
            ? `A piece with less than ${figures.length(plated.asked.least)} ${figures.unit} of plating left a side, that does not clean up or flakes, is reported and kept apart, not shipped as good.`
            : 'A piece that does not clean up, or is off size, is reported and kept apart, not shipped as good.',
      ],
    },
  ]
}

export const grindingCautions = (plan: OrderSource, operation: OrderedOperation): readonly string[] => [
  ...GRINDING_SAFETY,
  ...(platedIn(plan, operation) ? [PLATED_DUST] : []),
]

function arrival(
  plan: OrderSource,
  plated: PlatingPlan | undefined,
  { number, surfaces, locatedBy }: OrderedOperation,
  figures: OrderFigures,
): readonly string[] {
  const { length, unit } = figures
  const planned = plan.case
  const arriving = arrivingSizes(plan, number, figures, [...surfaces, ...locatedBy])
  return [
    ...(planned
      ? [
          `${planned.process.charAt(0).toUpperCase()}${planned.process.slice(1)}: ordered ${length(planned.ordered.least, 2)} to ${length(planned.ordered.most, 2)} ${unit} ${planned.order?.term ?? 'deep'}, surface about ${fixed(planned.surfaceHardness, 0)} HV. The hardener's certificate with the depth measured comes with the parts.`,
        ]
      : [`${plan.material.grade}, not hardened.`]),
    ...(plated ? [platedArrival(plated, figures)] : []),
    ...(arriving.length > 0 ? [`Sizes on arrival: ${arriving.join('; ')}.`] : []),
    'Measure each piece on arrival, 4 angles in 2 planes, by its number.',
  ]
}

function finish(
  plan: OrderSource,
  { number, sizes, surfaces }: OrderedOperation,
  entries: readonly StockEntry[],
  { length, limits, unit }: OrderFigures,
): readonly string[] {
  const kind = (feature: string) => entries.find(({ surface }) => surface === feature)?.kind
  const size = (held: OrderedOperation['sizes'][number]) => {
    const order = kind(held.feature) === 'bore' || held.measure === 'depth' ? 'hole' : 'shaft'
    const rough = held.roughness === undefined ? '' : `, Ra ${held.roughness} µm`
    const name =
      held.measure === 'diameter'
        ? `${held.feature} Ø`
        : held.feature === held.measure
          ? held.feature
          : `${held.feature} ${held.measure}`
    return `${name} ${limits(held, order, held.places)} ${unit}${rough}.`
  }
  const form = plan.inspection.characteristics.filter(
    ({ operation, lower, upper, unit }) =>
      operation === number && lower === undefined && upper !== undefined && unit === 'mm',
  )
  return [
    ...sizes.filter(({ feature }) => surfaces.includes(feature)).map(size),
    ...form.map(({ name, upper = 0 }) => `${name} not over ${length(upper)} ${unit}.`),
  ]
}

function stock(entries: readonly StockEntry[], { length, unit }: OrderFigures): readonly string[] {
  return [
    ...entries.map(
      ({ surface, onDiameter, perSide }) =>
        `${surface}: ${length(onDiameter.nominal / 2)} ${unit} a side in the middle, ${length(perSide.least)} to ${length(perSide.most)} at the worst places; ${length(perSide.needed)} must go for it to clean up.`,
    ),
    'Write down the stock found before starting.',
  ]
}

const STOPS = {
  case: 'Stop and ring where more would have to go: the case is measured in tenths, and the hardest of it goes first.',
  plating:
    'Stop and ring where more would have to go: the layer is measured in hundredths, and the base shows under it.',
} as const

function most(
  entries: readonly StockEntry[],
  { length, unit }: OrderFigures,
  under: keyof typeof STOPS | undefined,
): readonly string[] {
  return [
    ...entries.map(({ surface, perSide }) => `${surface}: ${length(perSide.most)} ${unit} a side, at any place.`),
    under ? STOPS[under] : 'Stop and ring where more would have to go, or where it does not clean up.',
  ]
}

/** The set-up may be off by what it is planned for and by what the smaller margin has to spare, never over the usual stop. */
function eccentricity(entries: readonly StockEntry[], { length, unit }: OrderFigures): readonly string[] {
  const limit = ({ eccentricity, margin }: StockEntry) =>
    Math.min(
      STOP_ECCENTRICITY,
      eccentricity + Math.max(0, Math.min(margin.cleanUp, margin.case ?? Number.POSITIVE_INFINITY)),
    )
  return [
    `Set true within ${length(SET_TRUE)} ${unit} at both ends; a dial also shows half of the ovality: average it out.`,
    ...entries
      .filter(({ kind }) => kind !== 'face')
      .map(
        entry =>
          `${entry.surface}: planned for ${length(entry.eccentricity)} ${unit} off axis, radial. Stop and ring over ${length(limit(entry))}.`,
      ),
  ]
}

function tool(hone: boolean, planned: CasePlan | undefined): readonly string[] {
  if (hone)
    return [
      `${planned ? 'Stones for hardened steel' : 'Stones for the bore’s material'}, honing oil in plenty. No ball hone over ports.`,
    ]
  return [
    planned
      ? 'Aluminium oxide or CBN, soft grade, sharp and freshly dressed. Plenty of coolant, slow infeed, spark out. No dry touch-up, at the ports least of all.'
      : 'Sharp, freshly dressed wheel, plenty of coolant, spark out. No dry touch-up.',
  ]
}

/** The temper etch's own standard leaves nitrided surfaces out (ISO 14104:2017, scope). */
function burn(planned: CasePlan | undefined, hone: boolean): readonly string[] {
  const nitrided = planned?.order?.term === 'NHD'
  const crack = 'Fluorescent magnetic particles on every piece, then demagnetise and clean; reject any crack.'
  if (!planned || hone) return ['No colour of burning, looked at ×10.', ...(planned ? [crack] : [])]
  return [
    'No colour of burning, looked at ×10; a burn may be polished over at spark-out.',
    crack,
    nitrided
      ? 'No temper etch: its standard leaves nitrided parts out. Compare by Barkhausen noise with a good and a burnt piece where you have it.'
      : 'Temper etch to ISO 14104 after grinding, before any honing; agree the class.',
  ]
}
