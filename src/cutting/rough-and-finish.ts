import { inChuckings } from './chuckings.ts'
import type { CutsPlanner } from './cutting-task.ts'
import { finishHeld } from './finish-held.ts'
import { roughHeld } from './rough-turning.ts'

/** Where no heat lies between, the lathe roughs and finishes in one operation: all of the roughing first, at both ends. */
export const roughAndFinish: CutsPlanner = task => {
  const { before, after, roughed = before } = task
  return inChuckings([...roughHeld({ ...task, after: roughed }), ...finishHeld({ ...task, before: roughed, after })])
}
