import { fixed } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'

export const thinWall: PortCheck = {
  name: 'thin-wall',
  code: 'ports/thin-wall',
  severity: 'warning',
  because: 'a thin wall between ports does not stay round',
  source: 'common practice, no source',
  test: ({ ports, radius, outside }, limit) => {
    const needed = Math.max(limit('least'), limit('ofBore') * 2 * radius)
    return ports.flatMap(({ port, planned }) => {
      const wall = outside(planned) - radius
      if (wall >= needed) return []
      return [{ port, message: `goes through a wall of ${fixed(wall, 2)} mm; ${fixed(needed, 2)} mm or more is usual` }]
    })
  },
}
