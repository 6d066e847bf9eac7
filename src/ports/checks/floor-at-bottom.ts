import { fixed } from '../../figures.ts'
import type { PortRole } from '../../part/part.ts'
import type { PortCheck } from './port-check.ts'

/** What goes on flowing at bottom dead centre. An auxiliary exhaust is there for the blowdown, and ends where its duct does. */
const FLOORED: readonly PortRole[] = ['exhaust', 'transfer', 'boost']

export const floorAtBottom: PortCheck = {
  name: 'floor-at-bottom',
  code: 'ports/floor-at-bottom',
  severity: 'warning',
  because: 'a floor below the crown is masked, one above it turns the stream up',
  source: 'principle: published tuning notes; limits: common practice, no source',
  test: ({ part, ports }, limit) =>
    ports.flatMap(({ port, planned }) => {
      if (part.engine === undefined || planned.opens === undefined || !FLOORED.includes(planned.role)) return []
      const off = planned.bottom - part.engine.crownBelowTop - part.engine.stroke
      if (off <= limit('masked') + 1e-9 && off >= -limit('step') - 1e-9) return []
      return [
        {
          port,
          message: `its floor lies ${fixed(Math.abs(off), 3)} mm ${off > 0 ? 'below' : 'above'} the crown at bottom dead centre; ${limit('masked')} mm below to ${limit('step')} mm above is usual`,
          key: port.bottom === undefined ? 'height' : 'bottom',
        },
      ]
    }),
}
