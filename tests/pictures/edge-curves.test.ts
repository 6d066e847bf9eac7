import { describe, expect, it } from 'vitest'
import { roofOf } from '../../src/pictures/edge-curves.ts'
import { SAMPLE_PLAN } from './sample-plan.ts'

const window = (name: string) => {
  const port = SAMPLE_PLAN.ports.find(port => port.name === name)
  if (!port?.windows[0]) throw new Error(`the sample has no ${name}`)
  return { port, window: port.windows[0] }
}

describe('the roof of a window between its corners', () => {
  it('is level on the finished bore', () => {
    for (const name of ['exhaust', 'main transfer', 'boost']) {
      const { port, window: cut } = window(name)
      const roof = roofOf(cut, cut.outline.finished, port.corner, 24)
      expect(roof.length).toBeGreaterThan(10)
      for (const { depth } of roof) expect(depth).toBeCloseTo(port.top, 6)
    }
  })

  it('lies higher as cut by the last cut of the bore times tan 50°, straight through the wall', () => {
    const { port, window: cut } = window('boost')
    const roof = roofOf(cut, cut.outline.asCut, port.corner, 24)
    const middle = roof.reduce((best, point) => (Math.abs(point.azimuth) < Math.abs(best.azimuth) ? point : best))
    // 0.1 mm each side: the bore is 47.8 as milled and 48 finished.
    expect(port.top - middle.depth).toBeCloseTo(0.1 * Math.tan((50 * Math.PI) / 180), 2)
  })
})
