import { describe, expect, it } from 'vitest'
import { locatingMarks } from '../../src/pictures/locating-marks.ts'
import { partView } from '../../src/pictures/part-view.ts'
import type { Mark } from '../../src/pictures/picture.ts'
import { outsideOf } from '../../src/pictures/profile.ts'
import { tellingView } from '../../src/pictures/section-plane.ts'
import { SAMPLE_PLAN } from './sample-plan.ts'

const milled = SAMPLE_PLAN.operations.find(({ purpose }) => purpose === 'mill-ports')
if (!milled) throw new Error('the sample mills ports')
const view = partView({
  shape: milled.shape,
  allPorts: SAMPLE_PLAN.ports,
  view: tellingView(SAMPLE_PLAN.ports),
  finished: false,
  placement: {
    left: 0,
    axis: 200,
    scale: 1,
  },
})
const seat = outsideOf(milled.shape).find(({ name }) => name === 'seat')
if (!seat) throw new Error('the sample has a seat')

/** Where along the picture each triangle stands. */
const along = (marks: readonly Mark[]): readonly number[] =>
  marks.flatMap(mark => {
    const [first] = mark.kind === 'path' ? mark.steps : []
    return first && 'x' in first ? [first.x] : []
  })

describe('the triangles on a band that jaws grip', () => {
  const middle = view.at((seat.from + seat.to) / 2, 0).x

  it('stand at the end that is gripped, clear of the windows', () => {
    const lowest = Math.max(...view.gaps.map(({ outer }) => outer[1]))
    for (const x of along(locatingMarks(view, 'seat', 'bottom'))) {
      expect(x).toBeGreaterThan(middle)
      expect(x).toBeGreaterThan(view.at(lowest, 0).x)
      expect(x).toBeLessThan(view.at(seat.to, 0).x)
    }
    expect(along(locatingMarks(view, 'seat', 'bottom'))).toHaveLength(2)
  })

  it('stand on every band, whether gripped or not', () => {
    expect(along(locatingMarks(view, 'seat'))).toHaveLength(2)
  })
})
