import { fixed, inWords } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'

export const pairSymmetry: PortCheck = {
  name: 'pair-symmetry',
  code: 'ports/pair-symmetry',
  severity: 'error',
  because: 'a pair that differs pushes the streams and the rings to one side',
  source: 'common practice, no source',
  test: ({ ports }, limit) =>
    ports.flatMap(({ port, planned }) => {
      if (planned.at <= 0 || planned.at === 180) return []
      // A sleeve may have several rows of ports: the pair stands in the port's own row, at depths that it shares.
      const mirrored = ports.filter(
        ({ planned: { role, at, top, bottom } }) =>
          role === planned.role &&
          at < 0 &&
          Math.abs(at + planned.at) < 5 &&
          top < planned.bottom &&
          planned.top < bottom,
      )
      const apart = (other: (typeof ports)[number]) => Math.abs(other.planned.top - planned.top)
      const own = ports.find(({ port: { name } }) => name === port.mirrorOf)
      const other = own ?? mirrored.toSorted((a, b) => apart(a) - apart(b))[0]
      if (!other) return []
      const top = Math.abs(planned.top - other.planned.top)
      const bottom = Math.abs(planned.bottom - other.planned.bottom)
      const arc = Math.abs(planned.arc - other.planned.arc)
      const turn = Math.abs(planned.at + other.planned.at)
      if (Math.max(top, bottom) <= limit('depth') && Math.max(arc, turn) <= limit('angle')) return []
      return [
        {
          port: other.port,
          message: `differs from ${port.name} at ${inWords(planned.at)}°: top ${fixed(top, 3)} mm, bottom ${fixed(bottom, 3)} mm, arc ${fixed(arc, 2)}°, azimuth ${fixed(turn, 2)}°; a pair keeps within ${limit('depth')} mm and ${limit('angle')}°`,
          hint: 'write the port once with `mirror: true`',
        },
      ]
    }),
}
