import { platingSafety } from '../handbook/hardening-safety.ts'
import { BAKE_SOURCE } from '../handbook/hydrogen-bake.ts'
import type { PlatingPlan } from '../plating/plating-plan.ts'
import { surfaceExpected } from './case-words.ts'
import type { Drafted } from './drafted.ts'
import { finishedReturns, finishedSizes } from './finished.ts'
import type { Quantity, Returned, Standing } from './order.ts'
import type { OrderSource, Visit } from './order-source.ts'
import { celsius, hardness, hours, length } from './quantity.ts'
import { type Draft, listed, point, say, sentence } from './say.ts'

/** By which a heat before plating is chosen for the hardness of the base. */
const RELIEF = 'ASTM B849 or ISO 9587'
const AS_PLATED = 'as plated'
const HONED = 'honed'

/**
 * The order to the plater with the heats that go with the plating. It states requirements; the plater chooses bath and
 * cycle. The layer as plated and the layer after honing stand apart. Common practice, no source, but for the bake.
 */
export function platingOrder(visit: Visit): Drafted {
  const { source, operations } = visit
  const { plating: planned } = source
  if (!planned) return { points: [], finish: [], returns: [], cautions: [] }
  const finish = finishedSizes(source, operations)
  return {
    points: [
      ...condition(source, planned),
      ...point(
        'Plating',
        `${sentence(planned.process)} on ${planned.surface}, and nowhere else. Another process only with our consent.`,
      ),
      ...before(planned),
      ...asPlated(planned),
      ...afterHoning(planned),
      ...edges(source, planned),
      ...masking(source, planned),
      ...relief(planned),
      ...bake(planned),
      ...layer(planned),
      ...point(
        'Certificate and packing',
        'Thickness of every piece by its number, by the difference of the bore; bath and load number.',
        planned.bake.hours > 0 && 'Chart of the bake, with the time the parts left the bath.',
        'Neutralised, rinsed, dry and preserved; each piece by itself, stood on end, nothing in the bore.',
      ),
      ...point(
        'Nonconformance',
        'Hold the load and ring before anything else is done: under size, blisters, bare or burnt spots, a late bake.',
        'No stripping, no second plating and no grinding without our consent.',
      ),
    ],
    finish,
    returns: returnsOf(source, planned, finish),
    cautions: platingSafety(planned.process, planned.bake.hours > 0, source.ported),
  }
}

/** Of the layer, what must stay after honing. */
export const layerLeft = ({ asked }: PlatingPlan, standing: Standing): Quantity =>
  length(standing, 'plating a side', asked, { state: HONED })

/** At any place but the edges. */
export const layerAsPlated = ({ layer: { least, nominal, most } }: PlatingPlan, standing: Standing): Quantity =>
  length(standing, 'plating a side', { value: nominal, least, most }, { state: AS_PLATED })

function condition({ grade, case: planned }: OrderSource, { base }: PlatingPlan): readonly Draft[] {
  const bar =
    base.hardness === undefined ? undefined : hardness('HV')('given', 'hardness of the bar', { value: base.hardness })
  const temper = base.temper === undefined ? undefined : celsius('given', 'temper of the bar', { value: base.temper })
  return point(
    'Material and condition',
    bar && temper
      ? say`${grade}, ${bar}, tempered at ${temper}. The bar certificate goes with the parts.`
      : bar
        ? say`${grade}, ${bar}. The bar certificate goes with the parts.`
        : `${grade}. The bar certificate goes with the parts.`,
    planned
      ? say`${sentence(planned.process)}: surface about ${surfaceExpected(planned, 'given')} before any grinding. Confirm that you plate it so.`
      : 'No case: the hardness of the bar throughout.',
  )
}

const before = ({ surface }: PlatingPlan): readonly Draft[] =>
  point(
    'Size before',
    `The ${surface} comes honed to its final form: the layer copies what it is laid on.`,
    'Measure each piece before plating, by its number.',
    'Masked surfaces keep the sizes that they come with.',
  )

const asPlated = (planned: PlatingPlan): readonly Draft[] =>
  point(
    'As plated',
    `The size of the ${planned.surface}, read after the bake, decides.`,
    say`We expect a layer of ${layerAsPlated(planned, 'expected')} a side, at any place but the edges.`,
  )

const afterHoning = (planned: PlatingPlan): readonly Draft[] => {
  const { finished, honeStock, surface, left } = planned
  const size = { least: finished.lower, most: finished.upper }
  return point(
    'After our honing',
    say`For information: ${surface} Ø ${length('planned', `${surface} Ø`, size, { state: HONED, written: 'hole' })}, ${length('planned', 'hone stock a side', { value: honeStock })} a side coming off in the middle.`,
    planned.asked.most === undefined
      ? say`${layerLeft(planned, 'planned')} a side or more must be left; we reckon with ${length('planned', 'plating a side reckoned with', { least: left.least, most: left.most }, { state: HONED })}.`
      : say`${layerLeft(planned, 'planned')} a side must be left; we reckon with ${length('planned', 'plating a side reckoned with', { least: left.least, most: left.most }, { state: HONED })}.`,
  )
}

const edges = ({ ported }: OrderSource, { surface, chamfer }: PlatingPlan): readonly Draft[] =>
  point(
    'Edges',
    say`${ported ? 'Every port edge and both ends' : 'Both ends'} of ${surface} come chamfered ${length('given', 'chamfer for plating', chamfer, { places: 1 })}. Send back a piece with a sharp edge.`,
    'No nodules, no loose build-up: shield the edges where you need to, and tell us where it is thick.',
  )

const masking = ({ ported }: OrderSource, { masked }: PlatingPlan): readonly Draft[] =>
  point(
    'Masking',
    `Mask: ${listed(masked)}. No layer on the end faces.`,
    ported && 'The walls of the ports may be plated as far as the bath throws.',
    'No contact and no rack mark in the bore.',
  )

const relief = ({ relieved }: PlatingPlan): readonly Draft[] =>
  point(
    'Before plating',
    relieved
      ? `Stress relieve before plating, to ${RELIEF} for this hardness, in this visit and well below the temper.`
      : 'No stress relief before plating.',
    'Activate and etch as the base needs; no acid longer than it takes.',
  )

const bakeTime = ({ bake }: PlatingPlan): Quantity => hours('asked', 'bake', { least: bake.hours })
const bakeTemperature = ({ bake: { least, most } }: PlatingPlan): Quantity =>
  celsius('asked', 'bake temperature', { least, most })
const bakeBegun = ({ bake }: PlatingPlan): Quantity =>
  hours('asked', 'bake begun after leaving the bath', { most: bake.startWithin })

const bake = (planned: PlatingPlan): readonly Draft[] =>
  planned.bake.hours > 0
    ? point(
        'Bake',
        say`Bake ${bakeTime(planned)} or more at ${bakeTemperature(planned)}, begun within ${bakeBegun(planned)} of leaving the bath (${BAKE_SOURCE}).`,
        'The standard that you work to decides where it asks for more. A bake lessens the danger; it does not prove its absence.',
      )
    : point('Bake', 'No bake is asked for. Ring if your standard asks for one.')

const layerHardness = ({ hardness: { asked, usual, testLoad } }: PlatingPlan): Quantity =>
  asked === undefined
    ? hardness('HV')(
        'expected',
        'hardness of the layer',
        usual.least === usual.most ? { value: usual.least } : { least: usual.least, most: usual.most },
      )
    : hardness(testLoad)('asked', 'hardness of the layer', { least: asked })

const layer = (planned: PlatingPlan): readonly Draft[] =>
  point(
    'Layer',
    'Sound and well bonded: no blister, flake, crack through to the base, bare spot or pore to be seen ×10, before or after the bake.',
    planned.hardness.asked === undefined
      ? say`Hardness as the process gives, ${layerHardness(planned)} expected: say what you hold.`
      : say`Hardness not under ${layerHardness(planned)}, or a lower load, read on a test piece plated in the load.`,
  )

function returnsOf(
  { batch }: OrderSource,
  planned: PlatingPlan,
  finish: Drafted['finish'],
): readonly Omit<Returned, 'number'>[] {
  const load = (one: Quantity) => ({ ...one, of: 'load', readings: 1 }) as const
  const piece = (one: Quantity) => ({ ...one, of: 'piece', readings: batch.start }) as const
  return [
    piece(length('expected', `${planned.surface} Ø`, {}, { state: 'before' })),
    ...finishedReturns(finish),
    piece(layerAsPlated(planned, 'expected')),
    ...(planned.hardness.asked === undefined ? [] : [load(layerHardness(planned))]),
    ...(planned.bake.hours > 0 ? [bakeTime(planned), bakeTemperature(planned), bakeBegun(planned)].map(load) : []),
  ]
}
