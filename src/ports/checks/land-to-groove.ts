import { fixed } from '../../figures.ts'
import { landsToBands } from './land-to-bands.ts'
import type { PortCheck } from './port-check.ts'

export const landToGroove: PortCheck = {
  name: 'land-to-groove',
  code: 'ports/land-to-groove',
  severity: 'warning',
  because: 'the wall between a window and a groove carries the seal, and is thin on two sides',
  source: 'common practice, no source',
  test: (ported, limit) =>
    landsToBands(ported, (other, own) => other.size.nominal < own.size.nominal)
      .filter(({ land }) => land < limit('least'))
      .map(({ port, name, land }) => ({
        port,
        severity: land < limit('hopeless') ? 'error' : 'warning',
        message: `leaves ${fixed(land, 2)} mm to the ${name}, which is cut deeper than its own band; ${limit('least')} mm or more is usual`,
      })),
}
