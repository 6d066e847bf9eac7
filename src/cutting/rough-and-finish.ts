import type { CutsPlanner } from './cutting-task.ts'
import { finishTurn } from './finish-turning.ts'
import { roughTurn } from './rough-turning.ts'

/** Where no heat lies between, the lathe roughs and finishes in one operation: all of the roughing first, at both ends. */
export const roughAndFinish: CutsPlanner = task => {
  const { before, after, roughed = before } = task
  return {
    steps: [...roughTurn({ ...task, after: roughed }).steps, ...finishTurn({ ...task, before: roughed, after }).steps],
  }
}
