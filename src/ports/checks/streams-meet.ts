import { fixed, inWords } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'

export const streamsMeet: PortCheck = {
  name: 'streams-meet',
  code: 'ports/streams-meet',
  severity: 'note',
  because: 'streams that do not meet each run up their own side of the rear wall',
  source: 'derived: geometry',
  test: ({ ports }, limit) =>
    ports.flatMap(({ port, planned }) => {
      const most = limit('most') * Math.abs(planned.at)
      if (planned.role !== 'transfer' || planned.at <= 0 || planned.at === 180 || planned.back <= most) return []
      return [
        {
          port,
          message: `turned back by ${inWords(planned.back)}°, over half of its azimuth (${fixed(most, 1)}°): the pair's streams meet the wall before each other`,
          key: 'back',
        },
      ]
    }),
}
