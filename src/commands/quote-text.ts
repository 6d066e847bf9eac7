import type { Plan } from '../plan/plan.ts'
import { heading } from './route.ts'
import { table } from './table.ts'

/** Quantities side by side, then of the first what it is made up of and its days. */
export function quoteText(plans: readonly Plan[]): string {
  const [first] = plans
  if (!first) return ''
  return [
    heading(first),
    ...(plans.length > 1 ? [sideBySide(plans)] : []),
    ...costText(first),
    ...dateText(first),
  ].join('\n')
}

const money = (amount: number): string => amount.toFixed(2)

const sideBySide = (plans: readonly Plan[]): string =>
  table(
    [
      { head: 'wanted', align: 'right' },
      { head: 'start', align: 'right' },
      { head: 'each, least', align: 'right' },
      { head: 'usual', align: 'right' },
      { head: 'most', align: 'right' },
      { head: 'batch', align: 'right' },
      { head: 'promise' },
    ],
    plans.map(({ batch, cost, delivery }) => [
      String(batch.quantity),
      String(batch.start),
      ...(cost ? [cost.each.least, cost.each.usual, cost.each.most, cost.batch.usual].map(money) : ['', '', '', '']),
      delivery?.promise.date ?? '',
    ]),
  )

function costText({ cost, batch }: Plan): readonly string[] {
  if (!cost) return []
  const { currency, each, likely, items, drivenBy, scrap, eachExpected } = cost
  const rows = items.map(({ what, least, usual, most }) => [what, money(least), money(usual), money(most)])
  return [
    table(
      [
        { head: `batch of ${batch.quantity}${currency === '' ? '' : `, ${currency}`}` },
        { head: 'least', align: 'right' },
        { head: 'usual', align: 'right' },
        { head: 'most', align: 'right' },
      ],
      [
        ...rows,
        ['together', money(cost.batch.least), money(cost.batch.usual), money(cost.batch.most)],
        ['a good piece', money(each.least), money(each.usual), money(each.most)],
      ],
    ),
    `A good piece likely costs ${money(likely.least)} to ${money(likely.most)} (nine times in ten); ${money(eachExpected)} of all that are expected to be good.`,
    `Of the whole, ${money(scrap)} goes into pieces that are lost. Driven by: ${drivenBy.join('; ')}.`,
    'Not in it: overhead outside the rates, design, a first fixture, profit.\n',
  ]
}

function dateText({ calendar, delivery, operations }: Plan): readonly string[] {
  if (!delivery || !calendar) return []
  const { days, ends, promise, longestWait, visits } = delivery
  const nameOf = (number: number) => operations.find(one => one.number === number)?.name ?? ''
  return [
    table(
      [{ head: '', align: 'right' }, { head: 'operation' }, { head: 'from' }, { head: 'to' }],
      calendar.map(({ operation, from, to }) => [String(operation), nameOf(operation), from, to]),
    ),
    `Done ${ends.usual} as it usually goes, ${ends.least} at the earliest, ${ends.most} at the latest: ${days.usual} working days, ${days.least} to ${days.most}.`,
    `Promise ${promise.date}, ${promise.days} working days: it holds with ${Math.floor(100 * promise.chance)} %.`,
    ...visits.map(
      ({ order, firm, sent, back }) => `Order ${order}, ${firm}: send by ${sent}; not back by ${back}, ring.`,
    ),
    ...(longestWait
      ? [
          `Longest wait: order ${longestWait.order}, ${longestWait.firm}, ${longestWait.days} days from ${longestWait.from} to ${longestWait.to}.${longestWait.shorter ? ` Saves ${longestWait.shorter.saves} days: ${longestWait.shorter.by}.` : ''}`,
        ]
      : []),
    '',
  ]
}
