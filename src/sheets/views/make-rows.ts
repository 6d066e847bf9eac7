import { fixed } from '../../figures.ts'
import type { Characteristic } from '../../inspection/characteristic.ts'
import { featureWords } from '../../operation-size.ts'
import type { Plan, PlannedOperation } from '../../plan/plan.ts'
import { isColumn } from '../work-groups.ts'
import { checkRow } from './check-rows.ts'
import { DASH, type PaperFigures } from './paper-figures.ts'

/** A size with what measures it: one line, so that no size stands on a sheet twice. */
export type MakeRow = {
  readonly number: string
  readonly what: string
  readonly unit: string
  /** The pair to judge by, inside the limits by the gauge's doubt. */
  readonly judge: string
  /** Where they are wider than that. */
  readonly limits: string
  readonly drawn: string
  readonly gauge: string
  readonly sample: string
  readonly critical: boolean
  readonly remark: string
}

/** Sizes to make and all that is read on the piece there. What is looked at without a figure is no row: see `lookWords`. */
export function makeRows(plan: Plan, operation: PlannedOperation, figures: PaperFigures): readonly MakeRow[] {
  const here = checksOf(plan, operation)
  const measured = new Set(operation.sizes.map(({ characteristic }) => characteristic))
  const sizes = operation.sizes.map((size): MakeRow => {
    const check = here.find(({ number }) => number === size.characteristic)
    const limits = figures.limits(size, size.written, size.places)
    const roughness = size.roughness === undefined ? '' : `, Ra ${fixed(size.roughness, size.roughness < 1 ? 2 : 1)} µm`
    const row = check && rowOf(plan, check, figures)
    return {
      number: row?.number ?? '',
      what: `${featureWords(size)}${roughness}`,
      unit: figures.unit,
      judge: row?.judge ?? limits,
      limits: row && row.judge !== limits ? limits : '',
      drawn: size.drawn === undefined ? '' : figures.drawn(size.drawn),
      gauge: row?.gauge ?? DASH,
      sample: row?.sample ?? '',
      critical: row?.critical ?? false,
      remark: row?.remark ?? '',
    }
  })
  const others = here.filter(one => !measured.has(one.number) && one.unit !== '-' && !isReturned(one))
  return [...sizes, ...others.map(check => rowOf(plan, check, figures))]
}

/** Read on what came back, piece by piece or on the coupon: the inspector's matrix asks for it. */
const isReturned = (one: Characteristic): boolean =>
  one.stage === 'on-return' && (isColumn(one) || (one.unit !== '-' && one.plan.includes('coupon')))

export function returnedWords(plan: Plan, operation: PlannedOperation): string {
  const returned = checksOf(plan, operation).filter(isReturned)
  return returned.map(({ number, name }) => `${number} ${name.replace(/, as returned$/, '')}`).join(', ')
}

/** What is looked at with the eye, each gauge named once. */
export function lookWords(plan: Plan, operation: PlannedOperation): string {
  const by = new Map<string, string[]>()
  for (const { name, gauge } of checksOf(plan, operation).filter(({ unit }) => unit === '-'))
    by.set(gauge, [...(by.get(gauge) ?? []), name])
  return [...by].map(([gauge, names]) => `${names.join('; ')} (${gauge})`).join('; ')
}

const checksOf = ({ inspection }: Plan, { number }: PlannedOperation): readonly Characteristic[] =>
  inspection.characteristics.filter(({ operation }) => operation === number)

function rowOf(plan: Plan, check: Characteristic, figures: PaperFigures): MakeRow {
  const { number, name, unit, limits, accept, gauge, sample, critical, remark } = checkRow(plan, check, figures)
  const judge = accept === DASH ? limits : accept
  const wider = judge === limits ? '' : limits
  return { number, what: name, unit, judge, limits: wider, drawn: '', gauge, sample, critical, remark }
}
