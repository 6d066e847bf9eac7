import { describe, expect, it } from 'vitest'
import {
  centreHeight,
  centreHeightAngle,
  centrelessWorkSpeed,
  pinsPerMinute,
  throughFeed,
} from '../../src/handbook/centreless-grinding.ts'
import { lappingTime } from '../../src/handbook/lapping.ts'
import { spindleSpeed } from '../../src/handbook/turning.ts'
import { expectFigures } from './four-figures.ts'

describe('pins through a centreless grinder (formula: Hashimoto, Processes 13 (2025) 1103; figures worked by hand)', () => {
  it('feeds 1480 mm/min: 26.64 pins of 50 mm', () => {
    const vf = throughFeed.value({ dr: 300, nr: 30, a: 3 })
    const vw = centrelessWorkSpeed.value({ dr: 300, nr: 30, a: 3 })
    expectFigures(vf, 1480)
    expectFigures(vw, 28.24)
    expectFigures(pinsPerMinute.value({ vf, L: 50 }), 26.64)
    expectFigures(spindleSpeed.value({ vc: vw, D: 16 }), 561.7)
  })

  it('stands 11.97 mm high for 7 deg, and 8 mm is 4.679 deg', () => {
    const wheels = { ds: 500, dr: 300, dw: 16 }
    expectFigures(centreHeight.value({ gamma: 7, ...wheels }), 11.97)
    expectFigures(centreHeightAngle.value({ h: 8, ...wheels }), 4.679)
    expect(centreHeightAngle.value({ h: centreHeight.value({ gamma: 1, ...wheels }), ...wheels })).toBeCloseTo(1, 3)
  })
})

describe('lapping (common practice, no source)', () => {
  it('takes 10 µm in 5 min at 2 µm/min', () => {
    expectFigures(lappingTime.value({ z: 0.01, rate: 2 }), 5)
  })
})
