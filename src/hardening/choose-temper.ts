import { convertedFrom } from '../handbook/hardness-conversion.ts'
import { hardnessTempered, TEMPERS, throughHardened } from '../handbook/through-hardening.ts'
import type { Part } from '../part/part.ts'
import { hardensThrough } from '../part/takes-case.ts'
import type { Celsius, RockwellC } from '../units.ts'

export type Temper = {
  readonly at: Celsius
  /** What it leaves. */
  readonly hardness: RockwellC
  /** Hot enough to break down the austenite that the quench left. */
  readonly stabilised: boolean
}

/** The drawing's least, as it is read on a part hardened through. */
export const rockwellAsked = ({ hardening }: Part): RockwellC | undefined => {
  const asked = hardening?.hardness?.least
  return asked === undefined ? undefined : convertedFrom('HV', asked)?.HRC
}

/** A liner runs hot, so its austenite must be gone before it is ground; other parts keep the usual cool temper. */
export const runsHot = ({ kind }: Part): boolean => kind === 'liner'

/** The first of the usual tempers that leaves the hardness asked; nothing where none does. */
export function chooseTemper(part: Part): Temper | undefined {
  const row = hardensThrough(part) ? throughHardened(part.material.grade) : undefined
  if (!row) return undefined
  const asked = rockwellAsked(part) ?? 0
  const hot = runsHot(part)
  for (const at of hot ? TEMPERS.hot : TEMPERS.cool) {
    const hardness = hardnessTempered(row, at)
    // Converted to and fro, a figure that is just met may come out a hair higher.
    if (hardness !== undefined && hardness >= asked - 0.05) return { at, hardness, stabilised: hot }
  }
  return undefined
}
