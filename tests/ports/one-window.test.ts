import { describe, expect, it } from 'vitest'
import { planPorts } from '../../src/ports/plan-ports.ts'
import { type Asked, linerOf, milledAt, shopWith } from './liner.ts'

const plan = (asked: readonly Asked[], changes = {}) =>
  planPorts(linerOf(asked, changes), shopWith(), milledAt(47.8, 55))

describe('a liner with one window', () => {
  it.each([
    ['12 o’clock', 180, 0],
    ['6 o’clock', 0, 180],
    ['9 o’clock', -90, 90],
  ] as const)('is touched opposite the window, at %s for a window at %d°: by symmetry', (clock, at, wall) => {
    const { fixture } = plan([{ at }])
    expect(fixture?.pickUp.clock).toBe(clock)
    expect(Math.abs(fixture?.pickUp.rotary ?? Number.NaN)).toBe(wall)
  })

  it('needs no pivot where nothing is tilted, and that of its steepest tilt where several are', () => {
    expect(plan([{ at: 0 }]).fixture?.pickUp.pivot).toBeUndefined()
    const { fixture } = plan([
      { at: 0, up: 15 },
      { at: 180, up: -30, top: 50 },
    ])
    expect(fixture?.pickUp.pivot?.tilt).toBe(-30)
  })
})

describe('a rod and an offset that never turn', () => {
  // By the triangle of crank, rod and offset the rod must be longer than half the stroke and the offset together.
  it.each([
    [54, 26, 0],
    [54, 29, 3],
    [54, 24.5, -3],
  ])('stroke %d, rod %d, offset %d: a finding, and no fall', (stroke, rod, pinOffset) => {
    const engine = { stroke, rod, pinOffset, crownBelowTop: 0.4 }
    const codes = plan([{ at: 0, opens: 106 }], { engine }).findings.map(({ code }) => code)
    expect(codes).toContain('ports/linkage-locks')
  })
})

describe('a straight cut', () => {
  it('that does not rise, in a bore far wider than the window, ends its height below its top', () => {
    const liner = linerOf([
      { at: 0, top: 40, height: 10, width: 2, cut: 'straight', corner: { on: 'cutter', radius: 1 } },
    ])
    const [port] = planPorts(liner, shopWith(), milledAt(47.8, 55)).ports
    expect(port?.bottom).toBeCloseTo(50, 6)
  })
})
