import fc from 'fast-check'
import { cos, type Matrix, matrix, multiply, pi, sin } from 'mathjs'
import { describe, expect, it } from 'vitest'
import {
  crossOffset,
  rotarySetting,
  settingX,
  settingZ,
  sineBarStack,
  tiltSetting,
} from '../../src/handbook/tilted-rotary.ts'
import { cutterInPart, toMachine, type Vector } from '../../src/machine-frame.ts'
import { direction, proveDirection, withinLimits } from '../../src/ports/fixture-setting.ts'
import { planPorts } from '../../src/ports/plan-ports.ts'
import { FIXTURE, linerOf, milledAt, shopWith } from './liner.ts'
import { SETTINGS } from './settings.ts'

/** Homogeneous transform of the fixture, from a general-purpose matrix library. */
function transform(s: 1 | -1, tilt: number, rotary: number, D: number, H: number): Matrix {
  const [t, a] = [(tilt * pi) / 180, (rotary * pi) / 180]
  const tilting = matrix([
    [cos(t), 0, sin(t), 0],
    [0, 1, 0, 0],
    [-sin(t), 0, cos(t), 0],
    [0, 0, 0, 1],
  ])
  const stand = matrix([
    [1, 0, 0, D],
    [0, 1, 0, 0],
    [0, 0, 1, H],
    [0, 0, 0, 1],
  ])
  const turning = matrix([
    [1, 0, 0, 0],
    [0, cos(a), -sin(a), 0],
    [0, sin(a), cos(a), 0],
    [0, 0, 0, 1],
  ])
  const chucking = matrix([
    [0, 0, s, 0],
    [0, -s, 0, 0],
    [1, 0, 0, 0],
    [0, 0, 0, 1],
  ])
  return multiply(multiply(multiply(tilting, stand), turning), chucking)
}

const through = (m: Matrix, [x, y, z]: Vector, w: 0 | 1): readonly number[] =>
  (multiply(m, matrix([x, y, z, w])).toArray() as number[]).slice(0, 3)

const headSide = fc.constantFrom<1 | -1>(1, -1)
const angle = (most: number) => fc.double({ min: -most, max: most, noNaN: true })

describe('against a matrix library', () => {
  it('puts every point of the part where the matrices put it', () => {
    const points = fc.tuple(angle(60), angle(60), angle(90))
    fc.assert(
      fc.property(headSide, angle(60), angle(360), points, (s, tilt, rotary, point) => {
        const fixture = { ...FIXTURE, headFaces: s === 1 ? ('+X' as const) : ('-X' as const) }
        const found = toMachine(fixture, { tilt, rotary }, point)
        const wanted = through(transform(s, tilt, rotary, fixture.faceDistance, fixture.pivotHeight), point, 1)
        for (const i of [0, 1, 2] as const) expect(found[i]).toBeCloseTo(wanted[i] ?? Number.NaN, 9)
      }),
    )
  })
  it('takes the cutter back to the stream for any azimuth, heading and rise', () => {
    fc.assert(
      fc.property(headSide, angle(180), angle(60), angle(80), (s, phi, psi, beta) => {
        const tilt = tiltSetting.value({ s, beta })
        const rotary = rotarySetting.value({ s, phi, psi })
        const stream = direction(phi + 180 - psi, beta)
        const cutter = through(transform(s, tilt, rotary, 80, 50), stream, 0)
        expect(cutter[0]).toBeCloseTo(0, 9)
        expect(cutter[1]).toBeCloseTo(0, 9)
        expect(cutter[2]).toBeCloseTo(-1, 9)
      }),
    )
  })
  it('refuses a setting that is off by a hundredth of a degree', () => {
    const stream = direction(180, 15)
    expect(() => proveDirection(FIXTURE, { tilt: 15, rotary: 0 }, stream)).not.toThrow()
    expect(() => proveDirection(FIXTURE, { tilt: 15.01, rotary: 0 }, stream)).toThrow('off the stream')
    expect(() => proveDirection(FIXTURE, { tilt: 15, rotary: -0.01 }, stream)).toThrow('off the stream')
  })
})

describe('settings computed separately', () => {
  it.each(SETTINGS)('$name: tilt, rotary, Y, X, Z', ({ bore, at, back, up, centre, s, D, H, gives }) => {
    const heading = Math.sign(at) * (at === 180 ? 0 : back)
    const tilt = tiltSetting.value({ s, beta: up })
    const given = { s, D, h: centre, H, r: bore / 2, alpha: heading, tilt }
    const found = [
      tilt,
      rotarySetting.value({ s, phi: at, psi: heading }),
      crossOffset.value({ s, r: bore / 2, alpha: heading }),
      settingX.value(given),
      settingZ.value(given),
    ]
    for (const [i, wanted] of gives.entries()) expect(found[i]).toBeCloseTo(wanted, 5)
  })

  it.each(SETTINGS)(
    '$name: the same from a part and a shop',
    ({ bore, outside, at, back, up, centre, s, D, H, gives }) => {
      const port = {
        at,
        back,
        up,
        top: centre - 1.5,
        height: 3,
        width: 5,
        corner: { on: 'bore', radius: 1.4 },
      } as const
      const shop = shopWith({ headFaces: s === 1 ? '+X' : '-X', faceDistance: D, pivotHeight: H })
      const { ports } = planPorts(linerOf([port], { boreSize: bore }), shop, milledAt(bore - 0.2, outside))
      const window = ports[0]?.windows[0]
      const found = [window?.tilt, window?.rotary, window?.crossOffset, window?.x, window?.z]
      for (const [i, wanted] of gives.entries()) expect(found[i]).toBeCloseTo(wanted, 5)
    },
  )

  it('gives the matrix of the left main to six places, rows as computed separately', () => {
    const fixture = { ...FIXTURE, headFaces: '-X' as const, faceDistance: 85, pivotHeight: 60 }
    const stand = { tilt: -10, rotary: 47 }
    const origin = toMachine(fixture, stand, [0, 0, 0])
    const columns = (
      [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ] as const
    ).map(axis => toMachine(fixture, stand, axis))
    const rows = [
      [-0.118428, -0.126998, -0.984808, 73.289768],
      [-0.731354, 0.681998, 0, 0],
      [0.671637, 0.720243, -0.173648, 73.84856],
    ]
    for (const i of [0, 1, 2] as const) {
      for (const [j, column] of columns.entries()) expect(column[i] - origin[i]).toBeCloseTo(rows[i]?.[j] ?? 0, 6)
      expect(origin[i]).toBeCloseTo(rows[i]?.[3] ?? 0, 6)
    }
    const back = cutterInPart(fixture, stand)
    for (const [i, wanted] of [-0.671637, -0.720243, 0.173648].entries()) expect(back[i]).toBeCloseTo(wanted, 6)
  })
})

it('stacks a 100 mm sine bar as its sine says, to the digits of a printed sine table', () => {
  for (const [tilt, stack] of [
    [8, 13.917],
    [10, 17.365],
    [15, 25.882],
    [18, 30.902],
    [50, 76.604],
  ] as const) {
    expect(sineBarStack.value({ tilt, l: 100 })).toBeCloseTo(stack, 3)
  }
})

describe('rotary limits', () => {
  it('goes a whole turn back when the angle is out of reach', () => {
    expect(withinLimits(-100, [0, 360])).toBe(260)
    expect(withinLimits(170, [-200, 10])).toBe(-190)
  })
  it('finds nothing where no whole turn serves', () => {
    expect(withinLimits(100, [-90, 90])).toBeUndefined()
  })
})
