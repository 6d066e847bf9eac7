import { inWords } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'

export const mainRise: PortCheck = {
  name: 'main-rise',
  code: 'ports/main-rise',
  severity: 'warning',
  because: 'steep main streams leave for the head and mix with what is burnt',
  source: 'common practice, no source',
  test: ({ ports }, limit) =>
    ports.flatMap(({ port, planned }) =>
      planned.role === 'transfer' && planned.up > limit('most')
        ? [{ port, message: `rises by ${inWords(planned.up)}°; up to ${limit('most')}° is usual`, key: 'up' }]
        : [],
    ),
}
