import { minutes } from '../../figures.ts'
import type { Plan, PlannedOperation } from '../../plan/plan.ts'
import type { WorkGroup } from '../work-groups.ts'
import { lookWords } from './make-rows.ts'
import { holdingWords } from './operation-view.ts'
import type { PaperFigures } from './paper-figures.ts'
import { codeOf } from './route-card-view.ts'
import { type SlipRow, slipRows } from './slip-rows.ts'

/** All work at the bench on one card, an operation a block. */
export type BenchView = {
  readonly unit: string
  /** Where ports have edges to break; turned edges need none. */
  readonly drawing: string
  readonly blocks: readonly {
    readonly number: string
    readonly name: string
    readonly holding: string
    readonly piece: string
    readonly does: readonly { readonly action: string; readonly tool: string; readonly remarks: string }[]
    readonly looks: string
  }[]
  readonly cautions: readonly string[]
  readonly slips: readonly SlipRow[]
  readonly code: string
}

export function benchView(
  plan: Plan,
  operations: readonly PlannedOperation[],
  slips: WorkGroup['slips'],
  figures: PaperFigures,
): BenchView {
  const numbers = operations.map(({ number }) => number)
  const inTurn = [...operations, ...slips].toSorted((a, b) => a.number - b.number)
  return {
    unit: figures.unit,
    drawing: plan.ports.length > 0 ? `operation-${numbers.at(-1)}` : '',
    blocks: operations.map(operation => ({
      number: String(operation.number),
      name: operation.name,
      holding: holdingWords(operation, figures),
      piece: minutes(operation.time.each),
      does: operation.steps.map(({ action, tool, remarks }) => ({ action, tool, remarks: remarks.join('; ') })),
      looks: lookWords(plan, operation),
    })),
    cautions: [...new Set(operations.flatMap(({ cautions }) => cautions))],
    slips: slipRows(plan, inTurn, figures),
    code: codeOf([plan.part.number, plan.part.revision, plan.batch.number, numbers.join('+')]),
  }
}
