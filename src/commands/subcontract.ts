import { hasErrors } from '../finding.ts'
import type { Plan, PlannedOperation } from '../plan/plan.ts'
import { subcontract as order } from '../sheets/subcontract.ts'
import { jsonText } from './json.ts'
import { operationList, operationOf } from './operation.ts'
import type { Options } from './options.ts'
import { fileStem, paperOptions, writeDocument } from './paper.ts'
import { planFile } from './plan-file.ts'
import { counted, reportBeside } from './report.ts'
import { STATUS, UsageProblem, type World } from './world.ts'

/** The order and specification of one operation for somebody outside, whoever does it in the plan. */
export async function subcontract(file: string, options: Options, world: World): Promise<number> {
  const { plan, findings } = planFile(file, options, world)
  reportBeside(findings, world)
  if (!plan || hasErrors(findings)) {
    world.err(`${file}: no order: ${counted(findings)}\n`)
    return STATUS.errors
  }
  const operation = chosen(plan, options)
  const printed = await order(plan, operation, paperOptions(options, world))
  const written = writeDocument(fileStem(plan, 'operation', String(operation.number)), printed, plan, options, world)
  if (options.json) world.out(jsonText({ file, operation: operation.number, written }))
  else for (const path of written) world.out(`${path}\n`)
  return STATUS.fine
}

/** The one asked for; without `--operation`, the only one done outside. */
function chosen({ operations }: Plan, { operation: wanted }: Options): PlannedOperation {
  if (wanted !== undefined) return operationOf(operations, wanted)
  const outside = operations.filter(({ place }) => place === 'outside')
  const [only, ...more] = outside
  if (only && more.length === 0) return only
  throw new UsageProblem(`say which with --operation: ${operationList(outside) || 'no operation is done outside'}`)
}
