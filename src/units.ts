/**
 * One unit per quantity everywhere inside: mm, degree, min, N, kW, HV.
 *
 * The unit rides on the type. A plain number may become any quantity, so arithmetic needs no wrapping, but a degree does
 * not pass where a millimetre is asked for.
 */
declare const unit: unique symbol
export type Quantity<U extends string> = number & { readonly [unit]?: U }

export type Millimetre = Quantity<'mm'>
export type Micrometre = Quantity<'µm'>
export type Degree = Quantity<'deg'>
export type SquareMillimetre = Quantity<'mm²'>
export type Minute = Quantity<'min'>
export type Hour = Quantity<'h'>
export type Newton = Quantity<'N'>
export type Kilowatt = Quantity<'kW'>
export type Kilogram = Quantity<'kg'>
export type Vickers = Quantity<'HV'>
export type Celsius = Quantity<'°C'>
/** Revolutions a minute. */
export type SpindleSpeed = Quantity<'rpm'>
/** Cutting, work and honing speed; grinding wheels alone are given in m/s. */
export type MetrePerMinute = Quantity<'m/min'>
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
