import { angle, length } from '../figures.ts'
import { type Finding, hasErrors } from '../finding.ts'
import { readBench } from '../part/read-bench.ts'
import { type BenchHeld, benchHeld } from '../plan/bench-compared.ts'
import type { Held } from '../ports/port-held.ts'
import { jsonText } from './json.ts'
import { planWith } from './load.ts'
import type { Options } from './options.ts'
import { PORTS } from './ports-room.ts'
import { reportBeside } from './report.ts'
import { heading } from './route.ts'
import { table } from './table.ts'
import { STATUS, type World } from './world.ts'

/** A liner measured on the bench beside the plan: the difference in mm and in crank degrees. */
export function measuredLiner(file: string, benchFile: string, options: Options, world: World): number {
  const read = readBench(world.readText(benchFile), benchFile)
  const { plan, findings: planned, loaded } = planWith(file, options, world, PORTS.make)
  const compared = read.bench && plan && loaded.part ? benchHeld(read.bench, loaded.part, plan) : undefined
  const errors = planned.filter(({ severity }) => severity === 'error')
  const findings: readonly Finding[] = [...(plan ? [] : errors), ...read.findings, ...(compared?.findings ?? [])]
  const { findings: _, ...held } = compared ?? { findings: [] }
  if (options.json) world.out(jsonText({ part: plan?.part, bench: read.bench, held, findings }))
  else if (compared && plan && !hasErrors(findings)) {
    const { piece, date } = read.bench ?? {}
    const which = [piece === undefined ? '' : `piece ${piece}`, date ?? ''].filter(text => text !== '').join(', ')
    world.out(
      `${heading(plan)}\nMeasured: ${benchFile}${which === '' ? '' : ` (${which})`}\n\n${heldTable(compared, options)}`,
    )
  }
  reportBeside(findings, world)
  return hasErrors(findings) ? STATUS.errors : STATUS.fine
}

function heldTable({ bore, crownBelowTop, ports, blowdown }: BenchHeld, { units }: Options): string {
  const mm = (value: number): string => length(value, units, 3)
  const degrees = (value: number): string => angle(value, 2)
  const row = (what: string, figure: string, held: Held | undefined, written: (value: number) => string) =>
    held
      ? [
          [
            what,
            figure,
            written(held.planned),
            written(held.measured),
            `${held.by < 0 ? '-' : '+'}${written(Math.abs(held.by))}`,
          ],
        ]
      : []
  const right = (head: string) => ({ head, align: 'right' as const })
  return table(
    [{ head: 'port' }, { head: '' }, right('planned'), right('measured'), right('by')],
    [
      ...row('', `bore (${units})`, bore, mm),
      ...row('', 'crown below top', crownBelowTop, mm),
      ...ports.flatMap(({ name, top, bottom, width, arc, at, opens, duration }) => [
        ...row(name, `top (${units})`, top, mm),
        ...row(name, 'opens ° ATDC', opens, degrees),
        ...row(name, 'open for °', duration, degrees),
        ...row(name, 'bottom', bottom, mm),
        ...row(name, 'width', width, mm),
        ...row(name, 'arc °', arc, degrees),
        ...row(name, 'at °', at, degrees),
      ]),
      ...row('', 'blowdown °', blowdown, degrees),
    ],
  )
}
