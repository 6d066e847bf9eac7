import { type Formula, formula } from '../formula.ts'
import type { Millimetre } from '../units.ts'
import type { QuenchWay } from './quench-ovality.ts'
import { AUSTENITE_GROWTH } from './through-hardening.ts'

/** Change of a length or a diameter, a fraction of it. */
export type Share = { readonly least: number; readonly nominal: number; readonly most: number }

/** What quench and temper do to a part of one shape: a share of every length, outside diameter and bore; no growth of surfaces. */
export type QuenchChange = {
  readonly length: Share
  readonly outside: Share
  readonly bore: Share
  readonly source: string
}

export type QuenchedShape = 'solid pin' | 'hollow pin' | 'sleeve'

/** In percent, as works speak of it. */
const percent = (middle: number, either: number): Share => ({
  least: (middle - either) / 100,
  nominal: middle / 100,
  most: (middle + either) / 100,
})

const PRACTICE = 'common practice/estimate, no source'

/** Carburised and quenched in oil, from charge to charge. */
const CARBURISED: Readonly<Record<QuenchedShape, QuenchChange>> = {
  'solid pin': {
    length: percent(0.03, 0.1),
    outside: percent(0.05, 0.07),
    bore: percent(0.05, 0.07),
    source: `${PRACTICE}: solid pin in oil, length +0.03 ±0.10 %, outside +0.05 ±0.07 %`,
  },
  'hollow pin': {
    length: percent(0.05, 0.1),
    outside: percent(0.07, 0.07),
    bore: percent(0.05, 0.1),
    source: `${PRACTICE}: hollow pin in oil, length and bore +0.05 ±0.10 %, outside +0.07 ±0.07 %`,
  },
  sleeve: {
    length: percent(0.06, 0.1),
    outside: percent(0.08, 0.1),
    bore: percent(0.08, 0.1),
    source: `${PRACTICE}: sleeve in oil, length +0.06 ±0.10 %, outside and bore +0.08 ±0.10 %`,
  },
}

/** A sleeve in hot oil, salt or gas, or held by a tool, against free in oil: middle and either way, of its length. */
const SLEEVE_LENGTH: Readonly<Record<QuenchWay, Share>> = {
  free: CARBURISED.sleeve.length,
  hot: percent(0.06, 0.07),
  gas: percent(0.06, 0.07),
  plug: percent(0.08, 0.1),
  press: percent(0.02, 0.05),
}

/** A tool sets the bore on diameter within this, either way, and the outside follows. */
const SET_BY_TOOL = { plug: 0.01, press: 0.02 } as const

/** A sleeve by the way that it is quenched. Where a tool sets the bore, it is made to where the bore would go by itself. */
function carburisedSleeve(way: QuenchWay, bore: Millimetre): QuenchChange {
  if (way === 'free') return CARBURISED.sleeve
  const length = SLEEVE_LENGTH[way]
  if (way === 'hot' || way === 'gas') {
    const across = percent(0.08, 0.07)
    const source = `${PRACTICE}: sleeve in hot oil, salt or gas, length +0.06 ±0.07 %, outside and bore +0.08 ±0.07 %`
    return { length, outside: across, bore: across, source }
  }
  const either = SET_BY_TOOL[way]
  const across = percent(0.08, (100 * either) / bore)
  const source = `${PRACTICE}: ${way === 'plug' ? 'on a plug, length +0.08 ±0.10 %' : 'in a press, length +0.02 ±0.05 %'}, bore set within ±${either} mm on diameter, the outside follows`
  return { length, outside: across, bore: across, source }
}

/** From soft, after a temper at 160 to 180 °C. */
const THROUGH: { readonly [grade: string]: Share } = {
  '100Cr6': percent(0.13, 0.06),
  '100CrMo7': percent(0.13, 0.06),
  C60: percent(0.2, 0.08),
  C45: percent(0.17, 0.08),
  X46Cr13: percent(0.03, 0.05),
  '42CrMo4': percent(0, 0.03),
}

/** Hardened near the surface only: the length follows less, and a bore that is hardened closes. */
const INDUCTION = {
  length: percent(0.02, 0.05),
  outside: { least: 0.0003, nominal: 0.00065, most: 0.001 },
  hardenedBore: { least: -0.001, nominal: -0.0006, most: -0.0002 },
  source: `${PRACTICE}: outside +0.03 to +0.10 %, a bore hardened inside -0.02 to -0.10 %, length +0.02 ±0.05 %`,
} as const

/** Doubles the spread of a carburised sleeve: a bar between ports under this width, mm. Estimate. */
export const NARROW_BAR = 6

const wider = ({ least, nominal, most }: Share): Share => ({
  least: nominal - 2 * (nominal - least),
  nominal,
  most: nominal + 2 * (most - nominal),
})

const brokenDown = (
  { least, nominal, most }: Share,
  austenite: { readonly least: number; readonly most: number },
): Share => ({
  least: least + AUSTENITE_GROWTH * austenite.least,
  nominal: nominal + (AUSTENITE_GROWTH * (austenite.least + austenite.most)) / 2,
  most: most + AUSTENITE_GROWTH * austenite.most,
})

/** A quenched part's change; nothing for a process that does not quench. */
export function quenchChange({
  process,
  grade,
  shape,
  narrowBar,
  boreHardened,
  austenite,
  carburised,
}: {
  readonly process: string
  readonly grade: string
  readonly shape: QuenchedShape
  readonly narrowBar: boolean
  readonly boreHardened: boolean
  /** Per cent of volume that the temper breaks down, where it is hot enough for that. */
  readonly austenite?: { readonly least: number; readonly most: number } | undefined
  /** How a carburised sleeve is quenched, and the smallest diameter of its bore. */
  readonly carburised?: { readonly way: QuenchWay; readonly bore: Millimetre } | undefined
}): QuenchChange | undefined {
  if (process === 'carburising') {
    const row = shape === 'sleeve' && carburised ? carburisedSleeve(carburised.way, carburised.bore) : CARBURISED[shape]
    if (!narrowBar) return row
    const { length, outside, bore, source } = row
    return {
      length: wider(length),
      outside: wider(outside),
      bore: wider(bore),
      source: `${source}; doubled: bars under ${NARROW_BAR} mm`,
    }
  }
  if (process === 'induction hardening') {
    const { length, outside, hardenedBore, source } = INDUCTION
    return { length, outside, bore: boreHardened ? hardenedBore : outside, source }
  }
  if (process !== 'through hardening') return undefined
  const cool = THROUGH[grade] ?? percent(0.15, 0.05)
  const share = austenite ? brokenDown(cool, austenite) : cool
  const source = THROUGH[grade]
    ? `derived: volume of martensite and austenite, less what a temper at 160 to 180 °C takes${austenite ? `; and 0.0105 % for each of ${austenite.least} to ${austenite.most} per cent of austenite that a hotter temper breaks down` : ''}; spread estimate`
    : 'memory: bars and rings of bearing steel grow 0.10 to 0.20 % by quench and temper'
  return { length: share, outside: share, bore: share, source }
}

export const quenchGrowth: Formula<{ c: ''; D: 'mm' }, 'mm'> = formula({
  symbol: 'g',
  meaning: 'change per side of a diameter by quench and temper',
  unit: 'mm',
  expression: 'c * D / 2',
  inputs: {
    c: { meaning: 'change as a fraction of the diameter', unit: '', from: -0.005, upTo: 0.005 },
    D: { meaning: 'diameter', unit: 'mm', over: 0, upTo: 1000 },
  },
  source: 'derived: half of the change on diameter',
  example: { given: { c: 0.0015, D: 30 }, gives: 0.0225 },
  value: ({ c, D }) => (c * D) / 2,
})
