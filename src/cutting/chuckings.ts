import type { Chucking } from '../chucking.ts'
import type { Part } from '../part/part.ts'
import type { PlannedCuts } from './cutting-task.ts'
import type { Step } from './step.ts'

/** A clamping before its place among the others is known, with what is cut in it. */
export type Held = { readonly chucking: Omit<Chucking, 'number'>; readonly steps: readonly Step[] }

/** What the centres go into. */
export const centresIn = ({ bore }: Part): string =>
  bore.length > 0 ? 'the 60° chamfers of the bore' : 'its centre holes'

/** Numbered in the order of work; a clamping in which nothing is cut is left out. */
export function inChuckings(held: readonly Held[]): Pick<PlannedCuts, 'steps' | 'chuckings'> {
  const used = held.filter(({ steps }) => steps.length > 0)
  return {
    chuckings: used.map(({ chucking }, index) => ({ number: index + 1, ...chucking })),
    steps: used.flatMap(({ steps }, index) => steps.map(step => ({ ...step, chucking: index + 1 }))),
  }
}
