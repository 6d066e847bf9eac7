import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  bottomDeadCentre,
  closingAngle,
  coveredHalfTurn,
  coveredTurnShift,
  crankThrow,
  linkageLocks,
  openingAngle,
  pistonTravel,
  topDeadCentre,
  travelPerDegree,
} from '../../src/handbook/slider-crank.ts'

type Stroke = { readonly S: number; readonly L: number; readonly e?: number }

function crank({ S, L, e = 0 }: Stroke) {
  const R = crankThrow.value({ S, L, e })
  const theta_T = topDeadCentre.value({ R, L, e })
  const theta_B = bottomDeadCentre.value({ R, L, e })
  const covered = (x: number) => ({
    a: coveredHalfTurn.value({ R, L, e, x }),
    g: coveredTurnShift.value({ R, L, e, x, theta_T }),
  })
  return {
    R,
    theta_T,
    theta_B,
    travel: (theta: number) => pistonTravel.value({ R, L, e, theta, theta_T }),
    opens: (x: number) => openingAngle.value(covered(x)),
    closes: (x: number) => closingAngle.value(covered(x)),
    duration: (x: number) => closingAngle.value(covered(x)) - openingAngle.value(covered(x)),
    tenth: (theta: number) => 0.1 / travelPerDegree.value({ R, L, e, theta, theta_T }),
  }
}

describe('published openings and durations, to the digits printed', () => {
  // A published data page of a 48 cc bicycle engine: stroke 38, rod 85, crown 0.8 below the top face, skirt 44.8.
  const bicycle = crank({ S: 38, L: 85 })
  it.each([
    ['exhaust, edge 28.0', 28.0 - 0.8, 141],
    ['transfer, edge 32.0', 32.0 - 0.8, 111],
  ])('48 cc bicycle engine: %s', (_, x, duration) => {
    expect(Math.round(bicycle.duration(x))).toBe(duration)
  })
  it('48 cc bicycle engine: inlet floor 55.5 below the skirt, 112 degrees in all', () => {
    expect(2 * bicycle.opens(55.5 - 44.8 - 0.8)).toBeCloseTo(112.34, 2)
  })
  it('48 cc bicycle engine: inlet floor lowered to 56.7 opens 60 degrees before top dead centre', () => {
    expect(Math.round(bicycle.opens(56.7 - 44.8 - 0.8))).toBe(60)
  })

  // A published build log of a 195 cc engine gives heights and angles; stroke 57 from memory, rod 110 inferred.
  const build = crank({ S: 57, L: 110 })
  it.each([
    [33.0, 91.5, 177],
    [31.5, 88.5, 183],
  ])('195 cc engine: edge %d opens at %d, duration %d', (x, opens, duration) => {
    expect(build.opens(x)).toBeCloseTo(opens, 1)
    expect(Math.round(build.duration(x))).toBe(duration)
  })

  // Published pairs of height and duration of a 50 cc engine; stroke 43 from memory, rod 90 inferred by fit.
  const moped = crank({ S: 43, L: 90 })
  it.each([
    [21.5, 193.7],
    [24, 180.6],
    [26, 169.8],
    [28, 158.6],
  ])('50 cc engine: height %d, duration %d', (x, duration) => {
    expect(moped.duration(x)).toBeCloseTo(duration, 1)
  })
})

describe('values computed separately from the same mechanism', () => {
  it.each([
    [22, 40, 15.28, 104.977, 150.047, 0.5821],
    // 119.99346 and, below, 112.90647: a table that halves its rounded durations has 119.994 and 112.907.
    [22, 40, 17.65, 119.993, 120.013, 0.7006],
    [14, 26, 9.7, 104.942, 150.115, 0.9128],
    [14, 26, 11.2, 119.818, 120.364, 1.094],
    [28, 50, 19.5, 105.06, 149.88, 0.4585],
    [28, 50, 22.5, 120.043, 119.915, 0.5526],
    [54.5, 120, 25.0698, 79.0, 202.0, 0.2051],
    [54.5, 120, 41.3352, 115.0, 130.0, 0.2572],
  ])('stroke %d, rod %d, travel %d', (S, L, x, opens, duration, tenth) => {
    const { opens: at, duration: open, tenth: perTenth } = crank({ S, L })
    expect(at(x)).toBeCloseTo(opens, 3)
    expect(open(x)).toBeCloseTo(duration, 3)
    expect(perTenth(at(x))).toBeCloseTo(tenth, 4)
  })

  const TRAVEL = [
    [90, 21.1507, 32.2562, 30.385, 12.5422, 7.96, 16.0],
    [100, 24.3844, 37.0899, 35.0211, 14.405, 9.1461, 18.3696],
    [105, 25.9225, 39.3768, 37.2252, 15.284, 9.7063, 19.4869],
    [110, 27.3947, 41.5575, 39.334, 16.1209, 10.24, 20.55],
    [120, 30.1079, 45.5548, 43.2184, 17.6509, 11.2166, 22.4923],
    [125, 31.335, 47.3529, 44.9743, 18.3375, 11.6552, 23.363],
    [130, 32.4684, 49.0078, 46.5955, 18.9683, 12.0585, 24.1627],
    [150, 35.987, 54.1086, 51.6252, 20.9062, 13.2988, 26.6168],
  ] as const
  const ENGINES = [
    [38, 85],
    [57, 110],
    [54.5, 120],
    [22, 40],
    [14, 26],
    [28, 50],
  ] as const
  it.each(TRAVEL)('travel at %d degrees in six engines', (theta, ...travels) => {
    for (const [i, [S, L]] of ENGINES.entries()) {
      expect(crank({ S, L }).travel(theta)).toBeCloseTo(travels[i] ?? Number.NaN, 4)
    }
  })

  const PER_TENTH = [
    [90, 0.8185, 0.5209, 0.4093, 0.3016, 0.2665, 0.2103, 0.201],
    [100, 0.8735, 0.5565, 0.4377, 0.3189, 0.2827, 0.2225, 0.2141],
    [110, 0.9627, 0.6141, 0.4835, 0.3481, 0.3095, 0.2431, 0.2355],
    [120, 1.097, 0.7006, 0.5523, 0.393, 0.3505, 0.2746, 0.2677],
    [130, 1.2981, 0.83, 0.6549, 0.4609, 0.4123, 0.3222, 0.3162],
    [150, 2.1407, 1.3715, 1.084, 0.749, 0.6733, 0.5243, 0.5197],
    [170, 6.4168, 4.1154, 3.2556, 2.2273, 2.0073, 1.56, 1.5549],
  ] as const
  it.each(PER_TENTH)('crank degrees for 0.1 mm at %d degrees in seven engines', (theta, ...tenths) => {
    const engines = [
      [14, 26],
      [22, 40],
      [28, 50],
      [38, 85],
      [43, 90],
      [54.5, 120],
      [57, 110],
    ] as const
    for (const [i, [S, L]] of engines.entries()) {
      expect(crank({ S, L }).tenth(theta)).toBeCloseTo(tenths[i] ?? Number.NaN, 4)
    }
  })

  // Opening and closing before or after the dead centres, with the pin path off the crank's axis.
  it.each([
    [22, 40, 0, 11.0, 0, 180, 14.5, 100.53, 100.53, 158.94, 79.47, 79.47],
    [22, 40, 1, 10.99628, 1.1236, 181.9759, 14.5, 100.985, 100.092, 158.923, 79.867, 79.055],
    [22, 40, -1, 10.99628, -1.1236, 178.0241, 14.5, 100.092, 100.985, 158.923, 79.055, 79.867],
    [22, 40, 1, 10.99628, 1.1236, 181.9759, 16.5, 112.906, 111.832, 135.262, 67.946, 67.316],
    [57, 110, 3, 28.48864, 1.2413, 182.1092, 33.0, 91.898, 91.122, 176.98, 88.97, 88.01],
  ])('stroke %d, rod %d, offset %d', (S, L, e, R, top, bottom, x, open, closeBefore, duration, bbdc, abdc) => {
    const offset = crank({ S, L, e })
    expect(offset.R).toBeCloseTo(R, 5)
    expect(offset.theta_T).toBeCloseTo(top, 4)
    expect(offset.theta_B).toBeCloseTo(bottom, 4)
    expect(offset.opens(x)).toBeCloseTo(open, 3)
    expect(360 - offset.closes(x)).toBeCloseTo(closeBefore, 3)
    expect(offset.duration(x)).toBeCloseTo(duration, 3)
    const down = offset.theta_B - offset.theta_T
    expect(down - offset.opens(x)).toBeCloseTo(bbdc, 3)
    expect(offset.closes(x) - down).toBeCloseTo(abdc, 3)
  })
})

describe('the mechanism itself', () => {
  const engines = fc
    .record({
      S: fc.double({ min: 8, max: 200, noNaN: true }),
      ratio: fc.double({ min: 1.4, max: 3, noNaN: true }),
      off: fc.double({ min: -0.2, max: 0.2, noNaN: true }),
    })
    .map(({ S, ratio, off }) => ({ S, L: ratio * S, e: off * S }))
  const angles = fc.double({ min: 0, max: 360, noNaN: true })

  it('keeps the rod as long as it is', () => {
    fc.assert(
      fc.property(engines, angles, (engine, theta) => {
        const { R, theta_T, travel } = crank(engine)
        const t = ((theta + theta_T) * Math.PI) / 180
        const pin = Math.sqrt((engine.L + R) ** 2 - engine.e ** 2) - travel(theta)
        expect(Math.hypot(pin - R * Math.cos(t), engine.e - R * Math.sin(t)) / engine.L).toBeCloseTo(1, 12)
      }),
    )
  })
  it('makes the stroke asked for, between its dead centres', () => {
    fc.assert(
      fc.property(engines, engine => {
        const { travel, theta_B, theta_T } = crank(engine)
        expect(travel(0)).toBeCloseTo(0, 9)
        expect(travel(theta_B - theta_T)).toBeCloseTo(engine.S, 9)
      }),
    )
  })
  it('returns from travel to both angles', () => {
    fc.assert(
      fc.property(engines, fc.double({ min: 0.02, max: 0.98, noNaN: true }), (engine, part) => {
        const { travel, opens, closes } = crank(engine)
        const x = part * engine.S
        expect(travel(opens(x))).toBeCloseTo(x, 8)
        expect(travel(closes(x))).toBeCloseTo(x, 8)
      }),
    )
  })
  it('asks whether the rod passes a quarter turn', () => {
    expect(linkageLocks(11, 12, 1)).toBe(true)
    expect(linkageLocks(11, 12.01, 1)).toBe(false)
  })
})
