import { describe, expect, it } from 'vitest'
import { drawPanels, type Panel } from '../../src/pictures/panel-chart.ts'
import { faultsOf } from './legibility.ts'
import { measure } from './measure.ts'

const values = [100, 102, 104, 106, 108, 110, 112]
const run = (name: string, figureOf: (value: number) => number) => ({
  name,
  points: values.map(value => ({ value, figure: figureOf(value) })),
})
const PANELS: readonly Panel[] = [
  { title: 'opens', runs: [run('exhaust', value => value), run('main transfer', () => 121), run('boost', () => 123)] },
  { title: 'blowdown', runs: [run('blowdown', value => 121 - value)] },
]
const drawn = (asked: readonly number[] = values, shaded = [{ from: 104, to: 108 }]) =>
  drawPanels({
    panels: PANELS,
    shaded,
    along: { values: asked, title: 'exhaust.opens' },
    words: { caption: 'In words.', alternative: 'In words.' },
    room: { width: 510, height: 420 },
    measure,
  })

describe('panels over the values of a sweep', () => {
  const { marks } = drawn()

  it('can be read', () => {
    expect(faultsOf(drawn(), measure).filter(fault => !/line through/.test(fault))).toEqual([])
  })

  it('shade a third of the width of every panel for a third of the values', () => {
    const shades = marks.flatMap(mark => (mark.kind === 'path' && mark.fill ? [mark.steps] : []))
    const axis = marks.flatMap(mark => (mark.kind === 'line' && mark.y1 === mark.y2 ? [mark.x2 - mark.x1] : []))
    expect(shades).toHaveLength(PANELS.length)
    for (const steps of shades) {
      const xs = steps.flatMap(step => ('x' in step ? [step.x] : []))
      expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(Math.max(...axis) / 3, 6)
    }
  })

  it('name every line where it ends, once a panel', () => {
    const texts = marks.flatMap(mark => (mark.kind === 'text' ? [mark.text] : []))
    for (const { runs } of PANELS) for (const { name } of runs) expect(texts).toContain(name)
  })

  it('of one value alone are drawn too', () => {
    const figures = drawn([104], [{ from: 104, to: 104 }]).marks.flatMap(mark =>
      mark.kind === 'line' ? [mark.x1, mark.x2, mark.y1, mark.y2] : [],
    )
    expect(figures.every(Number.isFinite)).toBe(true)
  })
})
