import type { Band, Surface } from '../band.ts'
import { FINE_GROUND } from '../handbook/distortion.ts'
import { type Limits, toleranceOf } from '../limits.ts'
import type { Part } from '../part/part.ts'
import { measuredFor } from '../shop/measured.ts'
import type { Shop } from '../shop/shop.ts'
import { CRACK_TESTED } from './crack-test.ts'
import { hardeningPurpose } from './hard-tasks.ts'
import { PLATING_HEATS } from './plating-needs.ts'
import { LENGTH_AFTER_QUENCH } from './quenched-length.ts'
import { isRecess } from './running-band.ts'
import { runsAsItComes, turnedLast } from './turned-last.ts'

/**
 * Ra that cylindrical grinding leaves in ordinary work, µm: 0.4 to 1.6.
 *
 * Source: GOST R 70117-2022.
 */
const GROUND_RA = 0.4
/** Out of round that hardening puts into a thin sleeve. Source: common practice, no source. */
const HARDENING_OVALITY = 0.03
/** Cylindricity that a bore leaves the internal grinder with, at best. Source: common practice, no source. */
const GROUND_CYLINDRICITY = 0.008
/** Flatness that a turned face keeps, soft. Source: common practice, no source. */
const TURNED_FLATNESS = 0.02

/** What hardening leaves: as the works has measured, else as is usual. */
function ovalityLeft(
  { hardening, material: { grade } }: Part,
  shop: Shop,
): { readonly value: number; readonly measured: boolean } | undefined {
  if (!hardening) return undefined
  const row = measuredFor(shop, { process: hardeningPurpose(hardening.process), grade }, 'ovality')
  return row ? { value: row.ovality, measured: true } : { value: HARDENING_OVALITY, measured: false }
}

type Asked = Surface & { readonly size?: Limits }

/** The rule that a part waives whose hardened bore is honed alone. */
const GROUND_BEFORE_HONING = 'ground-before-honing'

/** Why a surface must be finished in a certain way: one of these must apply. */
export type NeedRule = {
  readonly name: string
  readonly source: string
  /** The reason with its numbers, or nothing when the rule does not ask for it. */
  readonly because: (surface: Asked, part: Part, shop: Shop) => string | undefined
}

const closestForm = ({ runout, cylindricity, roundness, flatness }: Surface): number =>
  Math.min(runout ?? Infinity, cylindricity ?? Infinity, roundness ?? Infinity, flatness ?? Infinity)

/** A surface that the last lathe cut cannot leave finished. */
const FINISHED_AFTER_TURNING: readonly NeedRule[] = [
  {
    name: 'tolerance-closer-than-turning',
    source: 'common practice, no source',
    because: ({ size }, part, shop) => {
      const tolerance = size ? toleranceOf(size) : Infinity
      const held = turnedLast(part, shop).tolerance
      return tolerance < held - 1e-9
        ? `a tolerance of ${figure(tolerance)} mm is closer than finish turning holds, ${figure(held)} mm`
        : undefined
    },
  },
  {
    name: 'smoother-than-turned',
    source: 'textbook table of roughness by process',
    because: ({ roughness }, part, shop) => {
      const left = turnedLast(part, shop).roughness
      return roughness !== undefined && roughness < left
        ? `Ra ${figure(roughness)} µm is smoother than finish turning leaves, Ra ${figure(left)} µm`
        : undefined
    },
  },
  {
    name: 'truer-than-hardened',
    source: 'common practice, no source',
    because: (surface, part, shop) => {
      const form = closestForm(surface)
      const left = ovalityLeft(part, shop)
      return left !== undefined && form < left.value
        ? `${figure(form)} mm of form or run-out is closer than hardening leaves, ${figure(left.value)} mm${left.measured ? ' as measured' : ''}`
        : undefined
    },
  },
  {
    name: 'flatter-than-turned',
    source: 'common practice, no source',
    because: ({ flatness }) =>
      flatness !== undefined && flatness < TURNED_FLATNESS
        ? `${figure(flatness)} mm flatness is closer than a turned face keeps, ${TURNED_FLATNESS} mm`
        : undefined,
  },
]

/** A bore that is honed last. */
const HONED: readonly NeedRule[] = [
  {
    name: 'running-bore-honed',
    source: 'common practice, no source',
    because: (_surface, part) =>
      part.kind === 'liner' && !runsAsItComes(part)
        ? 'rings run in this bore: it needs the crossed lay that holds oil'
        : undefined,
  },
  {
    name: 'tolerance-closer-than-grinding',
    source: 'common practice, no source',
    because: ({ size }, part, shop) => {
      const hardening = part.hardening !== undefined && !runsAsItComes(part)
      const held = hardening ? shop.habits.boreGrindingTolerance : turnedLast(part, shop).tolerance
      const tolerance = size ? toleranceOf(size) : Infinity
      return tolerance < held - 1e-9
        ? `a tolerance of ${figure(tolerance)} mm is closer than ${hardening ? 'bore grinding' : 'boring'} holds, ${figure(held)} mm`
        : undefined
    },
  },
  {
    name: 'smoother-than-ground',
    source: 'GOST R 70117-2022',
    because: ({ roughness }, part, shop) => {
      const hardening = part.hardening !== undefined && !runsAsItComes(part)
      const left = hardening ? GROUND_RA : turnedLast(part, shop).roughness
      return roughness !== undefined && roughness < left
        ? `Ra ${figure(roughness)} µm is smoother than ${hardening ? 'grinding' : 'boring'} leaves, Ra ${left} µm`
        : undefined
    },
  },
  {
    name: 'truer-than-ground',
    source: 'common practice, no source',
    because: surface => {
      const form = closestForm({ ...surface, runout: Infinity })
      return form < GROUND_CYLINDRICITY
        ? `${figure(form)} mm of form is closer than grinding leaves, ${GROUND_CYLINDRICITY} mm`
        : undefined
    },
  },
]

/** Roughness and form that cylindrical grinding leaves of a pin. Source: GOST R 70117-2022, fine grinding; form common practice. */
const FINE_GROUND_RA = 0.2
const FINE_GROUND_FORM = 0.003

/** A pin that is lapped last. */
const LAPPED: readonly NeedRule[] = [
  {
    name: 'smoother-than-fine-ground',
    source: 'GOST R 70117-2022',
    because: ({ roughness }) =>
      roughness !== undefined && roughness < FINE_GROUND_RA
        ? `Ra ${figure(roughness)} µm is smoother than fine grinding leaves, Ra ${FINE_GROUND_RA} µm`
        : undefined,
  },
  {
    name: 'rounder-than-ground',
    source: 'common practice, no source',
    because: surface => {
      const form = closestForm({ ...surface, runout: Infinity })
      return form < FINE_GROUND_FORM
        ? `${figure(form)} mm of form is closer than grinding leaves, ${FINE_GROUND_FORM} mm`
        : undefined
    },
  },
  {
    name: 'tolerance-closer-than-fine-grinding',
    source: 'common practice, no source',
    because: ({ size }) =>
      size && toleranceOf(size) < FINE_GROUND.tolerance - 1e-9
        ? `a tolerance of ${figure(toleranceOf(size))} mm is closer than grinding holds, ${FINE_GROUND.tolerance} mm`
        : undefined,
  },
]

/** As a reason or a finding of the route gives it. */
export const figure = (value: number): string => String(Number(value.toPrecision(3)))

/** The reasons that apply; none when the surface needs no such work. */
const reasonsToFinish = (rules: readonly NeedRule[], surface: Asked, part: Part, shop: Shop): readonly string[] => {
  const waived = new Set(part.waive.map(({ rule }) => rule))
  return rules
    .filter(({ name }) => !waived.has(name))
    .map(({ because }) => because(surface, part, shop))
    .filter(reason => reason !== undefined)
}

/** What has to be finished after turning, and why, surface by surface. */
export type FinishingNeeds = {
  readonly outside: readonly { readonly band: Band; readonly why: readonly string[] }[]
  readonly boreGround: readonly { readonly band: Band; readonly why: readonly string[] }[]
  readonly boreHoned: readonly { readonly band: Band; readonly why: readonly string[] }[]
  readonly lapped: readonly { readonly band: Band; readonly why: readonly string[] }[]
  readonly top: readonly string[]
  readonly bottom: readonly string[]
}

export function finishingNeeds(part: Part, shop: Shop): FinishingNeeds {
  const because = (rules: readonly NeedRule[], surface: Asked) => reasonsToFinish(rules, surface, part, shop)
  const needing = (bands: readonly Band[], why: (band: Band) => readonly string[]) =>
    bands.map(band => ({ band, why: why(band) })).filter(({ why }) => why.length > 0)
  // A pin's bore only saves weight.
  const boreHoned =
    part.kind === 'pin'
      ? []
      : needing(
          part.bore.filter(band => !isRecess(part, band)),
          band => [...because(HONED, band), ...platedReason(part, band)],
        )
  const honed = new Set(boreHoned.map(({ band }) => band))
  return {
    outside: needing(part.outside, band => because(FINISHED_AFTER_TURNING, band)),
    lapped: part.kind === 'pin' ? needing(part.outside, band => because(LAPPED, band)) : [],
    boreHoned,
    // A soft bore goes from the boring bar to the hone; a hard one has warped, and a hone would follow it.
    boreGround:
      part.hardening && part.kind !== 'pin'
        ? needing(part.bore, band =>
            honed.has(band)
              ? honedAlone(part)
                ? []
                : [
                    ...because(FINISHED_AFTER_TURNING, band),
                    'hardening warps the bore, and the hone that comes after follows what it finds',
                  ]
              : because(FINISHED_AFTER_TURNING, band),
          )
        : [],
    top: because([...FINISHED_AFTER_TURNING, LENGTH_AFTER_QUENCH], part.top),
    bottom: because(FINISHED_AFTER_TURNING, part.bottom),
  }
}

/** Nitrided and honed, not ground between: only where the part says so, and where the hone can still clean it up. */
const honedAlone = ({ waive }: Part): boolean => waive.some(({ rule }) => rule === GROUND_BEFORE_HONING)

/** Honed whatever the drawing asks: the layer is laid on over size and comes rough. */
const platedReason = ({ plating }: Part, { name }: Band): readonly string[] =>
  plating?.surface === name ? [`${plating.process} comes over size and rough: it is honed to size`] : []

/** Rules that a works may think of giving up on a part: each asks for an operation, none keeps anybody from harm. */
export const OPEN_TO_CHOICE: readonly string[] = [
  ...new Set([...FINISHED_AFTER_TURNING, LENGTH_AFTER_QUENCH, ...HONED, ...LAPPED].map(({ name }) => name)),
  'stress-relieved-before-nitriding',
  GROUND_BEFORE_HONING,
]

/** Names that `waive:` may also give, beside the rules of order. */
export const NEED_RULE_NAMES: readonly string[] = [...OPEN_TO_CHOICE, ...PLATING_HEATS, CRACK_TESTED]
