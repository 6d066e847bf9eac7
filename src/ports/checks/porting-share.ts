import { fixed, percent } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'

export const portingShare: PortCheck = {
  name: 'porting-share',
  code: 'ports/porting-share',
  severity: 'warning',
  because: 'too little wall is left to hold the bore round',
  source: 'common practice, no source',
  // Row by row: at the height of each window's top edge, whatever else is open there.
  test: ({ windows }, limit) => {
    const rows = windows.map(({ port, onBore: { box } }) => {
      const beside = windows.filter(({ onBore }) => onBore.box.top <= box.top && box.top < onBore.box.bottom)
      const share = beside.reduce((sum, { onBore }) => sum + 2 * onBore.box.half, 0) / 360
      return { port: beside.at(-1)?.port ?? port, depth: box.top, share }
    })
    const worst = rows.toSorted((a, b) => b.share - a.share)[0]
    if (!worst || worst.share <= limit('most')) return []
    return [
      {
        port: worst.port,
        message: `with it the ports take ${percent(worst.share)} % of the circumference ${fixed(worst.depth, 2)} mm below the top face; up to ${percent(limit('most'))} % is usual`,
      },
    ]
  },
}
