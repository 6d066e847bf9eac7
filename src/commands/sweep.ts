import { join } from 'node:path'
import { length, type Units } from '../figures.ts'
import { type Finding, hasErrors } from '../finding.ts'
import type { Part } from '../part/part.ts'
import { partFrom } from '../part/read-part.ts'
import { shopFrom } from '../part/read-shop.ts'
import { fileOfSetting, openForNumbers } from '../part/set-values.ts'
import { type Changed, planSweep, type Sweep, type SweepPoint, type SweepWindow } from '../plan/sweep.ts'
import type { Shop } from '../shop/shop.ts'
import { inFileName } from './file-name.ts'
import { jsonText } from './json.ts'
import { type Loaded, load } from './load.ts'
import type { Options } from './options.ts'
import { reportBeside } from './report.ts'
import { inColour } from './stock.ts'
import { table } from './table.ts'
import { STATUS, UsageProblem, type World } from './world.ts'

/** Half a page of A4, in points. */
const SWEEP_ROOM = { width: 510, height: 380 }
/** Most values that one sweep plans: more than a table or a picture can show. */
const MOST = 500

/** Plans the stock with every value of a range and shows the margins, as a table and with `--svg` as a picture. */
export async function sweep(file: string, text: string, options: Options, world: World): Promise<number> {
  const { path, values } = rangeOf(text)
  const loaded = load(file, options, world)
  const findings: Finding[] = [...loaded.findings]
  if (!loaded.part || !loaded.shop || hasErrors(findings)) {
    if (options.json) world.out(jsonText({ path, findings }))
    reportBeside(findings, world)
    return STATUS.errors
  }
  const { part } = loaded
  const changedTo = changer(path, loaded, part, loaded.shop)
  const swept = planSweep(values, value => {
    const changed = changedTo(value)
    if ('findings' in changed && !hasErrors(findings)) findings.push(...changed.findings)
    return changed
  })
  const faulty = hasErrors(findings)
  const written =
    faulty || options.svg === undefined
      ? []
      : [await drawing({ part, path, swept, folder: options.svg, units: options.units, world })]
  if (options.json) world.out(jsonText({ path, ...swept, ...(options.svg !== undefined && { written }) }))
  else if (!faulty)
    world.out([sweepText(path, swept, options, world.terminal.colour), ...written.map(name => `${name}\n`)].join('\n'))
  reportBeside(findings, world)
  return faulty ? STATUS.errors : STATUS.fine
}

/** Writes the picture of the sweep and returns its path. */
async function drawing({
  part,
  path,
  swept,
  folder,
  units,
  world,
}: {
  readonly part: Part
  readonly path: string
  readonly swept: Sweep
  readonly folder: string
  readonly units: Units
  readonly world: World
}): Promise<string> {
  const [{ drawSweep }, { pictureSvg }, { typefaceOf }] = await Promise.all([
    import('../pictures/sweep-chart.ts'),
    import('../pictures/picture-svg.ts'),
    import('./paper-files.ts'),
  ])
  const picture = drawSweep({
    sweep: swept,
    names: { part: part.number, path, words: windowsInWords(swept.windows) },
    room: SWEEP_ROOM,
    measure: typefaceOf(world).measure,
    units,
  })
  const file = join(folder, `${[part.number, part.revision, path].map(inFileName).join('-')}.svg`)
  world.write({ path: file, content: pictureSvg(picture) })
  return file
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

function sweepText(path: string, { points, windows, surfaces }: Sweep, { units }: Options, colour: boolean): string {
  const least = (point: SweepPoint, end: keyof SweepPoint['entries'][number]['margin']): string => {
    const margins = point.entries.flatMap(({ margin }) => margin[end] ?? [])
    return margins.length === 0 ? '' : length(Math.min(...margins), units)
  }
  const places = Math.max(...points.map(({ value }) => String(value).split('.')[1]?.length ?? 0))
  const plated = points.some(({ entries }) => entries.some(({ margin }) => margin.plating !== undefined))
  const rows = points.map(point => [
    point.value.toFixed(places),
    least(point, 'cleanUp'),
    ...(plated ? [least(point, 'plating')] : []),
    least(point, 'case'),
    point.ordered === undefined ? '' : length(point.ordered, units, 2),
    ...point.entries.map(({ verdict }) => inColour(verdict, colour)),
  ])
  const right = (head: string) => ({ head, align: 'right' as const })
  const head = [
    right(path),
    right(`least to clean up (${units})`),
    ...(plated ? [right('least plating')] : []),
    right('least case'),
    right('case to order'),
    ...surfaces.map(({ surface, operation }) => ({ head: `${surface} ${operation}` })),
  ]
  return `${table(head, rows)}\n${windowsInWords(windows)}\n`
}

function windowsInWords(windows: readonly SweepWindow[]): string {
  const stretches = windows.map(({ from, to }) => (from === to ? `at ${from}` : `from ${from} to ${to}`))
  return stretches.length === 0
    ? 'Both ends hold on every surface at none of these values.'
    : `Both ends hold on every surface ${stretches.join(', and ')}.`
}
