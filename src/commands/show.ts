import { hasErrors } from '../finding.ts'
import type { Plan } from '../plan/plan.ts'
import { planFile } from './load.ts'
import type { Options } from './options.ts'
import { reportBeside } from './report.ts'
import { STATUS, type World } from './world.ts'

export type View = {
  /** For a person at a terminal. */
  readonly text: (plan: Plan, options: Options) => string
  /** The part of the Plan that `--json` prints. */
  readonly data: (plan: Plan) => unknown
}

/** Plans one part and shows one side of the plan: text, or with `--json` plain data and nothing else on standard output. */
export function show(file: string, options: Options, world: World, { text, data }: View): number {
  const { plan, findings } = planFile(file, options, world)
  if (options.json) world.out(`${JSON.stringify(plan ? data(plan) : { findings }, null, 2)}\n`)
  else if (plan) world.out(text(plan, options))
  reportBeside(findings, world)
  return hasErrors(findings) ? STATUS.errors : STATUS.fine
}
