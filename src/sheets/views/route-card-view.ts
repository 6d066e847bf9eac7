import { inHours, minutes, percent } from '../../figures.ts'
import type { Plan, PlannedOperation } from '../../plan/plan.ts'
import { DASH, type PaperFigures } from './paper-figures.ts'

export type RouteCardView = {
  readonly owner: string
  readonly title: string
  readonly quantity: string
  readonly start: string
  readonly yield: string
  readonly confidence: string
  readonly extras: readonly string[]
  readonly bar: string
  readonly heat: string
  /** Small half-sections: the part after every operation. */
  readonly strip: string
  /** Read by the gun: part, revision, batch. */
  readonly code: string
  readonly operations: readonly {
    readonly number: string
    readonly name: string
    readonly where: string
    readonly setup: string
    readonly piece: string
    /** Fewest pieces to go on with. */
    readonly least: string
    /** Day on which it is to be done, or back from outside; nothing where the batch has no day to begin. */
    readonly due: string
  }[]
  /** What the dates come to: when all is done, and the day that can be promised. */
  readonly delivery: string
  readonly calendar: readonly {
    readonly number: string
    readonly name: string
    readonly hours: string
    readonly days: string
  }[]
  readonly findings: readonly {
    readonly severity: string
    readonly message: string
    readonly hint: string
    readonly place: string
  }[]
}

export function routeCardView(plan: Plan, figures: PaperFigures): RouteCardView {
  const { part, batch, material, operations, findings } = plan
  return {
    owner: plan.shop.name,
    title: part.title,
    quantity: String(batch.quantity),
    start: String(batch.start),
    yield: percent(batch.yield),
    confidence: percent(batch.confidence),
    extras: batch.extras.filter(({ pieces }) => pieces > 0).map(({ what, pieces }) => `${pieces} ${what}`),
    bar: `${material.bars} × ${material.grade} Ø${figures.length(material.barDiameter, 1)} × ${figures.length(material.barLength, 0)} ${figures.unit}`,
    heat: batch.heat ?? '',
    strip: `strip-${operations.at(-1)?.number ?? ''}`,
    code: codeOf([part.number, part.revision, batch.number]),
    operations: operations.map(operation => ({
      number: String(operation.number),
      name: operation.name,
      where: whereOf(operation),
      setup: inHouse(operation) ? minutes(operation.time.setup) : DASH,
      piece: inHouse(operation) ? minutes(operation.time.each) : DASH,
      least: String(batch.goOnWith?.find(one => one.operation === operation.number)?.pieces ?? ''),
      due: plan.calendar?.find(one => one.operation === operation.number)?.to ?? '',
    })),
    delivery: plan.delivery
      ? `begin ${plan.delivery.begins}; all done ${plan.delivery.ends.usual}; to be promised for ${plan.delivery.promise.date}`
      : '',
    calendar: operations.map(operation => ({
      number: String(operation.number),
      name: operation.name,
      hours: inHouse(operation) ? inHours(operation.time.batch) : DASH,
      days: inHouse(operation) ? DASH : daysOf(plan, operation),
    })),
    findings: findings.map(({ severity, message, hint, at }) => ({
      severity,
      message,
      hint: hint ?? '',
      place: `${fileName(at.file)}:${at.line}`,
    })),
  }
}

/** Without its folder: the same paper comes out wherever the files lie. */
const fileName = (path: string): string => path.replace(/^.*[\\/]/, '')

const inHouse = ({ place }: PlannedOperation): boolean => place === 'house'

export const whereOf = (operation: PlannedOperation): string =>
  inHouse(operation)
    ? operation.workCentre
    : `outside: ${operation.firms.map(({ name }) => name).join() || 'firm to be chosen'}`

/** One visit has one lead time: it stands at the first of its operations. */
function daysOf({ orders }: Plan, { number }: PlannedOperation): string {
  const order = orders.find(({ operations }) => operations.includes(number))
  if (!order) return 'to be asked'
  return order.operations[0] === number ? String(order.leadTime) : `with ${order.operations[0]}`
}

/** Plain ASCII between slashes; what a reader gun might not give back is left out. */
export const codeOf = (fields: readonly string[]): string =>
  fields.map(field => field.replace(/[^\x20-\x7e]/g, '').trim()).join('/')
