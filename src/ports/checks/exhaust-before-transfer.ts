import { fixed } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'
import { exhaustsOf, ofRole } from './port-check.ts'

export const exhaustBeforeTransfer: PortCheck = {
  name: 'exhaust-before-transfer',
  code: 'ports/exhaust-before-transfer',
  severity: 'warning',
  because: 'the pressure must fall before the transfers open',
  source: 'common practice, no source',
  test: (ported, limit) => {
    const [exhaust] = exhaustsOf(ported)
    const [transfer] = ofRole(ported, 'transfer')
    if (!exhaust || !transfer) return []
    const blowdown = transfer.opens - exhaust.opens
    if (blowdown >= limit('least')) return []
    return [
      {
        port: transfer.port,
        severity: blowdown <= 0 ? 'error' : 'warning',
        message: `opens ${fixed(blowdown, 2)}° after the exhaust; at least ${limit('least')}° is usual`,
        hint: 'open the exhaust earlier or the transfer later',
        key: 'opens',
      },
    ]
  },
}
