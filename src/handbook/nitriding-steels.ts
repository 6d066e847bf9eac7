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
    core: from(260, 300, 330),
    depthConstant: from(0.03, 0.04, 0.055),
    usualDepth: { least: 0.2, most: 0.5 },
    tempered: true,
    source: `memory: EN 10085, 900 to 1100 HV; ${K_IS_AN_ESTIMATE}`,
    note: 'surface and core taken as those of 34CrAlNi7-10, which lie within the remembered range',
  },
  {
    grade: '34CrNiMo6',
    surface: from(650, 650, 800),
    usualDepth: { least: 0.1, most: 0.6 },
    tempered: true,
    source:
      'Haertetechnik Hagen, gas nitriding table to DIN 50190-3 (650 to 800 HV3); Haerterei Haferbier, working value 650 HV',
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
    usualDepth: { least: 0.2, most: 0.7 },
    tempered: false,
    source: 'Haertetechnik Hagen, gas nitriding table to DIN 50190-3 (300 to 400 HV3)',
    note: 'hard only in the thin compound layer',
  },
  {
    grade: 'EN-GJL-250',
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

/** Exact, by the handbook's own name of the grade. */
export const nitridedGrade = (grade: string): NitridedGrade | undefined =>
  NITRIDED_GRADES.find(row => row.grade === grade)
