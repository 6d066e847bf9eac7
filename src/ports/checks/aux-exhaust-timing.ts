import { fixed } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'
import { ofRole } from './port-check.ts'

export const auxExhaustTiming: PortCheck = {
  name: 'aux-exhaust-timing',
  code: 'ports/aux-exhaust-timing',
  severity: 'warning',
  because:
    'an auxiliary exhaust adds area to the blowdown: it opens with the exhaust or after it, and before the transfers',
  source: 'common practice, no source',
  test: (ported, limit) => {
    const [exhaust] = ofRole(ported, 'exhaust')
    const [transfer] = ofRole(ported, 'transfer')
    return ofRole(ported, 'aux exhaust').flatMap(({ port, opens }) => {
      const after = exhaust && opens - exhaust.opens
      const before = transfer && transfer.opens - opens
      const faults = [
        ...(after !== undefined && after < limit('after') - 1e-9
          ? [`opens ${fixed(-after, 1)}° before the exhaust; ${limit('after')}° or more after it is usual`]
          : []),
        ...(before !== undefined && before < limit('before') - 1e-9
          ? [`opens ${fixed(before, 1)}° before the transfers; ${limit('before')}° or more is usual`]
          : []),
      ]
      return faults.map(message => ({ port, message, key: port.opens === undefined ? 'top' : 'opens' }))
    })
  },
}
