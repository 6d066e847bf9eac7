import { fixed } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'

export const shoulderClearance: PortCheck = {
  name: 'shoulder-clearance',
  code: 'ports/shoulder-clearance',
  severity: 'warning',
  because: 'the shank goes down beside the flange',
  source: 'derived: geometry; threshold: common practice, no source',
  test: ({ windows }, limit) =>
    windows.flatMap(({ port, window: { shoulderRoom, cutter } }) =>
      shoulderRoom === undefined || shoulderRoom >= limit('least')
        ? []
        : [
            {
              port,
              severity: shoulderRoom < 0 ? 'error' : 'warning',
              message: `the ${cutter} mm cutter's shank ${shoulderRoom < 0 ? `strikes the flange by ${fixed(-shoulderRoom, 2)}` : `clears the flange by ${fixed(shoulderRoom, 2)}`} mm; ${limit('least')} mm or more is usual`,
              hint: 'use a cutter that is longer below its shank, or lower the port',
            },
          ],
    ),
}
