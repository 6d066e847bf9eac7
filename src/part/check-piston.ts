import type { Groove, Inside } from '../feature.ts'
import { materialOf } from '../handbook/materials.ts'
import { CROWN, PISTON_SOURCE, RING_CLEARANCE, RING_HEIGHT } from '../handbook/piston.ts'
import type { Millimetre } from '../units.ts'
import type { Part } from './part.ts'
import type { PartFault } from './part-fault.ts'

/** A crown that holds, a wall behind every ring, and rings that neither stick nor hammer. */
export function checkPiston(part: Part): readonly PartFault[] {
  const inside = part.features.find((feature): feature is Inside => feature.kind === 'inside')
  const rings = part.features.filter(
    (feature): feature is Groove => feature.kind === 'groove' && part.kind === 'piston',
  )
  return [...(inside ? crownFaults(part, inside, rings) : []), ...rings.flatMap(clearanceFaults)]
}

const mm = (value: Millimetre): string => String(Number(value.toFixed(3)))

function crownFaults(part: Part, inside: Inside, rings: readonly Groove[]): readonly PartFault[] {
  const crown = part.length.nominal - inside.deep.nominal
  const iron = /iron/.test(materialOf(part.material.grade)?.group ?? '')
  const least = (iron ? CROWN.iron : CROWN.aluminium) * (part.outside[0]?.size.nominal ?? 0)
  return [
    ...(crown < least - 1e-9
      ? [
          {
            code: 'input/feature' as const,
            message: `inside leaves a crown of ${mm(crown)} mm; ${mm(least)} mm is the least (${PISTON_SOURCE})`,
            hint: 'make the inside shallower',
            path: `${inside.path}/depth`,
          },
        ]
      : []),
    ...rings
      .filter(({ at, width, floor }) => {
        const under = at.nominal + width.nominal > crown
        return under && (floor.lower - inside.size.upper) / 2 < CROWN.behindGroove
      })
      .map(({ name, floor, path }) => ({
        code: 'input/feature' as const,
        message: `${name} has ${mm((floor.lower - inside.size.upper) / 2)} mm of wall behind it; ${CROWN.behindGroove} mm is the least (${PISTON_SOURCE})`,
        hint: 'make the inside smaller, or the groove shallower',
        path: `${path}/size`,
      })),
  ]
}

/** Groove less ring, as both may come. */
function clearanceFaults({ name, width, ring, path }: Groove): readonly PartFault[] {
  if (ring === undefined) return []
  const least = width.lower - (ring + RING_HEIGHT.upper)
  const most = width.upper - (ring + RING_HEIGHT.lower)
  if (least >= RING_CLEARANCE.least - 1e-9 && most <= RING_CLEARANCE.most + 1e-9) return []
  return [
    {
      code: 'input/feature',
      message: `${name}: a ring of ${ring} mm (${RING_HEIGHT.source}) has ${mm(least)} to ${mm(most)} mm of clearance; ${RING_CLEARANCE.least} to ${RING_CLEARANCE.most} mm is usual`,
      hint: `write its width ${ring} +0.05/+0.03 for a first ring, ${ring} +0.03/+0.01 for others`,
      path: `${path}/width`,
    },
  ]
}
