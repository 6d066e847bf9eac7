import { generalTolerance } from '../handbook/general-tolerance.ts'
import { limitsOfFit } from '../handbook/iso-286.ts'
import type { DrawnSize } from '../limits.ts'
import { isDate } from './date.ts'
import type { GeneralTolerance } from './part.ts'
import { type Fault, plainSigns, type Read, tidy, unreadable } from './quantity.ts'

export type SizeContext = {
  /** What the size is called in a finding: `bore`. */
  readonly name: string
  /** Which letters a fit may have; a length or a depth has none. */
  readonly of: 'hole' | 'shaft' | 'length'
  /** For a size without a tolerance of its own. */
  readonly general: GeneralTolerance
  /** A number as the file has it: `92.0`. */
  readonly written?: string
}

// Every text has one way to be read: no repetition meets another of the same letters, so reading takes as long as the text.
const UNSIGNED = String.raw`(?:\d+(?:\.\d*)?|\.\d+)`
const UNIT = `(?: ?(mm|inch|in|"|deg|°|µm|um)(?![A-Za-z0-9]))?`
const NOMINAL = new RegExp(`^[⌀Øø]? ?(${UNSIGNED})${UNIT} ?(.*)$`)
const SYMMETRIC = new RegExp(`^± ?(${UNSIGNED})${UNIT}$`)
const TWO_SIDED = new RegExp(`^([+-]?) ?(${UNSIGNED})(?: ?/ ?| |(?=[+-]))([+-]?) ?(${UNSIGNED})${UNIT}$`)
const ONE_SIDED = new RegExp(`^[+-] ?${UNSIGNED}${UNIT}$`)
const FIT = /^([A-Za-z]+) ?(\d+)$/

/** Nothing that the handbook is for is larger: its formulas of growth and its bars end here, mm. */
const LARGEST = 1000

const WANTED = 'a size such as 48 H6, 92 ±0.05, 12 +0.1/-0 or 3.5'
const IN_MILLIMETRES: Readonly<Record<string, number>> = { mm: 1, in: 25.4, inch: 25.4, '"': 25.4 }

/**
 * A size as on a drawing. Without a tolerance it takes the general tolerance; inches are converted here, once.
 *
 * @example readSize('48 H6', { name: 'bore', of: 'hole', general: 'm' }) // { value: { nominal: 48, lower: 48, upper: 48.016, written: '48 H6' } }
 */
export function readSize(value: number | string, context: SizeContext): Read<DrawnSize> {
  const { name } = context
  const text = plainSigns(String(value))
  if (isDate(text)) return fault('input/unreadable', `${name} "${text}" is a date`, `wanted: ${WANTED}`)
  const [, digits, unit, rest = ''] = NOMINAL.exec(text) ?? []
  if (digits === undefined || rest.startsWith(',')) {
    if (text.startsWith('-')) return fault('input/out-of-range', `${name} must be over 0 mm, got ${text}`)
    return { fault: unreadable(String(value), text, name, WANTED) }
  }
  const units = [unit, SYMMETRIC.exec(rest)?.[2], TWO_SIDED.exec(rest)?.[5]].filter(one => one !== undefined)
  const [one = 'mm', other = one] = units
  const factor = IN_MILLIMETRES[one]
  if (factor === undefined || one !== other) {
    const got = factor === undefined ? `"${one}" in "${value}"` : `two units in "${value}"`
    return fault('input/wrong-unit', `${name} is a length, got ${got}`, 'a bare number is mm; units: mm in')
  }
  const nominal = tidy((typeof value === 'number' ? value : Number(digits)) * factor)
  if (!Number.isFinite(nominal)) return fault('input/not-finite', `${name} is not a number to work with: "${value}"`)
  const deviations = deviationsOf(nominal, rest, factor, context)
  if ('fault' in deviations) return deviations
  const { upper, lower } = deviations.value
  if (nominal > LARGEST)
    return fault('input/out-of-range', `${name} must be up to ${LARGEST} mm, got ${nominal}`, 'a bare number is mm')
  if (![upper, lower].every(Number.isFinite))
    return fault('input/not-finite', `${name} has a deviation that is not a number to work with: "${value}"`)
  if (!(upper > lower))
    return fault('input/no-tolerance', `${name} "${value}" leaves no tolerance`, 'give it two limits')
  if (!(nominal + lower > 0))
    return fault('input/out-of-range', `${name} must be over 0 mm at both limits, got "${value}"`)
  return {
    value: {
      nominal,
      lower: tidy(nominal + lower),
      upper: tidy(nominal + upper),
      written: context.written ?? String(value).trim(),
    },
  }
}

type Deviations = { readonly upper: number; readonly lower: number }

function deviationsOf(nominal: number, rest: string, factor: number, context: SizeContext): Read<Deviations> {
  const { name, general } = context
  if (rest === '') {
    const either = generalTolerance(nominal, general)
    if (either !== undefined) return { value: { upper: either, lower: -either } }
    const why = `ISO 2768-${general} has no tolerance for ${nominal} mm`
    return fault('input/no-tolerance', `${name} has no tolerance of its own, and ${why}`, `write it: ${nominal} ±0.1`)
  }
  const symmetric = SYMMETRIC.exec(rest)
  if (symmetric) {
    const either = Number(symmetric[1]) * factor
    return { value: { upper: either, lower: -either } }
  }
  const two = TWO_SIDED.exec(rest)
  if (two && signed(two[1], two[2]) && signed(two[3], two[4])) {
    const ends = [Number(`${two[1]}${two[2]}`) * factor, Number(`${two[3]}${two[4]}`) * factor]
    return { value: { upper: Math.max(...ends), lower: Math.min(...ends) } }
  }
  if (ONE_SIDED.test(rest)) {
    return fault('input/unreadable', `${name} has one deviation only: "${rest}"`, `write both: ${nominal} ${rest}/0`)
  }
  const [, letters = '', grade = ''] = FIT.exec(rest) ?? []
  if (letters === '') return { fault: unreadable(rest, rest, `tolerance of ${name}`, WANTED) }
  return fitOf(nominal, letters + grade, context)
}

/** A deviation carries its sign, but for nought. */
const signed = (sign: string | undefined, digits: string | undefined): boolean => sign !== '' || Number(digits) === 0

function fitOf(nominal: number, fit: string, { name, of }: SizeContext): Read<Deviations> {
  const found = limitsOfFit(nominal, fit)
  if (!found.ok) return fault('input/fit', `${name}: ${found.reason}`, 'write the two deviations beside the size')
  const { upper, lower, kind } = found
  if (of === 'length' || kind === of) return { value: { upper, lower } }
  const other = of === 'hole' ? fit.toUpperCase() : fit.toLowerCase()
  const message = `${name} has the fit of a ${kind}, ${fit}: ISO 286 writes a hole in capitals and a shaft in small letters`
  return fault('input/fit', message, `write ${nominal} ${other}, or the deviations`)
}

const fault = (code: Fault['code'], message: string, hint?: string): { readonly fault: Fault } => ({
  fault: { code, message, ...(hint !== undefined && { hint }) },
})
