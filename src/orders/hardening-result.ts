import { usualScatter } from '../handbook/case-tolerance.ts'
import type { CasePlan } from '../hardening/case-plan.ts'
import {
  AS_HARDENED,
  depthLeft,
  depthOrdered,
  firstCuts,
  isNitrided,
  surfaceAsked,
  surfaceExpected,
  surfaceLeft,
} from './case-words.ts'
import type { Quantity } from './order.ts'
import type { OrderSource } from './order-source.ts'
import { celsius, hardness, hours, length } from './quantity.ts'
import { type Draft, listed, point, type Said, say, sentence } from './say.ts'

export const coreExpected = ({ coreHardness }: CasePlan): Quantity =>
  hardness('HV10')('expected', 'core hardness', { value: coreHardness }, { state: AS_HARDENED })

export const layerAsked = ({ compoundLayer: { most, kept } }: CasePlan): Quantity =>
  length('asked', 'compound layer', kept === undefined ? { most } : { least: kept, most }, { state: AS_HARDENED })

/** The process, its stages and its ceiling. The cycle is the treater's to choose. */
export function processAllowed(planned: CasePlan): readonly Draft[] {
  const { process, temperature, stages, time, quenched } = planned
  const nitriding = isNitrided(planned)
  const reckoned = { value: time.nominal, least: time.least, most: time.most }
  return point(
    'Process allowed',
    `${sentence(process)}${quenched ? ', quench and temper' : ''}. Another process only with our consent.`,
    nitriding &&
      stages.length > 1 &&
      'In two stages: the second, hotter and leaner, thins the layer. One stage only with our consent.',
    nitriding &&
      say`No part over ${celsius('asked', 'temperature of the parts', { most: temperature })} at any time: the sizes are planned for it.`,
    time.nominal > 0 &&
      say`For the calendar only: we reckon ${hours('planned', 'time at temperature', reckoned, { places: nitriding ? 0 : 1 })} at temperature.`,
    'The treater chooses and confirms the cycle.',
  )
}

/** As hardened, which is asked and expected, and after our finishing, which is for information: two states kept apart. */
export function result(planned: CasePlan): readonly Draft[] {
  const { ordered, definition, order, limitHardness } = planned
  const scatter = isNitrided(planned) ? usualScatter((ordered.least + ordered.most) / 2) : undefined
  const tight = scatter !== undefined && ordered.most - ordered.least < 2 * scatter
  const left = surfaceLeft(planned, 'planned')
  const asked = surfaceAsked(planned)
  return point(
    'Result',
    say`As hardened: ${order?.term ?? 'depth'} ${depthOrdered(planned, 'asked')}, from the surface as treated.`,
    `${order?.term ?? 'Depth'}: ${definition}.`,
    rockwellWords(planned),
    order?.term === 'SHD' &&
      limitHardness !== undefined &&
      say`The depth ends at ${hardness('HV')('asked', 'hardness where the depth ends', { value: limitHardness })}.`,
    asked
      ? say`As hardened: surface not under ${asked}, read on the coupon where ${isNitrided(planned) ? 'the compound layer is polished off' : 'the skin is polished off'}.`
      : say`As hardened: surface ${surfaceExpected(planned)} expected: report it.`,
    say`Core ${coreExpected(planned)} expected: report it.`,
    tight &&
      say`The band is closer than the usual scatter of ±${length('given', 'usual scatter of the depth, either way', { value: scatter }, { places: 2 })} about the mean: confirm it before the charge, or say what you hold.`,
    left
      ? say`After our finishing, for information: ${depthLeft(planned, 'planned')} of case or more and ${left} or more must be left where most comes off.`
      : say`After our finishing, for information: ${depthLeft(planned, 'planned')} of case or more must be left where most comes off.`,
  )
}

/** A cone goes through a nitrided case; another it reads where it is deep enough. */
function rockwellWords({ order, ordered }: CasePlan): string | Said {
  const { rockwell } = order ?? {}
  if (!rockwell) return 'Quote no hardness of the case in HRC.'
  const HRC = hardness('HRC')('given', 'hardness, converted', { value: rockwell.HRC }, { places: 1 })
  const from = length('given', 'least case that bears a reading in HRC', { least: rockwell.from }, { places: 2 })
  return ordered.least >= rockwell.from
    ? say`As hardened the surface may be read in HRC too (${HRC} by conversion): a case of ${from} or more bears the cone. What is asked in HV decides.`
    : say`Quote no hardness of the case in HRC: at ${HRC} the cone wants ${from} of case or more, and reads the core under less.`
}

/** The white layer. */
export function layer(source: OrderSource, planned: CasePlan): readonly Draft[] {
  if (!isNitrided(planned)) return point('Skin', 'No scale and no decarburised skin.')
  const { kept } = planned.compoundLayer
  const ground = [...new Set(firstCuts(source).map(({ surface }) => surface))]
  return point(
    'Compound layer',
    kept === undefined
      ? say`Not over ${layerAsked(planned)}, dense; report pores.`
      : say`${layerAsked(planned)}, dense; report pores. It is kept on what slides, and no more than a polish comes off it.`,
    ground.length > 0 ? `We take it off on ${listed(ground)}. It stays on the other surfaces.` : 'It stays on.',
  )
}
