import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type LimitsOfFit, limitsOfFit } from '../../src/handbook/iso-286.ts'

const covered = (fit: LimitsOfFit): LimitsOfFit & { ok: true } => {
  if (!fit.ok) throw new Error(fit.reason)
  return fit
}
const micrometres = (millimetre: number): number => Math.round(millimetre * 1e4) / 10

/** Derived: the deviations follow from the reprinted tables of ISO 286 by the rules of ISO 286-1, worked out by hand. */
const EXAMPLES = [
  ['48 H6', 16, 0, 48.016, 48],
  ['50 H7', 25, 0, 50.025, 50],
  ['52 H7', 30, 0, 52.03, 52],
  ['55 g6', -10, -29, 54.99, 54.971],
  ['56 h6', 0, -19, 56, 55.981],
  ['56 f7', -30, -60, 55.97, 55.94],
  ['16 h5', 0, -8, 16, 15.992],
  ['16 m5', 15, 7, 16.015, 16.007],
  ['14 k5', 9, 1, 14.009, 14.001],
  ['32 k6', 18, 2, 32.018, 32.002],
  ['62 n6', 39, 20, 62.039, 62.02],
  ['25 p6', 35, 22, 25.035, 25.022],
  ['12 P7', -11, -29, 11.989, 11.971],
  ['30 H7', 21, 0, 30.021, 30],
  ['30.001 H7', 25, 0, 30.026, 30.001],
  ['16 N6', -9, -20, 15.991, 15.98],
  ['16 K6', 2, -9, 16.002, 15.991],
  ['12 N9', 0, -43, 12, 11.957],
  ['40 K7', 7, -18, 40.007, 39.982],
  ['14 M7', 0, -18, 14, 13.982],
  ['18 G6', 17, 6, 18.017, 18.006],
  ['70 F7', 60, 30, 70.06, 70.03],
  ['20 JS7', 10.5, -10.5, 20.0105, 19.9895],
  ['44 js6', 8, -8, 44.008, 43.992],
  ['150 P6', -36, -61, 149.964, 149.939],
  ['2.5 N7', -4, -14, 2.496, 2.486],
  ['50 k9', 62, 0, 50.062, 50],
] as const

/** Public arrays of limits K7, M7, N7, P7 and EI of F and G that cite ISO 286; the other columns by the rules of ISO 286-1. */
const HOLES = [
  // nominal, F, G: EI; K6 K7 K8, M6 M7 M8, N6 N7 N8 N9, P6 P7 P8: ES, µm
  [2, 6, 2, 0, 0, 0, -2, -2, -2, -4, -4, -4, -4, -6, -6, -6],
  [5, 10, 4, 2, 3, 5, -1, 0, 2, -5, -4, -2, 0, -9, -8, -12],
  [8, 13, 5, 2, 5, 6, -3, 0, 1, -7, -4, -3, 0, -12, -9, -15],
  [14, 16, 6, 2, 6, 8, -4, 0, 2, -9, -5, -3, 0, -15, -11, -18],
  [25, 20, 7, 2, 6, 10, -4, 0, 4, -11, -7, -3, 0, -18, -14, -22],
  [40, 25, 9, 3, 7, 12, -4, 0, 5, -12, -8, -3, 0, -21, -17, -26],
  [65, 30, 10, 4, 9, 14, -5, 0, 5, -14, -9, -4, 0, -26, -21, -32],
  [100, 36, 12, 4, 10, 16, -6, 0, 6, -16, -10, -4, 0, -30, -24, -37],
  [150, 43, 14, 4, 12, 20, -8, 0, 8, -20, -12, -4, 0, -36, -28, -43],
  [200, 50, 15, 5, 13, 22, -8, 0, 9, -22, -14, -5, 0, -41, -33, -50],
] as const
const HOLE_CLASSES = ['F8', 'G7', 'K6', 'K7', 'K8', 'M6', 'M7', 'M8', 'N6', 'N7', 'N8', 'N9', 'P6', 'P7', 'P8'] as const

describe('limits against the tables and rules of ISO 286', () => {
  it.each(EXAMPLES)('%s: %d and %d µm, %d to %d mm', (written, upper, lower, most, least) => {
    const [size = '', fit = ''] = written.split(' ')
    const found = covered(limitsOfFit(Number(size), fit))
    expect(micrometres(found.upper)).toBe(upper)
    expect(micrometres(found.lower) + 0).toBe(lower)
    expect(Number(size) + found.upper).toBeCloseTo(most, 9)
    expect(Number(size) + found.lower).toBeCloseTo(least, 9)
  })

  it.each(HOLES)('holes at %d mm', (nominal, ...deviations) => {
    const found = HOLE_CLASSES.map(fit => {
      const { upper, lower } = covered(limitsOfFit(nominal, fit))
      return micrometres(/^[FG]/.test(fit) ? lower : upper) + 0
    })
    expect(found).toEqual(deviations)
  })

  it('gives the clearances of two fits (derived: hole less shaft)', () => {
    const clearance = (size: number, hole: string, shaft: string) => {
      const [h, s] = [covered(limitsOfFit(size, hole)), covered(limitsOfFit(size, shaft))]
      return [micrometres(h.lower - s.upper), micrometres(h.upper - s.lower)]
    }
    expect(clearance(50, 'H7', 'g6')).toEqual([9, 50])
    expect(clearance(48, 'H6', 'h5')).toEqual([0, 27])
  })

  it('covers the coarse shafts and holes of a flange', () => {
    expect(micrometres(covered(limitsOfFit(62, 'h9')).lower)).toBe(-74)
    expect(micrometres(covered(limitsOfFit(78, 'h11')).lower)).toBe(-190)
    expect(micrometres(covered(limitsOfFit(50, 'h12')).lower)).toBe(-250)
    expect(micrometres(covered(limitsOfFit(10, 'H12')).upper)).toBe(150)
  })
})

describe('what the tables do not cover', () => {
  it.each([
    [48, 'K9', 'K9 is not defined over 3 mm'],
    [48, 'H13', 'grade 13'],
    [48, 'H2', 'grade 2'],
    [48, 'H06', 'no tolerance class'],
    [48, 'Js7', 'letter Js'],
    [48, 'r6', 'letter r'],
    [48, 'H', 'no tolerance class'],
    [48, '', 'no tolerance class'],
    [251, 'H7', 'size 251 mm'],
    [0, 'H7', 'size 0 mm'],
    [Number.NaN, 'H7', 'size NaN mm'],
  ])('refuses %d %s', (nominal, fit, reason) => {
    const found = limitsOfFit(nominal, fit)
    expect(found.ok).toBe(false)
    expect(!found.ok && found.reason).toContain(reason)
  })

  it('allows K9 up to 3 mm, where its upper limit is the nominal size', () => {
    expect(covered(limitsOfFit(3, 'K9')).upper).toBe(0)
  })
})

describe('limits of any size, letter and grade', () => {
  const size = fc.double({ min: 0.1, max: 250, noNaN: true })
  const grade = fc.integer({ min: 3, max: 12 })

  it('never cross', () => {
    fc.assert(
      fc.property(size, grade, fc.constantFrom(...'fghkmnpFGHMNP', 'js', 'JS'), (nominal, g, letter) => {
        const { upper, lower } = covered(limitsOfFit(nominal, `${letter}${g}`))
        expect(upper).toBeGreaterThan(lower)
      }),
    )
  })

  it('mirror a hole F, G, H or JS in the shaft of the same letter', () => {
    fc.assert(
      fc.property(size, grade, fc.constantFrom('F', 'G', 'H', 'JS'), (nominal, g, letter) => {
        const hole = covered(limitsOfFit(nominal, `${letter}${g}`))
        const shaft = covered(limitsOfFit(nominal, `${letter.toLowerCase()}${g}`))
        expect(hole.lower).toBeCloseTo(-shaft.upper, 12)
        expect(hole.upper).toBeCloseTo(-shaft.lower, 12)
      }),
    )
  })

  it('give the interference of n and p alike in either system, hole IT8 or finer with a shaft one grade finer', () => {
    // The sense of Δ in ISO 286-1: H7/p6 and P7/h6 fit alike.
    fc.assert(
      fc.property(fc.double({ min: 3.01, max: 250, noNaN: true }), fc.integer({ min: 4, max: 7 }), (nominal, g) => {
        for (const letter of ['n', 'p']) {
          const [H, shaft] = [
            covered(limitsOfFit(nominal, `H${g}`)),
            covered(limitsOfFit(nominal, `${letter}${g - 1}`)),
          ]
          const [hole, h] = [
            covered(limitsOfFit(nominal, `${letter.toUpperCase()}${g}`)),
            covered(limitsOfFit(nominal, `h${g - 1}`)),
          ]
          expect(H.upper - shaft.lower).toBeCloseTo(hole.upper - h.lower, 12)
        }
      }),
    )
  })
})
