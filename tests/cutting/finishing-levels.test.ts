import { describe, expect, it } from 'vitest'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { cut, partOf, portOf, stateOf, step, tube, windowOf } from './hand-made.ts'

const wall = tube(54, 48)
const state = stateOf('mill-ports', wall, { ...wall, ported: true })
/** The 2 mm end mill with a neck of 1.9 that is so long. */
function milled(neck: number) {
  const tools = BUILT_IN_SHOP.tools.map((tool): Shop['tools'][number] =>
    tool.name === 'end mill 2' && tool.kind === 'end mill'
      ? { ...tool, fluteLength: neck, reach: neck + 17, neck: { diameter: 1.9, edges: 4 } }
      : tool,
  )
  const window = windowOf({ tools: { cutter: 'end mill 2', drill: 'drill 2.2' } })
  return cut(partOf(), state, { ...BUILT_IN_SHOP, tools }, [portOf([window])])
}

describe('a wall that a slender cutter finishes', () => {
  it('is finished in more levels where it would bend too far in deep ones, and not at a feed that rubs', () => {
    const { steps, findings } = milled(19)
    const { depth, passes, feed } = step(steps, 'finish')
    expect(passes).toBeGreaterThan(2)
    expect(depth * passes).toBeCloseTo(3.3, 6)
    // Common practice, no source: under 4 µm a tooth the edge rubs.
    expect(feed).toBeGreaterThanOrEqual(0.004 - 1e-9)
    // A warning no more, but a note of what it costs.
    expect(findings.filter(({ code }) => code === 'cutting/cutter-bends').map(({ severity }) => severity)).toEqual([
      'note',
    ])
  })

  it('is finished as deep as the cutter is thick where it stands that', () => {
    expect(step(milled(6).steps, 'finish').passes).toBe(2)
  })

  it('is told of where no number of levels helps', () => {
    const { findings, steps } = milled(40)
    expect(findings.find(({ code }) => code === 'cutting/cutter-bends')?.severity).toBe('warning')
    expect(step(steps, 'finish').passes).toBe(2)
  })
})
