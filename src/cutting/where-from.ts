import { fromHandbook, type Origin, worked } from '../known.ts'
import { onHand } from '../shop/origin.ts'
import type { CuttingTask } from './cutting-task.ts'

/** Rules and starting values that no standard has. */
export const PRACTICE: Origin = fromHandbook('common practice, no source')

/** Sizes that the cut goes from, to and along. */
export const AS_CUT: Origin = worked('size of the cut: the part before and after the operation')

/** Depth, feed, speed and passes as the planner has settled them: the table's, or as far as machine and tool go. */
export const SETTLED: Origin = worked('settled for this cut')

type Shopped = Pick<CuttingTask, 'shop'>

export const ofTool = ({ shop }: Shopped, { name }: { readonly name: string }): Origin => onHand(shop, 'tools', name)

export const ofMachine = ({ shop, machine }: Pick<CuttingTask, 'shop' | 'machine'>): Origin =>
  onHand(shop, 'machines', machine.name)
