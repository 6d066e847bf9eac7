import { minutes } from '../../figures.ts'
import type { Plan, PlannedOperation } from '../../plan/plan.ts'
import { type CheckRow, checkRow } from './check-rows.ts'
import { clockingLines } from './clocking-lines.ts'
import type { PaperFigures } from './paper-figures.ts'
import { codeOf, whereOf } from './route-card-view.ts'
import { type SizeRow, sizeRows } from './size-rows.ts'
import { type StepRow, stepRows } from './step-rows.ts'

/** Answers five questions, always in the same order: held by what, cut with what, to which size, measured how, what must not happen. */
export type OperationView = {
  readonly unit: string
  readonly strip: string
  readonly drawing: string
  readonly where: string
  readonly outside: boolean
  readonly holding: string
  readonly locatedBy: string
  /** How much of what the jaws hold, how often the batch goes through: one line each. */
  readonly grips: readonly string[]
  /** One line: why this is done. */
  readonly because: string
  readonly setup: string
  readonly piece: string
  readonly pieces: string
  readonly steps: readonly StepRow[]
  /** Whether any step has a speed: bench work has none, and its sheet no columns for them. */
  readonly machined: boolean
  readonly sizes: readonly SizeRow[]
  readonly checks: readonly CheckRow[]
  readonly cautions: readonly string[]
  /** Read by the gun: part, revision, batch, operation. */
  readonly code: string
}

export function operationView(plan: Plan, operation: PlannedOperation, figures: PaperFigures): OperationView {
  const { number, holding, setTrue, locatedBy, because, cautions, time } = operation
  return {
    unit: figures.unit,
    strip: `strip-${number}`,
    drawing: `operation-${number}`,
    where: whereOf(operation),
    outside: operation.place === 'outside',
    holding:
      setTrue === undefined
        ? holding
        : `${holding}; set true within ${figures.length(setTrue, 4)} ${figures.unit} off axis`,
    locatedBy: locatedBy.join(', '),
    grips: gripLines(plan, operation, figures),
    because: because[0] ?? '',
    setup: minutes(time.setup),
    piece: minutes(time.each),
    pieces: String(plan.batch.start),
    steps: stepRows(operation.steps, figures),
    machined: operation.steps.some(({ cuttingSpeed, tableFeed }) => cuttingSpeed > 0 || tableFeed > 0),
    sizes: sizeRows(operation, figures),
    checks: plan.inspection.characteristics
      .filter(characteristic => characteristic.operation === number)
      .map(characteristic => checkRow(plan, characteristic, figures)),
    cautions,
    code: codeOf([plan.part.number, plan.part.revision, plan.batch.number, String(number)]),
  }
}

/** What the jaws hold, and how often the batch goes through. */
function gripLines(
  { clocking }: Plan,
  { chuckings = [], purpose }: PlannedOperation,
  figures: PaperFigures,
): readonly string[] {
  const held = chuckings.map(({ number, end, grip, stop, heldWith }) => {
    const gripped =
      grip.length > 0 ? `${figures.length(grip.length, 1)} ${figures.unit} of ${grip.surface}` : grip.surface
    if (heldWith === undefined) return `Grip ${gripped}, ${end} end out, against ${stop}.`
    return `${number}: ${heldWith} on ${gripped}, ${end} end out, against ${stop}.`
  })
  const passes = purpose === 'mill-ports' && clocking ? clockingLines(clocking, figures).slice(0, 1) : []
  return [...held, ...passes]
}
