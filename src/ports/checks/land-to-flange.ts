import { fixed } from '../../figures.ts'
import { landsToBands } from './land-to-bands.ts'
import type { PortCheck } from './port-check.ts'

export const landToFlange: PortCheck = {
  name: 'land-to-flange',
  code: 'ports/land-to-flange',
  severity: 'error',
  because: 'the flange seals under its face, and the cutter must clear it',
  source: 'common practice, no source',
  test: (ported, limit) =>
    landsToBands(ported, (other, own) => other.size.nominal > own.size.nominal)
      .filter(({ land }) => land < limit('least'))
      .map(({ port, name, land }) => ({
        port,
        message: `leaves ${fixed(land, 2)} mm to the ${name}; ${limit('least')} mm or more is usual`,
      })),
}
