import { describe, expect, it } from 'vitest'
import { fixed, length } from '../../src/figures.ts'
import { grindingCautions, grindingOrder } from '../../src/orders/grinding-order.ts'
import type { OrderedOperation, OrderField, OrderFigures } from '../../src/orders/outside-order.ts'
import { platingCautions, platingOrder } from '../../src/orders/plating-order.ts'
import { platedPart } from '../plating/plated-part.ts'
import { orderSource } from './order-source.ts'

const MM: OrderFigures = {
  unit: 'mm',
  length: (millimetre, places) => length(millimetre, 'mm', places),
  limits: ({ lower, upper }, _order, places) => `${length(lower, 'mm', places)} / ${length(upper, 'mm', places)}`,
}
type Planned = ReturnType<typeof orderSource>
const planOf = (...written: Parameters<typeof platedPart>): Planned => orderSource(platedPart(...written))
const operation = ({ operations }: Planned, purpose: OrderedOperation['purpose']): OrderedOperation => {
  const found = operations.find(one => one.purpose === purpose)
  if (!found) throw new Error(`no ${purpose}`)
  return found
}
const order = (plan: Planned): readonly OrderField[] => platingOrder(plan, operation(plan, 'plate'), MM)
const honing = (plan: Planned, purpose: OrderedOperation['purpose'] = 'hone-bore'): readonly OrderField[] =>
  grindingOrder(plan, operation(plan, purpose), MM)
const textOf = (fields: readonly OrderField[], label?: string): string =>
  fields
    .filter(field => label === undefined || field.label === label)
    .flatMap(({ text }) => text)
    .join('\n')

const plan = planOf()
const PORTS = 'ports: [{name: outlet, at: 0, top: 40, height: 10, width: 15, corner: 3}]'

describe('the order to the plater (fields common practice, no source)', () => {
  it('has thirteen points, each with something to say', () => {
    const fields = order(plan)
    expect(fields.map(({ label }) => label)).toEqual([
      'Part',
      'Material and condition',
      'Plating',
      'Size before',
      'Size as plated',
      'After our honing',
      'Edges',
      'Masking',
      'Before plating',
      'Bake',
      'Layer',
      'Certificate and packing',
      'Nonconformance',
    ])
    for (const { text, label } of fields) for (const line of text) expect(line, label).toMatch(/\S\.$/)
  })
  it('gives the bore before and as plated, and the layer with its limits, as the plan has them', () => {
    const { layer, left, before } = plan.plating ?? { layer: NaN, left: NaN, before: NaN }
    if (typeof layer === 'number' || typeof left === 'number' || typeof before === 'number')
      throw new Error('no plating')
    expect(textOf(order(plan), 'Size before')).toContain(`${fixed(before.lower, 3)} / ${fixed(before.upper, 3)} mm`)
    const plated = textOf(order(plan), 'Size as plated')
    expect(plated).toContain('0.100 mm a side in the middle')
    expect(plated).toContain(`${fixed(layer.least, 3)} to ${fixed(layer.most, 3)} mm at any place`)
    expect(textOf(order(plan), 'After our honing')).toContain(`${fixed(left.least, 3)} to ${fixed(left.most, 3)} mm`)
  })
  it('keeps the two states apart: as plated, and after honing for information', () => {
    for (const line of order(plan).find(({ label }) => label === 'Size as plated')?.text ?? [])
      expect(line).toMatch(/^As plated/)
    for (const line of order(plan).find(({ label }) => label === 'After our honing')?.text ?? [])
      expect(line).toMatch(/^After our honing, for information/)
  })
  it('masks everything but the bore, the end faces among it', () => {
    expect(textOf(order(plan), 'Masking')).toContain('seat, top and bottom')
  })
  it("asks for the bake by hardness (ASTM B850-98(2009), a plater's copy): 320 HV, 8 h at 190 to 220 °C within 3 h", () => {
    expect(textOf(order(plan), 'Bake')).toMatch(/8 h or more at 190 to 220 °C, begun within 3 h/)
    expect(textOf(order(plan), 'Material and condition')).toContain('320 HV, tempered at 620 °C')
    const soft = planOf({ material: '{grade: 42CrMo4, hardness: 250 HV, temper: 650}' })
    expect(textOf(order(soft), 'Bake')).toContain('No bake')
    expect(textOf(order(soft), 'Certificate and packing')).not.toContain('Chart of the bake')
  })
  it('asks for a hardness only where the drawing does, with a load that the layer bears', () => {
    expect(textOf(order(plan), 'Layer')).toContain('about 600 HV')
    const hard = planOf({ plating: '{process: chrome, hardness: min 900 HV}' })
    // Bueckle's rule: HV1 goes 45.4 / 7 = 6.5 µm into 900 HV, under a tenth of the 68 µm left; HV3 would go 11.2.
    expect(textOf(order(hard), 'Layer')).toMatch(/not under 900 HV, read with HV1 at most/)
  })
  it('speaks of ports only where there are some', () => {
    expect(textOf(order(plan))).not.toMatch(/port/i)
    const ported = planOf({ more: PORTS })
    expect(textOf(order(ported), 'Edges')).toContain(
      'Every port edge and both ends of bore come chamfered 0.5 to 1.0 mm',
    )
  })
  it('leaves bath and recipe to a licensed plater, and warns of hexavalent chromium, nickel and hydrogen', () => {
    expect(platingCautions(plan).join('\n')).toMatch(/licensed plater[\s\S]*Nickel[\s\S]*Hydrogen/)
    const chrome = planOf({ plating: '{process: chrome}', material: '{grade: EN-GJL-250}' })
    expect(platingCautions(chrome).join('\n')).toMatch(/hexavalent chromium/)
    expect(platingCautions(chrome).join('\n')).not.toMatch(/Hydrogen|Nickel/)
    expect(textOf(order(plan))).not.toMatch(/A\/dm|current density|electrolyte/i)
  })
})

describe('the order to the honer of a plated bore', () => {
  it('says what lies on it, what must stay and how it is honed', () => {
    const text = textOf(honing(plan))
    expect(textOf(honing(plan), 'Condition on arrival')).toContain('Nickel silicon carbide on bore')
    expect(textOf(honing(plan), 'Stones and oil')).toContain('diamond')
    expect(text).toContain('the layer is measured in hundredths')
    expect(text).not.toMatch(/\bcase\b/)
    expect(grindingCautions(plan, operation(plan, 'hone-bore')).join('\n')).toContain('hone wet')
  })
  it('leaves the chamfers alone before plating, and laps the build-up off the ports after', () => {
    const ported = planOf({ more: PORTS })
    expect(textOf(honing(ported, 'hone-for-plating'), 'Port edges')).toContain('chamfered for plating')
    expect(textOf(honing(ported), 'Port edges')).toContain('Lap the build-up')
    expect(grindingCautions(ported, operation(ported, 'hone-for-plating')).join('\n')).not.toContain('hone wet')
  })
})
