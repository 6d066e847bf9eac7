import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { partFrom, sleeveText } from '../route/part-text.ts'
import { caseOf, expectConsistent, type Planned, planned } from './planned.ts'

describe('properties of the stock, whatever the part', () => {
  const sizes = fc.record({
    outside: fc.integer({ min: 30, max: 120 }),
    wall: fc.integer({ min: 4, max: 12 }),
    length: fc.integer({ min: 60, max: 160 }),
    grade: fc.constantFrom('g6', 'h6', 'h7', 'f7'),
    bore: fc.constantFrom('H6', 'H7', 'H8'),
  })
  const part = (
    {
      outside,
      wall,
      length,
      grade,
      bore,
    }: { [k in 'outside' | 'wall' | 'length']: number } & { grade: string; bore: string },
    stock?: string,
  ) =>
    partFrom(
      sleeveText({
        outside: `${outside} ${grade}`,
        bore: `${outside - 2 * wall} ${bore}`,
        length,
        ...(stock !== undefined && { stock }),
      }),
    )

  it('entries equal what the sizes of the operations give', () => {
    fc.assert(
      fc.property(sizes, size => {
        expectConsistent(planned(part(size)))
      }),
      { numRuns: 40 },
    )
  })

  it('more stock never lowers the clean-up margin, never orders less case, and never leaves more of it', () => {
    fc.assert(
      fc.property(sizes, fc.integer({ min: 5, max: 40 }), fc.integer({ min: 1, max: 10 }), (size, stock, more) => {
        const at = (hundredths: number) => caseOf(planned(part(size, `{outside: ${hundredths / 100}}`)))
        const [a, b] = [at(stock), at(stock + more)]
        expect(b?.cleanUp).toBeGreaterThan(a?.cleanUp ?? Infinity)
        expect(b?.ordered).toBeGreaterThanOrEqual(a?.ordered ?? Infinity)
        expect(b?.overOrder).toBeLessThan(a?.overOrder ?? -Infinity)
      }),
      { numRuns: 25 },
    )
  })

  it('writing the part in inches changes nothing', () => {
    const drawn = (outside: number, wall: number, length: number, per: number, unit: string) => {
      const of = (millimetre: number) => (millimetre / per).toFixed(9)
      return partFrom(
        `part: {number: OX-098-91, title: Test sleeve, revision: A, kind: sleeve}
material: {grade: 42CrMo4, hardness: 300 HV, temper: 620}
body:
  length: ${of(length)} ±${of(0.05)}${unit}
  outside: {size: ${of(outside)} +${of(-0.01)} ${of(-0.029)}${unit}, Ra: 0.8, name: seat}
  bore: {size: ${of(outside - 2 * wall)} +${of(0.016)} 0${unit}, Ra: 0.3, cylindricity: ${of(0.006)}${unit}}
hardening: {process: gas nitriding, depth: min ${of(0.15)}${unit}}
`.replaceAll('+-', '-'),
      )
    }
    const whole = {
      outside: fc.integer({ min: 30, max: 120 }),
      wall: fc.integer({ min: 4, max: 12 }),
      length: fc.integer({ min: 60, max: 160 }),
    }
    fc.assert(
      fc.property(fc.record(whole), ({ outside, wall, length }) => {
        const [metric, inch] = [
          planned(drawn(outside, wall, length, 1, '')),
          planned(drawn(outside, wall, length, 25.4, ' in')),
        ].map(({ entries, case: ordered }) => ({
          verdicts: entries.map(({ verdict }) => verdict),
          figures: [
            ...entries.flatMap(({ margin, perSide }) => [
              margin.cleanUp,
              margin.case ?? 0,
              perSide.least,
              perSide.most,
            ]),
            ordered?.ordered.least ?? 0,
          ],
        }))
        expect(inch?.verdicts).toEqual(metric?.verdicts)
        for (const [index, figure] of (inch?.figures ?? []).entries())
          expect(figure).toBeCloseTo(metric?.figures[index] ?? Number.NaN, 6)
      }),
      { numRuns: 30 },
    )
  })

  it('less distortion never hurts', () => {
    const shop = (ovality: number): Shop => ({
      ...BUILT_IN_SHOP,
      measured: [{ process: 'nitride', pieces: 20, date: '2026-05-04', ovality, bow: 0.01 }],
    })
    fc.assert(
      fc.property(sizes, fc.integer({ min: 0, max: 60 }), fc.integer({ min: 1, max: 40 }), (size, ovality, more) => {
        const fixed = part(size, '{outside: 0.2, bore: 0.2}')
        const at = (micrometres: number) => planned(fixed, shop(micrometres / 1000))
        const [truer, worse] = [at(ovality), at(ovality + more)]
        const cleanUp = (of: Planned) => of.entries.map(({ margin }) => margin.cleanUp)
        for (const [index, margin] of cleanUp(truer).entries())
          expect(margin).toBeGreaterThanOrEqual((cleanUp(worse)[index] ?? 0) - 1e-9)
        expect(truer.case?.ordered.least).toBeLessThanOrEqual(worse.case?.ordered.least ?? 9)
      }),
      { numRuns: 25 },
    )
  })
})
