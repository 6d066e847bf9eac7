import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PlannedPort } from '../../src/ports/port.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { expectFigures } from '../handbook/four-figures.ts'
import { EVERY_PORT_FIELD } from '../plan/every-port-field.ts'
import { annealed, cut, partOf, portOf, shopWith, stateOf, step, tube, windowOf } from './hand-made.ts'

const wall = tube(54, 48)
const state = stateOf('mill-ports', wall, { ...wall, ported: true })
const ports = [portOf([windowOf()])]
const soft = cut(annealed(), state, BUILT_IN_SHOP, ports)
const hard = cut(partOf(), state, BUILT_IN_SHOP, ports)

describe('a window of 10 by 8, corners 1.5, wall 3, annealed, 2 mm cutter (derived: worked by hand)', () => {
  const rough = step(soft.steps, 'rough exhaust')
  const finish = step(soft.steps, 'finish exhaust')

  it('keeps the feed a tooth where the spindle ends at 12 000 rpm: 75.40 m/min, 480 mm/min', () => {
    expectFigures(rough.cuttingSpeed, 75.4)
    expect(rough.feed).toBeCloseTo(0.01, 12)
    expectFigures(rough.tableFeed, 480)
    expect(rough.limitedBy).toBe('spindle speed limit 12000 rpm')
  })

  const through = step(soft.steps, 'cut through exhaust')

  it('roughs in 17 levels, 450.7 mm, the last of them at half feed through the skin', () => {
    expect(rough.passes + through.passes).toBe(17)
    expectFigures(rough.depth * 17, 3.3)
    // A skin of 0.2 and the 0.3 beyond the bore: three levels of 0.1941.
    expect(through.passes).toBe(3)
    const round = 450.7 / 17
    const down = (1 + 14 * rough.depth) / (0.25 * 480)
    // Chords stand off the corners by up to 0.02 mm: 0.3 % of the way.
    expect((rough.time - down - 0.03) / ((14 * round) / 480)).toBeCloseTo(1, 2)
    expectFigures(through.tableFeed, 240)
    expect((through.time - (1 + 3.3) / 240 - 0.03) / ((3 * round) / 240)).toBeCloseTo(1, 2)
  })

  it('takes the worn peak force of the worked slot, 16.93 N at 0.2 mm, and bends as it says', () => {
    const share = rough.depth / 0.2
    expectFigures((rough.force ?? 0) / share, 16.93)
    expectFigures((rough.deflection ?? 0) / share, 7.725)
    expectFigures((rough.breakageMargin ?? 0) * share, 4.749)
    expectFigures((1e3 * (rough.power ?? 0)) / share, 24.85)
  })

  it('finishes two levels at 0.02065 a tooth, 991.1 mm/min, slower in the corners: 0.06745 min', () => {
    expect(finish.passes).toBe(2)
    expectFigures(finish.feed, 0.02065)
    expectFigures(finish.tableFeed, 991.1)
    // On each level two quarters of an arc of 1 at half the feed, which its rim keeps, and 0.5 on past the start; in the open,
    // at 1000 mm/min, down by 4.3 and about 4.5 to the arc and back.
    const arcs = 2 * (Math.PI / (0.5 * 991.1) + 0.5 / 991.1)
    const open = (1 + 3.3 + 2 * 4.5) / 1000
    expect(Math.abs((finish.time - 0.03) / (0.06745 + arcs + open) - 1)).toBeLessThan(0.03)
    expect(finish.remarks).toContain('on and off the wall on an arc of 1 mm, beside the timing edge')
    expectFigures(finish.force ?? 0, 26.52)
    expectFigures(finish.deflection ?? 0, 12.1)
    expectFigures(finish.breakageMargin ?? 0, 3.033)
  })

  it('springs over the same path without a force', () => {
    const spring = step(soft.steps, 'spring pass')
    expect(spring.time).toBe(finish.time)
    expect(spring.force).toBeUndefined()
  })

  // On and off the wall on two levels of 144 windows: a half turn of 1 mm, and 0.5.
  it('asks for 12 cutters for 24 liners of six windows: 72.72 m and 1.05 m at 8 m each, a quarter over', () => {
    const six = Array.from({ length: 6 }, (_, i) => portOf([windowOf()], { name: `port ${i + 1}` }))
    const remarks = cut(annealed(), state, BUILT_IN_SHOP, six).steps.flatMap(known => known.remarks)
    expect(remarks.filter(text => text.includes('cutters for the batch'))).toEqual([
      '12 cutters for the batch: 73.7 m of cut at about 8 m each, a quarter over',
    ])
  })
})

describe('the same window in steel tempered to 300 HV', () => {
  it('roughs in 22 levels of at most 0.15 at 0.008 a tooth', () => {
    const rough = step(hard.steps, 'rough exhaust')
    expect(rough.passes + step(hard.steps, 'cut through').passes).toBe(22)
    expect(rough.feed).toBeCloseTo(0.008, 12)
    expect(rough.limitedBy).toBeUndefined()
    expect(rough.cuttingSpeed).toBe(70)
  })

  it('finishes at 0.01652 a tooth', () => {
    expectFigures(step(hard.steps, 'finish exhaust').feed, 0.01652)
  })

  it('takes longer than annealed, and wears out more than twice the cutters', () => {
    expect(hard.time.each).toBeGreaterThan(soft.time.each)
    const count = (steps: typeof soft.steps) => Number.parseInt(step(steps, 'rough').remarks.at(-1) ?? '', 10)
    expect(count(hard.steps)).toBeGreaterThan(2 * count(soft.steps) - 2)
  })

  it('is cut slower still at the hard end of the bar: 0.8 of the speed (common practice, no source)', () => {
    const part = partOf({ material: { grade: '42CrMo4', written: '42CrMo4', hardness: 370 } })
    const softer = partOf({ material: { grade: '42CrMo4', written: '42CrMo4', hardness: 300 } })
    const speeds = [part, softer].map(
      one =>
        cut(one, state, BUILT_IN_SHOP, ports).steps.find(({ tool }) => tool.startsWith('end mill'))?.cuttingSpeed ?? 0,
    )
    expect(speeds[0]).toBeGreaterThan(0)
    expect(speeds[0]).toBeCloseTo(0.8 * (speeds[1] ?? 0), 6)
  })
})

describe('set-ups', () => {
  const tilted = (tilts: readonly number[]) =>
    tilts.map((tilt, i) => portOf([windowOf({ tilt })], { name: `port ${i + 1}` }))

  it('loads and sets again for each tilt, not for each window', () => {
    const one = cut(partOf(), state, BUILT_IN_SHOP, tilted([0, 0, 0])).time
    const two = cut(partOf(), state, BUILT_IN_SHOP, tilted([0, 5, 0])).time
    // Two tilts at 8 min each: the batch goes through once for each.
    expect(two.setup - one.setup).toBe(16)
    const handling = BUILT_IN_SHOP.machines.find(({ workCentre }) => workCentre === 'mill')?.handling ?? 0
    expect(two.each - one.each).toBeGreaterThan(handling)
  })

  it('indexes for every hole and every window, and takes every slug out', () => {
    const once = cut(partOf(), state, BUILT_IN_SHOP, tilted([0])).time.each
    const twice = cut(partOf(), state, BUILT_IN_SHOP, tilted([0, 0])).time.each
    const steps = cut(partOf(), state, BUILT_IN_SHOP, tilted([0])).steps.reduce((sum, { time }) => sum + time, 0)
    expect(twice - once).toBeCloseTo(steps + 2 * 0.05 + 0.2, 9)
  })
})

describe('limits of cutter and spindle', () => {
  const mill = (diameter: number, fluteLength: number, reach: number) =>
    ({ name: `test mill ${diameter}`, kind: 'end mill', diameter, fluteLength, reach, shank: 6, teeth: 4 }) as const
  const planned = (
    diameter: number,
    fluteLength: number,
    reach: number,
    speedLimit = 12_000,
    edge?: PlannedPort['edge'],
  ) =>
    cut(partOf(), state, shopWith('mill', { speedLimit }, [mill(diameter, fluteLength, reach)]), [
      portOf(
        [
          windowOf({
            cutter: diameter,
            tightestCorner: diameter,
            entryHole: { diameter: 6.5, x: 0, y: 0, room: 4 },
            tools: { cutter: `test mill ${diameter}`, drill: 'drill 6.5' },
          }),
        ],
        edge ? { edge } : {},
      ),
    ])

  it('never turns faster than the spindle, and keeps its feed a tooth', () => {
    const limits = fc.integer({ min: 3000, max: 40_000 })
    fc.assert(
      fc.property(limits, fc.constantFrom(1.5, 2, 3, 4), (speedLimit, diameter) => {
        const rough = step(planned(diameter, 3 * diameter, 20, speedLimit).steps, 'rough')
        expect(rough.spindleSpeed).toBeLessThanOrEqual(speedLimit)
        expect(rough.feed).toBeCloseTo(0.004 * diameter, 12)
      }),
      { numRuns: 40 },
    )
  })

  it('cuts less deep with a longer cutter, never more', () => {
    const lengths = fc.double({ min: 6, max: 40, noNaN: true })
    fc.assert(
      fc.property(lengths, lengths, (a, b) => {
        const passes = (length: number) => {
          const { steps } = planned(3, length, length + 10)
          return step(steps, 'rough').passes + step(steps, 'cut through').passes
        }
        expect(passes(Math.max(a, b))).toBeGreaterThanOrEqual(passes(Math.min(a, b)))
      }),
      { numRuns: 40 },
    )
  })

  it('names breaking as the limit of a stub cutter', () => {
    const rough = step(planned(4, 11, 30).steps, 'rough')
    expect(rough.limitedBy).toMatch(/^margin of 3\.\d+ against breaking$/)
    expect(rough.breakageMargin).toBeGreaterThanOrEqual(3)
  })

  it('warns of a cutter under 30 to 40 m/min, and not at 40', () => {
    expect(planned(2, 6, 20, 5000).codes).toContain('cutting/slow-cutter')
    expect(planned(2, 6, 20, 6400).codes).not.toContain('cutting/slow-cutter')
  })

  it('warns of a chip under 4 µm, and not at 4', () => {
    expect(planned(0.9, 3, 15).codes).toContain('cutting/chip-too-thin')
    expect(planned(1, 3, 15).codes).not.toContain('cutting/chip-too-thin')
  })

  it('slows a finishing cut that would bend the cutter, and says so where that does not help', () => {
    const long = step(planned(2, 10, 25).steps, 'finish')
    // A quarter of what the edge is milled to, where that is closer than the works' habit of 0.1: common practice, no source.
    const close = { ...EVERY_PORT_FIELD.edge, milledTo: 0.08 }
    expect(step(planned(2, 10, 25, 12_000, close).steps, 'finish').deflection).toBeCloseTo(20, 6)
    expect(long.limitedBy).toMatch(/bend of the cutter/)
    expect(long.deflection).toBeCloseTo(25, 6)
    expect(planned(2, 20, 60).codes).toContain('cutting/cutter-bends')
    expect(planned(2, 6, 20).codes).not.toContain('cutting/cutter-bends')
  })
})
