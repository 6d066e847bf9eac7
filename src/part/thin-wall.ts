import type { Band } from '../band.ts'
import { materialOf } from '../handbook/materials.ts'
import { PROCESS_LIMITS_SOURCE, WALL_LIMITS } from '../handbook/process-limits.ts'
import type { Part } from './part.ts'
import type { PartFault } from './part-fault.ts'

/** A wall that the jaws crush, or that bends in them: no holding turns the first. */
export function thinWall({ material }: Part, band: Band, hole: Band): readonly PartFault[] {
  const wall = (band.size.lower - hole.size.upper) / 2
  const iron = materialOf(material.grade)?.group.endsWith(' iron') ? WALL_LIMITS.ironTimes : 1
  const D = hole.size.nominal
  const refused = Math.max(WALL_LIMITS.least, WALL_LIMITS.refused * iron * D)
  const warned = Math.max(refused, WALL_LIMITS.warned * iron * D)
  if (wall <= 0 || wall >= warned - 1e-9) return []
  const error = wall < refused - 1e-9
  const limit = error
    ? `${refused.toFixed(2)} mm is the least that is turned`
    : `under ${warned.toFixed(2)} mm it bends in the jaws`
  return [
    {
      code: 'input/wall',
      severity: error ? 'error' : 'warning',
      message: `the wall between ${band.name} and ${hole.name} is ${wall.toFixed(2)} mm; ${limit} round a bore of ${D} mm (${PROCESS_LIMITS_SOURCE})`,
      hint: error ? 'draw a thicker wall' : 'hold it right round, or draw a thicker wall',
      path: `${band.path}/size`,
    },
  ]
}
