import { inwardLimits, minutes } from '../figures.ts'
import { hasErrors } from '../finding.ts'
import type { Plan } from '../plan/plan.ts'
import { planSweep } from '../plan/sweep.ts'
import { jsonText } from './json.ts'
import type { Options } from './options.ts'
import { plan } from './plan.ts'
import { planFile, wholePlan } from './plan-file.ts'
import { portsCompared } from './ports-compared.ts'
import { type Room, sideBySide } from './side-by-side.ts'
import { sweepText } from './sweep.ts'
import { portsSweepText, portsSwept } from './sweep-ports.ts'
import { withSweep } from './sweep-range.ts'
import { table } from './table.ts'
import { showPlanned } from './view.ts'
import { stockCompared } from './what-if.ts'
import { UsageProblem, type World } from './world.ts'

/** The whole plan; with `--set` beside what it would be; with `--sweep` its stock and its ports over a range. */
export async function planCommand(file: string, options: Options, world: World): Promise<number> {
  const { sweep, set } = options
  if (options.asMade && !set && sweep === undefined)
    throw new UsageProblem('--as-made holds the edges under --set or --sweep: give one of them with it')
  if (sweep !== undefined) return sweepPlan(file, sweep, options, world)
  if (!set) return showPlanned(planFile(file, options, world), options, world, plan)
  const room: Room<Plan> = {
    make: (part, shop, loaded) => wholePlan(part, shop, loaded, world),
    view: plan,
    compared: (before, after, shown, colour) =>
      [
        sizesCompared(before, after, shown),
        stockCompared(before, after, shown, colour),
        ...(after.ports.length + before.ports.length === 0 ? [] : [portsCompared(before, after, shown)]),
      ].join('\n'),
  }
  return sideBySide(file, options, world, { room })
}

const sweepPlan = (file: string, text: string, options: Options, world: World): Promise<number> =>
  withSweep(file, text, { options, world }, async (swept, findings) => {
    const stock = planSweep(swept.values, swept.changedTo)
    const ports = swept.part.ports.length === 0 ? [] : portsSwept(swept, options)
    if (options.json) world.out(jsonText({ path: swept.path, stock, ports }))
    else if (!hasErrors(findings)) {
      const tables = [
        sweepText(swept.path, stock, options, world.terminal.colour),
        ...(ports.length === 0 ? [] : [portsSweepText(swept.path, ports, options)]),
      ]
      world.out(tables.join('\n'))
    }
  })

/** Sizes to hold and times of the operations, where they change. */
function sizesCompared(before: Plan, after: Plan, { units }: Options): string {
  const lines = (plan: Plan): ReadonlyMap<string, readonly string[]> =>
    new Map(
      plan.operations.flatMap(({ number, name, place, time, sizes }) => [
        ...(place === 'house'
          ? [[`${number} ${name}: minutes each`, [String(number), name, 'minutes each', minutes(time.each)]] as const]
          : []),
        ...sizes.map(({ feature, measure, edge, lower, upper, places }) => {
          const what = (edge ? [feature, edge, 'edge', measure] : [...new Set([feature, measure])]).join(' ')
          const limits = inwardLimits(lower, upper, places, units).join(' to ')
          return [`${number} ${name}: ${what}`, [String(number), name, what, limits]] as const
        }),
      ]),
    )
  const [old, now] = [lines(before), lines(after)]
  const keys = [...new Set([...old.keys(), ...now.keys()])]
  const rows = keys.flatMap(key => {
    const [was, is] = [old.get(key), now.get(key)]
    if (was?.[3] === is?.[3]) return []
    return [[...(is ?? was ?? []).slice(0, 3), was?.[3] ?? 'not there', is?.[3] ?? 'not there']]
  })
  if (rows.length === 0) return 'No size and no time of an operation changes.\n'
  const head = [
    { head: '', align: 'right' as const },
    { head: 'operation' },
    { head: `what changes (${units})` },
    { head: 'as it stands', align: 'right' as const },
    { head: 'changed', align: 'right' as const },
  ]
  return table(head, rows)
}
