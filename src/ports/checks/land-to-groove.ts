import { bandAt } from '../../band.ts'
import { fixed } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'

export const landToGroove: PortCheck = {
  name: 'land-to-groove',
  code: 'ports/land-to-groove',
  severity: 'warning',
  because: 'the wall between a window and a groove carries the seal, and is thin on two sides',
  source: 'common practice, no source',
  test: ({ part, windows }, limit) =>
    windows.flatMap(({ port, window }) => {
      const depths = window.outline.outside.map(({ depth }) => depth)
      const [high, low] = [Math.min(...depths), Math.max(...depths)]
      const own = bandAt(part.outside, (high + low) / 2)
      const smaller = part.outside.filter(({ size }) => own !== undefined && size.nominal < own.size.nominal)
      return smaller.flatMap(({ name, from, to }) => {
        const land = to.nominal <= high ? high - to.nominal : from - low
        if (land < 0 || land >= limit('least')) return []
        return [
          {
            port,
            severity: land < limit('hopeless') ? ('error' as const) : ('warning' as const),
            message: `leaves ${fixed(land, 2)} mm to the ${name}, which is cut deeper than its own band; ${limit('least')} mm or more is usual`,
          },
        ]
      })
    }),
}
