import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { BRIDGE_LIMITS, WALL_WARNING } from '../handbook/case-limits.ts'
import type { HardeningWindow } from '../handbook/hardening-processes.ts'
import { WALL_IN_DEPTHS } from '../handbook/induction.ts'
import { barsOf, type Part } from '../part/part.ts'
import { partFinding } from '../part/part-finding.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'
import { type WallRoom, wallRoom } from './case-limit.ts'
import { boreOf, treatedSides } from './case-surfaces.ts'

type Ordered = { readonly least: Millimetre; readonly most: Millimetre }

/** Whether the wall and the bars between windows keep a core: a section that is case through and through is brittle. */
export function roomFindings({
  notebook,
  part,
  window: { term },
  wall,
  ordered,
}: {
  readonly notebook: Notebook
  readonly part: Part
  readonly window: HardeningWindow
  readonly wall: Millimetre
  readonly ordered: Ordered
}): readonly Finding[] {
  const room = wallRoom(part, term, wall)
  if (term === 'SHD') return hardenedThrough(part, wall, room, ordered)
  return [...wallFindings({ notebook, part, wall, room, ordered }), ...bridgeFindings(part, ordered)]
}

function hardenedThrough(
  part: Part,
  wall: Millimetre,
  room: WallRoom | undefined,
  { most }: Ordered,
): readonly Finding[] {
  if (!room || most <= room.most) return []
  return [
    partFinding({
      part,
      severity: 'error',
      code: 'case/wall-eaten',
      path: '/hardening/depth',
      message: `the wall of ${fixed(wall, 2)} mm is under ${WALL_IN_DEPTHS} times the depth, ${fixed(WALL_IN_DEPTHS * most, 2)} mm: induction hardens it through`,
      hint: 'ask for less depth, or choose nitriding',
    }),
  ]
}

function wallFindings({
  notebook,
  part,
  wall,
  room,
  ordered: { most },
}: {
  readonly notebook: Notebook
  readonly part: Part
  readonly wall: Millimetre
  readonly room: WallRoom | undefined
  readonly ordered: Ordered
}): readonly Finding[] {
  const treated = treatedSides(part)
  if (!boreOf(part) || !(treated.outside || treated.bore)) return []
  const path = '/hardening/depth'
  if (!room) {
    return [
      partFinding({
        part,
        severity: 'warning',
        code: 'case/wall-eaten',
        path,
        message: `the wall of ${fixed(wall, 2)} mm is under 1.5 mm: there is no rule for how much of it may be case`,
        hint: 'ask the hardener, and section a coupon of the same wall',
      }),
    ]
  }
  const { sides, together: limit, expression, source } = room
  const taken = sides * most
  notebook.note({
    about: 'case',
    symbol: 'N_wall',
    meaning: `case ${sides === 2 ? 'on both sides together' : 'on one side'}, most, that the wall bears`,
    value: limit,
    unit: 'mm',
    expression,
    source,
  })
  if (taken <= WALL_WARNING * limit) return []
  const over = taken > limit
  return [
    partFinding({
      part,
      severity: over ? 'error' : 'warning',
      code: 'case/wall-eaten',
      path,
      message: `${sides === 2 ? 'case outside and in the bore is' : 'the case is'} up to ${fixed(taken, 2)} mm of a ${fixed(wall, 2)} mm wall; ${over ? '' : 'close to '}the limit is ${fixed(limit, 2)} mm`,
      hint: 'ask for less depth, take off less after hardening, mask one side all round, or make the wall thicker',
    }),
  ]
}

function bridgeFindings(part: Part, { least }: Ordered): readonly Finding[] {
  return part.ports.flatMap(port => {
    const bars = barsOf(port)
    const bridge = Math.min(...bars)
    if (bars.length === 0 || bridge >= BRIDGE_LIMITS.warn * least) return []
    const refused = bridge < BRIDGE_LIMITS.refuse * least
    const wanted = (refused ? BRIDGE_LIMITS.refuse : BRIDGE_LIMITS.warn) * least
    return [
      partFinding({
        part,
        severity: refused ? 'error' : 'warning',
        code: 'case/bridge-eaten',
        path: `${port.path}/bridge`,
        message: `the bridge of ${port.name} is ${fixed(bridge, 2)} mm, ${fixed(bridge / least, 1)} times the case ordered; it takes case on all four sides and ${refused ? `is refused under ${BRIDGE_LIMITS.refuse}` : `should be ${BRIDGE_LIMITS.warn}`} times (common practice)`,
        hint: `make the bridge ${fixed(Math.ceil(wanted * 10 - 1e-6) / 10, 1)} mm or wider, order less depth, or mask it if the drawing allows`,
      }),
    ]
  })
}
