import { bandAt } from '../band.ts'
import type { Chamfer, Feature, Groove, Hole, Undercut } from '../feature.ts'
import { GROOVE_LIMITS } from '../handbook/grooves.ts'
import { PROCESS_LIMITS_SOURCE } from '../handbook/process-limits.ts'
import { middleOf } from '../limits.ts'
import { type Millimetre, radians } from '../units.ts'
import { wallAt } from '../wall.ts'
import type { Part } from './part.ts'
import type { PartFault } from './part-fault.ts'
import { tidy } from './quantity.ts'

/** Of the wall, how much the chamfers of one end may take; how much of it an undercut may. Common practice, no source. */
const CHAMFERED = 0.7
const UNDERCUT = 1 / 3
/** What a pin keeps of its wall at the end face, mm. */
const PIN_END: Millimetre = 0.5
/** Of its diameter, how near the middle of a hole may stand to an end. Common practice, no source. */
const HOLE_EDGE = 1

/** Every feature lies where its name says, and leaves the wall that holds. */
export const checkFeatures = (part: Part): readonly PartFault[] => [
  ...part.features.flatMap(feature => faultsOf(part, feature)),
  ...thinEdges(part),
]

function faultsOf(part: Part, feature: Feature): readonly PartFault[] {
  switch (feature.kind) {
    case 'groove':
      return grooveFaults(part, feature)
    case 'undercut':
      return undercutFaults(part, feature)
    case 'hole':
      return holeFaults(part, feature)
    case 'chamfer':
    case 'lead':
      return longEdge(part, feature)
    default:
      return []
  }
}

const fault = (feature: Feature, message: string, hint: string, key?: string): PartFault => ({
  code: 'input/feature',
  message: `${feature.name} ${message}`,
  hint,
  path: key === undefined ? feature.path : `${feature.path}/${key}`,
})

const inward = (side: Groove['side']): 1 | -1 => (side === 'outside' ? 1 : -1)

function grooveFaults(part: Part, feature: Groove): readonly PartFault[] {
  const { side, at, width, floor } = feature
  const band = part[side].find(({ name }) => name === feature.band)
  if (!band) return []
  const deep = (inward(side) * (band.size.nominal - floor.nominal)) / 2
  if (deep <= 0) {
    const where = side === 'outside' ? 'smaller' : 'larger'
    return [
      fault(
        feature,
        `has a floor of ${floor.nominal} mm in ${band.name} of ${band.size.nominal} mm`,
        `the floor of a groove in the ${side} is ${where}`,
        'size',
      ),
    ]
  }
  const end = at.nominal + width.nominal
  const faults: PartFault[] = []
  const land = Math.max(GROOVE_LIMITS.land, GROOVE_LIMITS.landShare * deep)
  const beside = Math.min(at.nominal - band.from, band.to.nominal - end)
  if (beside < land - 1e-9) {
    faults.push(
      fault(
        feature,
        `leaves a land of ${tidy(Number(beside.toFixed(3)))} mm on ${band.name}; ${tidy(Number(land.toFixed(3)))} mm is the least beside a groove ${tidy(Number(deep.toFixed(3)))} mm deep (${PROCESS_LIMITS_SOURCE})`,
        'move it, or make it shallower',
        'at',
      ),
    )
  }
  const wall = wallAt(part, at.nominal + width.nominal / 2)
  const left = wall === undefined ? floor.nominal / 2 : wall - deep
  const least = Math.max(GROOVE_LIMITS.wall, GROOVE_LIMITS.wallShare * (wall ?? 0))
  if (left < least - 1e-9)
    faults.push(fault(feature, wallLeft(left, least), 'make it shallower, or the wall thicker', 'size'))
  return faults
}

const wallLeft = (left: Millimetre, least: Millimetre): string =>
  left <= 0
    ? 'goes through the wall'
    : `leaves a wall of ${tidy(Number(left.toFixed(3)))} mm; ${tidy(Number(least.toFixed(3)))} mm is the least (${PROCESS_LIMITS_SOURCE})`

function undercutFaults(part: Part, feature: Undercut): readonly PartFault[] {
  const band = part.outside.find(({ name }) => name === feature.band)
  const wall = band && wallAt(part, band.from + feature.width.nominal / 2)
  if (wall === undefined || feature.depth.upper <= UNDERCUT * wall) return []
  return [
    fault(
      feature,
      `is ${feature.depth.upper} mm deep in a wall of ${tidy(Number(wall.toFixed(3)))} mm; a third of it is the most (${PROCESS_LIMITS_SOURCE})`,
      'take F 0.4 x 0.2, or the plain E',
    ),
  ]
}

function holeFaults(part: Part, feature: Hole): readonly PartFault[] {
  const { depth, size, circle, through } = feature
  if (through === 'wall' && depth) {
    const edge = Math.min(depth.nominal, part.length.nominal - depth.nominal)
    return edge < HOLE_EDGE * size.nominal
      ? [
          fault(
            feature,
            `stands ${tidy(Number(edge.toFixed(3)))} mm from an end, nearer than its diameter`,
            'move it in',
            'depth',
          ),
        ]
      : []
  }
  const flange = part.outside.find(({ name }) => name === feature.band)
  const below = flange && bandAt(part.outside, flange.to.nominal)
  if (!circle || !flange || !below) return []
  const [out, into] = [
    (flange.size.nominal - circle.nominal - size.nominal) / 2,
    (circle.nominal - size.nominal - below.size.nominal) / 2,
  ]
  return Math.min(out, into) < 0
    ? [
        fault(
          feature,
          `does not lie in ${flange.name}, between ${below.size.nominal} and ${flange.size.nominal} mm`,
          'circle is the diameter that the holes stand on',
          'circle',
        ),
      ]
    : []
}

function longEdge(part: Part, feature: Chamfer): readonly PartFault[] {
  const band = part[feature.side].find(({ name }) => name === feature.band)
  if (!band || feature.length.nominal < band.to.nominal - band.from) return []
  return [fault(feature, `is as long as the band itself`, 'draw a taper as a band')]
}

/** The chamfers of one end, outside and inside together. */
function thinEdges(part: Part): readonly PartFault[] {
  return (['upper', 'lower'] as const).flatMap(end => {
    const depth = end === 'upper' ? 0 : part.length.nominal
    const wall = wallAt(part, depth)
    const near = part.features.filter((one): one is Chamfer => {
      if ((one.kind !== 'chamfer' && one.kind !== 'lead') || one.end !== end) return false
      const bands = part[one.side]
      return bands[end === 'upper' ? 0 : bands.length - 1]?.name === one.band
    })
    const taken = near.reduce((sum, { length, angle }) => sum + middleOf(length) * Math.tan(radians(angle)), 0)
    const last = near.at(-1)
    if (part.kind === 'pin' && wall !== undefined && wall - taken >= PIN_END - 1e-9) return []
    if (!last || wall === undefined || taken <= CHAMFERED * wall) return []
    return [
      fault(
        last,
        `and what else is chamfered at that end take ${tidy(Number(taken.toFixed(2)))} mm of a wall of ${tidy(Number(wall.toFixed(2)))} mm; ${CHAMFERED} of it is the most (${PROCESS_LIMITS_SOURCE})`,
        'make them shorter or flatter',
      ),
    ]
  })
}
