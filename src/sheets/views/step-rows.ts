import type { Step } from '../../cutting/step.ts'
import { fixed, force, minutes, power, significant } from '../../figures.ts'
import { DASH, type PaperFigures } from './paper-figures.ts'

/** One cut; speeds and feeds are where to start, not limits. */
export type StepRow = {
  readonly action: string
  readonly tool: string
  readonly cuttingSpeed: string
  readonly spindleSpeed: string
  readonly feed: string
  readonly tableFeed: string
  readonly depth: string
  readonly passes: string
  readonly time: string
  /** What the cut does to the tool, what limits it, wheel and coolant. */
  readonly remarks: string
  /** Letters of the notes that hold for it: `a, c`. */
  readonly marks: string
}

/** Said of several steps, and so below them, once. */
export type StepNote = { readonly mark: string; readonly text: string; readonly end: string }

export type StepTable = { readonly rows: readonly StepRow[]; readonly notes: readonly StepNote[] }

/** Steps whose remarks that come again and again are notes. */
export function stepTable(steps: readonly Step[], figures: PaperFigures): StepTable {
  const rows = stepRows(steps, figures)
  const said = steps.map((_, index) => remarksOf(steps, index))
  const again = [...new Set(said.flat())].filter(text => said.filter(all => all.includes(text)).length > 1)
  const markOf = new Map(again.map((text, index) => [text, String.fromCharCode(FIRST_MARK + index)]))
  return {
    rows: rows.map((row, index) => ({
      ...row,
      remarks: (said[index] ?? []).filter(text => !markOf.has(text)).join('; '),
      marks: holdingFor(steps[index])
        .flatMap(text => markOf.get(text) ?? [])
        .join(', '),
    })),
    notes: again.map((text, index) => ({
      mark: markOf.get(text) ?? '',
      text,
      end: index < again.length - 1 ? '; ' : '',
    })),
  }
}

const FIRST_MARK = 'a'.charCodeAt(0)

export const stepRows = (steps: readonly Step[], { length }: PaperFigures): readonly StepRow[] =>
  steps.map((step, index) => ({
    action: step.action,
    tool: step.tool,
    cuttingSpeed: some(step.cuttingSpeed, 0),
    spindleSpeed: some(step.spindleSpeed, 0),
    feed: step.feed > 0 ? `${significant(step.feed, 2)}\u00a0${step.feedUnit}` : DASH,
    tableFeed: some(step.tableFeed, 0),
    depth: step.depth > 0 ? length(step.depth, step.depth < 0.1 ? 3 : 2) : DASH,
    passes: String(step.passes),
    time: step.time > 0 ? minutes(step.time) : DASH,
    // Forces and power are for whoever doubts, unless they govern: the plan has them.
    remarks: remarksOf(steps, index).join('; '),
    marks: '',
  }))

function remarksOf(steps: readonly Step[], index: number): readonly string[] {
  const step = steps[index]
  const goesOn = step?.limitedBy !== undefined && step.limitedBy === steps[index - 1]?.limitedBy
  return holdingFor(step).filter((remark, at) => !(at === 0 && goesOn) && !isSaidAbove(steps, index, remark))
}

/** All that holds for a step; what holds it back stands first. */
const holdingFor = (step: Step | undefined): readonly string[] =>
  step ? [...(step.limitedBy ? [heldBack(step, step.limitedBy)] : []), ...step.remarks] : []

/** What holds for the step above goes on; how far a starting value may be off is said once. */
const isSaidAbove = (steps: readonly Step[], index: number, remark: string): boolean =>
  steps[index - 1]?.remarks.includes(remark) === true ||
  (remark.startsWith('start at; ') && steps.slice(0, index).some(({ remarks }) => remarks.includes(remark)))

function heldBack({ force: push, power: drive }: Step, by: string): string {
  if (drive !== undefined && /power/.test(by)) return `held back by ${by}: takes ${power(drive)} kW`
  if (push !== undefined && /force|thrust|bend/.test(by)) return `held back by ${by}: ${force(push)} N`
  return `held back by ${by}`
}

const some = (value: number, places: number): string => (value > 0 ? fixed(value, places) : DASH)
