import { fixed } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'
import { ofRole } from './port-check.ts'

export const boostAfterMain: PortCheck = {
  name: 'boost-after-main',
  code: 'ports/boost-after-main',
  severity: 'warning',
  because: 'a boost port that opens first fills from the cylinder',
  source: 'common practice, no source',
  test: (ported, limit) => {
    const [transfer] = ofRole(ported, 'transfer')
    if (!transfer) return []
    return ofRole(ported, 'boost').flatMap(({ port, opens }) => {
      const delay = opens - transfer.opens
      if (delay >= limit('least') - 1e-9 && delay <= limit('most') + 1e-9) return []
      return [
        {
          port,
          message: `opens ${fixed(delay, 2)}° after the main transfers; ${limit('least')} to ${limit('most')}° is usual`,
          key: 'opens',
        },
      ]
    })
  },
}
