import { percent } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'

export const exhaustWidth: PortCheck = {
  name: 'exhaust-width',
  code: 'ports/exhaust-width',
  severity: 'warning',
  because: 'piston rings bulge into a wide window and catch',
  source: "Jennings, Two-Stroke Tuner's Handbook, 1973: 62 % of the bore to start from, 70 % at most",
  test: ({ part: { engine }, ports, radius }, limit) =>
    ports.flatMap(({ port, planned }) => {
      if (engine?.rings === 'none') return []
      const widest = planned.windows.length > 1 ? Math.max(...planned.windows.map(({ width }) => width)) : planned.width
      const share = widest / (2 * radius)
      if (planned.role !== 'exhaust' || share <= limit('most')) return []
      const extreme = share > limit('extreme') ? `, and over the ${percent(limit('extreme'))} % of the extreme` : ''
      return [
        {
          port,
          // Certain only where the part says that there are rings.
          severity: extreme !== '' && engine?.rings !== undefined ? ('error' as const) : ('warning' as const),
          message: `is ${percent(share, 1)} % of the bore wide, over the ${percent(limit('most'))} % that is safe with rings${extreme}`,
          hint: 'leave a bridge, or make it narrower',
          key: port.width === undefined ? 'arc' : 'width',
        },
      ]
    }),
}
