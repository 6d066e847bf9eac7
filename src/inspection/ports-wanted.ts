import { fixed } from '../figures.ts'
import type { PlannedPort } from '../ports/port.ts'
import { toLookAt, type Wanted, type Where } from './wanted.ts'

/** Every window's top edge in the finished bore, by what its chain was closed to. */
export function finishedPorts(ports: readonly PlannedPort[], where: Where): readonly Wanted[] {
  return ports.flatMap(({ name, edge, windows }) => {
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
