import { angle, area, fixed, length } from '../figures.ts'
import type { PortsSide } from '../plan/ports-side.ts'
import type { PlannedPort } from '../ports/port.ts'
import { gasView } from '../sheets/views/gas-view.ts'
import type { Options } from './options.ts'
import { heading } from './route.ts'
import { table } from './table.ts'
import type { View } from './view.ts'

export const ports: View<PortsSide> = {
  data: ({ part, batch, ports, gasExchange, fixture, findings }) => ({
    part,
    batch,
    ports,
    ...(gasExchange && { gasExchange }),
    ...(fixture && { fixture }),
    findings,
  }),
  text: (plan, options) =>
    plan.ports.length === 0
      ? `${heading(plan)}No ports.\n`
      : [heading(plan), timingTable(plan, options), settingTable(plan, options), ...gasTables(plan)].join('\n'),
}

function timingTable({ ports }: PortsSide, { units }: Options): string {
  const mm = (value: number): string => length(value, units, 2)
  return table(
    [
      { head: 'port' },
      { head: 'at °', align: 'right' },
      { head: 'opens ° ATDC', align: 'right' },
      { head: 'closes °', align: 'right' },
      { head: 'open for °', align: 'right' },
      { head: `top (${units})`, align: 'right' },
      { head: 'bottom', align: 'right' },
      { head: 'width', align: 'right' },
      { head: 'window mm²', align: 'right' },
      { head: 'flow mm²', align: 'right' },
      { head: '° per 0.1 mm', align: 'right' },
    ],
    ports.map(port => [
      port.name,
      angle(port.at, 1),
      ...timesOf(port),
      mm(port.top),
      mm(port.bottom),
      mm(port.width),
      area(port.area.window),
      area(port.area.flow),
      port.dAnglePerTenth === undefined ? '' : fixed(port.dAnglePerTenth, 3),
    ]),
  )
}

/** An inlet by the skirt is open about top dead centre. */
const timesOf = ({ opens, closes, duration, bySkirt }: PlannedPort): readonly string[] =>
  bySkirt
    ? [`${angle(bySkirt.opensBefore)} before`, angle(bySkirt.closesAfter), angle(bySkirt.duration)]
    : [opens, closes, duration].map(degree => (degree === undefined ? '' : angle(degree)))

function settingTable({ ports }: PortsSide, { units }: Options): string {
  const mm = (value: number): string => length(value, units)
  return table(
    [
      { head: 'window' },
      { head: 'tilt °', align: 'right' },
      { head: 'rotary °', align: 'right' },
      { head: `Y (${units})`, align: 'right' },
      { head: 'X', align: 'right' },
      { head: 'Z', align: 'right' },
      { head: 'cutter', align: 'right' },
      { head: 'top edge as cut', align: 'right' },
      { head: 'top edge finished', align: 'right' },
    ],
    ports.flatMap(({ name, windows }) =>
      windows.map(({ at, tilt, rotary, crossOffset, x, z, cutter, edges }) => [
        `${name} at ${angle(at, 1)}`,
        angle(tilt, 3),
        angle(rotary, 3),
        mm(crossOffset),
        mm(x),
        mm(z),
        length(cutter, units, 1),
        mm(edges.asCut.highest),
        mm(edges.finished.highest),
      ]),
    ),
  )
}

/** What the ports do together, and beside it what books and workshops name; the setting sheet names the sources in full. */
function gasTables(plan: PortsSide): readonly string[] {
  const { together, references } = gasView(plan)
  if (together.length === 0) return []
  return [
    table(
      [{ head: 'together' }, { head: 'value', align: 'right' }, { head: 'unit' }],
      together.map(({ figure, value, unit }) => [figure, value, unit]),
    ),
    table(
      [
        { head: 'beside what is in use, not a limit' },
        { head: 'here', align: 'right' },
        { head: 'range', align: 'right' },
        { head: 'from' },
      ],
      references.map(({ what, value, range, source }) => [what, value, range, source.split(';')[0] ?? '']),
    ),
  ]
}
