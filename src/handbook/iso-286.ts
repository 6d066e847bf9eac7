import { type Micrometre, type Millimetre, millimetres } from '../units.ts'
import { type DeviationRow, type HoleLetter, SHAFT_DEVIATIONS, type ShaftLetter } from './fundamental-deviation.ts'
import { rowFor } from './nominal-range.ts'
import { isGrade, toleranceCell } from './standard-tolerance.ts'

export type LimitsOfFit =
  | {
      readonly ok: true
      readonly kind: 'hole' | 'shaft'
      readonly letter: HoleLetter | ShaftLetter
      readonly grade: number
      /** Deviations from the nominal size. */
      readonly upper: Millimetre
      readonly lower: Millimetre
      readonly source: string
    }
  | { readonly ok: false; readonly reason: string }

const LETTERS = ['f', 'g', 'h', 'js', 'k', 'm', 'n', 'p', 'F', 'G', 'H', 'JS', 'K', 'M', 'N', 'P'] as const
type Letter = (typeof LETTERS)[number]

/**
 * The deviations that a tolerance class stands for (`H6`, `g6`, `js9`), in mm. Capitals are holes and small letters are
 * shafts, so the case of the text counts. Covers sizes over 0 up to 250 mm, the letters f to p without the mixed ones and
 * grades 3 to 12; what it does not cover it refuses with the reason.
 *
 * @example limitsOfFit(48, 'H6') // { ok: true, upper: 0.016, lower: 0, … }
 */
export function limitsOfFit(nominal: Millimetre, fit: string): LimitsOfFit {
  const refuse = (reason: string): LimitsOfFit => ({ ok: false, reason })
  const [, letters = '', digits = ''] = /^([A-Za-z]+)([1-9]\d*)$/.exec(fit) ?? []
  const letter = LETTERS.find(known => known === letters)
  const grade = Number(digits)
  if (!digits) return refuse(`"${fit}" is no tolerance class: a letter and a grade, such as H6 or g6`)
  if (!letter) return refuse(`tolerance letter ${letters} is not covered: ${LETTERS.join(' ')} are`)
  if (grade < 3 || !isGrade(grade)) return refuse(`grade ${digits} is not covered: 3 to 12 are`)
  const row = rowFor<DeviationRow>(SHAFT_DEVIATIONS.rows, nominal)
  const tolerance = toleranceCell(nominal, grade)
  if (!row || tolerance === undefined) return refuse(`size ${nominal} mm is not covered: over 0 up to 250 mm is`)
  if (letter === 'K' && grade > 8 && nominal > 3) return refuse(`K${grade} is not defined over 3 mm`)
  const kind = letter === letter.toUpperCase() ? 'hole' : 'shaft'
  const { upper, lower } = micrometres({ letter, grade, T: tolerance, row, delta: step(nominal, grade) })
  return {
    ok: true,
    kind,
    letter,
    grade,
    upper: millimetres(upper),
    lower: millimetres(lower),
    source: SHAFT_DEVIATIONS.source,
  }
}

type Deviations = { readonly upper: Micrometre; readonly lower: Micrometre }

const below = (upper: Micrometre, tolerance: Micrometre): Deviations => ({ upper, lower: upper - tolerance })
const above = (lower: Micrometre, tolerance: Micrometre): Deviations => ({ upper: lower + tolerance, lower })

/** Δ of the standard: what an interference hole of a fine grade gets back. Nought up to 3 mm. */
function step(nominal: Millimetre, grade: number): Micrometre {
  if (nominal <= 3) return 0
  // In tenths of a micrometre, since 2.5 − 1.5 must be 1 and 2 − 1.2 must be 0.8.
  return (
    (Math.round((toleranceCell(nominal, grade) ?? 0) * 10) -
      Math.round((toleranceCell(nominal, grade - 1) ?? 0) * 10)) /
    10
  )
}

function micrometres({
  letter,
  grade,
  T,
  row,
  delta,
}: {
  readonly letter: Letter
  readonly grade: number
  readonly T: Micrometre
  readonly row: DeviationRow
  readonly delta: Micrometre
}): Deviations {
  const small = row.over === 0
  switch (letter) {
    case 'f':
    case 'g':
      return below(row[letter], T)
    case 'h':
      return below(0, T)
    case 'js':
    case 'JS':
      return { upper: T / 2, lower: -T / 2 }
    case 'k':
      return above(grade >= 4 && grade <= 7 ? row.k : 0, T)
    case 'm':
    case 'n':
    case 'p':
      return above(row[letter], T)
    case 'F':
      return above(-row.f, T)
    case 'G':
      return above(-row.g, T)
    case 'H':
      return above(0, T)
    case 'K':
      return below(grade <= 8 ? -row.k + delta : 0, T)
    case 'M':
      return below(-row.m + (grade <= 8 ? delta : 0), T)
    case 'N':
      // Over 3 mm and above IT8 the standard sets N to nought, which its rule for the letter would not give.
      return below(grade <= 8 ? -row.n + delta : small ? -row.n : 0, T)
    case 'P':
      return below(-row.p + (grade <= 7 ? delta : 0), T)
  }
}
