import { fixed } from '../figures.ts'
import { NARROW_BAR, type QuenchedShape, quenchChange } from '../handbook/hardening-growth.ts'
import { toleranceOf } from '../limits.ts'
import { barsOf, type Part } from '../part/part.ts'
import { measuredFor } from '../shop/measured.ts'
import type { Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import { carburisedShape } from './carburised-quench.ts'
import { hardeningPurpose } from './hard-tasks.ts'
import type { NeedRule } from './needs.ts'

/** What of a part's shape decides how it moves in the quench. */
export const shapeInQuench = ({
  kind,
  bore,
  ports,
}: Pick<Part, 'kind' | 'bore' | 'ports'>): { readonly shape: QuenchedShape; readonly narrowBar: boolean } => ({
  shape: bore.length === 0 ? 'solid pin' : kind === 'pin' ? 'hollow pin' : 'sleeve',
  narrowBar: ports.some(port => barsOf(port).some(bar => bar < NARROW_BAR)),
})

/** A length is not turned closer than this. Common practice, no source. */
const LEAST_TURNED: Millimetre = 0.02

/**
 * By how much the length differs from charge to charge, where that leaves the turner nothing of its tolerance: no turning before
 * the quench makes it good, only a face ground after it. A works with records of the length goes by them.
 */
function lengthLost(part: Part, shop: Shop): Millimetre | undefined {
  const { hardening, length, material } = part
  if (!hardening) return undefined
  const change = quenchChange({
    process: hardening.process,
    grade: material.grade,
    ...shapeInQuench(part),
    boreHardened: false,
    carburised: carburisedShape(part),
  })?.length
  if (!change) return undefined
  const differs = (change.most - change.least) * length.nominal
  if (differs <= toleranceOf(length) - LEAST_TURNED) return undefined
  const recorded = measuredFor(shop, { process: hardeningPurpose(hardening.process), grade: material.grade }, 'growth')
  return recorded ? undefined : differs
}

/** The top face, which the length is ground to. */
export const LENGTH_AFTER_QUENCH: NeedRule = {
  name: 'length-closer-than-quenched',
  source: 'follows from the growth by quenching: common practice/estimate',
  because: (_surface, part, shop) => {
    const differs = lengthLost(part, shop)
    return differs === undefined
      ? undefined
      : `a length within ${fixed(toleranceOf(part.length), 2)} mm is closer than hardening leaves it: it differs by ${fixed(differs, 2)} mm from charge to charge`
  },
}
