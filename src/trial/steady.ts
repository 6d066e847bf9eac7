import { steadyEnd, steadyTime } from '../handbook/engine-load.ts'
import type { Trial, TrialRun } from '../part/trial.ts'

export type Steady = {
  readonly run: number
  /** °C: the three readings. */
  readonly readings: readonly number[]
  /** °C where they go to, and s in which what is left falls to 37 %; absent where that cannot be told yet. */
  readonly end?: number
  readonly tau?: number
  readonly isSteady: boolean
  readonly why: string
}

/** A step by the one before it from which the end of the rise is told too coarsely. */
const TOO_STRAIGHT = 0.9

/** Whether the temperature of a run was steady; nothing where three readings were not taken. */
export function steadyOf({ number, head }: TrialRun, { settle, every }: Trial): Steady | undefined {
  const [T_1, T_2, T_3] = head ?? []
  if (head?.length !== 3 || T_1 === undefined || T_2 === undefined || T_3 === undefined) return undefined
  const common = { run: number, readings: head }
  const [first, second] = [T_2 - T_1, T_3 - T_2]
  // A thermometer that stands still is at its end: there is no step to reckon with.
  if (Math.abs(first) < settle / 2 && Math.abs(second) < settle / 2)
    return { ...common, end: T_3, isSteady: true, why: `stands still within ${settle / 2} K` }
  const ratio = first === 0 ? Number.POSITIVE_INFINITY : second / first
  if (!(ratio > 0 && ratio < TOO_STRAIGHT))
    return { ...common, isSteady: false, why: 'moves without slowing down: where it goes to cannot be told' }
  const end = steadyEnd.value({ T_1, T_2, T_3 })
  const tau = steadyTime.value({ dt: every, r: ratio })
  const left = Math.abs(end - T_3)
  return { ...common, end, tau, isSteady: left < settle, why: `${left.toFixed(1)} K left to ${end.toFixed(1)} °C` }
}
