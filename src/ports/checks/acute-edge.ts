import { fixed } from '../../figures.ts'
import { wrapped } from '../../units.ts'
import { sideOf } from '../port-design.ts'
import type { PortCheck } from './port-check.ts'

export const acuteEdge: PortCheck = {
  name: 'acute-edge',
  code: 'ports/acute-edge',
  severity: 'note',
  because: 'an acute edge burrs, and chips once nitrided',
  source: 'common practice, no source',
  test: ({ ports }, limit) =>
    ports.flatMap(({ port, planned }) => {
      const heading = sideOf(planned.at) * planned.back
      const side = Math.max(
        ...planned.windows.flatMap(({ outline }) =>
          outline.finished.map(({ azimuth }) => Math.abs(wrapped(azimuth - planned.at + heading))),
        ),
      )
      const edges = [
        { what: 'its top and bottom edges come', angle: 90 - Math.abs(planned.up), least: limit('roof') },
        { what: 'its far side edge comes', angle: 90 - side, least: limit('side') },
      ].filter(({ angle, least }) => angle < least)
      return edges.map(({ what, angle, least }) => ({
        port,
        message: `${what} out at ${fixed(angle, 1)}°; under ${least}° they burr, and chip once hard`,
        hint: 'break them well before hardening',
      }))
    }),
}
