import { expect, it } from 'vitest'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { cut, partOf, sizeOf, stateOf, tube } from './hand-made.ts'

/** Half the nose radius is the most that a turning tool is fed: common practice, no source. */
it.each([0.1, 0.2, 0.4, 0.8])('no pass of a nose of %d mm is fed faster than half of it', nose => {
  const tools = BUILT_IN_SHOP.tools.map(tool => ('noseRadius' in tool ? { ...tool, noseRadius: nose } : tool))
  const state = stateOf('finish-turn', tube(59, 46), tube(55, 48), [sizeOf('seat', 55, 0.05), sizeOf('bore', 48, 0.05)])
  const { steps } = cut(partOf(), state, { ...BUILT_IN_SHOP, tools })
  expect(steps.map(({ action }) => action)).toContain('semi-finish seat')
  for (const { feed, action } of steps.filter(({ feed }) => feed > 0))
    expect(feed, action).toBeLessThanOrEqual(nose / 2 + 1e-9)
})
