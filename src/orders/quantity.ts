import type { Quantity, Standing } from './order.ts'

type Ends = Pick<Quantity, 'value' | 'least' | 'most'>
type More = Partial<Pick<Quantity, 'state' | 'written'>>

type Make = (standing: Standing, label: string, ends: Ends, more?: More & { readonly places?: number }) => Quantity

/** A quantity with what is usual left out: a range, three places of a length. */
const of =
  (unit: string, places: number): Make =>
  (standing, label, ends, more = {}) => ({
    label,
    ...(more.state !== undefined && { state: more.state }),
    standing,
    ...(ends.value !== undefined && { value: ends.value }),
    ...(ends.least !== undefined && { least: ends.least }),
    ...(ends.most !== undefined && { most: ends.most }),
    ...(more.written === 'plus' &&
      ends.least !== undefined &&
      ends.most !== undefined && { plus: ends.most - ends.least }),
    unit,
    places: more.places ?? places,
    written: more.written ?? 'range',
  })

export const length: Make = of('mm', 3)
export const celsius: Make = of('°C', 0)
export const hours: Make = of('h', 0)
export const newtons: Make = of('N', 0)
export const amperes: Make = of('A', 0)
export const fieldLeft: Make = of('A/cm', 1)
/** A bare number: pieces, angles, points of a traverse. */
export const count: Make = of('', 0)
/** With the load it is read with: `HV1`; plain `HV` where it only says how hard something is. */
export const hardness = (load: string): Make => of(load, 0)
