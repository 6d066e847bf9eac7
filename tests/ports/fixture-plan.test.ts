import { describe, expect, it } from 'vitest'
import { toMachine } from '../../src/machine-frame.ts'
import { unmeasuredPlaces } from '../../src/ports/fixture-plan.ts'
import { planPorts } from '../../src/ports/plan-ports.ts'
import { type Asked, linerOf, milledAt, shopWith } from './liner.ts'

const PORTS: readonly Asked[] = [
  { name: 'boost', at: 180, up: 50, corner: { on: 'cutter', radius: 1.5 } },
  { name: 'main', at: 78, up: 15, width: 17, back: 32, corner: { on: 'bore', radius: 2.8 } },
  { name: 'other main', at: -78, up: 15, width: 17, back: 32, corner: { on: 'bore', radius: 2.8 } },
  { name: 'exhaust', at: 0, width: 27, bridge: 3 },
]
const plan = (fixture = {}) => planPorts(linerOf(PORTS), shopWith(fixture), milledAt(47.8, 55.2))

describe('order of the windows', () => {
  const { fixture } = plan()
  it('sets every window once, with no tilt twice', () => {
    expect(fixture?.order.map(({ port, window }) => `${port} ${window}`)).toEqual([
      'exhaust 1',
      'exhaust 2',
      'other main 1',
      'main 1',
      'boost 1',
    ])
    expect(fixture?.tiltChanges).toBe(2)
    expect(fixture?.rotaryReversals).toBeLessThanOrEqual(2)
  })
  it('stacks a 100 mm sine bar for every tilt', () => {
    expect(fixture?.tilts.map(({ stack }) => Number(stack.toFixed(3)))).toEqual([0, 25.882, 76.604])
  })
})

it('picks up from the seated face as computed separately', () => {
  const port: Asked = { at: 72, back: 25, up: 10, top: 16.5, height: 3, width: 5, corner: { on: 'bore', radius: 1.4 } }
  const shop = shopWith({ headFaces: '-X', faceDistance: 85, pivotHeight: 60 })
  const [found] = planPorts(linerOf([port], { boreSize: 20 }), shop, milledAt(19.8, 25)).ports
  expect(found?.windows[0]?.fromFace?.x).toBeCloseTo(16.15275, 5)
  expect(found?.windows[0]?.fromFace?.z).toBeCloseTo(12.05106, 5)
})

describe('proving moves say where the fixture itself goes', () => {
  it.each(['Y to Z', 'Z to Y'] as const)('rotary %s', positiveRotary => {
    const { fixture } = plan({ positiveRotary })
    const shop = shopWith({ positiveRotary })
    const rotary = positiveRotary === 'Y to Z' ? 90 : -90
    const mark = toMachine(shop.fixture, { tilt: 0, rotary }, [24, 0, 0])
    expect(fixture?.provingMoves[1]).toContain(mark[1] > 0 ? 'toward +Y' : 'toward −Y')
  })
  it.each(['+X', '-X'] as const)('head facing %s', headFaces => {
    const { fixture } = plan({ headFaces })
    const shop = shopWith({ headFaces })
    const at = (tilt: number) =>
      toMachine(shop.fixture, { tilt, rotary: 0 }, [0, 0, 20])[2] -
      toMachine(shop.fixture, { tilt, rotary: 0 }, [0, 0, -20])[2]
    expect(fixture?.provingMoves[2]).toContain(at(5) < at(0) ? 'must go down' : 'must go up')
  })
})

describe('a tilt axis of the machine', () => {
  const planned = (positiveTilt: 'Z to X' | 'X to Z', set?: ReadonlySet<string>) =>
    planPorts(
      linerOf(PORTS),
      shopWith({ positiveTilt }, { ncWords: { tiltAxis: 'B' }, ...(set && { set }) }),
      milledAt(47.8, 55.2),
    ).fixture

  it('stands where its own count says, and the tilt stays that of the part', () => {
    const tilts = (sense: 'Z to X' | 'X to Z') => planned(sense)?.tilts.map(({ tilt, axis }) => [tilt, axis?.at])
    expect(tilts('Z to X')).toEqual([
      [0, 0],
      [15, 15],
      [50, 50],
    ])
    expect(tilts('X to Z')).toEqual([
      [0, 0],
      [15, -15],
      [50, -50],
    ])
  })

  it('is proved by a move that says where the head end itself goes', () => {
    const at = (tilt: number) => toMachine(shopWith().fixture, { tilt, rotary: 0 }, [0, 0, 20])[2]
    expect(at(5)).toBeLessThan(at(0))
    expect(planned('Z to X')?.provingMoves[2]).toBe('Turn B to +5: the head end must go down.')
    expect(planned('X to Z')?.provingMoves[2]).toBe('Turn B to +5: the head end must go up.')
  })

  it('whose sense nobody has proved is among what no program is written without', () => {
    const places = ['head-faces', 'face-distance', 'pivot-height', 'positive-rotary']
    const unproved = planned('Z to X', new Set(places.map(key => `/fixture/${key}`)))
    expect(unproved && unmeasuredPlaces(unproved)).toEqual(['positive-tilt'])
    expect(plan().fixture?.assumed).not.toContain('positive-tilt')
  })
})
