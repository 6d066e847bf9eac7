import { fixed } from '../../figures.ts'
import { trappedRatio as ratioOf, trappedVolume } from '../../handbook/port-area.ts'
import type { PortCheck } from './port-check.ts'
import { ofRole } from './port-check.ts'

export const trappedRatio: PortCheck = {
  name: 'trapped-ratio',
  code: 'ports/trapped-ratio',
  severity: 'warning',
  because: 'compression begins where the exhaust closes: its top edge sets the ratio with the head',
  source: 'memory: Jennings, Blair; petrol, higher with methanol',
  limits: { least: 5.5, most: 9 },
  test: (ported, limit) => {
    const { engine } = ported.part
    const [exhaust] = ofRole(ported, 'exhaust')
    if (!exhaust || engine?.headVolume === undefined) return []
    const x_E = exhaust.planned.top - engine.crownBelowTop
    const V_ts = trappedVolume.value({ B: 2 * ported.radius, x_E })
    const ratio = ratioOf.value({ V_ts, V_c: 1000 * engine.headVolume })
    if (ratio >= limit('least') && ratio <= limit('most')) return []
    return [
      {
        port: exhaust.port,
        message: `traps ${fixed(V_ts / 1000, 2)} cm³ over a head of ${engine.headVolume} cm³, a ratio of ${fixed(ratio, 2)}; ${limit('least')} to ${limit('most')} is in use`,
        hint: 'another head volume, or another exhaust opening',
        key: 'opens',
      },
    ]
  },
}
