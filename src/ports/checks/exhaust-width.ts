import { percent } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'
import { widestWindow } from './port-check.ts'

export const exhaustWidth: PortCheck = {
  name: 'exhaust-width',
  code: 'ports/exhaust-width',
  severity: 'warning',
  because: 'piston rings bulge into a wide window and catch',
  source:
    "Jennings, Two-Stroke Tuner's Handbook, 1973: 62 % of the bore to start from, 70 % at most; bridged, memory: Bell: 50 % a window, 90 % in all",
  test: ({ part: { engine }, ports, radius }, limit) =>
    ports.flatMap(({ port, planned }) => {
      if (engine?.rings === 'none' || planned.role !== 'exhaust') return []
      const key = port.width === undefined ? 'arc' : 'width'
      const share = widestWindow(planned) / (2 * radius)
      if (planned.windows.length > 1) {
        const whole = planned.width / (2 * radius)
        const faults = [
          {
            share,
            most: limit('window'),
            what: 'its widest window is',
            hint: 'leave another bar, or make it narrower',
          },
          { share: whole, most: limit('bridged'), what: 'with its bridge it is', hint: 'make it narrower' },
        ].filter(({ share, most }) => share > most)
        return faults.map(({ share, most, what, hint }) => ({
          port,
          message: `${what} ${percent(share, 1)} % of the bore wide; up to ${percent(most)} % is in use with rings`,
          hint,
          key,
        }))
      }
      if (share <= limit('most')) return []
      const extreme = share > limit('extreme') ? `, and over the ${percent(limit('extreme'))} % of the extreme` : ''
      return [
        {
          port,
          // Certain only where the part says that there are rings.
          severity: extreme !== '' && engine?.rings !== undefined ? ('error' as const) : ('warning' as const),
          message: `is ${percent(share, 1)} % of the bore wide, over the ${percent(limit('most'))} % that is safe with rings${extreme}`,
          hint: 'leave a bridge, or make it narrower',
          key,
        },
      ]
    }),
}
