import type { FindingCode } from '../finding-code.ts'
import { outOfRange } from '../formula.ts'
import type { Unit } from '../units.ts'

/** What is wrong with a written value; where it stands is added by whoever read it. */
export type Fault = { readonly code: FindingCode; readonly message: string; readonly hint?: string }
export type Read<T> = { readonly value: T } | { readonly fault: Fault }

export type QuantityKind =
  | 'length'
  | 'angle'
  | 'roughness'
  | 'speed'
  | 'temperature'
  | 'hardness'
  | 'minutes'
  | 'hours'
  | 'days'
  | 'power'
  | 'force'
  | 'volume'
  | 'ratio'

/** The unit inside, and what each written unit is in it. The inch is exactly 25.4 mm (ISO 80000-3). */
const KINDS: Readonly<
  Record<QuantityKind, { readonly what: string; readonly unit: Unit; readonly units: Readonly<Record<string, number>> }>
> = {
  length: { what: 'a length', unit: 'mm', units: { mm: 1, in: 25.4, inch: 25.4, '"': 25.4, µm: 0.001, um: 0.001 } },
  angle: { what: 'an angle', unit: 'deg', units: { deg: 1, '°': 1 } },
  roughness: { what: 'a roughness', unit: 'µm', units: { µm: 1, um: 1, µin: 0.0254, uin: 0.0254 } },
  speed: { what: 'a speed', unit: 'rpm', units: { rpm: 1, '1/min': 1, 'r/min': 1 } },
  temperature: { what: 'a temperature', unit: '°C', units: { '°C': 1, C: 1 } },
  hardness: { what: 'a hardness', unit: 'HV', units: { HV: 1 } },
  minutes: { what: 'a time', unit: 'min', units: { min: 1, h: 60 } },
  hours: { what: 'a time', unit: 'h', units: { h: 1, min: 1 / 60 } },
  days: { what: 'a number of days', unit: 'd', units: { d: 1, days: 1, day: 1, weeks: 7, week: 7 } },
  power: { what: 'a power', unit: 'kW', units: { kW: 1, W: 0.001 } },
  force: { what: 'a force', unit: 'N', units: { N: 1, kN: 1000 } },
  volume: {
    what: 'a volume',
    unit: 'cm³',
    units: { 'cm³': 1, cm3: 1, ml: 1, cc: 1, 'mm³': 0.001, mm3: 0.001, 'in³': 16.387064, in3: 16.387064 },
  },
  ratio: { what: 'a fraction', unit: '', units: { '%': 0.01 } },
}

export type Range = {
  readonly over?: number
  readonly from?: number
  readonly under?: number
  readonly upTo?: number
}

const NUMBER_AND_UNIT = /^([+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?) ?(.*)$/

/** One spelling for the signs that come in several, minus, plus-or-minus, micro, inch, and one space where there are several. */
export const plainSigns = (text: string): string =>
  text
    .trim()
    .replace(/\s+/g, ' ')
    .replace(/[−–]/g, '-')
    .replace(/\+\/?-/g, '±')
    .replaceAll('μ', 'µ')
    .replaceAll('″', '"')

/** What a value can be read from; the schema has found what is neither. */
export const isWritten = (value: unknown): value is number | string =>
  typeof value === 'number' || typeof value === 'string'

/** The written value without binary dust: thousandths of a micrometre are kept, what lies below is not. */
export const tidy = (value: number): number => Number(value.toFixed(9))

/**
 * A number with or without a unit, in the unit that the kind has inside.
 *
 * @example readQuantity('1.890 in', 'length', 'stroke') // { value: 48.006 }
 */
export function readQuantity(written: number | string, kind: QuantityKind, name: string): Read<number> {
  if (typeof written === 'number') return { value: written }
  const text = plainSigns(written)
  const [, digits = '', unit = ''] = NUMBER_AND_UNIT.exec(text) ?? []
  const { what, units, unit: inside } = KINDS[kind]
  if (digits === '' || unit.startsWith(',')) return { fault: unreadable(written, text, name, `${what} in ${inside}`) }
  const factor = unit === '' ? 1 : Object.hasOwn(units, unit) ? units[unit] : undefined
  const value = tidy(Number(digits) * (factor ?? 1))
  if (!Number.isFinite(value))
    return { fault: { code: 'input/not-finite', message: `${name} is not a number to work with: "${written}"` } }
  if (factor !== undefined) return { value }
  const other = Object.values(KINDS).find(other => Object.hasOwn(other.units, unit))
  const message = other
    ? `${name} is ${what}, got "${written}", ${other.what}`
    : `"${unit}" in "${written}" is no unit of ${what.replace(/^an? /, '')}`
  return {
    fault: {
      code: 'input/wrong-unit',
      message,
      hint: `a bare number is ${inside}; units: ${Object.keys(units).join(' ')}`,
    },
  }
}

/** A text that has no number at its beginning, or a comma in it. */
export function unreadable(written: string, text: string, name: string, wanted: string): Fault {
  if (/\d,\d/.test(text)) {
    return {
      code: 'input/decimal-comma',
      message: `${name} has a comma: "${written}"`,
      hint: `the decimal sign is a point: ${text.replace(/(\d),(\d)/g, '$1.$2')}`,
    }
  }
  return { code: 'input/unreadable', message: `${name} cannot be read: "${written}"`, hint: `wanted: ${wanted}` }
}

/** Nothing when the value is inside the range. */
export function rangeFault(value: number, range: Range, kind: QuantityKind | 'count', name: string): Fault | undefined {
  const unit = kind === 'count' ? '' : KINDS[kind].unit
  const inUnit = unit && ` ${unit}`
  const [fault] = outOfRange({ inputs: { x: { meaning: name, unit, ...range } } }, { x: value })
  return (
    fault && {
      code: 'input/out-of-range',
      message: `${name} must be ${fault.allowed}${inUnit}, got ${value}${inUnit}`,
    }
  )
}
