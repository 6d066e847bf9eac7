import { fixed } from '../../figures.ts'
import type { Characteristic } from '../../inspection/characteristic.ts'
import type { Plan } from '../../plan/plan.ts'
import { DASH, type PaperFigures, pair } from './paper-figures.ts'

/** One thing to measure: the drawing's limits and, inside them by the gauge's doubt, the limits to accept by. */
export type CheckRow = {
  readonly number: string
  readonly name: string
  /** Nothing for what is only looked at. */
  readonly unit: string
  readonly operation: string
  readonly limits: string
  readonly accept: string
  readonly gauge: string
  readonly sample: string
  readonly plan: string
  /** One line that the inspector needs; nothing where there is none. */
  readonly remark: string
  /** Marked so that it is not passed over. */
  readonly critical: boolean
}

export const checkRow = (plan: Plan, characteristic: Characteristic, figures: PaperFigures): CheckRow => ({
  number: String(characteristic.number),
  name: characteristic.name,
  unit: isLength(characteristic) ? figures.unit : characteristic.unit.replace(/^-$/, ''),
  operation: String(characteristic.operation),
  limits: planned(characteristic) ?? limitsOf(characteristic, characteristic, figures),
  accept: limitsOf(characteristic, characteristic.accept, figures),
  gauge: characteristic.gauge,
  sample: characteristic.sample >= plan.batch.start ? 'all' : String(characteristic.sample),
  plan: characteristic.plan,
  remark: characteristic.remark ?? '',
  critical: characteristic.critical,
})

/** A figure that the plan counts on, where the drawing sets no limits to it. */
const planned = ({ nominal, lower, upper, places }: Characteristic): string | undefined =>
  nominal !== undefined && lower === undefined && upper === undefined ? `planned ${fixed(nominal, places)}` : undefined

const isLength = ({ unit }: Characteristic): boolean => unit === 'mm'

type Ends = { readonly lower?: number; readonly upper?: number }

/** Two limits in the order in which they are met, or the one that there is. */
function limitsOf(characteristic: Characteristic, { lower, upper }: Ends, figures: PaperFigures): string {
  const { places, written = 'shaft' } = characteristic
  const print = (value: number) => (isLength(characteristic) ? figures.length(value, places) : fixed(value, places))
  if (lower === undefined && upper === undefined) return DASH
  if (lower === undefined) return `not over ${print(upper ?? 0)}`
  if (upper === undefined) return `not under ${print(lower)}`
  if (!isLength(characteristic)) return pair(print(lower), print(upper))
  return figures.limits({ lower, upper }, written, places)
}
