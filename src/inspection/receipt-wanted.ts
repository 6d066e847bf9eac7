import type { Part } from '../part/part.ts'
import { toReadOff, type Wanted, type Where } from './wanted.ts'

/** What the bar's certificate must say before the first blank is sawn. */
export function receiptWanted({ material }: Part, where: Where): readonly Wanted[] {
  const { grade, hardness, temper } = material
  const bar = { feature: 'bar', sampled: { sample: 1, plan: 'every bar' } } as const
  const read = (wanted: Pick<Wanted, 'name' | 'unit' | 'nominal' | 'remark'>): Wanted =>
    toReadOff('bar certificate', 0, { ...bar, ...wanted }, where)
  const planned = 'as planned; another value is a reason to plan again'
  return [
    read({ name: `grade ${grade} and heat number`, unit: '-', remark: 'write the heat number on the route card' }),
    ...(hardness === undefined
      ? []
      : [read({ name: 'hardness of the bar', unit: 'HV', nominal: hardness, remark: planned })]),
    ...(temper === undefined
      ? []
      : [read({ name: 'tempering temperature of the bar', unit: '°C', nominal: temper, remark: planned })]),
  ]
}
