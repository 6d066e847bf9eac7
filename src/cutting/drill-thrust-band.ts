import { STEELS } from '../handbook/cutting-grades.ts'
import { CHISEL, handbookThrust, STEEL_DRILL_CONSTANT } from '../handbook/drilling.ts'
import { FORCE_FACTORS } from '../handbook/kienzle.ts'
import type { Millimetre, MillimetrePerRevolution, Newton } from '../units.ts'
import type { CuttingMaterial } from './cutting-material.ts'

/** Thrust by two methods that differ by up to two: Kienzle's, and in steel the handbook's for a split point, sharp and worn. */
export function drillThrustBand(
  { family, HB }: CuttingMaterial,
  D: Millimetre,
  f: MillimetrePerRevolution,
  kienzle: Newton,
): { readonly least: Newton; readonly most: Newton } {
  const sharp = kienzle / FORCE_FACTORS.worn
  if (!STEELS.has(family)) return { least: sharp, most: kienzle }
  const handbook = handbookThrust.value({ Kd: drillConstant(HB), f, D, W: 1, ...CHISEL.split })
  return { least: Math.min(sharp, handbook), most: Math.max(kienzle, FORCE_FACTORS.worn * handbook) }
}

/** Linear between the table's hardnesses, level beyond them. */
function drillConstant(HB: number): number {
  const [first, ...others] = STEEL_DRILL_CONSTANT
  let below = first
  for (const above of others) {
    if (below && HB <= above.HB) {
      const share = Math.max(0, (HB - below.HB) / (above.HB - below.HB))
      return below.Kd + share * (above.Kd - below.Kd)
    }
    below = above
  }
  return below?.Kd ?? 0
}
