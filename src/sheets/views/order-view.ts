import { fixed, mass } from '../../figures.ts'
import type { Finished, Marked, OutsideOrder, Party } from '../../orders/order.ts'
import type { Plan } from '../../plan/plan.ts'
import type { PaperFigures } from './paper-figures.ts'
import { figureWords, limitWords, pointLines, unitWords } from './quantity-words.ts'
import { type ReturnForm, returnForm, returnView } from './return-view.ts'
import { codeOf } from './route-card-view.ts'

/** An order on paper: between whom, of what, what comes, what must be made of it, how, and the form that comes back. */
export type OrderView = {
  readonly unit: string
  readonly reference: string
  readonly parties: readonly { readonly what: string; readonly from: string; readonly to: string }[]
  readonly part: string
  /** Marks of the pieces; nothing before they are marked. */
  readonly which: string
  readonly grade: string
  readonly heat: string
  readonly days: string
  readonly sent: string
  readonly wanted: string
  readonly price: string
  readonly currency: string
  readonly task: string
  readonly pieces: string
  readonly mass: string
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
    readonly gauge: string
    readonly after: string
  }[]
  readonly points: readonly { readonly number: string; readonly label: string; readonly text: string }[]
  readonly cautions: readonly string[]
  /** The form of a short order, which stands at the foot of its only page; of any other it follows on. */
  readonly slip: readonly ReturnForm[]
  readonly form: readonly ReturnForm[]
  readonly code: string
}

/** Points that leave a third of the page to the slip. */
const SHORT = 7

const isShort = ({ points, finish }: OutsideOrder): boolean => points.length <= SHORT && finish.length === 0

export function orderView(plan: Plan, order: OutsideOrder, figures: PaperFigures): OrderView {
  const { arrives, finish, operations, pieces, title, part, batch } = order
  const returned = returnView(order, figures).map(returnForm)
  return {
    unit: figures.unit,
    reference: order.reference,
    parties: partiesOf(order.from, order.to),
    part: `${part.number} ${part.title}, drawing revision ${part.revision}, batch ${batch}`,
    which: order.which.map(markedWords).join('; '),
    grade: order.grade,
    heat: order.heat ?? '',
    days: timeWords(order),
    sent: order.sent ?? '',
    wanted: order.due ?? '',
    price: order.price === undefined ? '' : fixed(order.price.amount, 2),
    currency: order.price?.currency ?? '',
    task: title,
    pieces: String(pieces),
    mass: mass(order.mass.all),
    drawing: `order-${order.number}`,
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
      gauge: row.onTheWay ? 'on the way' : (row.gauge ?? ''),
      after: String(row.operation),
    })),
    points: order.points.map(point => ({
      number: String(point.number),
      label: point.title,
      text: pointLines(point, figures).join(' '),
    })),
    cautions: order.cautions,
    slip: isShort(order) ? returned : [],
    form: isShort(order) ? [] : returned,
    code: codeOf([plan.part.number, plan.part.revision, plan.batch.number, operations.join('+')]),
  }
}

/** A line that neither can fill in stays: it is a blank on both sides. */
const partiesOf = (from: Party, to: Party): OrderView['parties'] =>
  PARTY.map(([what, told]) => ({ what, from: together(told(from)), to: together(told(to)) }))

const together = (words: readonly (string | undefined)[]): string => words.filter(word => word !== undefined).join(', ')

const PARTY: readonly (readonly [string, (party: Party) => readonly (string | undefined)[]])[] = [
  ['Name', ({ name, address }) => [name, address]],
  ['Ring', ({ person, telephone }) => [telephone, person]],
  ['E-mail', ({ email }) => [email]],
]

/** `1 to 16`; `S the set-up piece`. */
const markedWords = ({ from, to, marks = [], what }: Marked): string =>
  from === undefined || to === undefined ? `${marks.join(', ')} the ${what}` : `${from} to ${to}`

/** Whose days they are is said: eight of theirs are not eight of ours. */
const timeWords = ({ leadTime, counts }: Pick<OutsideOrder, 'leadTime' | 'counts'>): string =>
  `${leadTime} ${counts === 'calendar days' ? 'calendar days' : 'of your working days'} from the day after you have them`

const drawnOf = ({ least: _, most: __, limits, ...row }: Finished): Finished => ({ ...row, ...limits, limits })
