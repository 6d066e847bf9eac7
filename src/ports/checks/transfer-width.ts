import { percent } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'
import { widestWindow } from './port-check.ts'

export const transferWidth: PortCheck = {
  name: 'transfer-width',
  code: 'ports/transfer-width',
  severity: 'warning',
  because: 'piston rings bulge into a wide window and catch',
  source: 'common practice, no source',
  test: ({ part: { engine }, ports, radius }, limit) =>
    ports.flatMap(({ port, planned }) => {
      const share = widestWindow(planned) / (2 * radius)
      if (engine?.rings === 'none' || planned.role === 'exhaust' || share <= limit('most')) return []
      return [
        {
          port,
          message: `is ${percent(share, 1)} % of the bore wide; up to ${percent(limit('most'))} % is usual`,
          key: port.width === undefined ? 'arc' : 'width',
        },
      ]
    }),
}
