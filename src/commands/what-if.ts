import { length } from '../figures.ts'
import { type Finding, hasErrors } from '../finding.ts'
import { planStockSide } from '../plan/begin-plan.ts'
import type { StockSide } from '../plan/plan.ts'
import { jsonText } from './json.ts'
import { planWith } from './load.ts'
import type { Options } from './options.ts'
import { reportBeside } from './report.ts'
import { heading } from './route.ts'
import { inColour, stock } from './stock.ts'
import { table } from './table.ts'
import { showPlanned } from './view.ts'
import { STATUS, UsageProblem, type World } from './world.ts'

/** The stock as it stands; with `--set` as it stands and as it would be; with `--sweep` over a range of one value. */
export async function stockCommand(file: string, options: Options, world: World): Promise<number> {
  if (options.sweep !== undefined) return (await import('./sweep.ts')).sweep(file, options.sweep, options, world)
  if (options.svg !== undefined) throw new UsageProblem('--svg draws a sweep: give --sweep with it')
  return options.set
    ? sideBySide(file, options, world)
    : showPlanned(planSide(file, options, world), options, world, stock)
}

const planSide = (file: string, options: Options, world: World) =>
  planWith(file, options, world, (part, shop, { request }) => planStockSide(part, shop, request))

function sideBySide(file: string, options: Options, world: World): number {
  const { set, ...plain } = options
  const before = planSide(file, plain, world)
  const after = planSide(file, options, world)
  if (options.json) {
    const side = (plan: StockSide | undefined, findings: readonly Finding[]) =>
      plan ? stock.data(plan, options) : { findings }
    const both = { set, before: side(before.plan, before.findings), after: side(after.plan, after.findings) }
    world.out(jsonText(both))
  } else if (before.plan && after.plan) {
    world.out(
      `${heading(after.plan)}\nChanged: ${set?.join(', ')}\n\n${comparison(before.plan, after.plan, options, world.terminal.colour)}`,
    )
  }
  reportBeside(after.findings, world)
  return hasErrors(after.findings) ? STATUS.errors : STATUS.fine
}

function comparison(before: StockSide, after: StockSide, { units }: Options, colour: boolean): string {
  const mm = (value: number | undefined): string => (value === undefined ? '' : length(value, units))
  const rows = after.stock.map(entry => {
    const same = before.stock.find(
      ({ surface, operation }) => surface === entry.surface && operation === entry.operation,
    )
    return [
      entry.surface,
      String(entry.operation),
      ...[same, entry].flatMap(one => [
        mm(one?.onDiameter.nominal),
        mm(one?.margin.cleanUp),
        mm(one?.margin.case ?? one?.margin.plating),
        one ? inColour(one.verdict, colour) : '',
      ]),
    ]
  })
  const under = before.plating || after.plating ? 'case or plating' : 'case'
  const side = (name: string) => [
    { head: `${name}: stock`, align: 'right' as const },
    { head: 'to clean up', align: 'right' as const },
    { head: under, align: 'right' as const },
    { head: '' },
  ]
  const order = ({ case: ordered }: StockSide): string =>
    ordered
      ? `${length(ordered.ordered.least, units, 2)} to ${length(ordered.ordered.most, units, 2)} ${units}`
      : 'none'
  const head = [
    { head: 'surface' },
    { head: 'operation', align: 'right' as const },
    ...side('as it stands'),
    ...side('changed'),
  ]
  return `${table(head, rows)}\nCase to order: as it stands ${order(before)}, changed ${order(after)}. Stock on diameter, ${units}; the others are what is to spare each side.\n`
}
