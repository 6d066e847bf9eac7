import fc from 'fast-check'
import jstat from 'jstat'
import { describe, expect, it } from 'vitest'
import { planBatch } from '../../src/batch/plan-batch.ts'
import { BRIGHT, HOT_ROLLED } from '../../src/handbook/bar-stock.ts'
import type { Part } from '../../src/part/part.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { IRON_LINER, IRON_ROUTE, NITRIDED_LINER, NITRIDED_ROUTE } from './example-part.ts'

const NEED = { diameter: 64.3, length: 95 }
const nitrided = (quantity: number, shop: Shop = BUILT_IN_SHOP, part: Part = NITRIDED_LINER, need = NEED) =>
  planBatch({ part, shop, request: { number: '1', quantity }, operations: NITRIDED_ROUTE, need })
const withHabits = (habits: Partial<Shop['habits']>): Shop => ({
  ...BUILT_IN_SHOP,
  habits: { ...BUILT_IN_SHOP.habits, ...habits },
})

describe('pieces to start', () => {
  // Derived: binomial distribution; 0.98 · 0.99 · 0.95 · 0.97 = 0.8940 gives 25 for 20 at 90 and at 95 %.
  const yields = { turn: 0.98, stress: 1, mill: 0.99, nitride: 0.95, hone: 0.97, grind: 1, 'stress-relieve': 1 }

  it('starts 25 for 20 good ones of four lossy operations, and adds the set-up piece and the coupon', () => {
    const route = NITRIDED_ROUTE.filter(({ purpose }) => purpose !== 'rough-turn')
    const { batch } = planBatch({
      part: NITRIDED_LINER,
      shop: withHabits({ yields }),
      request: { number: '1', quantity: 20 },
      operations: route,
      need: NEED,
    })
    expect(batch.yield).toBeCloseTo(0.894, 4)
    expect(batch.confidence).toBeCloseTo(0.9573, 4)
    expect(batch.extras.map(({ pieces }) => pieces)).toEqual([1, 1])
    expect(batch.start).toBe(25 + 2)
  })

  it('says before every operation the fewest pieces to go on with, by the binomial distribution of a general library', () => {
    const { batch } = nitrided(12, withHabits({ yields, confidence: 0.95 }))
    expect(batch.goOnWith?.map(({ operation }) => operation)).toEqual(NITRIDED_ROUTE.map(({ number }) => number))
    const lost = new Map(Object.entries(yields))
    for (const [index, { pieces }] of (batch.goOnWith ?? []).entries()) {
      const good = NITRIDED_ROUTE.slice(index).reduce((all, { process }) => all * (lost.get(process) ?? 1), 1)
      const enough = (of: number) => (good === 1 ? Number(of >= 12) : 1 - jstat.binomial.cdf(11, of, good))
      expect(enough(pieces)).toBeGreaterThanOrEqual(0.95)
      if (pieces > 12) expect(enough(pieces - 1)).toBeLessThan(0.95)
    }
    expect(batch.goOnWith?.[0]?.pieces).toBe(batch.numbered)
    expect(batch.goOnWith?.at(-1)?.pieces).toBe(12)
  })

  it('needs no coupon where nothing is hardened, and no spare where nothing is lost', () => {
    const { batch, findings } = planBatch({
      part: IRON_LINER,
      shop: withHabits({ yields: {} }),
      request: { number: '1', quantity: 8 },
      operations: IRON_ROUTE,
      need: { diameter: 80.2, length: 112 },
    })
    expect(batch.start).toBe(9)
    expect(batch.yield).toBe(1)
    expect(findings).toEqual([])
  })

  it('counts an operation as often as the route has it', () => {
    const { batch } = nitrided(12)
    const { turn = 1, mill = 1, nitride = 1, grind = 1, hone = 1 } = BUILT_IN_SHOP.habits.yields
    expect(batch.yield).toBeCloseTo(turn ** 2 * mill * nitride * grind ** 2 * hone, 12)
  })

  it('refuses what no number of spare pieces can give', () => {
    const { findings } = nitrided(900, withHabits({ yields: { turn: 0.5 } }))
    expect(findings.filter(({ severity }) => severity === 'error').map(({ code }) => code)).toEqual([
      'batch/yield-too-low',
    ])
    expect(nitrided(1001).findings[0]?.message).toContain('1001 pieces')
  })

  it('never starts fewer for more good ones', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), quantity => {
        expect(nitrided(quantity + 1).batch.start).toBeGreaterThan(nitrided(quantity).batch.start)
      }),
      { numRuns: 40 },
    )
  })
})

describe('bar for a rough-turned diameter', () => {
  it('is the smallest listed one that cleans up, and says why', () => {
    const { material, findings } = nitrided(12)
    expect(material.barDiameter).toBe(70)
    expect(material.barSupply).toBe(
      'hot-rolled round bar, EN 10060; quenched and tempered to 300 HV; tempered at 620 °C, on the certificate',
    )
    expect(material.because?.join('\n')).toContain('Ø65 would be')
    expect(findings.map(({ code }) => code)).toEqual(['batch/one-load'])
  })

  it('warns of a load that goes wrong only where pieces are hardened in loads, not one after the other', () => {
    const operations = NITRIDED_ROUTE.map(operation =>
      operation.process === 'nitride' ? { ...operation, process: 'induction-harden' as const } : operation,
    )
    const request = { number: '1', quantity: 12 }
    const { findings } = planBatch({ part: NITRIDED_LINER, shop: BUILT_IN_SHOP, request, operations, need: NEED })
    expect(findings).toEqual([])
  })

  it('takes bright bar where that is smaller', () => {
    const { material } = nitrided(12, BUILT_IN_SHOP, NITRIDED_LINER, { diameter: 53.6, length: 60 })
    expect(material.barDiameter).toBe(55)
    expect(material.barSupply).toContain('bright')
  })

  it('takes continuous-cast bar for iron', () => {
    const need = { diameter: 80.2, length: 112 }
    const { material } = planBatch({
      part: IRON_LINER,
      shop: BUILT_IN_SHOP,
      request: { number: '1', quantity: 8 },
      operations: IRON_ROUTE,
      need,
    })
    expect(material.barSupply).toContain('continuous-cast')
    expect(material.barDiameter).toBe(90)
  })

  it('always leaves the allowance at the thinnest bar, and is left only when it no longer does', () => {
    const sizes = fc.record({
      diameter: fc.double({ min: 20, max: 170, noNaN: true }),
      length: fc.double({ min: 20, max: 150, noNaN: true }),
    })
    fc.assert(
      fc.property(sizes, need => {
        const { material, sawn, workings } = nitrided(5, BUILT_IN_SHOP, NITRIDED_LINER, need)
        const bar = sawn.sizes.find(({ feature }) => feature === 'outside')
        const inMillimetres = ({ value, unit }: { value: number; unit: string }) =>
          unit === 'µm' ? value / 1000 : value
        const allowances = workings.filter(({ symbol }) => /^2?Z_/.test(symbol)).map(inMillimetres)
        expect(allowances.length).toBeGreaterThanOrEqual(2)
        const spare = (bar?.lower ?? 0) - need.diameter - Math.max(...allowances)
        expect(spare).toBeGreaterThanOrEqual(0)
        const replanned = (by: number) =>
          nitrided(5, BUILT_IN_SHOP, NITRIDED_LINER, { ...need, diameter: need.diameter + by }).material
        expect(replanned(spare - 1e-6).barDiameter).toBe(material.barDiameter)
        // The dearer form of the same size may still clean up.
        const next = replanned(spare + 1e-6)
        expect(next.barDiameter).toBeGreaterThanOrEqual(material.barDiameter)
        expect([next.barDiameter, next.barSupply]).not.toEqual([material.barDiameter, material.barSupply])
        const listed = [HOT_ROLLED, BRIGHT].flatMap(form => form.sizes)
        expect(listed.some(({ diameter }) => diameter === material.barDiameter)).toBe(true)
      }),
    )
  })

  it('says what hardness the section cannot be had at', () => {
    const soft: Part = { ...NITRIDED_LINER, material: { ...NITRIDED_LINER.material, hardness: 380 } }
    const found = nitrided(12, BUILT_IN_SHOP, soft).findings.find(({ code }) => code === 'batch/hardness-for-section')
    expect(found?.message).toContain('380 HV; a Ø70 bar is delivered quenched and tempered at 285 to 348 HV')
  })

  it.each([
    ['a diameter over the list', NITRIDED_LINER, { diameter: 300, length: 90 }, 'no listed bar up to 250 mm'],
    [
      'bronze over what is cast',
      { ...NITRIDED_LINER, material: { grade: 'CuSn8', written: 'CuSn8' } },
      { diameter: 230, length: 90 },
      'no listed bar up to 200 mm',
    ],
  ])('refuses %s', (_, part, need, message) => {
    const { findings } = nitrided(3, BUILT_IN_SHOP, part, need)
    expect(findings.find(({ code }) => code === 'batch/no-bar')?.message).toContain(message)
  })
})

describe('cut list', () => {
  it('saws every blank long enough to face, from as few bars as hold them', () => {
    const { material, sawn, batch } = nitrided(40)
    const { barLength, barRemnant, sawKerf, facingAllowance } = BUILT_IN_SHOP.habits
    const length = sawn.sizes.find(({ feature }) => feature === 'length')
    expect(length?.lower).toBeCloseTo(NEED.length + 2 * facingAllowance, 9)
    expect(material.pitch).toBeCloseTo((length?.upper ?? 0) + sawKerf, 9)
    expect(sawKerf + material.piecesPerBar * material.pitch + barRemnant).toBeLessThanOrEqual(barLength)
    expect(sawKerf + (material.piecesPerBar + 1) * material.pitch + barRemnant).toBeGreaterThan(barLength)
    expect(material.bars).toBe(Math.ceil(batch.start / material.piecesPerBar))
    const onLast = batch.start - (material.bars - 1) * material.piecesPerBar
    expect(material.offcut).toBeCloseTo(barLength - sawKerf - onLast * material.pitch, 9)
    // 3 m of Ø70 at 30.21 kg/m (mass table of round steel bar, 7.85 g/cm³), lighter by 7.84 against 7.85.
    expect(material.mass / material.bars).toBeCloseTo((3 * 30.21 * 7.84) / 7.85, 1)
  })

  it('asks for one heat when it takes several bars', () => {
    const { material, findings } = nitrided(40)
    expect(material.bars).toBeGreaterThan(1)
    expect(findings.find(({ code }) => code === 'batch/one-heat')?.message).toContain('buy all of one heat')
  })

  it('refuses a blank longer than the bar gives', () => {
    const { findings, material } = nitrided(2, withHabits({ barLength: 150 }))
    expect(findings.some(({ code, severity }) => code === 'batch/bar-too-short' && severity === 'error')).toBe(true)
    expect(material.bars).toBe(0)
  })

  it('draws a solid blank, even on both ends of the finished part', () => {
    const { outside, bore, top, bottom } = nitrided(3).sawn.shape
    expect(bore).toEqual([])
    expect(outside).toEqual([{ name: 'bar', from: top, to: bottom, diameter: 70 }])
    expect(-top).toBeCloseTo(bottom - 92, 9)
  })
})

describe('the workings of the bar', () => {
  const kerfOf = (shop: Shop) =>
    nitrided(20, shop)
      .workings.flatMap(({ inputs = [] }) => inputs)
      .find(({ symbol }) => symbol === 'k')

  it('say whose the kerf of the saw is, built in or of the shop file', () => {
    expect(kerfOf(BUILT_IN_SHOP)).toMatchObject({ value: 2, unit: 'mm', from: 'built in' })
    const own = { ...withHabits({ sawKerf: 1.3 }), set: new Set(['/habits/saw-kerf']) }
    expect(kerfOf(own)).toMatchObject({ value: 1.3, from: 'shop', source: 'shop file: habits/saw-kerf' })
  })
})
