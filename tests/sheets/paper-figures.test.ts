import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { placesFor } from '../../src/decimal-places.ts'
import { paperFigures } from '../../src/sheets/views/paper-figures.ts'

const ends = (text: string) => text.split('\u00a0/\u00a0').map(Number)

describe('two limits on paper', () => {
  it('stand in the order in which they are met: the smaller of a hole first, the larger of a shaft first', () => {
    const { limits } = paperFigures('mm')
    const size = { lower: 47.8, upper: 47.85 }
    expect(limits(size, 'hole', 3)).toBe('47.800\u00a0/\u00a047.850')
    expect(limits(size, 'shaft', 3)).toBe('47.850\u00a0/\u00a047.800')
  })

  it('are never printed outside themselves, in millimetres or inches', () => {
    const size = fc.record({
      lower: fc.double({ min: 0.1, max: 250, noNaN: true }),
      width: fc.double({ min: 0.001, max: 1, noNaN: true }),
    })
    const places = fc.integer({ min: 1, max: 3 })
    fc.assert(
      fc.property(size, places, fc.constantFrom('mm', 'inch'), ({ lower, width }, places, units) => {
        const unit = units === 'mm' ? 1 : 25.4
        const [low = 0, high = 0] = ends(paperFigures(units).limits({ lower, upper: lower + width }, 'hole', places))
        expect(low * unit).toBeGreaterThanOrEqual(lower - 1e-6)
        expect(high * unit).toBeLessThanOrEqual(lower + width + 1e-6)
        expect(low).toBeLessThanOrEqual(high)
      }),
    )
  })

  it('show about a tenth of the tolerance where no gauge says more', () => {
    const places = [1, 0.9, 0.1, 0.05, 0.011].map(width => placesFor({ lower: 48, upper: 48 + width }))
    expect(places).toEqual([1, 1, 2, 3, 3])
  })
})

describe('a size as the drawing writes it', () => {
  it.each([
    ['48 H6', '48 H6 mm'],
    ['92 ±0.05', '92 ±0.05 mm'],
    ['44.021 finished', '44.021 mm finished'],
    ['1.890 in ±0.001', '1.890 in ±0.001'],
    ['1.890" ±0.001', '1.890" ±0.001'],
  ])('%s has its unit beside it on a sheet in inches', (written, marked) => {
    expect(paperFigures('inch').drawn(written)).toBe(marked)
    expect(paperFigures('mm').drawn(written)).toBe(written)
  })
})
