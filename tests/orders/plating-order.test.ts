import { describe, expect, it } from 'vitest'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { demo, orderFor, planOf, pointOf, quantityOf, sentencesOf } from './planned-orders.ts'

const plan = planOf(demo('OX-105-02'))
const order = orderFor(plan, 'plate')
const textOf = (title: string, of = order): string => pointOf(of, title).text.join('\n')
const PORTS = [
  'plating:',
  'ports: [{name: outlet, at: 0, top: 40, height: 10, width: 15, corner: 3}]\nplating:',
] as const
const ported = planOf(demo('OX-105-02', PORTS))

describe('the order to the plater (fields common practice, no source)', () => {
  it('holds the two heats that go with the plating: one visit, one firm, 15 days', () => {
    expect(order.operations).toEqual([50, 60, 70])
    expect(order.firm).toBe('Sallow Lane Plating')
    expect(order.leadTime).toBe(15)
    for (const purpose of ['relieve-for-plating', 'bake-after-plating']) {
      expect(orderFor(plan, purpose)).toBe(order)
      expect(plan.operations.find(one => one.purpose === purpose)?.firms.map(({ name }) => name)).toEqual([order.firm])
    }
  })

  it('has twelve points', () => {
    expect(order.points).toHaveLength(12)
  })

  it('gives the bore before and as plated, and the layer with its limits', () => {
    // 60 + 2 · 0.075; the layer of 0.075 and 0.025 to hone (Ni-SiC, 0.064 to 0.089 usual; hone stock common practice).
    expect(order.arrives.find(({ label }) => label === 'bore Ø')?.least).toBeCloseTo(60.15, 6)
    expect(quantityOf(order, 'plating a side', 'as plated').value).toBeCloseTo(0.1, 6)
    expect(order.finish.map(({ label }) => label)).toEqual(['bore Ø'])
  })

  it('keeps the two states apart: as plated, and after honing for information', () => {
    expect(quantityOf(order, 'plating a side', 'honed').standing).toBe('planned')
    expect(textOf('After our honing')).toMatch(/^For information/)
    expect(textOf('As plated')).not.toContain('honing')
  })

  it('masks everything but the bore, the end faces among it', () => {
    expect(textOf('Masking')).toContain('flange, seat, top and bottom')
  })

  it("asks for the bake by hardness (ASTM B850-98(2009), a plater's copy): 300 HV, 8 h at 190 to 220 °C within 3 h", () => {
    expect(quantityOf(order, 'bake')).toMatchObject({ standing: 'asked', least: 8 })
    expect(quantityOf(order, 'bake temperature')).toMatchObject({ least: 190, most: 220 })
    expect(quantityOf(order, 'bake begun after leaving the bath').most).toBe(3)
    // ISO 9587 sets 1000 MPa at 300 HV10: under it none.
    const soft = orderFor(
      planOf(demo('OX-105-02', ['hardness: 300 HV, temper: 620', 'hardness: 250 HV, temper: 650'])),
      'plate',
    )
    expect(textOf('Bake', soft)).toContain('No bake')
    expect(sentencesOf(soft).join('\n')).not.toContain('Chart of the bake')
    expect(soft.returns.some(({ of }) => of === 'load')).toBe(false)
  })

  it('asks for a hardness only where the drawing does, with a load that the layer bears', () => {
    expect(quantityOf(order, 'hardness of the layer')).toMatchObject({ standing: 'expected', value: 600 })
    const hard = planOf(demo('OX-105-02', ['nickel silicon carbide, thickness: 0.075', 'chrome, hardness: min 900 HV']))
    // Bueckle's rule: HV1 goes 45.4 / 7 = 6.5 µm into 900 HV, under a tenth of the 68 µm left; HV3 would go 11.2.
    expect(quantityOf(orderFor(hard, 'plate'), 'hardness of the layer')).toMatchObject({
      standing: 'asked',
      least: 900,
      unit: 'HV1',
    })
  })

  it('speaks of ports only where there are some', () => {
    expect(sentencesOf(order).join('\n')).not.toMatch(/\bports?\b/i)
    expect(textOf('Edges', orderFor(ported, 'plate'))).toContain('Every port edge and both ends of bore come chamfered')
  })

  it('leaves bath and recipe to a licensed plater, and warns of nickel and hydrogen, of hexavalent chromium instead', () => {
    expect(order.cautions.join('\n')).toMatch(/licensed plater[\s\S]*Nickel[\s\S]*Hydrogen/)
    const chrome = planOf(
      demo(
        'OX-105-02',
        ['nickel silicon carbide, thickness: 0.075', 'chrome'],
        ['42CrMo4, hardness: 300 HV, temper: 620', 'EN-GJL-250'],
      ),
    )
    const cautions = orderFor(chrome, 'plate').cautions.join('\n')
    expect(cautions).toMatch(/hexavalent chromium/)
    expect(cautions).not.toMatch(/Hydrogen|Nickel/)
    expect(sentencesOf(order).join('\n')).not.toMatch(/A\/dm|current density|electrolyte/i)
  })

  it('goes to the built-in plater with its heats, whoever else has an oven', () => {
    const built = planOf(demo('OX-105-02'), { ...BUILT_IN_SHOP, machines: BUILT_IN_SHOP.machines })
    const plated = orderFor(built, 'plate')
    expect(plated.operations).toHaveLength(3)
    expect(
      new Set(plated.operations.map(number => built.operations.find(one => one.number === number)?.workCentre)),
    ).toEqual(new Set([plated.firm]))
  })
})

describe('the order to the honer of a plated bore', () => {
  const honing = orderFor(plan, 'hone-bore')

  it('says what lies on it, what must stay and how it is honed', () => {
    expect(textOf('Condition on arrival', honing)).toContain('Nickel silicon carbide on bore')
    expect(textOf('Wheel, stones, coolant', honing)).toContain('diamond')
    const text = sentencesOf(honing).join('\n')
    expect(text).toContain('the layer is measured in hundredths')
    expect(text).not.toMatch(/\bcase\b/)
    expect(quantityOf(honing, 'plating a side', 'honed')).toMatchObject({ standing: 'asked' })
    expect(honing.cautions.join('\n')).toContain('hone wet')
  })

  it('leaves the chamfers alone before plating, and laps the build-up off the ports after', () => {
    const before = orderFor(ported, 'hone-for-plating')
    expect(textOf('Edges', before)).toContain('chamfered for plating')
    expect(textOf('Port edges', orderFor(ported, 'hone-bore'))).toContain('Lap the build-up')
    expect(before.cautions.join('\n')).not.toContain('hone wet')
  })
})
