import { EDGE_BREAK } from '../handbook/edge-break.ts'
import { hardeningSafety } from '../handbook/hardening-safety.ts'
import { stopOffsFor } from '../handbook/stop-off.ts'
import type { CasePlan } from '../hardening/case-plan.ts'
import { depthOrdered, isNitrided, surfaceAsked, surfaceExpected } from './case-words.ts'
import { distortion, distortionReadings, type Forms, formAsked } from './distortion-asked.ts'
import type { Drafted } from './drafted.ts'
import { coreExpected, layer, layerAsked, processAllowed, result } from './hardening-result.ts'
import { oneHeat } from './identity.ts'
import type { Quantity, Returned } from './order.ts'
import type { OrderedOperation, OrderSource, Visit } from './order-source.ts'
import { celsius, count, hardness, length } from './quantity.ts'
import { boreFromQuench, caseTempered, quenchAsked } from './quench-words.ts'
import { type Draft, listed, point, say, sentence } from './say.ts'

/** Of a coupon, at least: common practice, no source. */
const COUPON = { side: 15, thickness: 10 } as const
/** Points of a traverse, at least (a coating-engineering course on nitriding orders). */
const TRAVERSE = 10
/**
 * The order to the heat treater, thirteen points. It states requirements; the treater chooses the cycle. The state as
 * hardened and the state after finishing stand apart. Common practice, no source, but for the limits' own sources.
 */
export function hardeningOrder(visit: Visit): Drafted {
  const { source, operations } = visit
  const planned = source.case
  const [operation] = operations
  if (!planned || !operation) return { points: [], finish: [], returns: [], cautions: [] }
  const forms = formAsked(source)
  const { quenched } = planned
  return {
    points: [
      ...oneHeat(visit),
      ...condition(planned),
      ...processAllowed(planned),
      ...(quenched ? [...quenchAsked(source, quenched.quench), ...caseTempered(quenched)] : []),
      ...result(planned),
      ...layer(source, planned),
      ...zones(source, operation, planned),
      ...coupon(source, planned),
      ...distortion(source, planned, forms),
      ...(quenched ? boreFromQuench(source, quenched.quench) : []),
      ...fixturing(operation, planned),
      ...cleaning(source),
      ...certificate(planned),
      ...point(
        'Nonconformance',
        `Hold the ${byCoil(planned) ? 'pieces' : 'charge'} and ring before anything else is done.`,
        'No second treatment, no straightening and no stripping without our consent.',
      ),
    ],
    finish: [],
    returns: returnsOf(source, planned, forms),
    cautions: hardeningSafety(planned.process),
  }
}

function condition({ coreHardness, order }: CasePlan): readonly Draft[] {
  const temper = order?.temper
  const bar = hardness('HV')('given', 'hardness of the bar', { value: order?.barHardness ?? coreHardness })
  return point(
    'Condition on arrival',
    temper === undefined
      ? 'Condition as the bar certificate says.'
      : say`Hardened and tempered at ${celsius('given', 'temper of the bar', { value: temper })} by the bar certificate, to ${bar}.`,
    order?.stressRelief !== undefined &&
      say`Stress relieved at ${celsius('given', 'stress-relieving temperature, aim', { value: order.stressRelief })}, then finish machined.`,
  )
}

/** Hardened one piece after the other, by a coil that is set to the zones: no furnace, no charge, nothing masked. */
const byCoil = ({ order }: CasePlan): boolean => order?.term === 'SHD'

/** Common practice, no source. */
function fixturing({ holding }: OrderedOperation, planned: CasePlan): readonly Draft[] {
  if (byCoil(planned))
    return point(
      'Coil and quench',
      'One piece after the other, turned on its axis, the gap to the coil even all round; the pattern closes on itself without a soft seam.',
      'Temper right after the quench, before a piece stands overnight: untempered it cracks.',
    )
  return point(
    'Fixturing',
    `${sentence(holding)}.`,
    'No wire and no hook on a bore or a seat; thermocouple at the parts.',
    isNitrided(planned) && 'No copper, brass or zinc in the charge: tags and wires of nickel or stainless steel.',
  )
}

function zones({ ported }: OrderSource, { surfaces }: OrderedOperation, planned: CasePlan): readonly Draft[] {
  const { process, order } = planned
  const masked = order?.masked ?? []
  const faces = surfaces.filter(surface => surface === 'top' || surface === 'bottom')
  const methods = stopOffsFor(process).map(({ method }) => method)
  return point(
    'Zones',
    surfaces.length > 0 && `Must be treated: ${listed(surfaces)}.`,
    ported && 'May be treated: the walls and edges of the ports.',
    faces.length > 0 &&
      `No depth is asked of the end face${faces.length > 1 ? 's' : ''}, ${listed(faces)}: nothing slides there.`,
    ...(byCoil(planned)
      ? masked.length > 0
        ? [`Must stay soft: ${listed(masked)}. Set coil and travel so that the pattern ends clear of them, all round.`]
        : []
      : masked.length > 0
        ? [
            `Must not be treated: ${listed(masked)}. Masked zones are exempt from the limits of depth and layer.`,
            `Mask all round, never half of a circumference${methods.length > 0 ? `: ${methods.join(', ')}, as agreed` : ', by a method that is agreed'}.`,
          ]
        : ['Nothing is masked.']),
  )
}

function coupon({ batch }: OrderSource, planned: CasePlan): readonly Draft[] {
  if (byCoil(planned))
    return point(
      'Coupon',
      `The coupon marked C, of the same heat and the same section as batch ${batch.number}, is hardened first, with the settings of the batch.`,
      'Section it and read it before the others are hardened; return it.',
    )
  const side = length('given', 'side of the coupon', { least: COUPON.side }, { places: 0 })
  const thickness = length('given', 'thickness of the coupon', { least: COUPON.thickness }, { places: 0 })
  return point(
    'Coupon',
    `One of the same heat, heat treatment and roughness goes with the charge, marked with batch ${batch.number}, in the worst place of the charge.`,
    say`At least ${side} square and ${thickness} thick.`,
    isNitrided(planned)
      ? 'Section it and return it: we grind it to the same depth and read it again.'
      : 'Section it and return it.',
  )
}

export function cleaning({ ported, plating, timingBreak }: OrderSource): readonly Draft[] {
  const { least, most } = EDGE_BREAK.beforeHardening
  const chamfer = plating && length('given', 'chamfer for plating', { least: plating.chamfer.least }, { places: 1 })
  return point(
    'Cleaning and packing',
    say`The parts come metal-clean, dry and demagnetised, edges broken ${length('given', 'edges broken', { least, most }, { places: 1 })}.`,
    timingBreak &&
      say`The timing edges of the ports are broken ${length('given', 'timing edges broken', timingBreak, { places: 2 })} only: leave them so.`,
    'Degrease again before loading; no silicone, sulphur or chlorine.',
    plating && chamfer && say`The edges of ${plating.surface} come chamfered ${chamfer} or more: it is plated later.`,
    `Return them dry and preserved, each by itself, nothing metal to metal${ported ? ', nothing on a port edge' : ''}.`,
  )
}

function certificate(planned: CasePlan): readonly Draft[] {
  const term = planned.order?.term ?? 'depth'
  return point(
    'Certificate',
    say`Traverse of the coupon to ISO 18203, ${count('asked', 'points of the traverse', { least: TRAVERSE })} points or more, with load, and the definition of ${term} used.`,
    isNitrided(planned) &&
      'Micrograph at ×500 or more, etchant named; thickness of the compound layer, and its phase if known.',
    `Hardness of surface and core with load; sizes before and after; ${byCoil(planned) ? 'frequency, power and travel as set' : 'log of the cycle with charge number'}.`,
  )
}

function returnsOf(source: OrderSource, planned: CasePlan, forms: Forms): readonly Omit<Returned, 'number'>[] {
  const coupon = (one: Quantity) => ({ ...one, of: 'coupon', readings: 1 }) as const
  return [
    coupon(depthOrdered(planned, 'asked')),
    coupon(surfaceAsked(planned) ?? surfaceExpected(planned)),
    coupon(coreExpected(planned)),
    ...(isNitrided(planned) ? [coupon(layerAsked(planned))] : []),
    ...distortionReadings(source, forms),
  ]
}
