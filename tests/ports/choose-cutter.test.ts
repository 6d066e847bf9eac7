import { expect, it } from 'vitest'
import { type CutterNeed, chooseCutter } from '../../src/ports/choose-cutter.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { EndMill } from '../../src/shop/tool.ts'

// A corner of 0.9: by the rule of practice 1.44 at most, so only a 1.5 comes near it.
const need: CutterNeed = {
  tightestCorner: 0.9,
  largest: 1.44,
  room: 4,
  flutes: () => 6.5,
  reach: 12,
  stickOut: () => 12,
  cornerFor: () => undefined,
  cornerOn: 'on the bore',
  corner: 0.9,
}
const mill = (name: string, fluteLength: number): EndMill => ({
  name,
  kind: 'end mill',
  diameter: 1.5,
  teeth: 4,
  fluteLength,
  shank: 6,
  reach: 22,
})
const drills = BUILT_IN_SHOP.tools.filter(({ kind }) => kind === 'drill')

it('a short cutter listed before a long one of the same diameter changes nothing', () => {
  const [short, long] = [mill('short', 4.5), mill('long', 8)]
  const alone = chooseCutter({ tools: [long, ...drills] }, need)
  expect(alone.tools.cutter).toBe('long')
  expect(chooseCutter({ tools: [short, long, ...drills] }, need)).toEqual(alone)
  expect(chooseCutter({ tools: [long, short, ...drills] }, need)).toEqual(alone)
})

it('with none that is long enough, names the cutter to get: diameter, length below the shank, shank', () => {
  const chosen = chooseCutter({ tools: [mill('short', 4.5), ...drills] }, { ...need, flutes: () => 9.2 })
  expect(chosen.tools.cutter).toBeUndefined()
  expect(chosen.faults.map(({ hint }) => hint)).toEqual([
    expect.stringMatching(/^get one of 1.5 mm with 9.5 mm or more below a shank of 6 mm, and list it in the shop file/),
  ])
})
