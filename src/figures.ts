/** How every figure is written: one function a quantity, fixed places, no locale. */
import { cubicCentimetres, micrometres } from './units.ts'

export type Units = 'mm' | 'inch'

/** A number with fixed places; a negative zero prints as zero. */
export function fixed(value: number, places: number): string {
  const text = value.toFixed(places)
  return Number(text) === 0 ? text.replace('-', '') : text
}

/** A length or an angle in a sentence: three places at most, no noughts behind. */
export const inWords = (value: number): string => String(Number(fixed(value, 3)))

/** As printed after a figure or over a column. */
export const unitOf = (units: Units): 'mm' | 'in' => (units === 'mm' ? 'mm' : 'in')

/** A length as a plain number in the units of the sheet. */
export const inUnits = (millimetre: number, units: Units): number => (units === 'mm' ? millimetre : millimetre / 25.4)

/** A length in the units of the sheet: an inch figure carries one place more than the millimetre figure. */
export const length = (millimetre: number, units: Units = 'mm', places = 3): string =>
  fixed(inUnits(millimetre, units), units === 'mm' ? places : places + 1)

/** A size as the drawing writes it, `48 H6` or `44.021 finished`, its millimetres marked where the sheet is in inches. */
export const asDrawn = (written: string, units: Units): string =>
  units === 'mm' || /mm|in\b|inch|["″]/.test(written) ? written : written.replace(/( [a-z]{3,}.*)?$/, ' mm$1')

/**
 * Both limits, never printed outside themselves: the lower is rounded up and the upper down. More places where the two would
 * cross: a tolerance finer than the gauge is the plan's to find, not the paper's to hide.
 */
export function inwardLimits(
  lower: number,
  upper: number,
  places: number,
  units: Units = 'mm',
): readonly [string, string] {
  const ends = [roundedUp(lower, places, units), roundedDown(upper, places, units)] as const
  return Number(ends[0]) > Number(ends[1]) && places < 6 ? inwardLimits(lower, upper, places + 1, units) : ends
}

/** Both ends of what is told, never printed inside themselves: what comes may lie anywhere between them. */
export function outwardLimits(
  lower: number,
  upper: number,
  places: number,
  units: Units = 'mm',
): readonly [string, string] {
  return [roundedDown(lower, places, units), roundedUp(upper, places, units)]
}

/** Below the last figure that any gauge reads, so that 47.8 stays 47.8 in spite of how numbers are held. */
const SLACK = 1e-6

/** A length that something must not be over, as printed: never over itself. */
export function roundedDown(millimetre: number, places: number, units: Units = 'mm'): string {
  const shown = units === 'mm' ? places : places + 1
  return fixed(Math.floor(inUnits(millimetre, units) * 10 ** shown + SLACK) / 10 ** shown, shown)
}

/** A length that something must not be under, as printed: never under itself. */
export function roundedUp(millimetre: number, places: number, units: Units = 'mm'): string {
  const shown = units === 'mm' ? places : places + 1
  return fixed(Math.ceil(inUnits(millimetre, units) * 10 ** shown - SLACK) / 10 ** shown, shown)
}

/** An upper tolerance with the places of the two ends as they are written, so that nobody adds up to more than the upper. */
export function plusBetween(millimetre: number, low: string, high: string, units: Units = 'mm'): string {
  const places = low.split('.')[1]?.length ?? 0
  return fixed(Math.min(inUnits(millimetre, units), Number(high) - Number(low)), places)
}

/** A figure with its sign before it, where the way matters: a true minus, and a plus too; nothing before nought. */
export const signed = (text: string): string =>
  text.startsWith('-') ? `−${text.slice(1)}` : Number(text) === 0 ? text : `+${text}`

export const angle = (degree: number, places = 2): string => fixed(degree, places)
export const minutes = (minute: number): string => fixed(minute, minute < 10 ? 1 : 0)
/** Minutes as hours: a tenth of one as long as there are few. */
export const inHours = (minute: number): string => fixed(minute / 60, minute < 600 ? 1 : 0)
export const hours = (hour: number): string => fixed(hour, 0)
export const force = (newton: number): string => fixed(newton, newton < 100 ? 1 : 0)
export const power = (kilowatt: number): string => fixed(kilowatt, 2)
export const hardness = (vickers: number): string => fixed(vickers, 0)
export const area = (squareMillimetre: number): string => fixed(squareMillimetre, 1)
/** Millimetres, as micrometres. */
export const micrometre = (millimetre: number, places: number): string => fixed(micrometres(millimetre), places)
/** Cubic millimetres, as cubic centimetres. */
export const volume = (cubicMillimetre: number): string => fixed(cubicCentimetres(cubicMillimetre), 2)
export const mass = (kilogram: number): string => fixed(kilogram, kilogram < 10 ? 2 : 1)
export const percent = (fraction: number, places = 0): string => fixed(fraction * 100, places)

/** So many figures that count, and no noughts after them. */
export const significant = (value: number, figures: number): string => String(Number(value.toPrecision(figures)))

/** A number that belongs to a drawing and not to the part: a mark on an axis or a scale, the azimuth of a section. */
export const ofDrawing = (value: number, places: number): string => fixed(value, places)

/** A chance as a workshop says it: `1 in 4000`, `3.2 %`, `under 1 in a million`. */
export function chance(probability: number): string {
  if (probability < 1e-6) return 'under 1 in a million'
  if (probability >= 0.01) return `${percent(probability, probability < 0.1 ? 1 : 0)} %`
  return `1 in ${Number((1 / probability).toPrecision(2))}`
}
