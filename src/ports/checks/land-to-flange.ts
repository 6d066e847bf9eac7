import { bandAt } from '../../band.ts'
import { fixed } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'

export const landToFlange: PortCheck = {
  name: 'land-to-flange',
  code: 'ports/land-to-flange',
  severity: 'error',
  because: 'the flange seals under its face, and the cutter must clear it',
  source: 'common practice, no source',
  test: ({ part, windows }, limit) =>
    windows.flatMap(({ port, window }) => {
      const depths = window.outline.outside.map(({ depth }) => depth)
      const [high, low] = [Math.min(...depths), Math.max(...depths)]
      const own = bandAt(part.outside, (high + low) / 2)
      const larger = part.outside.filter(({ size }) => own !== undefined && size.nominal > own.size.nominal)
      return larger.flatMap(({ name, from, to }) => {
        const land = to.nominal <= high ? high - to.nominal : from - low
        if (land < 0 || land >= limit('least')) return []
        return [{ port, message: `leaves ${fixed(land, 2)} mm to the ${name}; ${limit('least')} mm or more is usual` }]
      })
    }),
}
