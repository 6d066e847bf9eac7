import { GAUGING_TIMES } from '../handbook/gauging-times.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import type { Machine } from '../shop/shop.ts'
import type { Minute } from '../units.ts'
import type { PlannedCuts } from './cutting-task.ts'
import type { OperationTime, Step } from './step.ts'

/** Set-up once, then every piece: load, cut, change tools. Loading is the machine's handling. */
export function operationTime(machine: Machine, cuts: PlannedCuts, start: number): OperationTime {
  const setup = machine.setup + (cuts.setup ?? 0)
  const cutting = cuts.steps.reduce((sum, { time }) => sum + time, 0)
  const changes = toolChanges(cuts.steps) * SHOP_TIMES.toolChange
  const each = machine.handling + cutting + changes + loads(cuts) + (cuts.each ?? 0)
  return { setup, each, batch: setup + start * each }
}

/** With what measuring takes of a piece, and the allowance for rest and trouble. What goes outside takes no time here. */
export function withMeasuring({ setup, each }: OperationTime, measuring: Minute, start: number): OperationTime {
  if (setup + each === 0) return { setup, each, batch: 0 }
  const all = (1 + GAUGING_TIMES.allowance) * (each + measuring)
  return { setup, each: all, batch: setup + start * all }
}

/** The machine's handling loads a part once; every chucking after that turns it round, and in each the chips are cleared. */
function loads({ chuckings = [], steps }: PlannedCuts): Minute {
  if (chuckings.length === 0) return 0
  const drilled = steps.some(({ action, depth }) => action.startsWith('drill') && 2 * depth > 25) ? 1 : 0
  return (chuckings.length - 1) * SHOP_TIMES.turnRound + (chuckings.length + drilled) * SHOP_TIMES.clearChips
}

/** Tools to bring in for a piece; the last one of it stays for none of the next. A single tool is never changed. */
const toolChanges = (steps: readonly Step[]): number => {
  const turnedOver = steps.filter((step, index) => step.tool !== steps[index - 1]?.tool).length
  return turnedOver > 1 ? turnedOver : 0
}
