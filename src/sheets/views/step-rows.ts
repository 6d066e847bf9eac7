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
}

export const stepRows = (steps: readonly Step[], { length }: PaperFigures): readonly StepRow[] =>
  steps.map(step => ({
    action: step.action,
    tool: step.tool,
    cuttingSpeed: some(step.cuttingSpeed, 0),
    spindleSpeed: some(step.spindleSpeed, 0),
    feed: step.feed > 0 ? `${significant(step.feed, 2)}\u00a0${step.feedUnit}` : DASH,
    tableFeed: some(step.tableFeed, 0),
    depth: step.depth > 0 ? length(step.depth, step.depth < 0.1 ? 3 : 2) : DASH,
    passes: String(step.passes),
    time: step.time > 0 ? minutes(step.time) : DASH,
    remarks: [...measures(step), ...(step.limitedBy ? [`held back by ${step.limitedBy}`] : []), ...step.remarks].join(
      '; ',
    ),
  }))

function measures({ force: push, power: drive, deflection }: Step): readonly string[] {
  const parts = [
    push === undefined ? undefined : `force ${force(push)} N`,
    drive === undefined ? undefined : `power ${power(drive)} kW`,
    deflection === undefined ? undefined : `tool bends ${fixed(deflection, deflection < 10 ? 1 : 0)} µm`,
  ].filter(part => part !== undefined)
  return parts.length > 0 ? [parts.join(', ')] : []
}

const some = (value: number, places: number): string => (value > 0 ? fixed(value, places) : DASH)
