import type { Vickers } from '../units.ts'

export type Range = { readonly least: number; readonly usual: number; readonly most: number }

/** What a grade reaches when it is nitrided. What is absent is not known: it is asked for, never guessed. */
export type NitridedGrade = {
  readonly grade: string
  /** Of the diffusion zone, carried back to just under the compound layer: not of the compound layer itself. */
  readonly surface?: Range
  /** After nitriding, quenched and tempered before where the grade is. */
  readonly core?: Range
  /** At 520 °C, mm/h^0.5. */
  readonly depthConstant?: Range
  /** Depth that is usually ordered, mm. */
  readonly usualDepth?: { readonly least: number; readonly most: number }
  /** Whether the core owes its hardness to a temper that the process must not pass. */
  readonly tempered: boolean
  readonly source: string
  readonly note?: string
}

const from = (least: Vickers, usual: Vickers, most: Vickers): Range => ({ least, usual, most })

const K_IS_AN_ESTIMATE = 'depth constant memory/estimate'

export const NITRIDED_GRADES: readonly NitridedGrade[] = [
  {
    grade: '42CrMo4',
    surface: from(550, 650, 720),
    core: from(290, 320, 340),
    depthConstant: from(0.04, 0.05, 0.065),
    usualDepth: { least: 0.1, most: 0.6 },
    tempered: true,
    source:
      'Haertetechnik Hagen, gas nitriding table to DIN 50190-3 (550 to 750 HV3, 0.1 to 0.6 mm); Haerterei Haferbier, working value 650 HV; depth constant memory: German nitriding literature, 0.3 mm in 36 h',
    note: 'a second hardener gives 550 to 700 HV and 0.1 to 0.8 mm',
  },
  {
    grade: '31CrMoV9',
    surface: from(700, 800, 850),
    core: from(300, 340, 370),
    depthConstant: from(0.036, 0.045, 0.06),
    usualDepth: { least: 0.2, most: 0.6 },
    tempered: true,
    source: `stockist sheets for 1.8519 to EN 10085:2001, nominal 800 HV; usual depth memory; ${K_IS_AN_ESTIMATE}`,
    note: 'Syla et al., Acta Phys. Pol. A 132 (2017) 484, measured 602 to 787 HV0.1',
  },
  {
    grade: '30CrNiMo8',
    surface: from(600, 670, 750),
    core: from(320, 345, 370),
    depthConstant: from(0.036, 0.046, 0.06),
    usualDepth: { least: 0.2, most: 0.5 },
    tempered: true,
    source: `memory; ${K_IS_AN_ESTIMATE}`,
  },
  {
    grade: '33CrMoV12-9',
    surface: from(750, 830, 900),
    core: from(320, 345, 370),
    depthConstant: from(0.034, 0.042, 0.055),
    usualDepth: { least: 0.2, most: 0.6 },
    tempered: true,
    source: `memory; ${K_IS_AN_ESTIMATE}`,
  },
  {
    grade: '34CrAlNi7-10',
    surface: from(880, 950, 1050),
    core: from(260, 300, 330),
    depthConstant: from(0.03, 0.04, 0.055),
    usualDepth: { least: 0.2, most: 0.5 },
    tempered: true,
    source: `Lucefin technical card 34CrAlNi7-10 (UNI EN 10085:2003): 950 HV1; usual depth memory; ${K_IS_AN_ESTIMATE}`,
    note: 'long Al-Cr-Mo cycles are also reported at 0.065 mm/h^0.5 and more, perhaps total depth or two stages',
  },
  {
    grade: '34CrAlMo5-10',
    surface: from(880, 950, 1050),
    core: from(250, 275, 300),
    depthConstant: from(0.03, 0.04, 0.055),
    usualDepth: { least: 0.2, most: 0.5 },
    tempered: true,
    source: `stockist's bar table, 950 HV1; core and usual depth memory; ${K_IS_AN_ESTIMATE}`,
    note: 'surface taken as that of 34CrAlNi7-10, which lies within the remembered range of 900 to 1100 HV',
  },
  {
    grade: '41CrAlMo7-10',
    surface: from(900, 980, 1100),
    core: from(260, 290, 320),
    depthConstant: from(0.03, 0.04, 0.055),
    usualDepth: { least: 0.2, most: 0.5 },
    tempered: true,
    source: `steel maker's page, 1000 to 1100 HV claimed; core and usual depth memory; ${K_IS_AN_ESTIMATE}`,
  },
  {
    grade: '32CrMo12',
    surface: from(800, 820, 900),
    core: from(310, 330, 360),
    depthConstant: from(0.034, 0.042, 0.055),
    usualDepth: { least: 0.2, most: 0.6 },
    tempered: true,
    source: `Haertetechnik Hagen, gas nitriding table to DIN 50190-3 (800 to 900 HV3); core and usual depth memory; ${K_IS_AN_ESTIMATE}`,
  },
  {
    grade: '34CrMo4',
    surface: from(600, 620, 750),
    core: from(270, 295, 320),
    depthConstant: from(0.04, 0.052, 0.065),
    usualDepth: { least: 0.1, most: 0.6 },
    tempered: true,
    source: `Haertetechnik Hagen, gas nitriding table to DIN 50190-3 (600 to 750 HV3, 0.1 to 0.6 mm); usual value an estimate, core memory; ${K_IS_AN_ESTIMATE}`,
  },
  {
    grade: '50CrMo4',
    surface: from(550, 600, 700),
    core: from(300, 325, 350),
    depthConstant: from(0.038, 0.048, 0.062),
    usualDepth: { least: 0.1, most: 0.5 },
    tempered: true,
    source: `Haertetechnik Hagen, gas nitriding table to DIN 50190-3 (550 to 700 HV3, 0.1 to 0.5 mm); core memory; ${K_IS_AN_ESTIMATE}`,
    note: '475 HV after 2 h at 525 °C: Yayla et al., Mater. Res. Express 11 (2024) 086517',
  },
  {
    grade: '34CrNiMo6',
    surface: from(650, 680, 800),
    core: from(310, 330, 350),
    depthConstant: from(0.038, 0.048, 0.062),
    usualDepth: { least: 0.1, most: 0.6 },
    tempered: true,
    source: `Haertetechnik Hagen, gas nitriding table to DIN 50190-3 (650 to 800 HV3, 0.1 to 0.6 mm); core memory; ${K_IS_AN_ESTIMATE}`,
    note: 'Haerterei Haferbier, working value 650 HV',
  },
  {
    grade: '16MnCr5',
    surface: from(550, 620, 700),
    core: from(170, 200, 220),
    depthConstant: from(0.042, 0.052, 0.066),
    usualDepth: { least: 0.2, most: 0.5 },
    tempered: false,
    source: `Haerterei Haferbier, working value 650 HV; core annealed, usual value and depth memory; ${K_IS_AN_ESTIMATE}`,
    note: 'quenched and tempered its core is 250 to 300 HV',
  },
  {
    grade: '20MnCr5',
    surface: from(550, 620, 700),
    core: from(170, 200, 220),
    depthConstant: from(0.042, 0.052, 0.066),
    usualDepth: { least: 0.2, most: 0.5 },
    tempered: false,
    source: `as 16MnCr5: memory; ${K_IS_AN_ESTIMATE}`,
  },
  {
    grade: '100Cr6',
    surface: from(450, 520, 600),
    core: from(200, 260, 320),
    depthConstant: from(0.035, 0.045, 0.06),
    usualDepth: { least: 0.1, most: 0.3 },
    tempered: true,
    source: `memory, spheroidised or quenched and tempered; ${K_IS_AN_ESTIMATE}`,
    note: 'free carbide makes the edges brittle',
  },
  {
    grade: '38MnVS6',
    surface: from(450, 520, 600),
    core: from(260, 260, 300),
    depthConstant: from(0.045, 0.055, 0.075),
    usualDepth: { least: 0.2, most: 0.5 },
    tempered: false,
    source: `memory: crankshaft practice, 450 to 600 HV; ${K_IS_AN_ESTIMATE}`,
  },
  {
    grade: 'C45',
    surface: from(300, 350, 400),
    core: from(180, 215, 245),
    depthConstant: from(0.05, 0.07, 0.09),
    usualDepth: { least: 0.2, most: 0.7 },
    tempered: false,
    source:
      'Haertetechnik Hagen, gas nitriding table to DIN 50190-3 (300 to 400 HV3); core and depth constant memory/estimate',
    note: 'hard only in the thin compound layer',
  },
  {
    grade: 'EN-GJL-250',
    surface: from(400, 500, 600),
    core: from(180, 230, 280),
    depthConstant: from(0.02, 0.04, 0.08),
    usualDepth: { least: 0.05, most: 0.2 },
    tempered: false,
    source: `memory; ${K_IS_AN_ESTIMATE}`,
  },
  {
    grade: 'Ni-Mo alloyed iron',
    depthConstant: from(0.074, 0.084, 0.095),
    usualDepth: { least: 0.7, most: 0.9 },
    tempered: false,
    source:
      'derived from Goryushin et al., gas nitriding of cast-iron cylinder liners (UDC 621.785.532): 0.7 to 0.9 mm in about 90 h, temperature not stated',
  },
]

/** By the handbook's own name of the grade. */
export function nitridedGrade(grade: string): NitridedGrade | undefined {
  const like = TAKEN_AS[grade]
  const row = NITRIDED_GRADES.find(({ grade: listed }) => listed === (like ?? grade))
  return row && like ? { ...row, grade, source: `estimate: as ${like}; ${row.source}` } : row
}

/** Grades that are nitrided like one that is listed. Estimate. */
const TAKEN_AS: { readonly [grade: string]: string } = {
  '18CrNiMo7-6': '16MnCr5',
  '15NiCr13': '16MnCr5',
  '100CrMo7': '100Cr6',
  C15: 'C45',
  C60: 'C45',
  S355: 'C45',
  '11SMn30': 'C45',
  'EN-GJL-300': 'EN-GJL-250',
  'EN-GJS-400-15': 'EN-GJL-250',
  'EN-GJS-600-3': 'EN-GJL-250',
  'EN-GJS-700-2': 'EN-GJL-250',
}
