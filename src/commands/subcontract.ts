import { stringify } from 'yaml'
import { hasErrors } from '../finding.ts'
import type { OutsideOrder } from '../orders/order.ts'
import type { Plan } from '../plan/plan.ts'
import { orderText } from '../sheets/order-text.ts'
import { nameOfOrder } from '../sheets/sets.ts'
import { subcontract as print } from '../sheets/subcontract.ts'
import { planToIssue, writeIssued } from './issue.ts'
import { jsonText } from './json.ts'
import { operationOf } from './operation.ts'
import type { Options } from './options.ts'
import { paperOptions } from './paper.ts'
import { planFile } from './plan-file.ts'
import { counted, reportBeside } from './report.ts'
import { STATUS, UsageProblem, type World } from './world.ts'

/** The order of the visit that an outside operation belongs to. */
export async function subcontract(
  file: string,
  options: Options & { readonly as?: 'text' | 'yaml' },
  world: World,
): Promise<number> {
  const { plan, findings } = planFile(file, options, world)
  reportBeside(findings, world)
  if (!plan || hasErrors(findings)) {
    world.err(`${file}: no order: ${counted(findings)}\n`)
    return STATUS.errors
  }
  const order = orderOf(plan, options)
  if (options.as !== undefined) {
    world.out(
      options.as === 'text'
        ? orderText(plan, order, options.units)
        : stringify(order, { lineWidth: 0, aliasDuplicateObjects: false }),
    )
    return STATUS.fine
  }
  const issued = planToIssue(plan, options, world)
  const printed = await print(issued, order, paperOptions(options, world))
  const written = writeIssued({ plan: issued, printed, screen: nameOfOrder(order), options, world })
  if (options.json) world.out(jsonText({ file, operation: options.operation ?? order.operations[0], order, written }))
  else for (const path of written) world.out(`${path}\n`)
  return STATUS.fine
}

/** The order that holds the operation asked for; without `--operation`, the only one there is. */
function orderOf({ operations, orders }: Plan, { operation: wanted }: Options): OutsideOrder {
  const outside = orders.map(order => `${order.operations.join(' and ')} ${order.title}`).join(', ')
  const list = outside || 'no operation is done outside'
  if (wanted === undefined) {
    const [only, ...more] = orders
    if (only && more.length === 0) return only
    throw new UsageProblem(`say which with --operation: ${list}`)
  }
  const { number, name } = operationOf(operations, wanted)
  const found = orders.find(order => order.operations.includes(number))
  if (found) return found
  throw new UsageProblem(`operation ${number} ${name} is done in the house: ${list}`)
}
