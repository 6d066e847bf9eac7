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
