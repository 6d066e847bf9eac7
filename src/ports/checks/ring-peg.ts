import { angle, fixed } from '../../figures.ts'
import { wrapped } from '../../units.ts'
import type { PortCheck } from './port-check.ts'

export const ringPeg: PortCheck = {
  name: 'ring-peg',
  code: 'ports/ring-peg',
  severity: 'error',
  because: 'the ends of a ring spring out into a window and break on its edge',
  source:
    "Jennings, Two-Stroke Tuner's Handbook, 1973: no gap or peg passes a window; margin: common practice, no source",
  test: ({ part: { engine }, windows }, limit) => {
    if (engine?.rings === undefined || engine.rings === 'none') return []
    const { from = 0, to = from, pegs } = engine.rings
    // Everything between the first ring at the top of its stroke and the last at the bottom.
    const swept = { top: engine.crownBelowTop + from, bottom: engine.crownBelowTop + engine.stroke + to }
    return windows.flatMap(({ port, window, onBore: { box } }) => {
      if (box.bottom < swept.top || box.top > swept.bottom) return []
      return pegs.flatMap(peg => {
        const gap = Math.abs(wrapped(peg - box.middle)) - box.half
        if (gap >= limit('margin')) return []
        const how = gap < 0 ? 'passes its window' : `passes ${fixed(gap, 1)}° beside its window`
        return [
          {
            port,
            message: `the ring peg at ${angle(peg, 1)}° ${how} at ${angle(window.at, 1)}°; ${limit('margin')}° or more keeps the ring's ends on the wall`,
            hint: 'turn the peg to a blank wall, as between the last transfer and the boost',
            key: 'at',
          },
        ]
      })
    })
  },
}
