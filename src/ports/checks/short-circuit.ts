import { fixed } from '../../figures.ts'
import { wrapped } from '../../units.ts'
import { meetingPoint } from '../streams.ts'
import type { PortCheck } from './port-check.ts'

export const shortCircuit: PortCheck = {
  name: 'short-circuit',
  code: 'ports/short-circuit',
  severity: 'warning',
  because: 'a stream that is aimed at the exhaust leaves through it',
  source: 'derived: geometry; margin: common practice, no source',
  test: ({ ports, radius }, limit) => {
    const halfExhaust = Math.max(
      0,
      ...ports.map(({ planned }) =>
        planned.role === 'exhaust' && Math.abs(planned.at) < 90 ? Math.abs(planned.at) + planned.arc / 2 : 0,
      ),
    )
    return ports.flatMap(({ port, planned }) => {
      if (planned.role !== 'transfer' || planned.at === 0 || planned.at === 180) return []
      const { behind, exit } = meetingPoint(Math.abs(planned.at), planned.back, radius)
      const aim = Math.abs(wrapped(exit))
      if (behind !== undefined && behind > 0 && aim > halfExhaust + limit('margin')) return []
      const straight = behind !== undefined && behind > 0
      return [
        {
          port,
          severity: behind !== undefined && behind < -1e-9 ? 'error' : 'warning',
          message: straight
            ? `its stream, unbroken, meets the wall ${fixed(aim, 1)}° from the exhaust's centre; ${fixed(halfExhaust + limit('margin'), 1)}° or more keeps it out`
            : 'its stream is not aimed behind the axis, away from the exhaust',
          hint: 'turn it back more',
          key: 'back',
        },
      ]
    })
  },
}
