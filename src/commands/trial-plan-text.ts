import { fixed } from '../figures.ts'
import type { Trial } from '../part/trial.ts'
import type { TrialPlan } from '../trial/plan-trial.ts'
import { table } from './table.ts'

const right = (head: string) => ({ head, align: 'right' as const })
const bullets = (head: string, lines: readonly string[]): string =>
  `\n${head}\n${lines.map(line => `  - ${line}\n`).join('')}`

/** How to run a trial, for the terminal: plain enough to be printed and taken to the engine. */
export function trialPlanText(trial: Trial, plan: TrialPlan): string {
  const { each, because, orders, shown, spread } = plan
  const percent = (value: number): string => (spread === undefined ? fixed(value, 2) : fixed(100 * value, 2))
  const unit = spread === undefined ? 'times the spread of a fitting' : '% of power'
  const [heads, tails] = orders
  return [
    `${trial.engine}, ${trial.load.kind}${trial.load.setting === undefined ? '' : `, ${trial.load.setting}`}\n`,
    ...trial.liners.map(
      ({ letter, part, revision, serial }) =>
        `${letter}: ${part}${revision === undefined ? '' : ` revision ${revision}`}${serial === undefined ? '' : `, piece ${serial}`}\n`,
    ),
    `\nFit every liner ${each} times: ${because}\n`,
    tails === undefined
      ? `Order: ${heads}\n`
      : `Toss a coin, heads ${heads}, tails ${tails}, and write what fell into order:\n`,
    'Fittings evenly spaced in time. Take the liner out and put it in again at every fitting, two of the same after each other too.\n',
    `\nWhat so many fittings each show, ${unit}\n`,
    table(
      [right('fittings each'), right('shown 4 times in 5'), right('9 in 10'), right('half of the interval')],
      shown.map(row => [String(row.each), percent(row.often), percent(row.mostly), percent(row.half)]),
    ),
    bullets('Keep the same', plan.keepTheSame),
    bullets('Read at every run', plan.read),
    bullets('Reject a run before its speed is looked at, and write why', plan.rejectOn),
    bullets('Before the engine runs', plan.cautions),
    sheetOf(trial, plan),
  ].join('')
}

/** To fill in at the engine: a line a run, which is a line of the trial file afterwards. */
function sheetOf({ load }: Trial, { orders, each }: TrialPlan): string {
  const [order = ''] = orders
  const letters =
    orders.length === 1
      ? [...order.replaceAll(' ', '')]
      : Array.from({ length: each * new Set(order.replaceAll(' ', '')).size }, () => '')
  const own = { propeller: ['thrust N'], pump: ['flow l/s', 'head m'], 'brake arm': ['force N'] }[load.kind]
  const heads = [
    'fitting',
    'liner',
    'piece',
    'at',
    'speed rpm',
    ...own,
    'air °C',
    'hPa',
    '%',
    'head 1',
    '2',
    '3 °C',
    'fuel s',
    'remark    ',
  ]
  const rows = letters.flatMap((letter, index) =>
    [1, 2].map(run => [
      run === 1 ? String(index + 1) : '',
      run === 1 ? letter : '',
      ...heads.slice(2).map(head => '_'.repeat(Math.max(5, head.length))),
    ]),
  )
  return `\nTo fill in at the engine\n${table(
    heads.map(head => ({ head })),
    rows,
  )}`
}
