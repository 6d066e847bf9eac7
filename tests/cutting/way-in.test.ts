import { describe, expect, it } from 'vitest'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { expectFigures } from '../handbook/four-figures.ts'
import { annealed, cut, partOf, portOf, rounded, stateOf, step, tube, windowOf, withoutTools } from './hand-made.ts'

const wall = tube(54, 48)
const state = stateOf('mill-ports', wall, { ...wall, ported: true })
const ports = [portOf([windowOf()])]
const hard = cut(partOf(), state, BUILT_IN_SHOP, ports)

describe('the way in', () => {
  it('drills a square face at full feed until it breaks through', () => {
    expect(hard.steps.map(({ action }) => action.split(',')[0])).toEqual([
      'drill the entry hole',
      'rough exhaust',
      'cut through exhaust',
      'finish exhaust',
      'spring pass exhaust',
    ])
    const drill = step(hard.steps, 'drill')
    // 2.2 mm, point 140: 0.4004 to full diameter, exact geometry.
    const out = 1.1 / Math.tan((70 * Math.PI) / 180)
    const slow = out + 0.5
    const all = 1 + 3 + out + 0.3
    expect(drill.time - 0.03).toBeCloseTo((all - slow) / drill.tableFeed + slow / (0.5 * drill.tableFeed), 6)
  })

  it.each([
    [3, 0, false],
    [7.9, 0, false],
    [8.1, 0, true],
    [0, 3.7, false],
    [0, 4, true],
    [15, 5, true],
  ])('with a tilt of %d and the hole %d off the axis: not drilled as it slopes %s', (tilt, y, steep) => {
    // 4 off the axis of R 27 slopes 8.52 deg, 3.7 slopes 7.88.
    const walls = { outside: 27, bore: 24, finished: 24 }
    const tilted = portOf([windowOf({ tilt, walls, entryHole: { diameter: 2.2, x: 0, y, room: 1.5 } })])
    const milled = cut(partOf(), state, BUILT_IN_SHOP, [tilted])
    // Down a ramp, or a flat for the drill first, whichever is sooner.
    const ramps = milled.steps.some(({ remarks }) => remarks.includes('down at 2° along the slot, no entry hole'))
    const flat = milled.steps.some(({ action }) => action.startsWith('mill a flat'))
    expect(ramps || flat).toBe(steep)
    expect(milled.steps.some(({ action }) => action.startsWith('drill'))).toBe(!ramps)
  })

  it('winds a 2 mm cutter down where there is no drill, along a helix of 2 deg', () => {
    // Round so small a window the way is shorter than a turn of the helix: no ramp goes down along it.
    const small = windowOf({ outline: { ...windowOf().outline, cutterPlane: rounded(2.6, 2.6, 1.3) } })
    const { steps } = cut(annealed(), state, withoutTools(BUILT_IN_SHOP, 'drill'), [portOf([small])])
    const down = step(steps, 'wind down through the wall')
    // Half the edge feed of 480, a hole of 2.6: 240·0.6/2.6; 3.3 mm at 2 deg is 94.56 mm (derived: worked by hand).
    expectFigures(down.tableFeed, (240 * 0.6) / 2.6)
    // 1 mm above it, and once round on the floor; sixteen chords a turn are 0.7 % shorter than the turn.
    const path = ((down.time - 0.03) * 240 * 0.6) / 2.6
    expect(path).toBeGreaterThan(0.99 * (94.56 + 1 + 0.6 * Math.PI))
    expect(path).toBeLessThan(94.56 + 1 + 0.6 * Math.PI + 0.3)
  })

  it('cuts nothing where the window has no cutter: that was said when it was looked for', () => {
    const { steps, codes } = cut(partOf(), state, BUILT_IN_SHOP, [portOf([windowOf({ tools: {} })])])
    expect(steps).toEqual([])
    expect(codes).toEqual([])
  })
})
