import { angle, area, fixed, length } from '../figures.ts'
import type { PortsSide } from '../plan/ports-side.ts'
import type { PlannedPort, PortWindow } from '../ports/port.ts'
import { gasView } from '../sheets/views/gas-view.ts'
import type { Options } from './options.ts'
import { table } from './table.ts'

/** Timing, areas, what the ports do together, and the settings that change, before and after. */
export function portsCompared(before: PortsSide, after: PortsSide, { units }: Options): string {
  const pairs = after.ports.map(port => [before.ports.find(({ name }) => name === port.name), port] as const)
  const timing = pairs.map(([was, port]) => [
    port.name,
    ...[was, port].flatMap(one => TIMING.map(({ of }) => (one ? said(of(one, units)) : ''))),
  ])
  const sideHead = (name: string) => TIMING.map(({ what }, i) => right(i === 0 ? `${name}: ${what}` : what))
  const settings = pairs.flatMap(([was, port]) =>
    port.windows.flatMap((window, index) =>
      rowsOf(was?.windows[index], window, SETTING, units)
        .filter(([, from, to]) => from !== to)
        .map(row => [`${port.name} at ${angle(window.at, 1)}`, ...row]),
    ),
  )
  return [
    table([{ head: 'port' }, ...sideHead('as it stands'), ...sideHead('changed')], timing),
    ...togetherTable(before, after),
    settings.length === 0 ? 'No setting changes.\n' : table(headOf('window: settings that change'), settings),
  ].join('\n')
}

const right = (head: string) => ({ head, align: 'right' as const })
const headOf = (first: string) => [{ head: first }, { head: '' }, right('as it stands'), right('changed'), right('by')]

type Value = readonly [value: number | undefined, written: (value: number) => string]

const said = ([value, written]: Value): string => (value === undefined ? '' : written(value))

type Figure<T> = {
  readonly what: string
  readonly of: (from: T, units: Options['units']) => Value
}

const inUnits = (units: Options['units'], places: number) => (value: number) => length(value, units, places)
const degrees = (places: number) => (value: number) => angle(value, places)

const TIMING: readonly Figure<PlannedPort>[] = [
  { what: 'opens °', of: ({ opens, bySkirt }) => [opens ?? bySkirt?.opensBefore, degrees(2)] },
  { what: 'open for °', of: ({ duration, bySkirt }) => [duration ?? bySkirt?.duration, degrees(2)] },
  { what: 'top', of: ({ top }, units) => [top, inUnits(units, 3)] },
  { what: 'bottom', of: ({ bottom }, units) => [bottom, inUnits(units, 3)] },
  { what: 'width', of: ({ width }, units) => [width, inUnits(units, 3)] },
  { what: 'flow mm²', of: ({ area: { flow } }) => [flow, area] },
]

const SETTING: readonly Figure<PortWindow>[] = [
  { what: 'tilt °', of: ({ tilt }) => [tilt, degrees(3)] },
  { what: 'rotary °', of: ({ rotary }) => [rotary, degrees(3)] },
  { what: 'Y', of: ({ crossOffset }, units) => [crossOffset, inUnits(units, 3)] },
  { what: 'X', of: ({ x }, units) => [x, inUnits(units, 3)] },
  { what: 'Z', of: ({ z }, units) => [z, inUnits(units, 3)] },
  { what: 'cutter', of: ({ cutter }, units) => [cutter, inUnits(units, 1)] },
  { what: 'top edge as cut', of: ({ edges }, units) => [edges.asCut.highest, inUnits(units, 3)] },
  { what: 'bottom edge as cut', of: ({ edges }, units) => [edges.asCut.lowest, inUnits(units, 3)] },
]

/** Name, before, after and difference of every figure that either has. */
function rowsOf<T>(
  was: T | undefined,
  is: T,
  figures: readonly Figure<T>[],
  units: Options['units'],
): readonly (readonly string[])[] {
  return figures.flatMap(({ what, of }) => {
    const [value, written] = of(is, units)
    const [old] = was === undefined ? [undefined] : of(was, units)
    if (value === undefined && old === undefined) return []
    return [
      [
        what,
        said([old, written]),
        said([value, written]),
        old === undefined || value === undefined ? '' : by(value - old, written),
      ],
    ]
  })
}

const by = (change: number, written: (value: number) => string): string =>
  Number(written(Math.abs(change))) === 0 ? '' : `${change < 0 ? '-' : '+'}${written(Math.abs(change))}`

function togetherTable(before: PortsSide, after: PortsSide): readonly string[] {
  const [old, now] = [gasView(before).together, gasView(after).together]
  if (now.length === 0 && old.length === 0) return []
  const figures = [...now, ...old.filter(({ figure }) => !now.some(row => row.figure === figure))]
  const valueIn = (rows: typeof now, figure: string): string => rows.find(row => row.figure === figure)?.value ?? ''
  return [
    table(
      [{ head: 'together' }, right('as it stands'), right('changed'), right('by'), { head: 'unit' }],
      figures.map(({ figure, unit }) => {
        const [was, is] = [valueIn(old, figure), valueIn(now, figure)]
        const places = is.split('.')[1]?.length ?? 0
        const change = was === '' || is === '' ? '' : by(Number(is) - Number(was), value => fixed(value, places))
        return [figure, was, is, change, unit]
      }),
    ),
  ]
}
