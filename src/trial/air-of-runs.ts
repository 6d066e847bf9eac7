import { airDensity, vapourPressure } from '../handbook/air.ts'
import { type AirRead, CORRECTIONS, type CorrectionRule } from '../handbook/power-correction.ts'
import type { TrialRun } from '../part/trial.ts'
import { kilopascals } from '../units.ts'

export type RunAir = AirRead & {
  /** kg/m³. */
  readonly density: number
}

/** Pressures in kPa and density of the air of a run; nothing where it was not read. */
export function airOf({ air: t, pressure, humidity }: TrialRun): RunAir | undefined {
  if (t === undefined || pressure === undefined || humidity === undefined) return undefined
  const p = 100 * pressure
  const p_v = vapourPressure.value({ t, phi: humidity / 100 })
  return { p: kilopascals(p), p_d: kilopascals(p - p_v), t, density: airDensity.value({ p, p_v, t }) }
}

/** How far the air moved over the runs. */
export type AirMoved = {
  /** kg/m³. */
  readonly thinnest: number
  readonly densest: number
  /** Share of the thinnest. */
  readonly moved: number
}

export function airMoved(runs: readonly TrialRun[]): AirMoved | undefined {
  const densities = runs.flatMap(run => airOf(run)?.density ?? [])
  if (densities.length < runs.length || runs.length === 0) return undefined
  const [thinnest, densest] = [Math.min(...densities), Math.max(...densities)]
  return { thinnest, densest, moved: densest / thinnest - 1 }
}

/** From this much on corrected figures stand beside those read: common practice, no source. */
export const MOVED_ENOUGH = 0.01

/** The factor of a rule in the air of a run, and whether the rule is good for it. */
export function correctionOf(
  run: TrialRun,
  rule: CorrectionRule,
): { readonly factor: number; readonly within: boolean } | undefined {
  const air = airOf(run)
  if (!air) return undefined
  const { factor: of, from, upTo } = CORRECTIONS[rule]
  const factor = of(air)
  return { factor, within: factor >= from && factor <= upTo }
}
