import type { Figure } from '../known.ts'
import type { Celsius, RockwellC, Vickers } from '../units.ts'
import type { Quench } from './choose-quench.ts'
import type { Growth } from './growth.ts'
import type { RecordUse } from './records.ts'

/** What the hardener is asked for where a part is hardened right through. Growth is per side, positive where metal grows. */
export type QuenchPlan = {
  readonly process: string
  readonly quench: Quench
  /** Of the drawing, in both scales: a part hard to the middle is read in HRC. */
  readonly asked?: { readonly HRC: RockwellC; readonly HV: Vickers }
  readonly expected: RockwellC
  readonly temper: Celsius
  readonly stabilised: boolean
  /** Hottest that the part may run without growing and softening. */
  readonly runsTo: Celsius
  /** Left by the quench, per cent of volume. */
  readonly austenite: { readonly least: number; readonly most: number }
  readonly hardening: { readonly least: Celsius; readonly most: Celsius }
  readonly medium: string
  readonly stressRelief: { readonly least: Celsius; readonly aim: Celsius; readonly most: Celsius }
  readonly barHardness?: Vickers
  readonly growth: Growth
  readonly records: readonly RecordUse[]
  /** The figures it stands on, as they were used. */
  readonly basis: readonly Figure[]
}
