import { fixed } from '../../figures.ts'
import { cubicCentimetres } from '../../units.ts'
import type { PortCheck } from './port-check.ts'
import { exhaustsOf } from './port-check.ts'

export const trappedRatio: PortCheck = {
  name: 'trapped-ratio',
  code: 'ports/trapped-ratio',
  severity: 'warning',
  because: 'compression begins where the exhaust closes: its top edge sets the ratio with the head',
  source: 'memory: Jennings, Blair; petrol, higher with methanol',
  test: (ported, limit) => {
    const { trappedVolume, headVolume, trappedRatio: ratio } = ported.gasExchange ?? {}
    const [exhaust] = exhaustsOf(ported)
    if (!exhaust || trappedVolume === undefined || headVolume === undefined || ratio === undefined) return []
    if (ratio >= limit('least') && ratio <= limit('most')) return []
    return [
      {
        port: exhaust.port,
        message: `traps ${fixed(cubicCentimetres(trappedVolume), 2)} cm³ over a head of ${fixed(cubicCentimetres(headVolume), 2)} cm³, a ratio of ${fixed(ratio, 2)}; ${limit('least')} to ${limit('most')} is in use`,
        hint: 'another head volume, or another exhaust opening',
        key: 'opens',
      },
    ]
  },
}
