import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Part } from '../../src/part/part.ts'
import { expectFigures } from '../handbook/four-figures.ts'
import { OWN_BORE_SHOP } from '../shop/own-bore-shop.ts'
import { cut, partOf, portOf, shopWith, stateOf, step, tube, windowOf, withoutTools } from './hand-made.ts'

const nitrided: Part = partOf({ hardening: { process: 'gas nitriding', masked: [], path: '/hardening' } })
const outside = (from: number, to: number) => stateOf('grind-outside', tube(from, 48), tube(to, 48))
const bore = (from: number, to: number, ported = false, length = 80) =>
  stateOf('grind-bore', tube(60, from, ported, length), tube(60, to, ported, length))

describe('outside 60 by 80, stock 0.10, nitrided (derived: worked by hand at 20 m/min; the handbook row runs at 21)', () => {
  const { steps, codes } = cut(nitrided, outside(60, 59.9))
  const [rough, finish] = [step(steps, 'rough grind'), step(steps, 'finish grind')]

  it('takes 4 roughing passes of 0.010, then 2 of 0.005 and 3 to spark out', () => {
    expect(rough).toMatchObject({ passes: 4, feed: 0.01 })
    expect(finish).toMatchObject({ passes: 5, feed: 0.005 })
    expect(finish.remarks).toContain('2 passes, then 3 to spark out')
  })

  it('takes the worked minutes, as much shorter as the work turns faster', () => {
    expectFigures((rough.time - 0.03) * (21 / 20), 0.2513)
    expectFigures((finish.time - 0.03) * (21 / 20), 0.2513 + 0.377)
    expectFigures((rough.tableFeed * 20) / 21, 1061)
  })

  it('runs the wheel at 33 m/s, 1801 rpm, and says not to pass its mark', () => {
    expectFigures(rough.wheel?.spindleSpeed ?? 0, 1801)
    expect(rough.remarks.some(text => text.includes('33 m/s, 1801 rpm') && text.includes('not over its mark'))).toBe(
      true,
    )
    expect(codes).toEqual([])
  })

  it('dwells at a shoulder instead of running past it', () => {
    const flanged = (d: number) => ({
      ...tube(d, 48),
      outside: [
        { name: 'flange', from: 0, to: 4, diameter: 66 },
        { name: 'seat', from: 4, to: 80, diameter: d },
      ],
    })
    const { steps } = cut(nitrided, stateOf('grind-outside', flanged(60), flanged(59.9)))
    expect(steps.filter(({ feature }) => feature === 'flange')).toEqual([])
    expect(step(steps, 'finish grind seat').remarks).toContain('dwell one turn at the shoulder, do not run into it')
  })
})

describe('bore 54 by 80, stock 0.12, nitrided', () => {
  it('takes 10, 4 and 4 passes without ports (derived: worked by hand)', () => {
    const { steps } = cut(nitrided, bore(53.88, 54))
    expect(step(steps, 'rough grind')).toMatchObject({ passes: 10, feed: 0.005 })
    expect(step(steps, 'finish grind')).toMatchObject({ passes: 8, feed: 0.0025 })
  })

  it('sparks out six times and turns slower over ports', () => {
    const plain = step(cut(nitrided, bore(53.88, 54)).steps, 'finish grind')
    const ported = step(cut(nitrided, bore(53.88, 54, true)).steps, 'finish grind')
    expect(ported.passes).toBe(plain.passes + 2)
    expect(ported.cuttingSpeed).toBeLessThan(plain.cuttingSpeed)
    expect(ported.remarks.some(text => text.includes('no dwell and no reversal over the ports'))).toBe(true)
  })

  it('says how far the quill springs, the less the more it sparks out', () => {
    const [rough, finish] = ['rough grind', 'finish grind'].map(name =>
      step(cut(nitrided, bore(53.88, 54)).steps, name),
    )
    expect(rough?.deflection).toBeGreaterThan(1)
    expect(finish?.deflection).toBeLessThan(0.1)
  })

  it.each([
    ['a wheel too small for its bore', bore(69.9, 70), 'cutting/wheel-and-bore'],
    ['no wheel that is sold and goes in', bore(5.9, 6), 'cutting/no-wheel'],
    ['a wheel to get for a small bore', bore(14.9, 15), 'cutting/to-get'],
    ['a quill too short for the length', bore(53.9, 54, false, 130), 'cutting/quill-overhang'],
  ] as const)('tells of %s', (_, state, code) => {
    expect(cut(nitrided, state).codes).toContain(code)
  })

  it('finds nothing wrong with a wheel of two thirds of the bore', () => {
    expect(cut(nitrided, bore(53.88, 54)).codes).toEqual([])
  })

  it('wants a wheel of twice the tallest port, and no more', () => {
    const over = (height: number) => {
      const ports = [portOf([windowOf()], { top: 40, bottom: 40 + height, height })]
      return cut(nitrided, bore(53.88, 54, true), OWN_BORE_SHOP, ports).codes
    }
    expect(over(12.6)).toContain('cutting/wheel-and-ports')
    expect(over(12.4)).not.toContain('cutting/wheel-and-ports')
  })

  it('keeps the reversal 3 mm clear of a port', () => {
    // The wheel of 25 stands 16.67 inside the end where it turns back.
    const at = (top: number) => {
      const ports = [portOf([windowOf()], { top, bottom: top + 10, height: 10 })]
      return cut(nitrided, bore(53.88, 54, true), OWN_BORE_SHOP, ports).codes
    }
    expect(at(19.5)).toContain('cutting/port-at-reversal')
    expect(at(20)).not.toContain('cutting/port-at-reversal')
  })
})

describe('limits of the grinder', () => {
  it('no wheel runs over the spindle limit, and the speed falls with it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 300, max: 30_000 }), speedLimit => {
        const { steps } = cut(nitrided, bore(53.88, 54), shopWith('internal grinder', { speedLimit }))
        for (const { wheel } of steps) {
          if (!wheel) continue
          expect(wheel.spindleSpeed).toBeLessThanOrEqual(speedLimit)
          expect(wheel.speed).toBeCloseTo((Math.PI * 36 * wheel.spindleSpeed) / 60_000, 6)
        }
      }),
    )
  })

  it('more power never lowers the infeed, and no motor is asked for more than it has', () => {
    const powers = fc.double({ min: 0.05, max: 8, noNaN: true })
    const at = (power: number) =>
      step(cut(nitrided, outside(60, 59.9), shopWith('cylindrical grinder', { power })).steps, 'rough grind')
    fc.assert(
      fc.property(powers, powers, (a, b) => {
        const [weak, strong] = [at(Math.min(a, b)), at(Math.max(a, b))]
        expect(strong.feed).toBeGreaterThanOrEqual(weak.feed - 1e-12)
        expect(weak.power ?? 0).toBeLessThanOrEqual(0.8 * Math.min(a, b) * (1 + 1e-9))
      }),
    )
  })

  it('less stock never takes more passes', () => {
    const stocks = fc.double({ min: 0.021, max: 0.5, noNaN: true })
    fc.assert(
      fc.property(stocks, stocks, (a, b) => {
        const passes = (stock: number) =>
          cut(nitrided, outside(60 + stock, 60)).steps.reduce((sum, known) => sum + known.passes, 0)
        expect(passes(Math.min(a, b))).toBeLessThanOrEqual(passes(Math.max(a, b)))
      }),
    )
  })
})

describe('faces and wheels', () => {
  const faced = (from: number) => ({ ...tube(60, 54), top: from })

  it('grinds a top face by infeed to a turn, 0.003 then 0.00064 (Machinery’s Handbook, 31st ed., p. 1318)', () => {
    const alone = cut(nitrided, stateOf('grind-top', faced(-0.1), faced(0))).steps
    const top = step(cut(nitrided, stateOf('grind-bore', faced(-0.1), faced(0))).steps, 'grind top')
    expect(alone).toEqual([top])
    const nw = (1000 * 21) / (Math.PI * 60)
    expect(top.time - 0.03).toBeCloseTo((0.09 / 0.003 + 0.01 / 0.00064 + 20) / nw, 9)
  })

  it('names the handbook wheel for nitrided steel and for iron (p. 1317)', () => {
    const remarks = (part: Part) => step(cut(part, outside(60, 59.9)).steps, 'rough grind').remarks.join(' ')
    expect(remarks(nitrided)).toContain('60-I8V')
    expect(remarks(partOf({ material: { grade: 'EN-GJL-250', written: 'EN-GJL-250' } }))).toContain('C36-JV')
  })

  it('is refused without a wheel', () => {
    const shop = withoutTools(OWN_BORE_SHOP, 'grinding wheel', 'internal wheel', 'face wheel')
    expect(cut(nitrided, outside(60, 59.9), shop).codes).toEqual(['cutting/no-wheel'])
    expect(cut(nitrided, stateOf('grind-bore', faced(-0.1), faced(0)), shop).codes).toEqual(['cutting/no-wheel'])
  })

  it('notes where the burn screen is passed, marked as from memory, and not where it is kept', () => {
    const soft = cut(partOf({ material: { grade: '42CrMo4', written: '42CrMo4', hardness: 210 } }), outside(60, 59.8))
    const note = soft.findings.find(({ code }) => code === 'cutting/burn-screen')
    expect(note?.severity).toBe('note')
    expect(note?.message).toContain('memory')
    expect(cut(nitrided, outside(60, 59.8)).codes).toEqual([])
  })
})
