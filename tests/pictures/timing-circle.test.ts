import { describe, expect, it } from 'vitest'
import { drawTimingCircle, onCircle } from '../../src/pictures/timing-circle.ts'
import { measure } from './measure.ts'
import { SAMPLE_PLAN } from './sample-plan.ts'

describe('crank angles on the timing circle', () => {
  it.each([
    [0, 0, -1],
    [90, 1, 0],
    [180, 0, 1],
    [270, -1, 0],
  ])('%d° after top dead centre stands clockwise from the top', (angle, x, y) => {
    const at = onCircle({ x: 0, y: 0 }, 1, angle)
    expect(at.x).toBeCloseTo(x, 12)
    expect(at.y).toBeCloseTo(y, 12)
  })

  it('ends each port’s arc at its opening and its closing, through bottom dead centre', () => {
    const picture = drawTimingCircle(SAMPLE_PLAN, { width: 425, height: 255 }, measure)
    const arcs = picture.marks.flatMap(mark =>
      mark.kind === 'path' && mark.stroke?.width && mark.stroke.width > 1 ? [mark.steps] : [],
    )
    const dial = picture.marks.flatMap(mark => (mark.kind === 'circle' && mark.radius > 50 ? [mark] : []))[0]
    expect(arcs).toHaveLength(3)
    const angles = arcs.map(steps =>
      steps.map(step => {
        if (step.to === 'close' || !dial) throw new Error('an arc is open and lies on a dial')
        return ((Math.atan2(step.x - dial.x, dial.y - step.y) * 180) / Math.PI + 360) % 360
      }),
    )
    expect(angles.map(all => all[0]?.toFixed(6))).toEqual(['106.000000', '121.000000', '123.000000'])
    expect(angles.map(all => all.at(-1)?.toFixed(6))).toEqual(['254.000000', '239.000000', '237.000000'])
    for (const all of angles) expect(all).toEqual(all.toSorted((a, b) => a - b))
  })
})
