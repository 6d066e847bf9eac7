import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { grindingOrder, pieceWindow, takenAt } from '../../src/record/piece-window.ts'

// The worked seat 55 g6: computed twice, independently, in the reference of records.
const SEAT = {
  kind: 'outside' as const,
  eccentricity: 0.02,
  toRemove: 0.023,
  case: { certified: 0.4, wanted: 0.25 },
  lower: 54.971,
  upper: 54.99,
  guard: 0.0015,
}
const piece = (least: number, most: number, bow: number) => ({ ...SEAT, least, most, bow })
const FOUR = {
  '01': piece(55.1815, 55.188, 0.006),
  '02': piece(55.075, 55.15, 0.03),
  '03': piece(55.07, 55.078, 0.008),
  '04': piece(55.276, 55.288, 0.01),
}

describe('the window of a piece', () => {
  test('01 is ground as planned, and so much comes off', () => {
    const window = pieceWindow(FOUR['01'])
    expect(window.verdict).toBe('grind as planned')
    expect(window.exact.from).toBeCloseTo(54.9725, 6)
    expect(window.exact.to).toBeCloseTo(54.9885, 6)
    expect(window.bears.clean).toBeCloseTo(0.0785, 6)
    expect(window.bears.case).toBeCloseTo(0.04725, 6)
    const taken = takenAt(FOUR['01'], 54.9805)
    expect(taken.least).toBeCloseTo(0.0775, 6)
    expect(taken.most).toBeCloseTo(0.12675, 6)
  })

  test('02 must be set true', () => {
    const window = pieceWindow(FOUR['02'])
    expect(window.verdict).toBe('set true')
    expect(window.from).toBeUndefined()
    expect(window.bears.clean).toBeCloseTo(0.01325, 6)
    expect(window.bears.case).toBeCloseTo(0.05425, 6)
    expect(window.bears.both).toBeCloseTo(0.02975, 6)
  })

  test('03 has the lower part of its limits only', () => {
    const window = pieceWindow(FOUR['03'])
    expect(window.verdict).toBe('part of the limits only')
    expect(window.exact.from).toBeCloseTo(54.9725, 6)
    expect(window.exact.to).toBeCloseTo(54.976, 6)
    expect([window.from, window.to]).toEqual([54.973, 54.976])
    expect(window.narrow).toBe(true)
  })

  test('04 has too little case even when centred', () => {
    const window = pieceWindow(FOUR['04'])
    expect(window.verdict).toBe('case too thin')
    expect(window.bears.clean).toBeCloseTo(0.12375, 6)
    expect(window.bears.case).toBeCloseTo(-0.00475, 6)
  })

  test('a bore', () => {
    const window = pieceWindow({
      kind: 'bore',
      least: 47.893,
      most: 47.905,
      bow: 0.006,
      eccentricity: 0.012,
      toRemove: 0.023,
      case: { certified: 0.35, wanted: 0.215 },
      lower: 47.97,
      upper: 47.986,
      guard: 0.0015,
    })
    expect(window.exact.from).toBeCloseTo(47.981, 6)
    expect(window.exact.to).toBeCloseTo(47.9845, 6)
    expect(window.bears.clean).toBeCloseTo(0.01375, 6)
    expect(window.bears.case).toBeCloseTo(0.09275, 6)
    expect(window.bears.both).toBeCloseTo(0.05, 6)
  })

  test('most stock goes first, narrow windows last, pieces set true as one lot', () => {
    const turns = Object.entries({ ...FOUR, '05': piece(55.21, 55.222, 0.006) }).map(([serial, inHand]) => ({
      serial,
      inHand,
      window: pieceWindow(inHand),
    }))
    expect(grindingOrder(turns).map(({ serial }) => serial)).toEqual(['05', '01', '02', '03'])
  })
})

/** A surface ground in a machine: an oval, bowed, eccentric section against the round one that is left. */
function simulatedGrind(inHand: ReturnType<typeof piece>, size: number, phase: number, off: number) {
  const steps = 720
  const mean = (inHand.least + inHand.most) / 4
  const oval = (inHand.most - inHand.least) / 4
  const taken = Array.from({ length: steps }, (_, index) => {
    const angle = (index * 2 * Math.PI) / steps
    // The axis stands off by the set-up's error and half the bow, in one direction.
    const shift = (off + inHand.bow / 2) * Math.cos(angle - phase)
    return mean + oval * Math.cos(2 * angle) + shift - size / 2
  })
  return { least: Math.min(...taken), most: Math.max(...taken) }
}

test('a piece said to clean up does so in a simulated grind, and keeps its case', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 55.05, max: 55.3, noNaN: true }),
      fc.double({ min: 0, max: 0.06, noNaN: true }),
      fc.double({ min: 0, max: 0.03, noNaN: true }),
      fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (least, oval, bow, phase, share) => {
        const inHand = piece(least, least + oval, bow)
        const { from, to } = pieceWindow(inHand)
        if (from === undefined || to === undefined) return
        for (const size of [from, to]) {
          const { least: low, most } = simulatedGrind(inHand, size, phase, share * inHand.eccentricity)
          expect(low).toBeGreaterThanOrEqual(inHand.toRemove - 1e-6)
          expect(most).toBeLessThanOrEqual(inHand.case.certified - inHand.case.wanted + 1e-6)
        }
      },
    ),
  )
})
