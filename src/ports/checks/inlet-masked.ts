import { fixed } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'

export const inletMasked: PortCheck = {
  name: 'inlet-masked',
  code: 'ports/inlet-masked',
  severity: 'warning',
  because: 'the skirt should leave the whole inlet open at top dead centre, and the crown none of it at bottom',
  source: 'derived: geometry',
  test: ({ part: { engine }, ports }, limit) =>
    ports.flatMap(({ port, planned }) => {
      if (!engine || planned.role !== 'inlet') return []
      const covered = engine.skirt === undefined ? 0 : engine.crownBelowTop + engine.skirt - planned.top
      const open = engine.crownBelowTop + engine.stroke - planned.top
      const faults = [
        { by: covered, what: 'at top dead centre the skirt still covers' },
        { by: open, what: 'at bottom dead centre the crown stands below its top edge and opens' },
      ].filter(({ by }) => by > limit('least') + 1e-9)
      return faults.map(({ by, what }) => ({
        port,
        message: `${what} ${fixed(by, 2)} mm of it`,
        key: port.top === undefined ? 'opens' : 'top',
      }))
    }),
}
