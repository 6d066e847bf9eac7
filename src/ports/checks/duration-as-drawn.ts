import { fixed } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'

export const durationAsDrawn: PortCheck = {
  name: 'duration-as-drawn',
  code: 'ports/duration-as-drawn',
  severity: 'error',
  because: 'a duration that does not go with its opening is a slip of the pen in one of the two',
  source: 'derived: open from the opening angle to the closing angle, 360° less twice the opening without pin offset',
  test: ({ ports }, limit) =>
    ports.flatMap(({ port, planned: { opens, duration } }) => {
      if (port.duration === undefined || opens === undefined || duration === undefined) return []
      if (Math.abs(port.duration - duration) <= limit('most') + 1e-9) return []
      const message = `the drawing says open for ${fixed(port.duration, 1)}°, but a port that opens at ${fixed(opens, 1)}° is open for ${fixed(duration, 1)}°`
      return [{ port, message, hint: 'put right whichever is wrong, or leave duration out', key: 'duration' }]
    }),
}
