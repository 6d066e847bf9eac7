import { fixed } from '../../figures.ts'
import { blowdownTimeAt } from '../../handbook/port-area.ts'
import type { PortCheck } from './port-check.ts'
import { exhaustsOf, ofRole } from './port-check.ts'

export const blowdownTime: PortCheck = {
  name: 'blowdown-time',
  code: 'ports/blowdown-time',
  severity: 'warning',
  because: 'the pressure in the cylinder needs time to fall to that of the crankcase',
  source:
    'common practice, no source; published anchors: 0.24 ms in use on small tuned engines, 0.52 ms from one pressure trace',
  test: (ported, limit) => {
    const [exhaust] = exhaustsOf(ported)
    const [transfer] = ofRole(ported, 'transfer')
    const speed = ported.part.engine?.speed
    if (!exhaust || !transfer || speed === undefined) return []
    const angle = transfer.opens - exhaust.opens
    if (angle <= 0) return []
    const time = blowdownTimeAt.value({ dtheta: angle, N: speed })
    if (time >= limit('least') && time <= limit('most')) return []
    return [
      {
        port: transfer.port,
        message: `blowdown of ${fixed(angle, 1)}° lasts ${fixed(time, 2)} ms at ${speed} rpm; ${limit('least')} to ${limit('most')} ms is in use`,
        key: 'opens',
      },
    ]
  },
}
