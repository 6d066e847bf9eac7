import type { NominalRange } from './nominal-range.ts'
import { rowFor } from './nominal-range.ts'

export const INSPECTION_LEVELS = ['S-1', 'S-2', 'S-3', 'S-4', 'I', 'II', 'III'] as const
export type InspectionLevel = (typeof INSPECTION_LEVELS)[number]

/** Acceptance quality limits, % nonconforming, that the master table below carries. */
export const QUALITY_LIMITS = [0.65, 1, 1.5, 2.5, 4] as const
export type QualityLimit = (typeof QUALITY_LIMITS)[number]

type LetterRow = NominalRange & { readonly [level in InspectionLevel]: string }

const letters = (over: number, upTo: number, series: string): LetterRow => {
  const [a = '', b = '', c = '', d = '', e = '', f = '', g = ''] = series
  return { over, upTo, 'S-1': a, 'S-2': b, 'S-3': c, 'S-4': d, I: e, II: f, III: g }
}

/** Sample-size code letters by lot size, over one size up to and with the next. There is no I and no O. */
export const CODE_LETTERS: { readonly source: string; readonly rows: readonly LetterRow[] } = {
  source: 'ISO 2859-1, Table 1, from a one-page chart of ANSI/ASQC Z1.4, MIL-STD-105E and ISO 2859',
  rows: [
    letters(1, 8, 'AAAAAAB'),
    letters(8, 15, 'AAAAABC'),
    letters(15, 25, 'AABBBCD'),
    letters(25, 50, 'ABBCCDE'),
    letters(50, 90, 'BBCCCEF'),
    letters(90, 150, 'BBCDDFG'),
    letters(150, 280, 'BCDEEGH'),
    letters(280, 500, 'BCDEFHJ'),
    letters(500, 1200, 'CCEFGJK'),
    letters(1200, 3200, 'CDEGHKL'),
    letters(3200, 10_000, 'CDFGJLM'),
  ],
}

/** An acceptance number, or the arrow to the first plan below or above. The rejection number is always one more. */
type Cell = number | 'below' | 'above'
type PlanRow = { readonly letter: string; readonly sampleSize: number; readonly note?: string } & {
  readonly [limit in QualityLimit]: Cell
}

/** Single sampling, normal inspection. */
export const MASTER_TABLE: { readonly source: string; readonly rows: readonly PlanRow[] } = {
  source: 'ISO 2859-1, Table 2-A, from a public template developed from MIL-STD-105E, Tables I and II-A',
  rows: [
    { letter: 'A', sampleSize: 2, 0.65: 'below', 1: 'below', 1.5: 'below', 2.5: 'below', 4: 'below' },
    { letter: 'B', sampleSize: 3, 0.65: 'below', 1: 'below', 1.5: 'below', 2.5: 'below', 4: 0 },
    { letter: 'C', sampleSize: 5, 0.65: 'below', 1: 'below', 1.5: 'below', 2.5: 0, 4: 'above' },
    { letter: 'D', sampleSize: 8, 0.65: 'below', 1: 'below', 1.5: 0, 2.5: 'above', 4: 'below' },
    { letter: 'E', sampleSize: 13, 0.65: 'below', 1: 0, 1.5: 'above', 2.5: 'below', 4: 1 },
    { letter: 'F', sampleSize: 20, 0.65: 0, 1: 'above', 1.5: 'below', 2.5: 1, 4: 2 },
    { letter: 'G', sampleSize: 32, 0.65: 'above', 1: 'below', 1.5: 1, 2.5: 2, 4: 3 },
    { letter: 'H', sampleSize: 50, 0.65: 'below', 1: 1, 1.5: 2, 2.5: 3, 4: 5 },
    { letter: 'J', sampleSize: 80, 0.65: 1, 1: 2, 1.5: 3, 2.5: 5, 4: 7 },
    { letter: 'K', sampleSize: 125, 0.65: 2, 1: 3, 1.5: 5, 2.5: 7, 4: 10 },
    { letter: 'L', sampleSize: 200, 0.65: 3, 1: 5, 1.5: 7, 2.5: 10, 4: 14 },
    { letter: 'M', sampleSize: 315, 0.65: 5, 1: 7, 1.5: 10, 2.5: 14, 4: 21, note: 'from memory' },
  ],
}

export type SamplingPlan = {
  /** Of the plan that the arrows lead to. */
  readonly letter: string
  readonly sampleSize: number
  readonly accept: number
  readonly reject: number
  /** The sample would be as large as the lot: inspect every piece. */
  readonly everyPiece: boolean
}

/**
 * Single sampling plan, normal inspection. An arrow takes the sample size as well as the acceptance number from the plan it
 * leads to. Nothing for a lot of one piece or of more than 10 000.
 *
 * @example samplingPlan(40, 'II', 2.5) // letter C, 5 pieces, accept on 0, reject on 1
 */
export function samplingPlan(lot: number, level: InspectionLevel, limit: QualityLimit): SamplingPlan | undefined {
  const letter = rowFor(CODE_LETTERS.rows, lot)?.[level]
  const plan = letter === undefined ? undefined : resolvedPlan(letter, limit)
  return plan && { ...plan, everyPiece: plan.sampleSize >= lot }
}

/** The plan of a code letter with its arrows followed. */
export function resolvedPlan(letter: string, limit: QualityLimit): Omit<SamplingPlan, 'everyPiece'> | undefined {
  const { rows } = MASTER_TABLE
  let index = rows.findIndex(row => row.letter === letter)
  for (let row = rows[index]; row; row = rows[index]) {
    const cell = row[limit]
    if (typeof cell === 'number') {
      return { letter: row.letter, sampleSize: row.sampleSize, accept: cell, reject: cell + 1 }
    }
    index += cell === 'below' ? 1 : -1
  }
  return undefined
}
