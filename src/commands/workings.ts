import { significant } from '../figures.ts'
import type { Plan } from '../plan/plan.ts'
import type { Working, WorkingInput } from '../working.ts'
import { operationOf } from './operation.ts'
import type { Options } from './options.ts'
import { heading } from './route.ts'
import type { View } from './view.ts'

export const workings: View = {
  data: (plan, options) => ({
    part: plan.part,
    batch: plan.batch,
    workings: chosen(plan, options),
    findings: plan.findings,
  }),
  text: (plan, options) => `${heading(plan)}\n${chosen(plan, options).map(lines).join('\n')}`,
}

/** Enough to check the sum by hand. */
const SIX = 6

function chosen({ operations, workings }: Plan, { operation }: Options): readonly Working[] {
  if (operation === undefined) return workings
  const { number } = operationOf(operations, operation)
  return workings.filter(working => working.operation === number)
}

function lines({
  operation,
  about,
  symbol,
  meaning,
  value,
  unit,
  expression,
  formula,
  source,
  inputs = [],
}: Working): string {
  const where = [operation === undefined ? '' : `operation ${operation}`, about ?? ''].filter(Boolean).join(', ')
  const figure = `${symbol} = ${significant(value, SIX)} ${unit}`
  return [
    `${figure}  ${meaning}${where && `  (${where})`}`,
    formula ? `    ${symbol} = ${formula}` : '',
    `    ${formula ? `= ${expression}` : expression}`,
    ...givenLines(inputs),
    `    source: ${source}`,
  ]
    .filter(line => line)
    .concat('')
    .join('\n')
}

/** `kc11 1500 N/mm², mc 0.22: handbook, …`: a line for all that one place gave. */
function givenLines(inputs: readonly WorkingInput[]): readonly string[] {
  const byOrigin = new Map<string, readonly string[]>()
  for (const { symbol, value, unit, from, source } of inputs) {
    const origin = `${from}, ${source}`
    byOrigin.set(origin, [...(byOrigin.get(origin) ?? []), `${symbol} ${significant(value, SIX)} ${unit}`.trim()])
  }
  return [...byOrigin].map(([origin, given]) => `    ${given.join(', ')}: ${origin}`)
}
