import { inWords } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'

export const boostRise: PortCheck = {
  name: 'boost-rise',
  code: 'ports/boost-rise',
  severity: 'warning',
  because: 'a flat boost stream runs straight across into the exhaust',
  source: 'common practice, no source',
  test: ({ ports }, limit) =>
    ports.flatMap(({ port, planned }) =>
      planned.role === 'boost' && planned.up < limit('least')
        ? [{ port, message: `rises by ${inWords(planned.up)}°; ${limit('least')}° or more is usual`, key: 'up' }]
        : [],
    ),
}
