import { describe, expect, it } from 'vitest'
import { fixed, length } from '../../src/figures.ts'
import { grindingCautions, grindingOrder } from '../../src/orders/grinding-order.ts'
import { hardeningCautions, hardeningOrder } from '../../src/orders/hardening-order.ts'
import type { OrderedOperation, OrderField, OrderFigures, OrderSource } from '../../src/orders/outside-order.ts'
import type { Part } from '../../src/part/part.ts'
import { demoPart, orderSource } from './order-source.ts'

const figuresIn = (units: 'mm' | 'inch'): OrderFigures => ({
  unit: units === 'mm' ? 'mm' : 'in',
  length: (millimetre, places) => length(millimetre, units, places),
  limits: ({ lower, upper }, order, places) => {
    const ends = order === 'hole' ? [lower, upper] : [upper, lower]
    return ends.map(end => length(end, units, places)).join(' / ')
  },
})
const MM = figuresIn('mm')

const part = demoPart('OX-098-21.yaml')
const plan = orderSource(part)
type Planned = ReturnType<typeof orderSource>
const operation = (of: Planned, purpose: OrderedOperation['purpose']): OrderedOperation => {
  const found = of.operations.find(one => one.purpose === purpose)
  if (!found) throw new Error(`no ${purpose}`)
  return found
}
const hardening = (of: Planned = plan, figures = MM): readonly OrderField[] =>
  hardeningOrder(of, operation(of, 'nitride'), figures)
const grinding = (purpose: OrderedOperation['purpose'], of: Planned = plan): readonly OrderField[] =>
  grindingOrder(of, operation(of, purpose), MM)
const textOf = (fields: readonly OrderField[], label?: string): string =>
  fields
    .filter(field => label === undefined || field.label === label)
    .flatMap(({ text }) => text)
    .join('\n')
const entry = (of: OrderSource, surface: string, number: number) => {
  const found = of.stock.find(one => one.surface === surface && one.operation === number)
  if (!found) throw new Error(`no stock on ${surface}`)
  return found
}

describe('the order to the heat treater (fields common practice, no source; certificate after a coating-engineering course)', () => {
  const fields = hardening()
  it('has thirteen points, each with something to say', () => {
    expect(fields.map(({ label }) => label)).toEqual([
      'Part',
      'Material',
      'Condition on arrival',
      'Process allowed',
      'Result',
      'Compound layer',
      'Zones',
      'Coupon',
      'Sizes and distortion',
      'Fixturing',
      'Cleaning and packing',
      'Certificate',
      'Nonconformance',
    ])
    for (const { text, label } of fields) for (const line of text) expect(line, label).toMatch(/\S\.$/)
  })
  it('says what is ordered, as the plan has it, with its definition and no minus side', () => {
    const { ordered, surfaceHardness, asked } = plan.case ?? {
      ordered: { least: 0, most: 0 },
      surfaceHardness: 0,
      asked: 0,
    }
    const result = textOf(fields, 'Result')
    expect(result).toContain(`NHD ${fixed(ordered.least, 2)} +${fixed(ordered.most - ordered.least, 2)} -0 mm`)
    expect(result).toContain('core hardness + 50 HV')
    expect(result).toContain(`${fixed(surfaceHardness, 0)} HV1`)
    expect(result).toContain(`for information: ${fixed(asked, 2)} mm of case and 470 HV`)
  })
  it('keeps the two states apart: every figure of the result stands in a line that names its state', () => {
    const lines = fields.find(({ label }) => label === 'Result')?.text ?? []
    const figures = lines.filter(line => /\d HV|\d mm/.test(line) && !/^NHD:|^The band/.test(line))
    expect(figures.length).toBeGreaterThan(2)
    for (const line of figures) expect(line).toMatch(/^(As hardened|After our finishing)/)
  })
  it('never quotes the case in HRC, and never asks for straightening', () => {
    expect(textOf(fields).match(/\d+ HRC/)).toBeNull()
    expect(textOf(fields, 'Nonconformance')).toContain('no straightening')
  })
  it('gives temper and stress relief as they were planned', () => {
    expect(textOf(fields, 'Condition on arrival')).toContain('tempered at 620 °C')
    expect(textOf(fields, 'Condition on arrival')).toContain('Stress relieved at 570 °C')
  })
  it('states requirements, and leaves the cycle to the licensed treater', () => {
    expect(textOf(fields, 'Process allowed')).toContain('The treater chooses and confirms the cycle')
    expect(textOf(fields)).not.toMatch(/dissociation|ammonia flow|ramp|potential/i)
    expect(hardeningCautions(plan)[0]).toContain('licensed heat treater')
    expect(hardeningCautions(plan).join(' ')).toContain('300 ppm')
  })
  it('gives every surface as it arrives', () => {
    for (const { surface, states, kind } of plan.ladders) {
      const state = states.findLast(one => one.operation < operation(plan, 'nitride').number)
      if (!state || kind === 'face') continue
      const text = textOf(fields, 'Sizes and distortion')
      const [first, second] = kind === 'bore' ? [state.lower, state.upper] : [state.upper, state.lower]
      const wanted = `${surface} Ø ${MM.limits({ lower: state.lower, upper: state.upper }, kind === 'bore' ? 'hole' : 'shaft', 3)} mm`
      expect(text, `${first} ${second}`).toContain(wanted)
    }
  })
  it('masks what the drawing masks, all round, and exempts it in writing', () => {
    const masked: Part = { ...part, ...(part.hardening && { hardening: { ...part.hardening, masked: ['flange'] } }) }
    const zones = textOf(hardening(orderSource(masked)), 'Zones')
    expect(zones).toContain('Must not be treated: flange')
    expect(zones).toContain('exempt from the limits')
    expect(zones).toContain('never half of a circumference')
    expect(zones).toContain('copper plate')
    expect(zones.split('\n')[0]).not.toContain('flange')
    expect(textOf(fields, 'Zones')).toContain('Nothing is masked')
  })
  it('warns when the band is closer than ±0.15 mm (a German trade committee), and not when it is not', () => {
    const ordered = (least: number, most: number) =>
      textOf(hardening({ ...plan, ...(plan.case && { case: { ...plan.case, ordered: { least, most } } }) }), 'Result')
    expect(ordered(0.3, 0.4)).toContain('closer than the usual scatter')
    expect(ordered(0.3, 0.6)).not.toContain('closer than the usual scatter')
  })
  it('is written in inches when the paper is', () => {
    const text = textOf(hardening(plan, figuresIn('inch')))
    expect(text).not.toMatch(/\d mm\b(?! and)/)
    expect(text).toContain(`${length(plan.case?.ordered.least ?? 0, 'inch', 2)} +`)
  })
  it('is empty for a part without a case', () => {
    const { case: _none, ...soft } = plan
    expect(hardeningOrder(soft, operation(plan, 'nitride'), MM)).toEqual([])
    expect(hardeningCautions(soft)).toEqual([])
  })
})

describe('the order to the grinder (common practice, no source)', () => {
  const outside = grinding('grind-outside')
  const number = operation(plan, 'grind-outside').number

  it.each(['grind-outside', 'grind-bore', 'hone-bore'] as const)('%s has thirteen points', purpose => {
    const fields = grinding(purpose)
    expect(fields).toHaveLength(13)
    expect(new Set(fields.map(({ label }) => label)).size).toBe(13)
    for (const { text, label } of fields) {
      expect(text.length, label).toBeGreaterThan(0)
      for (const line of text) expect(line, label).toMatch(/\S\.$/)
    }
  })
  it('says how much comes off, and that more is a reason to stop and ring', () => {
    const { perSide, onDiameter } = entry(plan, 'seat', number)
    expect(textOf(outside, 'Stock')).toContain(`${fixed(onDiameter.nominal / 2, 3)} mm a side`)
    expect(textOf(outside, 'Take no more than')).toContain(`seat: ${fixed(perSide.most, 3)} mm a side`)
    expect(textOf(outside, 'Take no more than')).toContain('Stop and ring')
  })
  it('stops an axis that eats the smaller margin, and any over 0.03', () => {
    const { eccentricity, margin } = entry(plan, 'seat', number)
    const spare = Math.min(margin.cleanUp, margin.case ?? 1)
    expect(textOf(outside, 'Eccentricity')).toContain(
      `Stop and ring over ${fixed(Math.min(0.03, eccentricity + spare), 3)}`,
    )
    const stock = plan.stock.map(one => ({ ...one, margin: { cleanUp: 1, case: 1 } }))
    expect(textOf(grinding('grind-outside', { ...plan, stock }), 'Eccentricity')).toContain('Stop and ring over 0.030')
  })
  it('holds the finish sizes of the operation, in the order in which they are met', () => {
    const sizes = operation(plan, 'grind-outside').sizes.filter(({ feature }) => feature === 'seat')
    expect(sizes.length).toBeGreaterThan(0)
    for (const { lower, upper } of sizes)
      expect(textOf(outside, 'Finish sizes')).toContain(`seat Ø ${fixed(upper, 3)} / ${fixed(lower, 3)} mm`)
    const hone = operation(plan, 'hone-bore').sizes.find(({ feature }) => feature === 'bore')
    expect(textOf(grinding('hone-bore'), 'Finish sizes')).toContain(
      `bore Ø ${fixed(hone?.lower ?? 0, 3)} / ${fixed(hone?.upper ?? 0, 3)} mm`,
    )
  })
  it('prints the form that the plan asks of the operation', () => {
    const characteristics = [
      { name: 'seat run-out', operation: number, upper: 0.015, unit: 'mm' },
      { name: 'seat Ra', operation: number, upper: 0.8, unit: 'µm' },
      { name: 'bore cylindricity', operation: number + 10, upper: 0.006, unit: 'mm' },
    ]
    const text = textOf(grinding('grind-outside', { ...plan, inspection: { characteristics } }), 'Finish sizes')
    expect(text).toContain('seat run-out not over 0.015 mm')
    expect(text).not.toContain('seat Ra')
    expect(text).not.toContain('cylindricity')
  })
  it('calls up no temper etch on a nitrided part (scope of ISO 14104:2017), and calls it up on a carburised one', () => {
    expect(textOf(outside, 'Burn and cracks')).toContain('No temper etch')
    expect(textOf(outside)).not.toMatch(/etch to ISO 14104/)
    const order = plan.case?.order && { ...plan.case.order, term: 'CHD' as const }
    const carburised = { ...plan, ...(plan.case && order && { case: { ...plan.case, process: 'carburising', order } }) }
    expect(textOf(grinding('grind-outside', carburised), 'Burn and cracks')).toContain('Temper etch to ISO 14104')
  })
  it('asks for crack detection on every piece of a nitrided batch, ground or honed', () => {
    for (const purpose of ['grind-outside', 'grind-bore', 'hone-bore'] as const)
      expect(textOf(grinding(purpose), 'Burn and cracks')).toContain('magnetic particles on every piece')
  })
  it('does without a case: a plain iron liner is honed to size, and nothing is said of one', () => {
    const iron = orderSource(demoPart('OX-112-03.yaml'))
    const text = textOf(grindingOrder(iron, operation(iron, 'hone-bore'), MM))
    expect(text).toContain('EN-GJL-250, not hardened')
    expect(text).not.toMatch(/case|nitrid|hardener/i)
    expect(grindingCautions(iron, operation(iron, 'hone-bore')).length).toBeGreaterThan(0)
  })
})
