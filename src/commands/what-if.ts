import { length } from '../figures.ts'
import { type Finding, hasErrors } from '../finding.ts'
import type { Part } from '../part/part.ts'
import { partFrom } from '../part/read-part.ts'
import { shopFrom } from '../part/read-shop.ts'
import { fileOfSetting, openForNumbers } from '../part/set-values.ts'
import { planStockSide } from '../plan/begin-plan.ts'
import type { StockSide } from '../plan/plan.ts'
import type { Shop } from '../shop/shop.ts'
import { type Changed, planSweep, type Sweep, type SweepPoint } from '../stock/sweep.ts'
import { type Loaded, load, planWith } from './load.ts'
import type { Options } from './options.ts'
import { reportBeside } from './report.ts'
import { heading } from './route.ts'
import { stock } from './stock.ts'
import { table } from './table.ts'
import { showPlanned } from './view.ts'
import { STATUS, UsageProblem, type World } from './world.ts'

/** Most values that one sweep plans: more than a table or a picture can show. */
const MOST = 500

/** The stock as it stands; with `--set` as it stands and as it would be; with `--sweep` over a range of one value. */
export function stockCommand(file: string, options: Options, world: World): number {
  if (options.sweep !== undefined) return sweep(file, options.sweep, options, world)
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
    const side = (plan: StockSide | undefined, findings: readonly Finding[]) => (plan ? stock.data(plan) : { findings })
    const both = { set, before: side(before.plan, before.findings), after: side(after.plan, after.findings) }
    world.out(`${JSON.stringify(both, null, 2)}\n`)
  } else if (before.plan && after.plan) {
    world.out(`${heading(after.plan)}\nChanged: ${set?.join(', ')}\n\n${comparison(before.plan, after.plan, options)}`)
  }
  reportBeside(after.findings, world)
  return hasErrors(after.findings) ? STATUS.errors : STATUS.fine
}

function comparison(before: StockSide, after: StockSide, { units }: Options): string {
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
        mm(one?.margin.case),
        one?.verdict ?? '',
      ]),
    ]
  })
  const side = (name: string) => [
    { head: `${name}: stock`, align: 'right' as const },
    { head: 'to clean up', align: 'right' as const },
    { head: 'case', align: 'right' as const },
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

function sweep(file: string, text: string, options: Options, world: World): number {
  const { path, values } = rangeOf(text)
  const loaded = load(file, options, world)
  const findings: Finding[] = [...loaded.findings]
  if (!loaded.part || !loaded.shop || hasErrors(findings)) {
    if (options.json) world.out(`${JSON.stringify({ path, findings }, null, 2)}\n`)
    reportBeside(findings, world)
    return STATUS.errors
  }
  const changedTo = changer(path, loaded, loaded.part, loaded.shop)
  const swept = planSweep(values, value => {
    const changed = changedTo(value)
    if ('findings' in changed && !hasErrors(findings)) findings.push(...changed.findings)
    return changed
  })
  if (options.json) world.out(`${JSON.stringify({ path, ...swept }, null, 2)}\n`)
  else if (!hasErrors(findings)) world.out(sweepText(path, swept, options))
  reportBeside(findings, world)
  return hasErrors(findings) ? STATUS.errors : STATUS.fine
}

/** Reads again only the file that the path belongs to. */
function changer(path: string, { file, texts }: Loaded, part: Part, shop: Shop): (value: number) => Changed {
  const isShop = fileOfSetting(path) === 'shop'
  const { withNumber, findings } = isShop
    ? openForNumbers(texts.shop, texts.shopFile, path, 'shop')
    : openForNumbers(texts.part, file, path, 'part')
  if (!withNumber) return () => ({ findings })
  return value => {
    const read = isShop ? shopFrom(withNumber(value)) : partFrom(withNumber(value))
    const changed = { part, shop, ...read }
    return hasErrors(read.findings) ? { findings: read.findings } : { part: changed.part, shop: changed.shop }
  }
}

/** `stock.bore=0.10:0.40:0.02`: ends included, each value to the places that the step is written with. */
function rangeOf(text: string): { readonly path: string; readonly values: readonly number[] } {
  const found = /^([^=]+)=([\d.]+):([\d.]+):([\d.]+)$/.exec(text.replaceAll(' ', ''))
  const [, path = '', ...ends] = found ?? []
  const [from = Number.NaN, to = Number.NaN, step = Number.NaN] = ends.map(Number)
  const count = Math.floor((to - from) / step + 1e-9) + 1
  if (!found || !(count >= 1 && count <= MOST)) {
    throw new UsageProblem(
      `--sweep wants path=from:to:step with at most ${MOST} values, as in stock.bore=0.10:0.40:0.02, got "${text}"`,
    )
  }
  const places = Math.max(...ends.map(end => end.split('.')[1]?.length ?? 0))
  return { path, values: Array.from({ length: count }, (_, i) => Number((from + i * step).toFixed(places))) }
}

function sweepText(path: string, { points, windows, surfaces }: Sweep, { units }: Options): string {
  const least = (point: SweepPoint, end: 'cleanUp' | 'case'): string => {
    const margins = point.entries.flatMap(({ margin }) => margin[end] ?? [])
    return margins.length === 0 ? '' : length(Math.min(...margins), units)
  }
  const rows = points.map(point => [
    String(point.value),
    least(point, 'cleanUp'),
    least(point, 'case'),
    point.ordered === undefined ? '' : length(point.ordered, units, 2),
    ...point.entries.map(({ verdict }) => verdict),
  ])
  const right = (head: string) => ({ head, align: 'right' as const })
  const head = [
    right(path),
    right(`least to clean up (${units})`),
    right('least case'),
    right('case to order'),
    ...surfaces.map(({ surface, operation }) => ({ head: `${surface} ${operation}` })),
  ]
  const where =
    windows.length === 0
      ? 'Both ends hold on every surface at none of these values.'
      : `Both ends hold on every surface from ${windows.map(({ from, to }) => `${from} to ${to}`).join(', and from ')}.`
  return `${table(head, rows)}\n${where}\n`
}
