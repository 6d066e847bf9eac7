import { GRINDING_ROWS, type GroundWork, STARTING_WHEELS, THIN_HARD_LINER } from '../handbook/grinding-data.ts'
import type { MetrePerMinute, Millimetre } from '../units.ts'
import type { CuttingTask } from './cutting-task.ts'

/** How a surface is ground: infeeds radial, traverse in wheel widths for each turn of the work. */
export type GrindingSetting = {
  readonly workSpeed: MetrePerMinute
  readonly roughInfeed: Millimetre
  readonly finishInfeed: Millimetre
  readonly roughTraverse: number
  readonly finishTraverse: number
  readonly sparkOut: number
  readonly hard: boolean
  readonly source: string
}

const HANDBOOK = "Machinery's Handbook, 31st ed., p. 1318"
const PRACTICE = 'common practice, no source'

/** The table's row for the work as it then is; a thin liner with a hard skin takes the infeeds of practice. */
export function grindingSetting(task: CuttingTask, where: 'outside' | 'bore'): GrindingSetting {
  const hard = task.part.hardening !== undefined
  const ported = where === 'bore' && task.before.ported
  const row = GRINDING_ROWS.find(({ work }) => work === workOf(task, hard))
  if (!row) throw new RangeError('no grinding row')
  const thin = ported ? THIN_HARD_LINER.portedBore : THIN_HARD_LINER[where]
  const workSpeed = ported ? THIN_HARD_LINER.portedWorkSpeed : THIN_HARD_LINER.boreWorkSpeed
  return {
    workSpeed: where === 'bore' ? Math.min(row.workSpeed, workSpeed) : row.workSpeed,
    // The table's infeeds are read as on diameter. A ported bore is struck by the wheel at every edge, hard or soft.
    roughInfeed: hard || ported ? thin.rough : row.roughInfeed / 2,
    finishInfeed: hard || ported ? thin.finish : row.finishInfeed[1] / 2,
    roughTraverse: row.roughTraverse,
    finishTraverse: row.finishTraverse,
    sparkOut: thin.sparkOut,
    hard,
    source: hard || ported ? `${HANDBOOK}, speed and traverse; infeed: ${PRACTICE}` : HANDBOOK,
  }
}

/** Grey and ductile iron have no row of their own: ground as soft plain steel, common practice, no source. */
function workOf({ material, part }: CuttingTask, hard: boolean): GroundWork {
  switch (material.family) {
    case 'aluminium':
    case 'silicon aluminium':
      return 'aluminium alloys'
    case 'bronze':
      return 'copper alloys'
    case 'grey iron':
    case 'ductile iron':
      return 'plain carbon steel, annealed'
    case 'unalloyed steel':
    case 'free-cutting steel':
      return hard ? 'plain carbon steel, hardened' : 'plain carbon steel, annealed'
    case 'bearing steel':
      return hard ? 'tool steel, hardened' : 'alloy steel, annealed'
    default:
      return hard || (part.material.hardness ?? 0) > HARD_BAR ? 'alloy steel, hardened' : 'alloy steel, annealed'
  }
}

/** HV. Over it a tempered bar is ground as hardened: common practice, no source. */
const HARD_BAR = 400

/** The wheel that the handbook would start with: what is mounted may be another. */
export function startingWheel({ material, part, after }: CuttingTask, where: 'outside' | 'bore'): string {
  const job = ((): string => {
    if (material.family === 'grey iron' || material.family === 'ductile iron') return 'cast-iron bushings'
    if (material.family === 'aluminium' || material.family === 'silicon aluminium') return 'aluminium pistons'
    if (where === 'bore') return 'nitrided or case-hardened bore'
    if (part.hardening?.process.includes('nitri')) return 'nitrided steel, commercial finish'
    const largest = Math.max(...after.outside.map(({ diameter }) => diameter))
    return largest <= 25 ? 'hardened steel up to 25 mm' : 'hardened steel over 25 mm'
  })()
  const row = STARTING_WHEELS.find(known => known.job === job)
  return row ? `handbook wheel: ${row.wheel}` : ''
}
