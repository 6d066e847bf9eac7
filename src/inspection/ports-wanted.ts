import type { PlannedPort } from '../ports/port.ts'
import type { Millimetre } from '../units.ts'
import type { Wanted, Where } from './wanted.ts'

/** Every window's top edge in the finished bore, by what the works allows on it. */
export function finishedPorts(ports: readonly PlannedPort[], tolerance: Millimetre, where: Where): readonly Wanted[] {
  return ports.flatMap(port =>
    port.windows.map((window, index): Wanted => {
      const edge = window.edges.finished.highest
      return {
        ...where,
        name: `${port.name}${port.windows.length > 1 ? ` ${index + 1}` : ''} top edge, finished`,
        kind: 'depth',
        unit: 'mm',
        nominal: edge,
        lower: edge - tolerance / 2,
        upper: edge + tolerance / 2,
        feature: port.name,
        weight: 'critical',
        remark: 'from the finished top face to the highest point of the edge',
      }
    }),
  )
}
