import { mass } from '../../figures.ts'
import type { Finished, OutsideOrder } from '../../orders/order.ts'
import type { Plan } from '../../plan/plan.ts'
import type { PaperFigures } from './paper-figures.ts'
import { figureWords, limitWords, pointLines, unitWords } from './quantity-words.ts'
import { codeOf } from './route-card-view.ts'

type PointRow = { readonly number: string; readonly label: string; readonly text: readonly string[] }

/** The first page of an order: for whom, what comes, what must be made of it. Every word and figure stands in the order. */
export type OrderView = {
  readonly unit: string
  readonly owner: string
  readonly firm: string
  readonly days: string
  readonly task: string
  readonly pieces: string
  readonly mass: string
  readonly grade: string
  readonly drawing: string
  /** Sizes as the pieces will be when they come. */
  readonly arrives: readonly { readonly what: string; readonly limits: string; readonly after: string }[]
  /** By which the pieces are judged, the drawing's own limits beside it. */
  readonly finish: readonly {
    /** On the drawing. */
    readonly number: string
    readonly what: string
    readonly unit: string
    readonly judged: string
    readonly drawn: string
    readonly after: string
  }[]
  /** A short order is all on one page. */
  readonly points: readonly PointRow[]
  readonly cautions: readonly string[]
  readonly code: string
}

/** The specification behind an order, point by point, so that it can be worked from with the telephone off. */
export type OrderTermsView = Pick<OrderView, 'points' | 'cautions'>

/** Points that find room below the sizes of the first page. */
const SHORT = 7

export const isShort = ({ points }: OutsideOrder): boolean => points.length <= SHORT

export function orderView(plan: Plan, order: OutsideOrder, figures: PaperFigures): OrderView {
  const { arrives, finish, operations, pieces, title, firm, leadTime } = order
  const { points, cautions } = isShort(order) ? orderTermsView(order, figures) : { points: [], cautions: [] }
  return {
    unit: figures.unit,
    owner: plan.shop.name,
    firm,
    days: String(leadTime),
    task: title,
    pieces: String(pieces),
    mass: mass(order.mass.all),
    grade: plan.material.grade,
    drawing: `operation-${drawnOperation(order)}`,
    arrives: arrives.map(row => ({
      what: row.label,
      limits: figureWords(row, figures),
      after: `${row.operation} ${row.after}`,
    })),
    finish: finish.map(row => ({
      number: row.characteristic === undefined ? '' : String(row.characteristic),
      what: row.label,
      unit: unitWords(row, figures),
      judged: limitWords(row, figures),
      drawn: limitWords(drawnOf(row), figures),
      after: `${row.operation} ${row.state ?? ''}${row.onTheWay ? ', on the way' : ''}`,
    })),
    points,
    cautions,
    code: codeOf([plan.part.number, plan.part.revision, plan.batch.number, operations.join('+')]),
  }
}

export const orderTermsView = ({ points, cautions }: OutsideOrder, figures: PaperFigures): OrderTermsView => ({
  points: points.map(point => ({
    number: String(point.number),
    label: point.title,
    text: pointLines(point, figures),
  })),
  cautions,
})

/** One drawing: of the operation that is asked most of; a furnace, which makes no size, is shown by what goes into it. */
function drawnOperation({ operations, finish }: OutsideOrder): number {
  const asked = (number: number) => finish.filter(({ operation }) => operation === number).length
  return operations.reduce((best, number) => (asked(number) > asked(best) ? number : best), operations[0] ?? 0)
}

const drawnOf = ({ least: _, most: __, limits, ...row }: Finished): Finished => ({ ...row, ...limits, limits })
