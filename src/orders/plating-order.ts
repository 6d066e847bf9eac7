import { placesFor } from '../decimal-places.ts'
import { fixed } from '../figures.ts'
import { platingSafety } from '../handbook/hardening-safety.ts'
import { BAKE_SOURCE } from '../handbook/hydrogen-bake.ts'
import type { PlatingPlan } from '../plating/plating-plan.ts'
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

/** Of the heats that go with the plating, how they are spoken of in its order. */
export const RELIEF = 'ASTM B849 or ISO 9587'

/**
 * The order to the plater, thirteen points. It states requirements; the plater chooses bath and cycle. The layer as plated and
 * the layer after honing stand apart. Common practice, no source, but for the bake.
 */
export function platingOrder(
  plan: OrderSource,
  operation: OrderedOperation,
  figures: OrderFigures,
): readonly OrderField[] {
  const planned = plan.plating
  if (!planned) return []
  const { unit, length, limits } = figures
  const range = ({ least, most }: { readonly least: number; readonly most: number }) =>
    `${length(least)} to ${length(most)} ${unit}`
  const bore = (size: PlatingPlan['before']) => `${planned.surface} Ø ${limits(size, 'hole', placesFor(size))} ${unit}`
  return [
    { label: 'Part', text: identity(plan) },
    { label: 'Material and condition', text: condition(plan, planned) },
    {
      label: 'Plating',
      text: [
        `${sentence(planned.process)} on ${planned.surface}, and nowhere else. Another process only with our consent.`,
      ],
    },
    {
      label: 'Size before',
      text: [
        `${bore(planned.before)}, honed to its final form: the layer copies what it is laid on.`,
        'Measure each piece before plating, by its number: 4 angles in 2 planes.',
        ...others(plan, operation, planned, figures),
      ],
    },
    {
      label: 'Size as plated',
      text: [
        `As plated: ${bore(planned.plated)}, after the bake. This size decides.`,
        `As plated: ${length(planned.layer.nominal)} ${unit} a side in the middle, ${range(planned.layer)} at any place but the edges.`,
      ],
    },
    {
      label: 'After our honing',
      text: [
        `After our honing, for information: ${bore(planned.finished)}, ${length(planned.honeStock)} ${unit} a side coming off in the middle.`,
        `After our honing, for information: ${asked(planned, figures)} must be left; we reckon ${range(planned.left)}.`,
      ],
    },
    {
      label: 'Edges',
      text: [
        `${plan.ports.length > 0 ? 'Every port edge and both ends' : 'Both ends'} of ${planned.surface} come chamfered ${length(planned.chamfer.least, 1)}${planned.chamfer.most > planned.chamfer.least ? ` to ${length(planned.chamfer.most, 1)}` : ''} ${unit}. Send back a piece with a sharp edge.`,
        'No nodules, no loose build-up: shield the edges where you need to, and tell us where it is thick.',
      ],
    },
    {
      label: 'Masking',
      text: [
        `Mask: ${listed(planned.masked)}. The end faces are masked: no layer on them.`,
        ...(plan.ports.length > 0 ? ['The walls of the ports may be plated as far as the bath throws.'] : []),
        'No contact and no rack mark in the bore.',
      ],
    },
    { label: 'Before plating', text: relief(planned) },
    { label: 'Bake', text: bake(planned) },
    { label: 'Layer', text: layer(planned) },
    {
      label: 'Certificate and packing',
      text: [
        'Thickness of every piece by its number, by the difference of the bore; bath and load number.',
        ...(planned.bake.hours > 0 ? ['Chart of the bake, with the time the parts left the bath.'] : []),
        'Neutralised, rinsed, dry and preserved; each piece by itself, stood on end, nothing in the bore.',
      ],
    },
    {
      label: 'Nonconformance',
      text: [
        'Hold the load and ring before anything else is done: under size, blisters, bare or burnt spots, a late bake.',
        'No stripping, no second plating and no grinding without our consent.',
      ],
    },
  ]
}

export const platingCautions = ({ plating, ports }: OrderSource): readonly string[] =>
  plating ? platingSafety(plating.process, plating.bake.hours > 0, ports.length > 0) : []

/** `0.056 mm a side or more`, or the two limits. */
export function asked({ asked: { least, most } }: PlatingPlan, { length, unit }: OrderFigures): string {
  return most === undefined
    ? `${length(least)} ${unit} a side or more`
    : `${length(least)} to ${length(most)} ${unit} a side`
}

function condition({ material, case: planned }: OrderSource, { base }: PlatingPlan): readonly string[] {
  const bar = [
    ...(base.hardness === undefined ? [] : [`${fixed(base.hardness, 0)} HV`]),
    ...(base.temper === undefined ? [] : [`tempered at ${fixed(base.temper, 0)} °C`]),
  ]
  return [
    `${[material.grade, ...bar].join(', ')}. The bar certificate goes with the parts.`,
    planned
      ? `${sentence(planned.process)}: surface about ${fixed(planned.surfaceHardness, 0)} HV, core about ${fixed(planned.coreHardness, 0)} HV. Confirm that you plate it so.`
      : 'No case: the hardness of the bar throughout.',
  ]
}

/** What is masked keeps its size: told, so that it can be checked. */
function others(
  plan: OrderSource,
  { number }: OrderedOperation,
  { surface }: PlatingPlan,
  figures: OrderFigures,
): readonly string[] {
  const named = plan.ladders.map(ladder => ladder.surface).filter(name => name !== surface)
  const sizes = arrivingSizes(plan, number, figures, named)
  return sizes.length > 0 ? [`Masked surfaces arrive at, and keep: ${sizes.join('; ')}.`] : []
}

function relief({ relieved, base }: PlatingPlan): readonly string[] {
  return [
    relieved
      ? `Stress relieve before plating, to ${RELIEF} for this hardness, in the same visit and well below the temper${base.temper === undefined ? '' : ` of ${fixed(base.temper, 0)} °C`}.`
      : 'No stress relief before plating.',
    'Activate and etch as the base needs; no acid longer than it takes.',
  ]
}

function bake({ bake: { hours, least, most, startWithin } }: PlatingPlan): readonly string[] {
  return hours > 0
    ? [
        `Bake ${fixed(hours, 0)} h or more at ${fixed(least, 0)} to ${fixed(most, 0)} °C, begun within ${fixed(startWithin, 0)} h of leaving the bath (${BAKE_SOURCE}).`,
        'The standard that you work to decides where it asks for more. A bake lessens the danger; it does not prove its absence.',
      ]
    : ['No bake is asked for. Ring if your standard asks for one.']
}

function layer({ hardness: { asked: least, usual, testLoad } }: PlatingPlan): readonly string[] {
  const reached =
    usual.least === usual.most
      ? `about ${fixed(usual.least, 0)}`
      : `${fixed(usual.least, 0)} to ${fixed(usual.most, 0)}`
  return [
    'Sound and well bonded: no blister, flake, crack through to the base, bare spot or pore to be seen ×10, before or after the bake.',
    least === undefined
      ? `Hardness as the process gives, ${reached} HV: say what you hold.`
      : `Hardness not under ${fixed(least, 0)} HV, read with ${testLoad} at most on a test piece plated in the load.`,
  ]
}
