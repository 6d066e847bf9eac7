import { describe, expect, it } from 'vitest'
import { mostLeft } from '../../src/ports/path/corners.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { cut, partOf, portOf, stateOf, step, tube, windowOf } from './hand-made.ts'

const wall = tube(54, 48)
const state = stateOf('mill-ports', wall, { ...wall, ported: true })
// 10 by 8, corners 1.5, to be finished with a 2 mm cutter, in steel of 300 HV.
const millable = (rougher?: string) => [
  portOf([
    windowOf({
      tools: { cutter: 'end mill 2', drill: 'drill 3.3', ...(rougher === undefined ? {} : { rougher }) },
      entryHole: { diameter: 3.3, x: 0, y: 2, room: 2 },
    }),
  ]),
]
const milled = (rougher?: string) => cut(partOf(), state, BUILT_IN_SHOP, millable(rougher))
const alone = milled()

describe('a window that a larger cutter may rough', () => {
  const both = milled('end mill 3')
  const tools = both.steps.map(({ tool, action }) => `${tool}: ${action}`)

  it('is roughed with it, and the small one clears the corners and finishes', () => {
    expect(tools.map(text => text.replace(/ ?(of |in )?(the )?exhaust.*/, ''))).toEqual([
      'drill 3.3: drill the entry hole,',
      'end mill 3: rough',
      'end mill 3: cut through',
      'end mill 2: clear the corners',
      'end mill 2: finish',
      'end mill 2: spring pass',
    ])
  })

  it('takes less time a piece than with the small one alone, the tool change and the second turn counted', () => {
    expect(both.time.each).toBeLessThan(alone.time.each - 0.5)
  })

  it('says of both how many the batch wears out, and of the small one fewer', () => {
    const counts = (steps: typeof both.steps) =>
      steps.flatMap(({ tool, remarks }) =>
        remarks.flatMap(text => (/^(\d+) cutters for the batch/.exec(text) ? [[tool, Number.parseInt(text, 10)]] : [])),
      )
    expect(counts(both.steps).map(([tool]) => tool)).toEqual(['end mill 3', 'end mill 2'])
    const small = (steps: typeof both.steps) => Number(counts(steps).find(([tool]) => tool === 'end mill 2')?.[1])
    expect(small(both.steps)).toBeLessThan(small(alone.steps) / 3)
  })

  it('keeps in its corners what a circle of 1.25 times the cutter leaves there: 0.1553 mm (derived: plane geometry)', () => {
    // Radius 3 / 2 / 0.8 = 1.875 in a square corner rounded by 1.5: (√2 - 1)·(1.875 - 1.5) across the corner.
    const left = (Math.SQRT2 - 1) * (1.875 - 1.5)
    // The outline that is asked stands off its corners by chords of up to 0.02.
    expect(Math.abs(mostLeft(windowOf(), { after: 3, rounded: 1.875 }) - left)).toBeLessThan(0.02)
    expect(step(both.steps, 'clear the corners').remarks).toContainEqual(
      expect.stringMatching(/^up to 0\.1[45]\d* mm thick/),
    )
  })
})

it('a larger cutter that is too slender to be faster is left in the magazine', () => {
  // Twelve diameters below its shank: bend and margin leave it the depth of a much smaller one.
  const tools = BUILT_IN_SHOP.tools.map(tool =>
    tool.name === 'end mill 3, long reach' ? { ...tool, fluteLength: 36, reach: 60 } : tool,
  )
  const { steps } = cut(partOf(), state, { ...BUILT_IN_SHOP, tools }, millable('end mill 3, long reach'))
  expect(steps).toEqual(alone.steps)
})
