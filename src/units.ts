/** Every unit that a formula may give or take; a ratio has none. */
export type Unit =
  | ''
  | '%'
  | '-'
  | 'mm'
  | 'µm'
  | 'm'
  | 'mm²'
  | 'mm³'
  | 'cm³'
  | 'deg'
  | 's'
  | 'ms'
  | 'min'
  | 'h'
  | 'd'
  | '1/min'
  | 'rpm'
  | 'm/s'
  | 'm/min'
  | 'mm/min'
  | 'mm/rev'
  | 'mm/deg'
  | 'mm/h^0.5'
  | 'µm/min'
  | 'µm/h'
  | 'µm/mm'
  | 's/m'
  | 'mm²·deg'
  | 'mm³/(mm s)'
  | 'N'
  | 'kgf'
  | 'N m'
  | 'N/mm'
  | 'N/mm²'
  | 'N/µm'
  | 'MPa'
  | 'Pa'
  | 'kPa'
  | 'W'
  | 'kW'
  | 'A'
  | 'A/cm'
  | 'kA/m'
  | 'J/mm³'
  | 'J/mol'
  | 'kg'
  | 'g/cm³'
  | 'kg/m³'
  | 'kg/h'
  | 'g/kWh'
  | 'l/s'
  | '°C'
  | 'K'
  | '1e-6/K'
  | 'HV'
  | 'HRC'
  | 'HB'
  | 'pieces'

/**
 * One unit per quantity everywhere inside: mm, degree, min, N, kW, HV. A handbook formula keeps its source's units.
 *
 * The unit rides on the type. A plain number may become any quantity, so arithmetic needs no wrapping, but a degree does
 * not pass where a millimetre is asked for, and the result of a formula carries the formula's unit. From one unit to another
 * goes a function with a name, at the end of this file: a bare factor would lose the unit without a word.
 */
declare const unit: unique symbol
export type Quantity<U extends Unit> = number & { readonly [unit]?: U }

export type Millimetre = Quantity<'mm'>
export type Micrometre = Quantity<'µm'>
export type Degree = Quantity<'deg'>
export type SquareMillimetre = Quantity<'mm²'>
export type CubicMillimetre = Quantity<'mm³'>
export type CubicCentimetre = Quantity<'cm³'>
export type Metre = Quantity<'m'>
export type Minute = Quantity<'min'>
export type Millisecond = Quantity<'ms'>
export type Hour = Quantity<'h'>
export type Newton = Quantity<'N'>
export type NewtonMetre = Quantity<'N m'>
export type Kilowatt = Quantity<'kW'>
export type Watt = Quantity<'W'>
export type Kilogram = Quantity<'kg'>
/** Stress; as many N/mm². */
export type Megapascal = Quantity<'MPa'>
export type Vickers = Quantity<'HV'>
export type RockwellC = Quantity<'HRC'>
export type Celsius = Quantity<'°C'>
/** Revolutions a minute. */
export type SpindleSpeed = Quantity<'rpm'>
/** Cutting, work and honing speed. */
export type MetrePerMinute = Quantity<'m/min'>
/** Of grinding wheels alone. */
export type MetrePerSecond = Quantity<'m/s'>
export type MillimetrePerMinute = Quantity<'mm/min'>
/** Feed of a turned or drilled cut, for each revolution. */
export type MillimetrePerRevolution = Quantity<'mm/rev'>
/** Crank or spindle turns are not days of the calendar: lead times of outside firms. */
export type Day = Quantity<'d'>

export const radians = (angle: Degree): number => (angle * Math.PI) / 180
export const degrees = (radian: number): Degree => (radian * 180) / Math.PI
/** The azimuth or heading brought into (-180, 180]. */
export const wrapped = (angle: Degree): Degree => {
  const turn = ((angle % 360) + 360) % 360
  return turn > 180 ? turn - 360 : turn
}

export const micrometres = (length: Millimetre): Micrometre => 1000 * length
export const millimetres = (length: Micrometre): Millimetre => length / 1000
export const metres = (length: Millimetre): Metre => length / 1000
export const cubicMillimetres = (volume: CubicCentimetre): CubicMillimetre => 1000 * volume
export const cubicCentimetres = (volume: CubicMillimetre): CubicCentimetre => volume / 1000
export const kilopascals = (pressure: Quantity<'Pa'>): Quantity<'kPa'> => pressure / 1000
export const kilonewtons = (force: Newton): number => force / 1000
export const watts = (power: Kilowatt): Watt => 1000 * power
export const kilowatts = (power: Watt): Kilowatt => power / 1000
export const millimetresPerMinute = (speed: MetrePerMinute): MillimetrePerMinute => 1000 * speed
