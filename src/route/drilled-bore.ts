import type { Band } from '../band.ts'
import { toleranceCell } from '../handbook/standard-tolerance.ts'
import { toleranceOf } from '../limits.ts'
import type { Part } from '../part/part.ts'
import { millimetres } from '../units.ts'

/** Ra that a drill leaves, µm. Source: common practice, no source. */
const DRILLED_RA = 6.3

/**
 * A pin's bore only saves weight: it is drilled through in roughing and left so where the drawing asks no more than a drill
 * holds, IT12 (memory: Kosilova & Meshcheryakov, vol. 1: drilling up to 25 mm, IT 12 to 13).
 */
export const drilledBore = ({ kind, bore }: Pick<Part, 'kind' | 'bore'>): Band | undefined => {
  const [hole, ...more] = kind === 'pin' ? bore : []
  if (!hole || more.length > 0) return undefined
  const { size, roughness = DRILLED_RA, taper, roundness, cylindricity, runout } = hole
  const plain = [taper, roundness, cylindricity, runout].every(asked => asked === undefined)
  const IT12 = toleranceCell(size.nominal, 12)
  const wide = IT12 !== undefined && toleranceOf(size) >= millimetres(IT12) - 1e-9
  return plain && wide && roughness >= DRILLED_RA ? hole : undefined
}
