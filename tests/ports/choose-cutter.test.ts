import { describe, expect, it } from 'vitest'
import { type CutterNeed, chooseCutter } from '../../src/ports/choose-cutter.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Drill, EndMill } from '../../src/shop/tool.ts'

// A corner of 0.9: by the rule of practice 1.44 at most, so only a 1.5 comes near it.
const need: CutterNeed = {
  tightestCorner: 0.9,
  largest: 1.44,
  girth: 40,
  room: 4,
  flutes: () => 6.5,
  reach: 12,
  stickOut: () => 12,
  clears: () => true,
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
  // Solid carbide with a neck of up to twelve diameters is sold: common practice, no source.
  expect(chosen.tools.cutter).toMatch(/^end mill 1.2, neck 10/)
  expect(chosen.faults.map(({ code }) => code)).toEqual(['ports/to-get'])
  expect(chosen.faults.map(({ hint }) => hint)).toEqual([
    expect.stringMatching(
      /; or get one of 1.5 mm with 9.5 mm or more below a shank of 6 mm, and list it in the shop file/,
    ),
  ])
})

/** The drill is 0.1 larger than the cutter and stands 0.2 off the contour (common practice, no source): 1.6 in a circle of 1.0. */
describe('the hole that a cutter of 1.5 enters by', () => {
  const long = mill('long', 8)
  const drill = (diameter: number, reach = 22): Drill => ({
    ...{ name: `drill ${diameter}`, kind: 'drill', fluteLength: reach, shank: diameter, point: 140 },
    diameter,
    reach,
  })
  const chosen = (room: number, ...drills: readonly Drill[]) =>
    chooseCutter({ tools: [long, ...drills] }, { ...need, room })

  it('is drilled by what is just large enough and just finds room', () => {
    expect(chosen(1, drill(1.55), drill(1.6), drill(1.7))).toMatchObject({ drill: 1.6, tools: { drill: 'drill 1.6' } })
  })
  it.each([
    ['is too small', 1, drill(1.55)],
    ['finds no room', 1, drill(1.65)],
    ['is too short', 1, drill(1.6, 11.9)],
  ])('asks for another drill where the one on hand %s', (_, room, drill) => {
    const { faults, tools } = chosen(room, drill)
    expect(faults.map(({ code }) => code)).toContain('ports/to-get')
    expect(faults.map(({ message }) => message)).toContainEqual(
      expect.stringMatching(/no drill on hand for the entry hole/),
    )
    expect(tools.drill).toMatch(/^drill \d/)
    expect(drills.map(({ name }) => name)).not.toContain(tools.drill)
  })
  it('is not planned where no cutter that is sold is long enough', () => {
    const { faults, tools } = chooseCutter({ tools: [long, ...drills] }, { ...need, flutes: () => 40 })
    expect(faults.map(({ code }) => code)).toEqual(['ports/cutter-too-short'])
    expect(tools.cutter).toBeUndefined()
  })
  it('asks for a smaller cutter where no drill at all would find room, and refuses where none is sold', () => {
    const message = expect.stringMatching(/an entry hole of 1.58 mm, but the 1.5 mm cutter needs 1.60 mm/)
    expect(chosen(0.99, drill(1.6)).faults).toContainEqual(expect.objectContaining({ code: 'ports/to-get', message }))
    const codes = chosen(0.6, drill(1.6)).faults.map(({ code }) => code)
    expect(codes).toContain('ports/no-entry')
  })
})

describe('a larger cutter that would rough the window sooner', () => {
  const finisher = mill('finisher', 8)
  const larger = { ...mill('larger', 8), diameter: 3 }
  const drilled: Drill = {
    ...{ name: 'drill 3.1', kind: 'drill', fluteLength: 22, shank: 3.1, point: 140 },
    diameter: 3.1,
    reach: 22,
  }
  const roughing = (clears: boolean) =>
    chooseCutter({ tools: [finisher, larger, drilled, ...drills] }, { ...need, clears: () => clears }).tools.rougher

  it('is taken where it clears what holds the part, and not where its flutes or shank would strike it', () => {
    expect(roughing(true)).toBe('larger')
    expect(roughing(false)).toBeUndefined()
  })
})
