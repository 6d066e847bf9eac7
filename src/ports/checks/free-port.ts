import { fixed } from '../../figures.ts'
import { isExhaust } from '../../part/port-role.ts'
import type { PortCheck } from './port-check.ts'

export const freePort: PortCheck = {
  name: 'free-port',
  code: 'ports/free-port',
  severity: 'warning',
  because: 'a skirt that rises past the exhaust at top dead centre opens the crankcase to it',
  source: 'principle: published workshop notes, 1 mm; some small engines do it on purpose',
  test: ({ part: { engine }, ports }, limit) =>
    ports.flatMap(({ port, planned }) => {
      if (engine?.skirt === undefined || !isExhaust(planned.role)) return []
      const overlap = engine.crownBelowTop + engine.skirt - planned.bottom
      if (overlap >= limit('overlap') - 1e-9) return []
      return [
        {
          port,
          message:
            overlap < 0
              ? `at top dead centre the skirt stands ${fixed(-overlap, 2)} mm above its floor; ${limit('overlap')} mm of overlap keeps it shut`
              : `at top dead centre the skirt covers its floor by ${fixed(overlap, 2)} mm; ${limit('overlap')} mm or more is usual`,
          key: port.bottom === undefined ? 'height' : 'bottom',
        },
      ]
    }),
}
