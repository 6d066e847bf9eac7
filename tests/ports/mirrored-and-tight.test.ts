import { describe, expect, it } from 'vitest'
import { widestWindow } from '../../src/ports/checks/port-check.ts'
import { planPorts } from '../../src/ports/plan-ports.ts'
import type { PlannedPort } from '../../src/ports/port.ts'
import { demoPlan } from '../sheets/demo-packet.ts'
import { type Asked, linerOf, milledAt, shopWith } from './liner.ts'

describe('a port that is drawn with its mirror image', () => {
  it('differs from it in nothing, by symmetry, and each of the two says so', () => {
    const pair = demoPlan().ports.filter(({ name }) => name.startsWith('main transfer'))
    const told = pair.flatMap(({ leftRight }) => (leftRight ? [leftRight] : []))
    expect(pair).toHaveLength(2)
    const none = { top: expect.closeTo(0, 9), bottom: expect.closeTo(0, 9), arc: expect.closeTo(0, 9) }
    expect(told).toEqual([none, none])
  })
  it('is alone in that: a port on the symmetry plane has no other side', () => {
    const told = demoPlan().ports.filter(({ leftRight }) => leftRight !== undefined)
    expect(told.map(({ name }) => name).filter(name => !name.startsWith('main transfer'))).toEqual([])
  })
})

describe('corners of a straight cut that rises by 45°', () => {
  // The cutter sees a height of 10 at 10 cos 45° = 7.07, and two corners must fit into that: geometry.
  const codes = (radius: number) => {
    const port: Asked = {
      at: 0,
      up: 45,
      top: 40,
      height: 10,
      width: 14,
      cut: 'straight',
      corner: { on: 'cutter', radius },
    }
    return planPorts(linerOf([port]), shopWith(), milledAt(47.8, 55)).findings.map(({ code }) => code)
  }
  it.each([
    [3.6, true],
    [3.5, false],
  ])('of %d mm are too large: %s', (radius, tooLarge) => {
    expect(codes(radius).includes('ports/corner-too-large')).toBe(tooLarge)
  })
})

it('lets a ring bulge into the widest of several windows, and no further than a bar', () => {
  const windows = [{ width: 9 }, { width: 12 }, { width: 7 }]
  expect(widestWindow({ windows, width: 32 } as unknown as PlannedPort)).toBe(12)
  expect(widestWindow({ windows: windows.slice(0, 1), width: 9 } as unknown as PlannedPort)).toBe(9)
})
