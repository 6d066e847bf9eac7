import { force, minutes } from '../../figures.ts'
import type { Plan, PlannedOperation } from '../../plan/plan.ts'
import type { WorkGroup } from '../work-groups.ts'
import { lookWords, type MakeRow, makeRows, returnedWords } from './make-rows.ts'
import type { PaperFigures } from './paper-figures.ts'
import { codeOf, whereOf } from './route-card-view.ts'
import { type SlipRow, slipRows } from './slip-rows.ts'
import { type StepNote, type StepRow, stepTable } from './step-rows.ts'

/** Answers five questions, always in the same order: held by what, cut with what, to which size, measured how, what must not happen. */
export type OperationView = {
  readonly unit: string
  readonly drawing: string
  readonly where: string
  readonly holding: string
  readonly locatedBy: string
  /** Each clamping: how much of what the jaws hold. */
  readonly grips: readonly string[]
  /** One line: why this is done. */
  readonly because: string
  readonly setup: string
  readonly piece: string
  readonly steps: readonly StepRow[]
  readonly notes: readonly StepNote[]
  /** Whether any step has a speed: bench work has none, and its sheet no columns for them. */
  readonly machined: boolean
  readonly makes: readonly MakeRow[]
  /** What is read as the piece comes back, on the inspector's sheet: no row here. */
  readonly returned: string
  readonly looks: string
  readonly cautions: readonly string[]
  /** What is counted here, and what is checked or sent before the next sheet. */
  readonly slips: readonly SlipRow[]
  /** Read by the gun: part, revision, batch, operation. */
  readonly code: string
}

export function operationView(
  plan: Plan,
  operation: PlannedOperation,
  slips: WorkGroup['slips'],
  figures: PaperFigures,
): OperationView {
  const { number, locatedBy, because, cautions, time, steps } = operation
  const table = stepTable(steps, figures)
  return {
    unit: figures.unit,
    drawing: `operation-${number}`,
    where: whereOf(operation),
    holding: holdingWords(operation, figures),
    locatedBy: locatedBy.join(', '),
    grips: gripLines(operation, figures),
    because: because[0] ?? '',
    setup: minutes(time.setup),
    piece: minutes(time.each),
    steps: table.rows,
    notes: table.notes,
    machined: steps.some(({ cuttingSpeed, tableFeed }) => cuttingSpeed > 0 || tableFeed > 0),
    makes: makeRows(plan, operation, figures),
    returned: returnedWords(plan, operation),
    looks: lookWords(plan, operation),
    cautions,
    slips: slipRows(plan, [operation, ...slips], figures),
    code: codeOf([plan.part.number, plan.part.revision, plan.batch.number, String(number)]),
  }
}

export const holdingWords = ({ holding, setTrue }: PlannedOperation, figures: PaperFigures): string =>
  setTrue === undefined ? holding : `${holding}; set true within ${figures.length(setTrue, 4)} ${figures.unit} off axis`

/** What the jaws hold, a line a clamping. */
const gripLines = ({ chuckings = [] }: PlannedOperation, figures: PaperFigures): readonly string[] =>
  chuckings.map(({ number, end, grip, stop, heldWith, jawForce }) => {
    const gripped =
      grip.length > 0 ? `${figures.length(grip.length, 1)} ${figures.unit} of ${grip.surface}` : grip.surface
    if (heldWith === undefined) return `Grip ${gripped}, ${end} end out, against ${stop}.`
    const pressed = jawForce ? `; set each jaw to ${force(jawForce.ask)} N` : ''
    return `${number}: ${heldWith} on ${gripped}, ${end} end out, against ${stop}${pressed}.`
  })
