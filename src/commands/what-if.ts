import { length } from '../figures.ts'
import { planStockSide } from '../plan/begin-plan.ts'
import type { StockSide } from '../plan/plan.ts'
import { planWith } from './load.ts'
import type { Options } from './options.ts'
import { type Room, sideBySide } from './side-by-side.ts'
import { inColour, stock } from './stock.ts'
import { table } from './table.ts'
import { showPlanned } from './view.ts'
import { UsageProblem, type World } from './world.ts'

/** The stock as it stands; with `--set` as it stands and as it would be; with `--sweep` over a range of one value. */
export async function stockCommand(file: string, options: Options, world: World): Promise<number> {
  if (options.sweep !== undefined) return (await import('./sweep.ts')).sweep(file, options.sweep, options, world)
  if (options.asCut) return (await import('./stock-as-cut.ts')).stockAsCut(file, options, world)
  if (options.svg !== undefined) throw new UsageProblem('--svg draws a sweep: give --sweep with it')
  return options.set
    ? sideBySide(file, options, world, { room: STOCK })
    : showPlanned(planWith(file, options, world, STOCK.make), options, world, stock)
}

const STOCK: Room<StockSide> = {
  make: (part, shop, { request }) => planStockSide(part, shop, request),
  view: stock,
  compared: stockCompared,
}

type StockCompared = Pick<StockSide, 'stock' | 'case' | 'plating'>

/** Stock and margins of every finish as they stand and changed, and the case to order. */
export function stockCompared(
  before: StockCompared,
  after: StockCompared,
  { units }: Options,
  colour: boolean,
): string {
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
  const order = ({ case: ordered }: StockCompared): string =>
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
