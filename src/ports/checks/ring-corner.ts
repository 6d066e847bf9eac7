import { fixed } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'

export const ringCorner: PortCheck = {
  name: 'ring-corner',
  code: 'ports/ring-corner',
  severity: 'warning',
  because: 'a ring that bulges into the exhaust is lifted back by its corners, and snags on tight ones',
  source: "common practice, no source; Jennings, Two-Stroke Tuner's Handbook, 1973: the most generous radii possible",
  test: ({ part: { engine }, ports }, limit) => {
    if (engine?.rings === undefined || engine.rings === 'none') return []
    return ports.flatMap(({ port, planned }) => {
      const width = Math.max(...planned.windows.map(window => window.width))
      const least = Math.max(limit('least'), limit('ofWidth') * width)
      if (planned.role !== 'exhaust' || planned.corner >= least - 1e-9) return []
      return [
        {
          port,
          message: `its corners of ${planned.corner} mm are tight for rings; ${fixed(least, 2)} mm or more is usual for a window ${fixed(width, 1)} mm wide`,
          key: 'corner',
        },
      ]
    })
  },
}
