import { describe, expect, it } from 'vitest'
import { cut, partOf, sizeOf, stateOf, step, tube } from './hand-made.ts'

describe('a bore finished in jaws', () => {
  it('lightens the last cuts of a wall that the jaws would spring', () => {
    const thin = (tolerance: number) =>
      stateOf('finish-turn', tube(52, 46), tube(52, 48), [sizeOf('bore', 48, tolerance)])
    const wide = step(cut(partOf(), thin(0.5)).steps, 'finish bore')
    const tight = step(cut(partOf(), thin(0.06)).steps, 'finish bore')
    expect(tight.depth).toBeLessThan(wide.depth)
    expect(tight.limitedBy).toContain('spring of the wall')
    expect(cut(partOf(), thin(0.01)).codes).toContain('cutting/jaws-bend-wall')
  })

  // Common practice, no source: pie jaws for a wall under 0.08 of the diameter held, and where soft jaws would spring it too far.
  it('takes pie jaws for a thin wall, and for a stouter one that soft jaws would spring over a quarter of the tolerance', () => {
    const heldWith = (bore: number, tolerance: number) =>
      cut(partOf(), stateOf('finish-turn', tube(60, bore - 2), tube(60, bore), [sizeOf('bore', bore, tolerance)]))
        .chuckings.map(({ heldWith }) => heldWith)
        .at(0)
    expect(heldWith(50.6, 0.5)).toBe('pie jaws')
    expect(heldWith(49.5, 0.5)).toBe('bored soft jaws')
    expect(heldWith(49.5, 0.03)).toBe('bored soft jaws')
    expect(heldWith(49.5, 0.02)).toBe('pie jaws')
    // Too stout a wall springs in no jaws.
    expect(heldWith(30, 0.02)).toBe('bored soft jaws')
  })

  it('eases the jaws for the last cuts to no more than the chucking is set to for all of them', () => {
    const { steps, chuckings } = cut(
      partOf(),
      stateOf('finish-turn', tube(60, 47.5), tube(60, 49.5), [sizeOf('bore', 49.5, 0.02)]),
    )
    const said = /ease the jaws to about (\d+) N each/.exec(step(steps, 'finish bore').remarks.join())
    const { set = 0, step: asks } = chuckings.at(0)?.jawForce ?? {}
    expect(asks).toBe('semi-finish bore')
    expect(Number(said?.[1])).toBeGreaterThan(0)
    expect(Number(said?.[1])).toBeLessThan(set)
  })

  it('sets the jaws harder by half as much again as they lose at speed, and slows down where that springs the wall', () => {
    const thin = (tolerance: number) =>
      stateOf('finish-turn', tube(52, 46), tube(52, 48), [sizeOf('bore', 48, tolerance)])
    const figures = (tolerance: number) => {
      const { remarks, spindleSpeed } = step(cut(partOf(), thin(tolerance)).steps, 'finish bore')
      const said = remarks
        ?.find(remark => remark.startsWith('ease the jaws'))
        ?.match(/[\d.]+(?= (N each|rpm|N and|µm))/g)
      const [set = 0, rpm = 0, lost = 0, lobes = 0] = (said ?? []).map(Number)
      return { set, rpm, lost, lobes, spindleSpeed: spindleSpeed ?? 0 }
    }
    const usual = figures(0.5)
    // 0.6 kg, 26 mm outside the radius gripped: m r (2 pi n / 60)^2, as a jaw of 0.5 kg at 60 mm and 2000 rpm pulls 1316 N.
    const pull = (n: number) => 1316 * (0.6 / 0.5) * ((26 + 26) / 60) * (n / 2000) ** 2
    expect(Math.abs(usual.lost / pull(usual.spindleSpeed) - 1)).toBeLessThan(0.05)
    expect(usual.set).toBeGreaterThan(1.5 * usual.lost)
    const tight = figures(0.064)
    expect(tight.spindleSpeed).toBeLessThan(usual.spindleSpeed)
    expect(tight.lost).toBeLessThan(usual.lost)
    expect(tight.lobes).toBeLessThanOrEqual(0.25 * 64)
  })

  it('reckons lobes from the band that the jaws hold, as it came to them', () => {
    const lobes = (before: number, after: number) => {
      const state = stateOf('finish-turn', tube(before, 46), tube(after, 48), [sizeOf('bore', 48, 0.5)])
      const operation = { ...state.operation, locatedBy: ['outside'] }
      const { remarks } = step(cut(partOf(), { ...state, operation }).steps, 'finish bore')
      return Number(/springs ([\d.]+) µm/.exec(remarks.join())?.[1])
    }
    expect(lobes(52, 52)).toBeGreaterThan(0)
    expect(lobes(52, 51)).toBe(lobes(52, 52))
    expect(lobes(53, 52)).toBeLessThan(lobes(52, 52))
  })
})
