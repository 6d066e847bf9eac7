import { materialOf } from './materials.ts'

/** Compression at the surface of a nitrided case, MPa, and the hardnesses that its figures were found with. */
export type CaseStress = {
  readonly grades: readonly string[]
  readonly least: number
  readonly usual: number
  readonly most: number
  /** Where the plan has none of its own, HV. */
  readonly surface: number
  readonly core: number
  readonly source: string
}

const YAYLA = 'Yayla et al., Mater. Res. Express 11 (2024) 086517, abstract'

export const CASE_STRESSES: readonly CaseStress[] = [
  {
    grades: ['42CrMo4', '34CrMo4', '50CrMo4', '16MnCr5', '20MnCr5', '18CrNiMo7-6', '15NiCr13'],
    least: 350,
    usual: 450,
    most: 600,
    surface: 650,
    core: 320,
    source: `${YAYLA}: 350 to 600 MPa on 50CrMo4; usual estimate`,
  },
  {
    grades: ['34CrNiMo6', '30CrNiMo8'],
    least: 350,
    usual: 480,
    most: 650,
    surface: 680,
    core: 330,
    source: 'estimate, after 50CrMo4',
  },
  {
    grades: ['31CrMoV9'],
    least: 600,
    usual: 800,
    most: 850,
    surface: 800,
    core: 340,
    source: `${YAYLA}: 750 to 850 MPa; least from 600 to 800 of an abstract on gas nitriding`,
  },
  {
    grades: ['32CrMo12', '31CrMo12', '33CrMoV12-9', 'X20Cr13', 'X46Cr13'],
    least: 600,
    usual: 780,
    most: 850,
    surface: 820,
    core: 330,
    source: 'estimate, after 31CrMoV9',
  },
  {
    grades: ['34CrAlNi7-10', '34CrAlMo5-10', '41CrAlMo7-10'],
    least: 700,
    usual: 850,
    most: 1000,
    surface: 950,
    core: 300,
    source: 'memory/estimate',
  },
  {
    grades: ['38MnVS6', '100Cr6', '100CrMo7'],
    least: 250,
    usual: 350,
    most: 450,
    surface: 520,
    core: 260,
    source: 'estimate',
  },
  {
    grades: [
      'C45',
      'C60',
      'C15',
      'S355',
      '11SMn30',
      'EN-GJL-250',
      'EN-GJL-300',
      'EN-GJS-400-15',
      'EN-GJS-600-3',
      'EN-GJS-700-2',
    ],
    least: 150,
    usual: 250,
    most: 350,
    surface: 380,
    core: 200,
    source: 'estimate',
  },
]

/** By the handbook's own name; a steel without a row of its own is taken as its group. */
export function caseStressOf(grade: string): CaseStress | undefined {
  const own = CASE_STRESSES.find(({ grades }) => grades.includes(grade))
  if (own) return own
  const like = LIKE[materialOf(grade)?.group ?? ''] ?? '42CrMo4'
  return CASE_STRESSES.find(({ grades }) => grades.includes(like))
}

const LIKE: { readonly [group: string]: string } = {
  'nitriding steel': '32CrMo12',
  'microalloyed steel': '38MnVS6',
  'bearing steel': '38MnVS6',
  'unalloyed steel': 'C45',
  'free-cutting steel': 'C45',
  'structural steel': 'C45',
  'grey iron': 'C45',
  'ductile iron': 'C45',
}

/** In a second stage, or over this, the core creeps while the case forms: a share of its stress is left. Estimate. */
export const HOT_CASE = { over: 540, left: 0.8, source: 'estimate: creep of the core while the case forms' } as const

/** Elastic constants where a wall is no steel. */
export const IRON = { modulus: 110_000, poisson: 0.26 } as const
