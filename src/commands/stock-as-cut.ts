import { length } from '../figures.ts'
import { sizesAsCut } from '../plan/sizes-as-cut.ts'
import type { AsCut } from '../stock/as-cut.ts'
import { jsonText } from './json.ts'
import { planWith } from './load.ts'
import type { Options } from './options.ts'
import { reportBeside } from './report.ts'
import { table } from './table.ts'
import { STATUS, UsageProblem, type World } from './world.ts'

/** Judges the sizes that the files plan by facts that `--set` gives, and chooses nothing anew. */
export function stockAsCut(file: string, options: Options, world: World): number {
  const { set, ...plain } = options
  if (!set)
    throw new UsageProblem(
      '--as-cut judges the sizes as planned by new facts: give them with --set, as --set ovality=0.04',
    )
  const before = planWith(file, plain, world, (part, shop) => ({ plan: { part, shop, findings: [] }, findings: [] }))
  const after = planWith(file, options, world, (part, shop) => ({ plan: { part, shop, findings: [] }, findings: [] }))
  if (!before.plan || !after.plan) {
    reportBeside([...before.findings, ...after.findings], world)
    return STATUS.errors
  }
  const { part, shop } = before.plan
  const { judged, findings } = sizesAsCut({ part, shop, facts: after.plan.shop })
  if (!judged) {
    reportBeside(findings, world)
    return STATUS.errors
  }
  world.out(options.json ? jsonText({ set, asCut: judged }) : asCutTable(judged, set, options))
  return judged.some(({ verdict }) => verdict === 'cannot clean up' || verdict === 'case too thin')
    ? STATUS.errors
    : STATUS.fine
}

function asCutTable(judged: readonly AsCut[], set: readonly string[], { units }: Options): string {
  const right = (head: string) => ({ head, align: 'right' as const })
  const rows = judged.map(({ surface, operation, margin, verdict, runout }) => [
    surface,
    String(operation),
    length(margin.cleanUp, units),
    margin.case === undefined ? '' : length(margin.case, units),
    verdict === 'set closer'
      ? `set closer: run-out ${length(runout.borne, units)} at most for ${length(runout.planned, units)}`
      : verdict,
  ])
  return `As cut, with ${set.join(', ')}; nothing is chosen anew.\n\n${table(
    [
      { head: 'surface' },
      right('operation'),
      right(`spare to clean up (${units})`),
      right('spare case'),
      { head: 'what to do' },
    ],
    rows,
  )}`
}
