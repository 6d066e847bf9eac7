import { type Finding, hasErrors } from '../finding.ts'
import type { Plan } from '../plan/plan.ts'
import { jsonText } from './json.ts'
import type { Options } from './options.ts'
import { reportBeside } from './report.ts'
import { STATUS, type World } from './world.ts'

export type View<P = Plan> = {
  /** For a person at a terminal. */
  readonly text: (plan: P, options: Options, colour: boolean) => string
  /** The part of the Plan that `--json` prints. */
  readonly data: (plan: P, options: Options) => unknown
}

/** One side of a plan: text, or with `--json` plain data and nothing else on standard output. */
export function showPlanned<P>(
  { plan, findings }: { readonly plan?: P; readonly findings: readonly Finding[] },
  options: Options,
  world: World,
  { text, data }: View<P>,
): number {
  if (options.json) world.out(jsonText(plan ? data(plan, options) : { findings }))
  else if (plan) world.out(text(plan, options, world.terminal.colour))
  reportBeside(findings, world)
  return hasErrors(findings) ? STATUS.errors : STATUS.fine
}
