import { fixed } from '../../figures.ts'
import { radians, wrapped } from '../../units.ts'
import type { PortCheck } from './port-check.ts'

export const transferNearExhaust: PortCheck = {
  name: 'transfer-near-exhaust',
  code: 'ports/transfer-near-exhaust',
  severity: 'warning',
  because: 'the nearest transfer loses its stream to the exhaust',
  source: 'common practice, no source',
  test: ({ ports, radius }, limit) =>
    ports.flatMap(({ port, planned }) => {
      if (planned.role !== 'transfer') return []
      const gaps = ports
        .filter(({ planned: { role } }) => role === 'exhaust')
        .map(({ planned: exhaust }) => Math.abs(wrapped(planned.at - exhaust.at)) - (planned.arc + exhaust.arc) / 2)
      const gap = Math.min(...gaps)
      const land = radius * radians(gap)
      if (!Number.isFinite(gap) || (gap >= limit('angle') && land >= limit('distance'))) return []
      return [
        {
          port,
          message: `its edge is ${fixed(gap, 1)}°, ${fixed(land, 2)} mm, from the exhaust's; ${limit('angle')}° and ${limit('distance')} mm or more is usual`,
          key: 'at',
        },
      ]
    }),
}
