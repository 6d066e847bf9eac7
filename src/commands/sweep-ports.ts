import { join } from 'node:path'
import { angle, fixed, length } from '../figures.ts'
import { hasErrors } from '../finding.ts'
import type { Part } from '../part/part.ts'
import { asMade } from '../plan/as-made.ts'
import { planPortsSide } from '../plan/ports-side.ts'
import { type PortsPoint, planPortsSweep } from '../plan/sweep-ports.ts'
import { inFileName } from './file-name.ts'
import { jsonText } from './json.ts'
import type { Options } from './options.ts'
import { type Swept, withSweep } from './sweep-range.ts'
import { flowsOf, namesOf } from './swept-names.ts'
import { table } from './table.ts'
import type { World } from './world.ts'

/** Plans the ports with every value of a range and shows how timing and areas move. */
export const sweepPorts = (file: string, text: string, options: Options, world: World): Promise<number> =>
  withSweep(file, text, { options, world }, async (swept, findings) => {
    const points = portsSwept(swept, options)
    const faulty = hasErrors(findings)
    const written =
      faulty || options.svg === undefined ? [] : [await drawn(swept, points, { ...options, svg: options.svg }, world)]
    if (options.json) world.out(jsonText({ path: swept.path, points, ...(options.svg !== undefined && { written }) }))
    else if (!faulty)
      world.out([portsSweepText(swept.path, points, options), ...written.map(name => `${name}\n`)].join('\n'))
  })

/** Writes the picture of the sweep and returns its path. */
async function drawn(
  { path, part }: Swept,
  points: readonly PortsPoint[],
  options: Options & { readonly svg: string },
  world: World,
): Promise<string> {
  const [{ portsSweepPicture }, { pictureSvg }] = await Promise.all([
    import('./ports-sweep-picture.ts'),
    import('../pictures/picture-svg.ts'),
  ])
  const picture = await portsSweepPicture(path, points, { number: part.number, asMade: options.asMade }, world)
  const file = join(options.svg, `${[part.number, part.revision, path].map(inFileName).join('-')}.svg`)
  world.write({ path: file, content: pictureSvg(picture) })
  return file
}

/** With `--as-made` every port that is given by its opening stays where the part as it stands has it. */
export function portsSwept({ values, part, shop, loaded, changedTo }: Swept, options: Options): readonly PortsPoint[] {
  const cut = options.asMade ? planPortsSide(part, shop, loaded.request).plan?.ports : undefined
  const held = (changed: Part): Part => (cut ? asMade(changed, part, cut) : changed)
  return planPortsSweep(values, changedTo, loaded.request, held)
}

export function portsSweepText(path: string, points: readonly PortsPoint[], { units, asMade: made }: Options): string {
  const right = (head: string) => ({ head, align: 'right' as const })
  const places = Math.max(...points.map(({ value }) => String(value).split('.')[1]?.length ?? 0))
  const names = namesOf(points)
  const flows = [...new Set(points.flatMap(point => flowsOf(point).map(({ name }) => name)))]
  const optional = (value: number | undefined, written: (value: number) => string): string =>
    value === undefined ? '' : written(value)
  const rows = points.map(point => [
    point.value.toFixed(places),
    ...names.flatMap(name => {
      const port = point.ports.find(port => port.name === name)
      return [optional(port?.opens, value => angle(value)), optional(port?.top, value => length(value, units, 2))]
    }),
    optional(point.blowdown?.angle, value => angle(value)),
    optional(point.blowdown?.time, value => fixed(value, 2)),
    ...flows.map(flow =>
      optional(flowsOf(point).find(({ name }) => name === flow)?.timeArea, value => fixed(value, 5)),
    ),
    optional(point.trappedRatio, value => fixed(value, 2)),
    point.serves ? '' : 'errors',
  ])
  const head = [
    right(path),
    ...names.flatMap(name => [right(`${name} opens °`), right(`top (${units})`)]),
    right('blowdown °'),
    right('ms'),
    ...flows.map(flow => right(`${flow} s/m`)),
    right('trapped ratio'),
    { head: '' },
  ]
  const moved = made
    ? 'Edges as the part has them cut: the timing moves.'
    : 'A port given by its opening keeps it, and its edges move; --as-made keeps the edges.'
  return `${table(head, rows)}\n${moved} s/m: specific time-area.\n`
}
