import { join } from 'node:path'
import { length, type Units } from '../figures.ts'
import { hasErrors } from '../finding.ts'
import type { Part } from '../part/part.ts'
import { planSweep, type Sweep, type SweepPoint, type SweepWindow } from '../plan/sweep.ts'
import { inFileName } from './file-name.ts'
import { jsonText } from './json.ts'
import type { Options } from './options.ts'
import { inColour } from './stock.ts'
import { withSweep } from './sweep-range.ts'
import { table } from './table.ts'
import type { World } from './world.ts'

/** Half a page of A4, in points. */
const SWEEP_ROOM = { width: 510, height: 380 }

/** Plans the stock with every value of a range and shows the margins, as a table and with `--svg` as a picture. */
export const sweep = (file: string, text: string, options: Options, world: World): Promise<number> =>
  withSweep(file, text, { options, world }, async ({ path, values, part, changedTo }, findings) => {
    const swept = planSweep(values, changedTo)
    const faulty = hasErrors(findings)
    const written =
      faulty || options.svg === undefined
        ? []
        : [await drawing({ part, path, swept, folder: options.svg, units: options.units, world })]
    if (options.json) world.out(jsonText({ path, ...swept, ...(options.svg !== undefined && { written }) }))
    else if (!faulty)
      world.out(
        [sweepText(path, swept, options, world.terminal.colour), ...written.map(name => `${name}\n`)].join('\n'),
      )
  })

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

export function sweepText(
  path: string,
  { points, windows, surfaces }: Sweep,
  { units }: Options,
  colour: boolean,
): string {
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
