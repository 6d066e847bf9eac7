import { describe, expect, it } from 'vitest'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { LINER_TEXT, partFrom } from '../route/part-text.ts'
import { type Planned, planned } from './planned.ts'

describe('verdicts', () => {
  const growth = { least: 0.008, nominal: 0.01, most: 0.012 }
  const known: Shop = {
    ...BUILT_IN_SHOP,
    measured: [{ process: 'nitride', pieces: 12, date: '2026-03-02', growth: { outside: growth, bore: growth } }],
  }
  const liner = (stock: string, more: (text: string) => string = text => text, shop: Shop = known) =>
    planned(partFrom(`${more(LINER_TEXT)}stock: ${stock}\n`), shop)
  const codes = (plan: Planned) => plan.findings.map(({ code }) => code).filter(code => code.startsWith('stock/'))

  it('call a stock that does not clean up thin, and say which would', () => {
    const plan = liner('{bore: 0.12}')
    expect(plan.entries.filter(({ verdict }) => verdict === 'thin').map(({ surface }) => surface)).toEqual(['bore'])
    const [finding] = plan.findings.filter(({ code }) => code === 'stock/thin')
    expect(finding?.at.line).toBe(14)
    const enough = Number(/leave ([\d.]+) mm/.exec(finding?.hint ?? '')?.[1])
    const better = liner(`{bore: ${enough}}`)
    const ofBore = (plan: Planned) => plan.entries.find(({ surface }) => surface === 'bore')?.verdict
    expect(ofBore(better)).not.toBe('thin')
    // A hundredth less is short, by a micrometre or more.
    expect(['thin', 'marginal']).toContain(ofBore(liner(`{bore: ${enough - 0.01}}`)))
    expect(ofBore(liner(`{bore: ${enough - 0.02}}`))).toBe('thin')
  })

  it('call a stock that eats the case deep, and say which would not', () => {
    const plan = liner('{bore: 0.80}')
    expect(plan.entries.find(({ surface }) => surface === 'bore')?.verdict).toBe('deep')
    const [finding] = plan.findings.filter(({ code }) => code === 'stock/deep')
    const less = Number(/leave ([\d.]+) mm/.exec(finding?.hint ?? '')?.[1])
    expect(liner(`{bore: ${less}}`).entries.map(({ verdict }) => verdict)).not.toContain('deep')
    expect(liner(`{bore: ${(less + 0.02).toFixed(2)}}`).entries.map(({ verdict }) => verdict)).toContain('deep')
  })

  it('call it impossible when no figure serves, and say what alone would make one possible', () => {
    const bent: Shop = {
      ...BUILT_IN_SHOP,
      measured: [{ process: 'nitride', pieces: 12, date: '2026-03-02', ovality: 0.9, bow: 0.3 }],
    }
    const plan = planned(partFrom(LINER_TEXT), bent)
    expect(plan.entries.map(({ verdict }) => verdict)).toContain('impossible')
    const [finding] = plan.findings.filter(({ code }) => code === 'stock/impossible')
    expect(finding?.hint).toMatch(/^(one of these|nothing) would do/)
  })

  it('tell of a stock that no operation uses', () => {
    expect(codes(liner('{top: 0.1}', text => text.replace(/ {2}top:.*\n/, '')))).toContain('stock/unused')
    expect(codes(liner('{top: 0.1}'))).not.toContain('stock/unused')
  })

  it('warn of heavy stock on a hard surface', () => {
    expect(codes(liner('{outside: 0.26}'))).toContain('stock/heavy')
    expect(codes(liner('{outside: 0.25}'))).not.toContain('stock/heavy')
  })

  // By the micrometre: what is short by 0.5 µm a side is marginal, and no error; by 2 µm it is thin.
  it.each([
    [0.0005, 'marginal', 'warning'],
    [0.002, 'thin', 'error'],
  ])('call a stock short by %f mm a side %s, a %s', (short, verdict, severity) => {
    const plan = liner('{outside: 0.2}')
    const seat = plan.entries.find(({ surface }) => surface === 'seat')
    const less = 0.2 - 2 * ((seat?.margin.cleanUp ?? 0) + short)
    const found = liner(`{outside: ${less.toFixed(6)}}`)
    expect(found.entries.find(({ surface }) => surface === 'seat')?.verdict).toBe(verdict)
    const told = found.findings.find(({ code }) => code === `stock/${verdict}`)
    expect(told?.severity).toBe(severity)
  })

  // Between U below and U above nobody can say on which side a size is (ISO 14253-1); of a diameter it is half of U a side.
  it('call a stock marginal as far as the gauge of its size cannot tell, and name the gauge', () => {
    const gauges = BUILT_IN_SHOP.gauges.filter(({ kind, name }) => kind !== 'outside' || name === 'outside micrometer')
    const coarse = { ...known, gauges }
    const of = (stock: number) => liner(`{outside: ${stock.toFixed(6)}}`, text => text, coarse)
    const seatOf = (plan: Planned) => plan.entries.find(({ surface }) => surface === 'seat')
    const zero = 0.2 - 2 * (seatOf(of(0.2))?.margin.cleanUp ?? 0)
    const [told, lost] = [of(zero - 2 * 0.0029), of(zero - 2 * 0.0031)]
    expect([seatOf(told)?.verdict, seatOf(lost)?.verdict]).toEqual(['marginal', 'thin'])
    const message = told.findings.find(({ code }) => code === 'stock/marginal')?.message
    expect(message).toContain('outside micrometer is uncertain by 6.0 µm')
  })

  // Derived: short by less than the growth expected exceeds the least that is reckoned, it cleans up at the growth expected.
  it('call a stock marginal that only a growth reckoned and not measured makes short', () => {
    const of = (stock: number) => liner(`{outside: ${stock.toFixed(6)}}`, text => text, BUILT_IN_SHOP)
    const plan = of(0.2)
    const seat = (one: Planned) => one.entries.find(({ surface }) => surface === 'seat')
    const zero = 0.2 - 2 * (seat(plan)?.margin.cleanUp ?? 0)
    const own = plan.case?.growth.bands.find(({ surface }) => surface === 'seat')?.growth
    const spread = (own?.nominal ?? 0) - (own?.least ?? 0)
    expect(spread).toBeGreaterThan(0.003)
    const found = of(zero - spread)
    expect(seat(found)?.verdict).toBe('marginal')
    expect(found.findings.find(({ code }) => code === 'stock/marginal')?.hint).toContain('first article')
    expect(seat(of(zero - 4 * spread))?.verdict).toBe('thin')
  })
})

describe('what a margin bears', () => {
  const plan = planned(partFrom(`${LINER_TEXT}stock: {outside: 0.2, bore: 0.2}\n`))
  const seat = plan.entries.find(({ surface }) => surface === 'seat')
  const spare = Math.min(seat?.margin.cleanUp ?? 0, seat?.margin.case ?? 0)
  // Derived: r varies by e, by a quarter of the ovality and by half of the bow, so each may grow by as much as is spare.
  it('is that of each input alone: run-out whole, ovality fourfold, bow twice, growth once', () => {
    expect(spare).toBeGreaterThan(0)
    const rests = new Map((seat?.basis ?? []).map(({ figure, value }) => [figure, Number(value)]))
    expect(seat?.bears).toEqual({
      runout: expect.closeTo((seat?.eccentricity ?? 0) + spare, 9),
      ovality: expect.closeTo((rests.get('ovality') ?? 0) + 4 * spare, 9),
      bow: expect.closeTo((rests.get('bow') ?? 0) + 2 * spare, 9),
      growth: expect.closeTo(spare, 9),
    })
  })

  it('is borne: with ovality at what it bears the verdict stands, beyond it does not', () => {
    const stock = '{outside: 0.2, bore: 0.2}'
    const at = (ovality: number) =>
      planned(partFrom(`${LINER_TEXT}stock: ${stock}\n`), {
        ...BUILT_IN_SHOP,
        habits: { ...BUILT_IN_SHOP.habits, ovality },
      })
    const most = seat?.bears?.ovality ?? 0
    const of = (plan: Planned) => plan.entries.find(({ surface }) => surface === 'seat')
    expect(of(at(most))?.margin.cleanUp).toBeGreaterThanOrEqual(-1e-9)
    expect(of(at(most + 0.02))?.margin.cleanUp).toBeLessThan(seat?.margin.cleanUp ?? 0)
  })

  it('names what asks for most stock, and what half of it would save', () => {
    const { eats } = seat ?? {}
    expect(eats?.halved.stock).toBeCloseTo((eats?.stock ?? 0) / 2, 9)
    expect(eats?.stock).toBeGreaterThan(0.03)
  })
})

describe('a chance', () => {
  it('is printed only where growth was measured', () => {
    expect(planned(partFrom(LINER_TEXT)).entries.every(({ chance }) => chance === undefined || chance.piece)).toBe(true)
    expect(planned(partFrom(LINER_TEXT)).entries.find(({ surface }) => surface === 'seat')?.chance).toBeUndefined()
    const shop: Shop = {
      ...BUILT_IN_SHOP,
      measured: [
        {
          process: 'gas nitriding',
          pieces: 12,
          date: '2026-03-02',
          growth: {
            outside: { least: 0.012, nominal: 0.015, most: 0.018 },
            bore: { least: 0.002, nominal: 0.005, most: 0.008 },
          },
        },
      ],
    }
    const seat = planned(partFrom(LINER_TEXT), shop).entries.find(({ surface }) => surface === 'seat')
    expect(seat?.chance?.piece.notCleanedUp).toBeGreaterThan(0)
    expect(seat?.chance?.piece.notCleanedUp).toBeLessThan(0.01)
  })
})

describe('the hardness of a surface', () => {
  it('is that where most comes off, with the band of the models', () => {
    const plan = planned(partFrom(LINER_TEXT))
    for (const { surface, most } of plan.case?.hardnessAfter ?? []) {
      const last = plan.entries.filter(entry => entry.surface === surface).at(-1)
      // The profile is given in steps, and read off between them.
      expect(Math.abs((last?.hardnessAtFinish ?? 0) - most.expected)).toBeLessThan(3)
      expect(last?.hardnessBand?.low).toBeLessThan(last?.hardnessAtFinish ?? 0)
      expect(last?.hardnessBand?.high).toBeGreaterThan(last?.hardnessAtFinish ?? 0)
    }
  })
})
