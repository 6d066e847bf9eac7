import { describe, expect, it } from 'vitest'
import { clockingTime } from '../../src/cutting/clocking.ts'
import { allTiltsEach, batchEachTilt, clearanceError, flatWidth, touchError } from '../../src/handbook/timing-datums.ts'
import type { Datum, Part } from '../../src/part/part.ts'
import type { PlannedPort } from '../../src/ports/port.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { cut, partOf, portOf, stateOf, tube, windowOf } from './hand-made.ts'

const tilted = (tilts: readonly number[]): readonly PlannedPort[] =>
  tilts.map((tilt, i) => portOf([windowOf({ tilt, walls: WALLS })], { name: `port ${i + 1}` }))
const POWERED: Shop = { ...BUILT_IN_SHOP, ncWords: { tiltAxis: 'B' } }
const WALLS = { outside: 27, bore: 24, finished: 24 }
const wall = tube(54, 48)
const planned = (ports: readonly PlannedPort[], changes: Partial<Part>, start: number, shop: Shop = BUILT_IN_SHOP) => {
  const state = stateOf('mill-ports', wall, { ...wall, ported: true })
  const { time, codes, clocking } = cut(partOf(changes), state, shop, ports, start)
  return { ...time, codes, clocking }
}
const flat: Datum = { kind: 'flat', on: 'outside', at: 90, depth: 1.5, path: '/body/datum' }

// Worked by hand beside a table of the usual sizes: common practice, no source, for the sizes; the angles follow.
describe('the azimuth that comes back', () => {
  it.each([
    ['a pin of 3 g6 in a hole of 3 H7 at 28', clearanceError.value({ c: 0.022, r: 28 }), 0.023],
    ['a key h9 in a notch of 3 H9 at 30', clearanceError.value({ c: 0.05, r: 30 }), 0.048],
    ['a key in a window at 24', clearanceError.value({ c: 0.03, r: 24 }), 0.036],
    ['an indicator along 8 of a flat', touchError.value({ e: 0.01, w: 8 }), 0.072],
  ])('by %s', (_, found, printed) => {
    expect(found).toBeCloseTo(printed, 3)
  })
  it('is by a flat of 11.1 where 0.5 is taken off 62: a chord and its sagitta', () => {
    const width = flatWidth.value({ D: 62, h: 0.5 })
    expect(width).toBeCloseTo(11.1, 1)
    expect(31 - Math.sqrt(31 * 31 - (width / 2) ** 2)).toBeCloseTo(0.5, 9)
  })
})

describe('three tilts, 18 pieces, 8 min a tilt, 3 min to load', () => {
  it('are 486 min with all tilts a piece and 186 tilt by tilt, clocking within the 3 min', () => {
    expect(allTiltsEach.value({ n: 18, t: 3, load: 3, change: 8 })).toBe(486)
    expect(batchEachTilt.value({ n: 18, t: 3, load: 3, clock: 0, change: 8 })).toBe(186)
  })
})

describe('the way through the tilts', () => {
  it('is tilt by tilt with a key in the window of the first pass, each piece loaded and clocked at every tilt', () => {
    const { clocking, setup, each } = planned(tilted([0, 5, 50]), {}, 18)
    expect(clocking).toMatchObject({ way: 'the batch at each tilt', passes: 3, tilts: 3 })
    expect(clocking?.datum).toMatchObject({ kind: 'window key', on: 'port 1', drawn: false })
    const { load, change, clock = 0, eachTilt = 0, allTilts } = clocking?.minutes ?? { load: 0, change: 0, allTilts: 0 }
    expect(eachTilt).toBeLessThan(allTilts)
    // The same cuts on a machine that tilts by itself, 0.2 min each: what differs in the operation's time is loading and
    // tilting alone.
    const powered = planned(tilted([0, 5, 50]), {}, 18, POWERED)
    const own = powered.clocking?.minutes.allTilts ?? 0
    expect(setup - powered.setup + 18 * (each - powered.each)).toBeCloseTo(eachTilt - own, 9)
    expect(setup - powered.setup).toBe(3 * change)
    expect(each - powered.each).toBeCloseTo(3 * (load + clock) - load - 3 * 0.2, 9)
  })
  it('is all tilts a piece where nothing brings the azimuth back, and says so', () => {
    const { clocking, codes, setup, each } = planned(tilted([15, 50]), {}, 18)
    expect(clocking).toMatchObject({ way: 'all tilts a piece', passes: 1 })
    expect(clocking?.datum).toBeUndefined()
    expect(codes).toContain('ports/no-timing-datum')
    const powered = planned(tilted([15, 50]), {}, 18, POWERED)
    expect(setup).toBe(powered.setup)
    expect(each - powered.each).toBeCloseTo(2 * 8 - 2 * 0.2, 9)
  })
  it('is all tilts a piece where the machine tilts by itself', () => {
    expect(planned(tilted([0, 15, 50]), {}, 18, POWERED).clocking?.way).toBe('all tilts a piece')
  })
  it('is no question with one tilt', () => {
    expect(planned(tilted([0, 0]), {}, 18).clocking).toMatchObject({ way: 'one tilt', passes: 1 })
  })
})

describe('a datum of the drawing', () => {
  const { clocking, codes } = planned(tilted([15, 50]), { datum: flat }, 18)
  it('is milled in the first clamping: toward the spindle, its floor as deep as drawn', () => {
    // Outside 54, pivot-height 50; azimuth 90 counter-clockwise from the head comes up by -90 with the head facing +X.
    expect(clocking?.datum).toMatchObject({ kind: 'flat', drawn: true, rotary: -90, clock: '9 o’clock' })
    expect(clocking?.datum?.floor).toBeCloseTo(50 + 27 - 1.5, 9)
  })
  it('shifts side edges by the arc of two loadings apart from each other, and nothing else', () => {
    const { angle = 0, between = 0, side = 0 } = clocking?.datum ?? {}
    expect(angle).toBeCloseTo(0.0716, 4)
    expect(between).toBeCloseTo(Math.hypot(angle, angle), 9)
    expect(side).toBeCloseTo((WALLS.finished * between * Math.PI) / 180, 9)
    expect(codes).not.toContain('ports/no-timing-datum')
  })
  it('is too narrow where an indicator finds no 8 mm', () => {
    expect(planned(tilted([15, 50]), { datum: { ...flat, depth: 0.2 } }, 18).codes).toContain('ports/clocking-error')
    expect(codes).not.toContain('ports/clocking-error')
  })
})

describe('how a datum of the drawing is made', () => {
  const steps = (datum: Datum, ports = tilted([0, 15])) => {
    const state = stateOf('mill-ports', wall, { ...wall, ported: true })
    return cut(partOf({ datum }), state, BUILT_IN_SHOP, ports, 18)
  }
  const notch: Datum = { kind: 'notch', on: 'seat', at: 0, depth: 2, path: '/body/datum' }

  it('is by a step of its own before all others, with tool, feed and time', () => {
    const [first] = steps(flat).steps
    expect(first?.action).toBe('mill the flat on outside')
    expect(first?.tool).toMatch(/end mill/)
    expect(first?.tableFeed).toBeGreaterThan(0)
    expect(first?.time).toBeGreaterThan(0)
    expect(first?.remarks.join()).toContain('first of all, tilt 0')
    expect(first?.remarks.join()).toContain('no program: by hand wheels or typed in')
  })
  it('is a notch by a cutter that goes into its 3 mm, down the middle and along both flanks', () => {
    const [first] = steps(notch).steps
    const diameter = Number(/end mill ([\d.]+)/.exec(first?.tool ?? '')?.[1])
    expect(diameter).toBeLessThan(3)
    expect(first?.remarks.join()).toContain('both flanks to 3 H9')
    expect((first?.depth ?? 0) * (first?.passes ?? 0)).toBeCloseTo(2, 9)
  })
  it('is a hole drilled under its size and reamed, in a clamping of its own that costs one more loading', () => {
    const hole = steps({ kind: 'dowel hole', on: 'seat', at: 0, depth: 4, path: '/body/datum' })
    const [drill, ream] = hole.steps
    expect(drill?.action).toBe('drill the dowel hole in seat')
    expect(drill?.feedUnit).toBe('mm/rev')
    expect(ream?.tool).toBe('reamer 3 H7')
    expect(hole.clocking?.datum).toMatchObject({ clamping: 'of its own', place: { radius: 54 / 2 - 3 } })
    const [own, milled] = [hole.clocking, steps(notch).clocking]
    if (!own || !milled) throw new Error('not clocked')
    expect(clockingTime(own).each - clockingTime(milled).each).toBeCloseTo(own.minutes.load, 9)
  })
  it('leaves a band at the lower end to a clamping of its own, since the jaws cover it there, and goes by a stop', () => {
    const stepped = {
      ...wall,
      ported: true,
      outside: [
        { name: 'seat', from: 0, to: 74, diameter: 54 },
        { name: 'foot', from: 74, to: 80, diameter: 52 },
      ],
    }
    const foot: Datum = { kind: 'flat', on: 'foot', at: 0, depth: 1.5, path: '/body/datum' }
    const found = cut(partOf({ datum: foot }), stateOf('mill-ports', wall, stepped), BUILT_IN_SHOP, tilted([0, 15]), 18)
    expect(found.clocking?.datum).toMatchObject({ clamping: 'of its own', place: { from: 74, to: 80, end: 'bottom' } })
    expect(found.clocking?.datum?.floor).toBeUndefined()
    // Square within 0.01 over 11 of the stop: 0.052°.
    expect(found.clocking?.datum?.angle).toBeCloseTo((180 / Math.PI) * (0.01 / 11), 6)
    expect(found.clocking?.minutes.clock).toBe(0.4)
    expect(found.steps[0]?.remarks.join()).toContain('the lower end with foot out of the jaws')
  })
  it('is made where one tilt is all there is, too', () => {
    const { clocking, steps: made } = steps(flat, tilted([0, 0]))
    expect(clocking).toMatchObject({ way: 'one tilt', datum: { kind: 'flat' } })
    expect(made[0]?.action).toBe('mill the flat on outside')
  })
})
