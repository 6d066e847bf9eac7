import { CHROME, DRAWN_STEELS, induction, TUBES } from './drawn-steels.ts'

/** Kinds of part that a drawing office makes of a grade. */
export type Kind = 'liner' | 'sleeve' | 'pin' | 'piston'

type Range = readonly [number, number]

/** What a drawing asks of a treatment: the least hardness, HV, and the least depth, mm; a depth is left out where there is none. */
export type Treatment = { readonly process: string; readonly hardness: Range; readonly depth?: Range }

export type DrawnGrade = {
  /** By its own name, by number, or as another country calls it: a drawing has one of them. */
  readonly names: readonly [string, ...string[]]
  readonly kinds: readonly Kind[]
  /** As delivered, HV. */
  readonly bar: Range
  /** Largest section that it is sold in, mm. */
  readonly upTo: number
  readonly tempered?: boolean
  readonly treatments: readonly Treatment[]
  readonly platings?: readonly string[]
}

/** All grades that a works is asked for; iron, bronze and aluminium by EN 1561, 1563, 12163, 1982, 573 and 1706, from memory. */
export const DRAWN_GRADES: readonly DrawnGrade[] = [
  ...DRAWN_STEELS,
  {
    names: ['EN-GJL-250', 'GJL-250', 'GG-25', '5.1301', 'FC250', 'SCh25', '0.6025'],
    kinds: ['liner', 'liner', 'sleeve', 'piston'],
    bar: [180, 240],
    upTo: 400,
    treatments: [],
    platings: CHROME,
  },
  {
    names: ['EN-GJL-300', 'GG-30', '5.1302', 'FC300'],
    kinds: ['liner', 'sleeve', 'piston'],
    bar: [190, 260],
    upTo: 400,
    treatments: [],
    platings: CHROME,
  },
  {
    names: ['EN-GJS-400-15', 'GGG-40', '60-40-18', 'FCD400'],
    kinds: ['sleeve'],
    bar: [135, 180],
    upTo: 400,
    treatments: [],
  },
  { names: ['EN-GJS-600-3', 'GGG-60', '5.3201', 'FCD600'], kinds: TUBES, bar: [190, 270], upTo: 400, treatments: [] },
  {
    names: ['EN-GJS-700-2', 'GGG-70', '5.3300', 'FCD700'],
    kinds: TUBES,
    bar: [225, 300],
    upTo: 400,
    treatments: induction([450, 500]),
  },
  { names: ['CuSn8', 'CW453K', 'C52100', '2.1030'], kinds: ['sleeve'], bar: [115, 190], upTo: 80, treatments: [] },
  { names: ['CuSn12-C', 'CC483K', 'PB2', '2.1052'], kinds: ['sleeve'], bar: [90, 110], upTo: 200, treatments: [] },
  { names: ['CuSn7Zn4Pb7-C', 'CC493K', 'Rg7', 'C93200'], kinds: ['sleeve'], bar: [70, 90], upTo: 200, treatments: [] },
  {
    names: ['EN AW-6082', '6082', '6082-T6', 'AlSi1MgMn', '3.2315'],
    kinds: ['liner', 'piston', 'piston'],
    bar: [95, 105],
    upTo: 250,
    treatments: [],
    platings: ['nickel silicon carbide'],
  },
  { names: ['EN AW-2618A', '2618A', 'RR58', 'AK4-1'], kinds: ['piston'], bar: [115, 130], upTo: 200, treatments: [] },
  {
    names: ['AlSi12CuNiMg', 'EN AC-48000', 'LM13', 'AC8A', '336.0'],
    kinds: ['piston', 'piston'],
    bar: [90, 125],
    upTo: 150,
    treatments: [],
  },
]
