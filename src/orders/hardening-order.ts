import { fixed } from '../figures.ts'
import { hardeningSafety } from '../handbook/hardening-safety.ts'
import { stopOffsFor } from '../handbook/stop-off.ts'
import type { CaseOrder, CasePlan } from '../hardening/case-plan.ts'
import type { Spread } from '../limits.ts'
import {
  arrivingSizes,
  firstCuts,
  identity,
  listed,
  type OrderedOperation,
  type OrderField,
  type OrderFigures,
  type OrderSource,
} from './outside-order.ts'

/** A scatter about the mean that a German trade committee lists for depths of 0.25 to 0.75 mm, either way. */
const USUAL_SCATTER = 0.15

/**
 * The order to the heat treater, thirteen points. It states requirements; the treater chooses the cycle. The state as
 * hardened and the state after finishing stand apart. Common practice, no source, but for the limits' own sources.
 */
export function hardeningOrder(
  plan: OrderSource,
  operation: OrderedOperation,
  figures: OrderFigures,
): readonly OrderField[] {
  const planned = plan.case
  if (!planned) return []
  const { order } = planned
  return [
    { label: 'Part', text: [...identity(plan), 'One heat in a charge: do not mix heats.'] },
    {
      label: 'Material',
      text: [
        `${plan.material.grade}.`,
        'The bar certificate with analysis, cast and heat treatment goes with the parts.',
      ],
    },
    { label: 'Condition on arrival', text: condition(planned, order) },
    { label: 'Process allowed', text: processAllowed(planned, order) },
    { label: 'Result', text: [...asHardened(planned, order, figures), ...afterFinishing(planned, order, figures)] },
    { label: order?.term === 'NHD' ? 'Compound layer' : 'Skin', text: layer(plan, planned, order, figures) },
    { label: 'Zones', text: zones(plan, operation, planned, order) },
    { label: 'Coupon', text: coupon(plan, order, figures) },
    { label: 'Sizes and distortion', text: sizes(plan, operation, planned, figures) },
    { label: 'Fixturing', text: fixturing(operation, order) },
    {
      label: 'Cleaning and packing',
      text: [
        `The parts come metal-clean, dry and demagnetised, edges broken ${figures.length(0.3, 1)} to ${figures.length(0.5, 1)} ${figures.unit}. Degrease again before loading; no silicone, sulphur or chlorine.`,
        ...(plan.plating
          ? [
              `The edges of ${plan.plating.surface} come chamfered ${figures.length(plan.plating.chamfer.least, 1)} ${figures.unit} or more: it is plated later.`,
            ]
          : []),
        `Return them dry and preserved, each by itself, nothing metal to metal${plan.ports.length > 0 ? ', nothing on a port edge' : ''}.`,
      ],
    },
    { label: 'Certificate', text: certificate(order) },
    {
      label: 'Nonconformance',
      text: [
        'Hold the charge and ring before anything else is done.',
        'No second treatment, no straightening and no stripping without our consent.',
      ],
    },
  ]
}

/** The usual cautions of the process. */
export const hardeningCautions = (plan: OrderSource): readonly string[] =>
  plan.case ? hardeningSafety(plan.case.process) : []

function condition({ coreHardness }: CasePlan, order: CaseOrder | undefined): readonly string[] {
  const temper = order?.temper
  return [
    temper === undefined
      ? 'Condition as the bar certificate says.'
      : `Hardened and tempered at ${fixed(temper, 0)} °C by the bar certificate, core about ${fixed(order?.barHardness ?? coreHardness, 0)} HV.`,
    ...(order?.stressRelief === undefined
      ? []
      : [
          `Stress relieved at ${fixed(order.stressRelief, 0)} °C, then finish machined. No oil, scale or skin left on.`,
        ]),
  ]
}

function processAllowed({ process, temperature, time }: CasePlan, order: CaseOrder | undefined): readonly string[] {
  const nitriding = order?.term === 'NHD'
  return [
    `${process.charAt(0).toUpperCase()}${process.slice(1)}. Another process only with our consent.`,
    ...(nitriding
      ? [
          `No part over ${fixed(temperature, 0)} °C at any time: the sizes are planned for it${order?.temper === undefined ? '' : `, and the core is tempered at ${fixed(order.temper, 0)} °C`}.`,
        ]
      : []),
    ...(time.nominal > 0
      ? [
          `For the calendar only: we reckon about ${fixed(time.nominal, nitriding ? 0 : 1)} h at temperature (${fixed(time.least, nitriding ? 0 : 1)} to ${fixed(time.most, nitriding ? 0 : 1)}). The treater chooses and confirms the cycle.`,
        ]
      : ['The treater chooses and confirms the cycle.']),
  ]
}

function asHardened(
  { ordered, definition, surfaceHardness, coreHardness }: CasePlan,
  order: CaseOrder | undefined,
  { length, unit }: OrderFigures,
): readonly string[] {
  const width = ordered.most - ordered.least
  const tight = order?.term === 'NHD' && ordered.least >= 0.25 && width < 2 * USUAL_SCATTER
  return [
    `As hardened: surface not under ${fixed(surfaceHardness, 0)} ${order?.surfaceLoad ?? 'HV1'}, core about ${fixed(coreHardness, 0)} HV10.`,
    `As hardened: ${order?.term ?? 'depth'} ${length(ordered.least, 2)} +${length(width, 2)} -0 ${unit}, from the surface as treated.`,
    `${order?.term ?? 'Depth'}: ${definition}. Quote no hardness of the case in HRC.`,
    ...(tight
      ? [
          `The band is closer than the usual scatter of ±${length(USUAL_SCATTER, 2)} ${unit} about the mean: confirm it before the charge, or say what you hold.`,
        ]
      : []),
  ]
}

function afterFinishing(
  { asked }: CasePlan,
  order: CaseOrder | undefined,
  { length, unit }: OrderFigures,
): readonly string[] {
  const hardness = order?.hardness === undefined ? '' : ` and ${fixed(order.hardness, 0)} HV`
  return [
    `After our finishing, for information: ${length(asked, 2)} ${unit} of case${hardness} must be left where most comes off.`,
  ]
}

function layer(
  plan: OrderSource,
  { compoundLayer }: CasePlan,
  order: CaseOrder | undefined,
  { length, unit }: OrderFigures,
): readonly string[] {
  if (order?.term !== 'NHD') return ['No scale and no decarburised skin.']
  const ground = firstCuts(plan).map(({ surface }) => surface)
  return [
    `Not over ${length(compoundLayer.most)} ${unit}, dense; report pores.`,
    ground.length > 0 ? `We take it off on ${listed(ground)}. It stays on the other surfaces.` : 'It stays on.',
  ]
}

function zones(
  plan: OrderSource,
  { surfaces }: OrderedOperation,
  { process, treated }: CasePlan,
  order: CaseOrder | undefined,
): readonly string[] {
  const masked = order?.masked ?? []
  const sides = [...(treated?.outside === false ? [] : ['outside']), ...(treated?.bore === false ? [] : ['bore'])]
  const must = surfaces.filter(surface => !masked.includes(surface))
  const methods = stopOffsFor(process).map(({ method }) => method)
  return [
    `Must be treated: ${listed(must.length > 0 ? must : sides)}.`,
    ...(plan.ports.length > 0 ? ['May be treated: the walls and edges of the ports.'] : []),
    ...(masked.length > 0
      ? [
          `Must not be treated: ${listed(masked)}. Masked zones are exempt from the limits of depth and layer.`,
          `Mask all round, never half of a circumference${methods.length > 0 ? `: ${methods.join(', ')}, as agreed` : ', by a method that is agreed'}.`,
        ]
      : ['Nothing is masked.']),
  ]
}

function coupon(plan: OrderSource, order: CaseOrder | undefined, { length, unit }: OrderFigures): readonly string[] {
  const [side, height] = [length(15, 0), length(10, 0)]
  return [
    `A coupon of the same heat, heat treatment and roughness goes with the charge, marked with batch ${plan.batch.number}: at least ${side} × ${side} × ${height} ${unit}, in the worst place of the charge.`,
    order?.term === 'NHD'
      ? 'Section it and read the traverse to ISO 18203. Return the coupon: we grind it to the same depth and read it again.'
      : 'Section it and read the traverse to ISO 18203. Return the coupon.',
  ]
}

function sizes(
  plan: OrderSource,
  { number }: OrderedOperation,
  { growth }: CasePlan,
  figures: OrderFigures,
): readonly string[] {
  const { length, unit } = figures
  const spread = ({ least, nominal, most }: Spread) =>
    `${length(nominal)} ${unit} a side, ${length(least)} to ${length(most)}`
  const arriving = arrivingSizes(plan, number, figures)
  const form = firstCuts(plan)
    .filter(({ kind, form }) => kind !== 'face' && form > 0)
    .map(({ surface, form }) => `${surface} ${length(form)} ${unit}`)
  return [
    ...(arriving.length > 0 ? [`The parts arrive at: ${arriving.join('; ')}.`] : []),
    `We plan for the outside growing ${spread(growth.outside)}${plan.ladders.every(({ kind }) => kind !== 'bore') ? '' : `, and the bore closing ${spread(growth.bore)}`}.`,
    ...(form.length > 0 ? [`Out of true, radial, round and straight together, not over: ${form.join(', ')}.`] : []),
    'Measure before and after, 4 angles in 2 planes, on the pieces that we mark; report both. The first figures set our sizes for the next batch.',
  ]
}

function fixturing({ holding }: OrderedOperation, order: CaseOrder | undefined): readonly string[] {
  return [
    `${holding}.`,
    'No wire and no hook on a bore or a seat; thermocouple at the parts.',
    ...(order?.term === 'NHD'
      ? ['No copper, brass or zinc in the charge: tags and wires of nickel or stainless steel.']
      : []),
  ]
}

function certificate(order: CaseOrder | undefined): readonly string[] {
  const nitriding = order?.term === 'NHD'
  return [
    `Traverse of 10 points or more with depth, load and standard, and the definition of ${order?.term ?? 'depth'} used.`,
    ...(nitriding
      ? ['Micrograph at ×500 or more, etchant named; thickness of the compound layer, and its phase if known.']
      : []),
    'Hardness of surface and core with load; sizes before and after; log of the cycle with charge number.',
  ]
}
