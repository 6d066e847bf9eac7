import type { Vickers } from '../units.ts'

/** OK allowed, LIM allowed with a warning, NO refused. */
export type Choice = 'OK' | 'LIM' | 'NO'

export const CHOICE_COLUMNS = [
  'nitride',
  'nitrocarburise',
  'carburise',
  'induction',
  'through harden',
  'hard chrome',
  'nickel silicon carbide',
  'manganese phosphate',
] as const
export type ChoiceColumn = (typeof CHOICE_COLUMNS)[number]

export type ChoiceRow = {
  readonly grade: string
  readonly choices: { readonly [column in ChoiceColumn]: Choice }
  /** Why a cell is not OK. */
  readonly why?: { readonly [column in ChoiceColumn]?: string }
  /** Nitriding is refused outright for a hardness over this. */
  readonly nitridesUpTo?: Vickers
}

export const CHOICE_SOURCE = 'common practice, no source'

const row = (
  grade: string,
  cells: string,
  why: ChoiceRow['why'] = {},
  more: Pick<ChoiceRow, 'nitridesUpTo'> = {},
): ChoiceRow => {
  const choices = Object.fromEntries(CHOICE_COLUMNS.map((column, index) => [column, cells.split(' ')[index]]))
  return { grade, choices: choices as ChoiceRow['choices'], why, ...more }
}

const TOO_MUCH_CARBON = 'about 0.4 % carbon is too much to carburise'
const CHROMIUM = 'a phosphate coats poorly over 1 % chromium'

/** Columns in the order of CHOICE_COLUMNS. */
export const CHOICE_ROWS: readonly ChoiceRow[] = [
  row('42CrMo4', 'OK OK NO OK LIM OK OK LIM', {
    carburise: TOO_MUCH_CARBON,
    'through harden': 'quenched through it distorts, and a hot part tempers back in service',
    'manganese phosphate': 'about 1 % chromium is the border of what a phosphate coats',
  }),
  row('34CrMo4', 'OK OK NO OK LIM OK OK LIM', {
    carburise: TOO_MUCH_CARBON,
    'through harden': 'quenched through it distorts, and a hot part tempers back in service',
    'manganese phosphate': 'about 1 % chromium is the border of what a phosphate coats',
  }),
  row('50CrMo4', 'OK OK NO LIM OK OK OK LIM', {
    carburise: 'half a per cent of carbon is too much to carburise',
    induction: 'prone to quench cracks',
  }),
  row('32CrMo12', 'OK OK NO LIM LIM OK OK NO', { induction: 'low carbon', 'manganese phosphate': CHROMIUM }),
  row('31CrMoV9', 'OK OK NO LIM LIM OK OK NO', { induction: 'low carbon', 'manganese phosphate': CHROMIUM }),
  row('34CrAlNi7-10', 'OK OK NO LIM LIM OK OK NO', { 'manganese phosphate': CHROMIUM }),
  row('34CrAlMo5-10', 'OK OK NO LIM LIM OK OK NO', { 'manganese phosphate': CHROMIUM }),
  row('41CrAlMo7-10', 'OK OK NO LIM LIM OK OK NO', { 'manganese phosphate': CHROMIUM }),
  row('34CrNiMo6', 'OK OK NO LIM OK OK OK LIM', { carburise: TOO_MUCH_CARBON, induction: 'prone to quench cracks' }),
  row('38MnVS6', 'LIM OK NO OK NO OK OK OK', {
    nitride: 'reaches 450 to 600 HV only',
    carburise: TOO_MUCH_CARBON,
  }),
  row(
    'C45',
    'LIM LIM NO OK OK OK OK OK',
    { nitride: 'hard only in the thin compound layer', carburise: TOO_MUCH_CARBON },
    { nitridesUpTo: 450 },
  ),
  row('16MnCr5', 'LIM LIM OK NO NO OK OK OK', { nitride: 'soft core under the case' }),
  row('20MnCr5', 'LIM LIM OK NO NO OK OK OK', { nitride: 'soft core under the case' }),
  row('100Cr6', 'LIM LIM NO LIM OK OK OK OK', { nitride: 'the temper is far below the nitriding temperature' }),
  row('EN-GJL-250', 'LIM OK NO LIM NO OK OK OK', { nitride: 'the case is shallow', induction: 'prone to cracks' }),
  row('EN-GJS-400-15', 'LIM OK NO LIM NO OK OK OK', {
    nitride: 'the case is shallow',
    induction: 'its ferrite has no carbon to harden with',
  }),
  row('EN-GJS-600-3', 'LIM OK NO LIM NO OK OK OK', { nitride: 'the case is shallow', induction: 'prone to cracks' }),
  row('Ni-Mo alloyed iron', 'OK OK NO LIM NO OK OK OK'),
  row(
    '11SMn30',
    'LIM LIM LIM NO NO LIM LIM OK',
    { nitride: 'no nitride formers, and sulphides in the case', carburise: 'poor case' },
    { nitridesUpTo: 400 },
  ),
  row(
    '11SMnPb37',
    'LIM LIM LIM NO NO LIM LIM OK',
    { nitride: 'no nitride formers, and sulphides in the case', carburise: 'poor case' },
    { nitridesUpTo: 400 },
  ),
  row(
    'S355',
    'LIM LIM NO NO NO OK OK OK',
    {
      nitride: 'no nitride formers: listed hardness reads the compound layer',
      carburise: 'not a case-hardening steel',
    },
    { nitridesUpTo: 400 },
  ),
  row('1018', 'LIM LIM OK NO NO OK OK OK', { nitride: 'no nitride formers' }, { nitridesUpTo: 400 }),
  row('austenitic stainless', 'NO LIM NO NO NO LIM LIM NO', { nitride: 'needs a special process at low temperature' }),
  row('martensitic stainless', 'LIM LIM NO LIM OK LIM LIM NO', {
    nitride: 'its passive skin must be taken off by the treater, and it is no more stainless',
    nitrocarburise: 'its passive skin must be taken off by the treater, and it is no more stainless',
    induction: 'of the two only X46Cr13 has the carbon for it',
    'hard chrome': 'it wants a nickel strike first',
    'nickel silicon carbide': 'it wants a nickel strike first',
  }),
  row('bronze', 'NO NO NO NO NO NO NO NO', {
    nitride: 'bronze takes no nitrogen',
    nitrocarburise: 'bronze takes no nitrogen',
    carburise: 'bronze takes no carbon',
  }),
  row('aluminium', 'NO NO NO NO NO LIM OK NO', {
    nitride: 'the temperature softens or melts it',
    nitrocarburise: 'the temperature softens or melts it',
    carburise: 'the temperature melts it',
  }),
  row('hard-chromed part', 'NO NO NO NO NO NO NO NO', {
    'hard chrome': 'strip the old chrome first',
    'nickel silicon carbide': 'strip the old chrome first',
  }),
]

/** Names of the materials table that stand in one row here. */
const ROW_OF: { readonly [grade: string]: string } = {
  '30CrNiMo8': '34CrNiMo6',
  '33CrMoV12-9': '31CrMoV9',
  '18CrNiMo7-6': '16MnCr5',
  '15NiCr13': '16MnCr5',
  C15: '16MnCr5',
  C60: 'C45',
  '100CrMo7': '100Cr6',
  '11SMnPb30': '11SMnPb37',
  'EN-GJL-300': 'EN-GJL-250',
  'EN-GJS-700-2': 'EN-GJS-600-3',
  X20Cr13: 'martensitic stainless',
  X46Cr13: 'martensitic stainless',
  AlSi12CuNiMg: 'aluminium',
  CuSn8: 'bronze',
  'CuSn12-C': 'bronze',
  'CuSn7Zn4Pb7-C': 'bronze',
  'EN AW-6082': 'aluminium',
  'EN AW-2618A': 'aluminium',
}

export type Judgement = { readonly choice: Choice; readonly why?: string; readonly source: string }

/** What the table says of a process on a grade, for the hardness asked; nothing where it does not list the grade. */
export function hardeningChoice(grade: string, column: ChoiceColumn, asked?: Vickers): Judgement | undefined {
  const found = CHOICE_ROWS.find(listed => listed.grade === (ROW_OF[grade] ?? grade))
  if (!found) return undefined
  const tooHard = column === 'nitride' && found.nitridesUpTo !== undefined && (asked ?? 0) > found.nitridesUpTo
  const why = found.why?.[column]
  return { choice: tooHard ? 'NO' : found.choices[column], source: CHOICE_SOURCE, ...(why !== undefined && { why }) }
}
