import { type Formula, formula } from '../formula.ts'

/** Nominal carbon of grades that are induction hardened, %: from their designations. */
export const CARBON: { readonly [grade: string]: number } = {
  '42CrMo4': 0.42,
  '34CrMo4': 0.34,
  '50CrMo4': 0.5,
  '34CrNiMo6': 0.34,
  '38MnVS6': 0.38,
  '31CrMoV9': 0.31,
  '34CrAlNi7-10': 0.34,
  '34CrAlMo5-10': 0.34,
  C45: 0.45,
  C60: 0.6,
}

/**
 * Surface after induction hardening and a temper at 160 to 180 °C, HRC. Source: memory; as quenched the formula below gives
 * 56.6 for 42CrMo4 and 58.2 for C45.
 */
export const INDUCTION_SURFACE: { readonly [grade: string]: { readonly least: number; readonly most: number } } = {
  C45: { least: 54, most: 57 },
  C60: { least: 58, most: 61 },
  X46Cr13: { least: 52, most: 54 },
  'EN-GJS-700-2': { least: 50, most: 55 },
  'EN-GJL-300': { least: 45, most: 50 },
  '42CrMo4': { least: 53, most: 56 },
  '50CrMo4': { least: 56, most: 59 },
  '38MnVS6': { least: 52, most: 56 },
  '34CrNiMo6': { least: 50, most: 54 },
  '31CrMoV9': { least: 50, most: 54 },
  '100Cr6': { least: 60, most: 62 },
}

/** Share of the least surface hardness at which the surface hardening depth ends: a contract hardener's guide. */
export const SHD_SHARE = 0.8

/** A wall thinner than this many depths is hardened through. Common practice, no source. */
export const WALL_IN_DEPTHS = 3

/** Trade limits of an induction hardener (2017): 1045 55 HRC and more, 4140 54 to 59. */
export const martensiteHardness: Formula<{ C: '%' }, 'HRC'> = formula({
  symbol: 'HRC',
  meaning: 'average hardness of martensite',
  unit: 'HRC',
  expression: '20 + 60 * (2 * C - 1.3 * C^2)',
  inputs: { C: { meaning: 'carbon', unit: '%', from: 0.15, upTo: 0.75 } },
  source: 'induction-heating page with a hardness formula',
  example: { given: { C: 0.45 }, gives: 58.2 },
  value: ({ C }) => 20 + 60 * (2 * C - 1.3 * C ** 2),
})
