import { clockPosition } from '../clock-position.ts'
import type { ClockingDatum } from '../cutting/clocking-datum.ts'
import { fixed } from '../figures.ts'
import { cornerDeviation, PORT_PLACE, streamDeviation } from '../handbook/port-inspection.ts'
import type { PlannedPort } from '../ports/port.ts'
import { toLookAt, type Wanted, type Where } from './wanted.ts'

/** One setting of machine and cutter makes them alike on every piece. */
const FIRST_PIECE = { sample: 1, plan: 'first piece of every setting' } as const

/** What the setting of the fixture and the cutter decide about every port, as it is milled. */
export function milledPorts(
  ports: readonly PlannedPort[],
  datum: ClockingDatum | undefined,
  where: Where,
): readonly Wanted[] {
  return ports.flatMap(port => [
    cornerOf(port, where),
    ...placeOfPort(port, ports, datum, where).map(one => ({ ...one, sampled: FIRST_PIECE })),
    ...streamOf(port, where),
  ])
}

/**
 * By pins in the cutter's plane, where the corner is that of the cutter. A corner drawn on the bore of an inclined port has no
 * single radius there: its tightest is what the cutter leaves.
 */
function cornerOf({ name, corner, windows }: PlannedPort, where: Where): Wanted {
  const tightest = Math.min(...windows.map(({ tightestCorner }) => tightestCorner ?? corner))
  const deviation = cornerDeviation(tightest)
  return {
    ...where,
    name: `${name} tightest corner, by pin diameter`,
    kind: 'contour',
    unit: 'mm',
    nominal: 2 * tightest,
    lower: 2 * (tightest - deviation),
    upper: 2 * (tightest + deviation),
    feature: name,
    written: 'hole',
    weight: 'minor',
    sampled: FIRST_PIECE,
    remark: 'along the stream: a pin of the lower limit beds in the corner, one of the upper rides on both walls',
  }
}

/** Read on the rotary from the datum, or else from the first port: an indicator on one side edge and on the other, halved. */
function placeOfPort(
  port: PlannedPort,
  ports: readonly PlannedPort[],
  datum: ClockingDatum | undefined,
  where: Where,
): readonly Wanted[] {
  const [first] = ports
  const { deviation } = PORT_PLACE
  const { name } = port
  const from = datum?.drawn ? datum : first
  if (!from || from === port) return []
  // As the rotary counts on: a turn is 360.
  const turn = (((port.at - from.at) % 360) + 360) % 360
  return [
    {
      ...where,
      name: `${name} place round the liner, from ${datum?.drawn ? `the ${datum.name}` : from.name}`,
      kind: 'angle',
      unit: '°',
      nominal: turn,
      lower: turn - deviation,
      upper: turn + deviation,
      feature: name,
      weight: 'major',
      remark: `counter-clockwise seen from the head, where it stands at ${clockPosition(port.at)}; an indicator on both side edges on the rotary, halved`,
    },
  ]
}

/** A pin that fits the window shows its stream: the indicator along it reads the same from end to end. */
function streamOf({ name, up, back, windows }: PlannedPort, where: Where): readonly Wanted[] {
  const wall = Math.min(...windows.map(({ plunge }) => plunge.wall))
  const deviation = streamDeviation(wall)
  const one = (what: 'up' | 'back', nominal: number): Wanted => ({
    ...where,
    name: `${name} stream, ${what === 'up' ? 'rising to the head' : 'turned back'}`,
    kind: 'angle',
    unit: '°',
    nominal,
    lower: nominal - deviation,
    upper: nominal + deviation,
    feature: name,
    weight: 'minor',
    sampled: FIRST_PIECE,
    remark: `a pin that fits the window, an indicator along it ${what === 'up' ? 'in X at the tilt' : 'in Y at the rotary setting'}: no run, and the setting is the angle`,
  })
  return [...(up === 0 ? [] : [one('up', up)]), ...(back === 0 ? [] : [one('back', back)])]
}

/** Every window's top edge in the finished bore, by what its chain was closed to, and where each port stands. */
export function finishedPorts(
  ports: readonly PlannedPort[],
  datum: ClockingDatum | undefined,
  where: Where,
): readonly Wanted[] {
  return ports.flatMap(port => [...topEdges(port, where), ...placeOfPort(port, ports, datum, where)])
}

function topEdges({ name, edge, windows }: PlannedPort, where: Where): readonly Wanted[] {
  if (!edge) return []
  const { allowed, takeOff } = edge
  return windows.map((window, index): Wanted => {
    const { highest } = window.edges.finished
    return {
      ...where,
      name: `${name}${windows.length > 1 ? ` ${index + 1}` : ''} top edge, finished`,
      kind: 'depth',
      unit: 'mm',
      nominal: highest,
      lower: highest + allowed.lower - allowed.nominal,
      upper: highest + allowed.upper - allowed.nominal,
      feature: name,
      weight: 'critical',
      remark: `from the finished top face to the sharp corner at its highest, where wall and bore would meet without the break${takeOff ? `; held by the take-off at operation ${takeOff.operation}` : ''}`,
    }
  })
}

/** How far each port's timing edge is broken: looked at with a lens that has a scale, before hardening and when finished. */
export function brokenEdges(ports: readonly PlannedPort[], when: 'broken' | 'left', where: Where): readonly Wanted[] {
  return ports.flatMap(({ name, edge }) => {
    const found = edge?.edgeBreak?.[when]
    if (!found) return []
    return [
      toLookAt({
        name: `${name} timing edge broken ${fixed(found.least, 2)} to ${fixed(found.most, 2)} mm along the bore`,
        feature: name,
        weight: 'major',
        where,
        remark: 'from the sharp corner to the end of the break; lens with a scale',
      }),
    ]
  })
}
