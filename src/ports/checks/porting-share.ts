import { percent } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'

export const portingShare: PortCheck = {
  name: 'porting-share',
  code: 'ports/porting-share',
  severity: 'warning',
  because: 'too little wall is left to hold the bore round',
  source: 'common practice, no source',
  test: ({ ports }, limit) => {
    const share = ports.reduce((sum, { planned }) => sum + planned.arc, 0) / 360
    const last = ports.at(-1)
    if (!last || share <= limit('most')) return []
    return [
      {
        port: last.port,
        message: `with it the ports take ${percent(share)} % of the circumference; up to ${percent(limit('most'))} % is usual`,
      },
    ]
  },
}
