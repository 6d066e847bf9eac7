import { fixed } from '../../figures.ts'
import { BREAK_THROUGH } from '../plan-window.ts'
import type { PortCheck } from './port-check.ts'

export const farWallStrike: PortCheck = {
  name: 'far-wall-strike',
  code: 'ports/far-wall-strike',
  severity: 'error',
  because: 'the cutter comes through and must stop before the other side of the bore',
  source: 'derived: geometry; margin: common practice, no source',
  test: ({ windows }, limit) =>
    windows.flatMap(({ port, window: { plunge } }) => {
      const clear = plunge.zThrough - BREAK_THROUGH - plunge.zFarWall
      if (clear >= limit('margin')) return []
      return [
        {
          port,
          message: `to break through everywhere the cutter comes to ${fixed(clear, 2)} mm from the far wall; ${limit('margin')} mm or more is needed`,
          hint: 'draw the port flatter or less high',
          key: 'up',
        },
      ]
    }),
}
