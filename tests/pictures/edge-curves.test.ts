import { describe, expect, it } from 'vitest'
import { drawEdges, roofOf } from '../../src/pictures/edge-curves.ts'
import { LINE, onPaper } from '../../src/pictures/picture.ts'
import { faultsOf } from './legibility.ts'
import { measure } from './measure.ts'
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

describe('a straight cut beside a level one', () => {
  const { port: boost, window: cut } = window('boost')
  // Its roof falls by 0.4 mm from both ends to the middle.
  const fallen = cut.outline.finished.map(({ azimuth, depth }) => {
    const off = Math.abs(((azimuth - cut.at + 540) % 360) - 180) / 14.5
    return { azimuth, depth: depth < boost.top + 1 ? depth + 0.4 * (1 - off ** 2) : depth }
  })
  const outline = { ...cut.outline, finished: fallen }
  const straight = { ...boost, cut: 'straight' as const, windows: [{ ...cut, outline, roofFall: 0.4 }] }
  const picture = drawEdges({ ...SAMPLE_PLAN, ports: [straight] }, onPaper(180), measure)
  const words = picture.marks.flatMap(mark => (mark.kind === 'text' ? [mark.text] : []))

  it('is drawn against the level through its highest point, with its fall in figures', () => {
    expect(faultsOf(picture, measure)).toEqual([])
    expect(words).toContain(`level at ${cut.edges.finished.highest.toFixed(3)}`)
    expect(words).toContain('finished: falls 0.400 mm')
  })
  it('falls below that level by as much as the scale says', () => {
    const level = picture.marks.find(mark => mark.kind === 'line' && mark.y1 === mark.y2 && mark.x2 - mark.x1 > 60)
    const roof = picture.marks.find(mark => mark.kind === 'path' && mark.stroke?.width === LINE.outline)
    const scale = Number(/depth (\d+):1/.exec(words.join(' '))?.[1])
    if (level?.kind !== 'line' || roof?.kind !== 'path') throw new Error('no level, or no roof')
    const lowest = Math.max(...roof.steps.flatMap(step => (step.to === 'close' ? [] : [step.y])))
    expect((lowest - level.y1) / onPaper(1) / scale).toBeCloseTo(boost.top + 0.4 - cut.edges.finished.highest, 2)
  })
})
