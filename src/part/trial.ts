import type { Place } from '../finding.ts'
import type { CorrectionRule } from '../handbook/power-correction.ts'
import type { Millimetre, Newton } from '../units.ts'

export type LinerLetter = 'A' | 'B' | 'C'
export type LoadKind = 'propeller' | 'pump' | 'brake arm'

export type LinerOnTrial = {
  readonly letter: LinerLetter
  readonly part: string
  readonly revision?: string
  readonly serial?: string
  readonly file?: string
  /** Hours. */
  readonly runIn?: number
  readonly at: Place
}

/** What the engine drives. */
export type TrialLoad = {
  readonly kind: LoadKind
  readonly setting?: string
  readonly diameter?: Millimetre
  readonly arm?: Millimetre
  readonly tare?: Newton
  readonly efficiency?: number
  readonly staticLift?: number
}

/** One run as it was written down. */
export type TrialRun = {
  /** From 1, in the order of the file. */
  readonly number: number
  readonly fitting: number
  readonly liner: LinerLetter
  readonly block: string
  /** Minutes after midnight. */
  readonly time?: number
  /** rpm. */
  readonly speed: number
  readonly force?: Newton
  /** l/s. */
  readonly flow?: number
  /** m. */
  readonly lift?: number
  readonly thrust?: Newton
  /** °C. */
  readonly air?: number
  /** hPa. */
  readonly pressure?: number
  /** %. */
  readonly humidity?: number
  /** °C: one reading, or three at equal times. */
  readonly head?: readonly number[]
  /** s between the marks. */
  readonly fuel?: number
  readonly rejected?: string
  readonly doubt?: string
  readonly at: Place
}

/** Something else that may have moved power, as a share of it. */
export type BudgetEntry = { readonly what: string; readonly u: number; readonly freedom: number }

/** What one trial file says. */
export type Trial = {
  readonly file: string
  readonly engine: string
  readonly date?: string
  readonly by?: string
  /** Share of power that would matter. */
  readonly worthwhile: number
  readonly verdict: 'speed' | 'power'
  readonly fittingsEach?: number
  readonly order?: string
  /** Share of power: standard deviation of a fitting's mean, from an earlier trial. */
  readonly spread?: number
  /** K. */
  readonly settle: number
  readonly correction?: CorrectionRule
  readonly load: TrialLoad
  readonly liners: readonly LinerOnTrial[]
  readonly fuel?: { readonly volume: number; readonly density: number }
  /** s. */
  readonly every: number
  readonly budget: readonly BudgetEntry[]
  readonly runs: readonly TrialRun[]
  /** Where the head stands. */
  readonly at: Place
}
