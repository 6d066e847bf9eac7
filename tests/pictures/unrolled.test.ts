import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { azimuthAt, onPanel, outlineOnPanel, panelWidth, type Unrolled } from '../../src/pictures/unrolled.ts'

const POINT = 72 / 25.4
const panel: Unrolled = { radius: 24, seenFrom: 'inside', left: 130, span: 360, origin: { x: 30, y: 10 }, scale: 1 }

describe('a cylinder laid flat: arc = radius × azimuth (derived: geometry)', () => {
  it('is as wide as its circumference', () => {
    expect(panelWidth(panel)).toBeCloseTo(2 * Math.PI * 24 * POINT, 9)
  })

  it('puts 10° of a 48 mm bore 4.18879 mm apart, and a depth at its depth', () => {
    const [a, b] = [20, 30].map(azimuth => onPanel(panel, { azimuth, depth: 46.4 }))
    expect(Math.abs((a?.x ?? 0) - (b?.x ?? 0))).toBeCloseTo(4.18879 * POINT, 4)
    expect(a?.y).toBeCloseTo(10 + 46.4 * POINT, 9)
  })

  it('runs to the left seen from inside, to the right seen from outside, head up both times', () => {
    const outside: Unrolled = { ...panel, seenFrom: 'outside', left: -130 }
    for (const depth of [0, 40]) {
      expect(onPanel(panel, { azimuth: 30, depth }).x).toBeLessThan(onPanel(panel, { azimuth: 0, depth }).x)
      expect(onPanel(outside, { azimuth: 30, depth }).x).toBeGreaterThan(onPanel(outside, { azimuth: 0, depth }).x)
    }
    expect(onPanel(panel, { azimuth: 0, depth: 5 }).y).toBeGreaterThan(onPanel(panel, { azimuth: 0, depth: 0 }).y)
  })

  it('finds every azimuth where its scale says it is', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 359.99, noNaN: true }),
        fc.constantFrom('inside' as const, 'outside' as const),
        fc.double({ min: -180, max: 180, noNaN: true }),
        (turn, seenFrom, left) => {
          const turned: Unrolled = { ...panel, seenFrom, left }
          const { x } = onPanel(turned, { azimuth: azimuthAt(turned, turn), depth: 0 })
          expect(x).toBeCloseTo(30 + 24 * ((turn * Math.PI) / 180) * POINT, 6)
        },
      ),
    )
  })

  it('keeps an outline within the panel, and loses none of it over several panels', () => {
    const outline = Array.from({ length: 72 }, (_, index) => ({
      azimuth: 100 + 25 * Math.cos((index * Math.PI) / 36),
      depth: 50 + 8 * Math.sin((index * Math.PI) / 36),
    }))
    const lengthOn = (on: Unrolled): number =>
      outlineOnPanel(on, outline).reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0)
    const whole = lengthOn({ ...panel, left: -80 })
    const parts = [
      { ...panel, left: 280, span: 180 },
      { ...panel, left: 100, span: 180 },
    ]
    for (const part of parts) {
      for (const { from, to } of outlineOnPanel(part, outline)) {
        for (const { x } of [from, to]) {
          expect(x).toBeGreaterThanOrEqual(30 - 1e-9)
          expect(x).toBeLessThanOrEqual(30 + panelWidth(part) + 1e-9)
        }
      }
      expect(lengthOn(part)).toBeGreaterThan(0)
    }
    expect(parts.reduce((sum, part) => sum + lengthOn(part), 0)).toBeCloseTo(whole, 6)
  })
})
