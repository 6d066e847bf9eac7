import { describe, expect, it } from 'vitest'
import { planCutting } from '../../src/cutting/plan-cutting.ts'
import type { Step } from '../../src/cutting/step.ts'
import type { Part } from '../../src/part/part.ts'
import type { Operation, Purpose } from '../../src/route/operation.ts'
import { planRoute } from '../../src/route/plan-route.ts'
import type { Machine, Shop } from '../../src/shop/shop.ts'
import type { RingLap, Tool } from '../../src/shop/tool.ts'
import { planStock } from '../../src/stock/plan-stock.ts'
import { expectFigures } from '../handbook/four-figures.ts'
import { partFrom } from '../route/part-text.ts'
import { OWN_BORE_SHOP } from '../shop/own-bore-shop.ts'

/** Invented. */
const PIN = `part: {number: OX-098-95, title: Test pin, revision: A, kind: pin}
material: {grade: 16MnCr5, hardness: 180 HV}
body:
  length: 50 ±0.1
  outside: {size: 16 h5, Ra: 0.1, roundness: 0.002, name: pin}
  bore: 10 ±0.1
hardening: {process: carburising, hardness: min 650 HV, depth: min 0.4}
`
const CENTRELESS: Machine = {
  workCentre: 'centreless grinder',
  name: 'centreless grinder',
  processes: ['grind'],
  speedLimit: 1300,
  setup: 90,
  handling: 0.3,
}
const WHEELS: readonly Tool[] = [
  { name: 'wheel 500', kind: 'centreless wheel', diameter: 500, width: 150, grade: 'A 80 L 6 V' },
  { name: 'regulating 300', kind: 'regulating wheel', diameter: 300 },
]
const ring = (grade: string, more: Partial<RingLap> = {}): RingLap => ({
  name: `ring ${grade}`,
  kind: 'ring lap',
  diameter: 16,
  length: 30,
  grade,
  grit: Number(grade.split('F')[1]),
  ...more,
})
const shopOf = (machines: readonly Machine[], tools: readonly Tool[]): Shop => ({
  ...OWN_BORE_SHOP,
  machines: [...machines, ...OWN_BORE_SHOP.machines],
  tools: [...tools, ...OWN_BORE_SHOP.tools],
})

function planOf(part: Part, shop: Shop) {
  const { operations } = planRoute(part, shop)
  const stock = planStock(part, shop, operations)
  const sawn = {
    top: -2,
    bottom: 52,
    outside: [{ name: 'bar', from: -2, to: 52, diameter: 20 }],
    bore: [],
    ported: false,
  }
  let before = stock.shapes.get(operations[0]?.number ?? 0) ?? sawn
  const states = operations.map(operation => {
    const after = stock.shapes.get(operation.number) ?? before
    const state = { operation, sizes: stock.sizes.get(operation.number) ?? [], before, after, roughed: stock.roughed }
    before = after
    return state
  })
  const cutting = planCutting({ part, shop, states, ports: [], start: 12 })
  const at = (purpose: Purpose): Operation => {
    const found = operations.find(known => known.purpose === purpose)
    if (!found) throw new Error(`no ${purpose}`)
    return found
  }
  return {
    at,
    entries: stock.entries,
    codes: cutting.findings.map(({ code }) => code),
    steps: (purpose: Purpose): readonly Step[] => cutting.steps.get(at(purpose).number) ?? [],
    time: (purpose: Purpose) => cutting.time.get(at(purpose).number),
    workings: cutting.workings,
  }
}

const RINGS = [ring('A F500'), ring('A F1000')]
const plan = planOf(partFrom(PIN), shopOf([CENTRELESS], [...WHEELS, ...RINGS]))

/** Derived by hand from the kinematics of Hashimoto, Processes 13 (2025) 1103: wheels 500 and 300, 30 rpm, 3°. */
describe('a pin through a centreless grinder', () => {
  const [rough, finish] = plan.steps('grind-outside')

  it('goes there where the works has one, on its own outside', () => {
    expect(plan.at('grind-outside')).toMatchObject({ workCentre: 'centreless grinder', locatedBy: ['pin'] })
  })

  it('feeds at 1480 mm/min and turns at 28.24 m/min', () => {
    expectFigures(rough?.tableFeed ?? 0, 1480)
    expectFigures(rough?.cuttingSpeed ?? 0, 28.24)
    expect(rough?.wheel?.speed).toBe(33)
  })

  it('stands about 12 mm over the centres for 7 degrees', () => {
    // 7 deg / (2 (1 / 516 + 1 / 316)) = 11.97 for a pin of 16 mm.
    const h = plan.workings.find(
      ({ symbol, operation }) => symbol === 'h' && operation === plan.at('grind-outside').number,
    )
    expect(h?.value).toBeGreaterThan(11.97)
    expect(h?.value).toBeLessThan(11.98)
  })

  it('takes 0.02 to 0.05 a pass on diameter, then 0.005 to 0.01: common practice, no source', () => {
    expect(2 * (rough?.depth ?? 0)).toBeGreaterThanOrEqual(0.02)
    expect(2 * (rough?.depth ?? 0)).toBeLessThanOrEqual(0.05)
    expect(2 * (finish?.depth ?? 0)).toBeCloseTo(0.01, 9)
    const taken = [rough, finish].reduce((sum, step) => sum + 2 * (step?.depth ?? 0) * (step?.passes ?? 0), 0)
    expect(taken).toBeCloseTo(plan.entries[0]?.onDiameter.nominal ?? 0, 9)
  })

  it('26.64 pins of 50 mm a minute and a pass: the passes take so long', () => {
    expect((rough?.passes ?? 0) / (rough?.time ?? 1)).toBeCloseTo(26.64, 1)
  })

  it('sets itself true, so that less stock cleans up (memory: Kovan, self-centred work)', () => {
    const between = planOf(partFrom(PIN), OWN_BORE_SHOP)
    expect(between.at('grind-outside')).toMatchObject({ workCentre: 'cylindrical grinder', locatedBy: [] })
    expect(plan.entries[0]?.eccentricity).toBe(0)
    expect(between.entries[0]?.eccentricity).toBe(OWN_BORE_SHOP.habits.mandrelRunout)
    expect(plan.entries[0]?.onDiameter.nominal).toBeLessThan(between.entries[0]?.onDiameter.nominal ?? 0)
  })

  it('is not dressed every few pieces, as a wheel that traverses is: both wheels once, in the set-up', () => {
    expect(plan.steps('grind-outside').map(({ action }) => action)).toEqual([
      'rough grind pin, through feed',
      'finish grind pin, through feed',
    ])
    // Two minutes a dressing: common practice, no source.
    expect(plan.time('grind-outside')?.setup).toBe(CENTRELESS.setup + 2 * 2)
  })

  it('wants both wheels', () => {
    expect(planOf(partFrom(PIN), shopOf([CENTRELESS], RINGS)).codes).toContain('cutting/no-wheel')
  })

  it('a pin with a step goes between centres: it does not pass the wheels', () => {
    const stepped = PIN.replace(
      /outside: .*/,
      'outside: [{to: 10, size: 18 h6, name: head}, {to: 50, size: 16 h5, Ra: 0.4, name: pin}]',
    )
    expect(planOf(partFrom(stepped), shopOf([CENTRELESS], WHEELS)).at('grind-outside').workCentre).toBe(
      'cylindrical grinder',
    )
  })
})

describe('lapping a pin with a ring', () => {
  const [size, smooth, wash] = plan.steps('lap-outside')

  it('turns at 10 to 30 m/min: common practice, no source', () => {
    expect(size?.cuttingSpeed).toBe(20)
    expectFigures(size?.spindleSpeed ?? 0, (1000 * 20) / (Math.PI * 15.996))
  })

  it('takes 9 µm at 2 µm a minute in 4.5 min; rate: common practice, no source', () => {
    expect(plan.entries[1]?.onDiameter.nominal).toBeCloseTo(0.009, 9)
    expect((size?.time ?? 0) - 0.03).toBeCloseTo(4.5, 9)
    expect(size?.tool).toBe('ring A F500, A F500')
  })

  it('says where no source has a figure, and counts no time for it', () => {
    expect(smooth?.tool).toBe('ring A F1000, A F1000')
    expect(smooth?.time).toBe(0)
    expect(smooth?.remarks.join()).toContain('no source gives a rate, so no time is counted')
  })

  it('ends with a wash, the bore brushed through', () => {
    expect(wash?.remarks.join()).toContain('brush the bore through')
  })

  it('leaves the fine compound out where the drawing does not ask for it', () => {
    const rounder = planOf(partFrom(PIN.replace('Ra: 0.1', 'Ra: 0.4')), shopOf([CENTRELESS], [...WHEELS, ...RINGS]))
    expect(rounder.steps('lap-outside').map(({ action }) => action)).toEqual([
      'lap pin to size',
      'wash, demagnetise, oil at once',
    ])
  })

  it('says what it cannot leave', () => {
    const finer = planOf(partFrom(PIN.replace('Ra: 0.1', 'Ra: 0.04')), shopOf([CENTRELESS], [...WHEELS, ...RINGS]))
    expect(finer.codes).toContain('cutting/lap-leaves-more')
    expect(plan.codes).not.toContain('cutting/lap-leaves-more')
  })

  it.each([
    ['longer than the pin, which bells its ends', ring('A F500', { length: 60 })],
    ['too wide to close on it', ring('A F500', { diameter: 16.5 })],
    ['charged with another grit', ring('A F220')],
  ])('has one made when the ring on hand is %s', (_, wrong) => {
    const other = planOf(partFrom(PIN), shopOf([CENTRELESS], [...WHEELS, wrong, ring('A F1000')]))
    expect(other.codes.filter(code => code === 'cutting/no-lap')).toHaveLength(1)
    expect(other.steps('lap-outside')[0]?.tool).toContain('to be made')
  })
})

/** IT12 at 10 mm is 0.15 (ISO 286-1); drilling up to 25 mm holds IT 12 to 13 (memory: Kosilova & Meshcheryakov). */
describe('the bore of a pin', () => {
  it('is drilled to the drawing in roughing and left so', () => {
    const drilled = plan.steps('turn').find(({ action }) => action === 'drill through')
    expect(drilled?.tool).toBe('drill 10')
    expect(plan.steps('turn').some(({ action }) => /(rough|finish) bore/.test(action))).toBe(false)
  })

  it.each(['10 H11', '{size: 10 ±0.1, Ra: 3.2}', '{size: 10 ±0.1, roundness: 0.02}'])(
    'is bored where it asks more: %s',
    bore => {
      const bored = planOf(partFrom(PIN.replace('bore: 10 ±0.1', `bore: ${bore}`)), OWN_BORE_SHOP)
      expect(bored.codes).toContain('cutting/no-boring-bar')
    },
  )

  /** Memory: a damped bar stands out ten diameters, a carbide one six (common practice); it fills four fifths of the hole at most. */
  describe('that is long and slender', () => {
    const text = PIN.replace('16 h5', '34 h5').replace('10 ±0.1', '18.5 ±0.1')
    it.each([
      ['with a plain bar from both ends as far as one reaches', 100, 'boring bar 10', 'cutting/from-both-ends'],
      // Half of 128 mm lies beyond the 60 of a carbide bar of 10, and within the 100 of a damped one.
      ['with a damped bar to get beyond that', 128, 'boring bar 10, damped', 'cutting/to-get'],
    ])('is bored %s', (_, length, bar, code) => {
      const { steps, codes } = planOf(partFrom(text.replace('50 ±0.1', `${length} ±0.2`)), OWN_BORE_SHOP)
      expect(steps('turn').find(({ action }) => action === 'rough bore')?.tool).toBe(bar)
      expect(codes).toContain(code)
      expect(codes).not.toContain('cutting/no-boring-bar')
    })
  })

  it('gets a drill between its limits', () => {
    const other = planOf(partFrom(PIN.replace('10 ±0.1', '10.6 ±0.1')), OWN_BORE_SHOP)
    expect(other.codes).toContain('cutting/to-get')
    expect(other.steps('turn').map(({ tool }) => tool)).toContain('drill 10.6, 8 D')
  })

  it('gets chamfers for the centres; a solid pin gets centre holes', () => {
    expect(plan.steps('turn').map(({ action }) => action)).toContain('chamfer the bore at both ends for the centres')
    const solid = planOf(partFrom(PIN.replace(/ {2}bore:.*\n/, '')), OWN_BORE_SHOP)
    expect(solid.steps('turn').map(({ action }) => action)).toContain('centre both ends')
  })
})
