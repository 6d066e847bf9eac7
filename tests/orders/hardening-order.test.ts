import { describe, expect, it } from 'vitest'
import { demo, orderFor, planOf, pointOf, quantityOf, sentencesOf } from './planned-orders.ts'

const plan = planOf(demo('OX-098-21'))
const order = orderFor(plan, 'nitride')
const relief = orderFor(plan, 'stress-relieve')
const textOf = (title: string, of = order): string => pointOf(of, title).text.join('\n')

describe('the order to the heat treater (fields common practice, no source; certificate after a coating-engineering course)', () => {
  it('has twelve points', () => {
    expect(order.points.map(({ title }) => title)).toEqual([
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
  })

  it('asks for the depth as a nominal with an upper tolerance, none below (ISO 15787; 0.4 +0.2, memory: DIN 6773)', () => {
    const depth = quantityOf(order, 'case depth NHD', 'as hardened')
    expect(depth).toMatchObject({ standing: 'asked', written: 'plus', least: 0.4 })
    expect(depth.most).toBeCloseTo(0.6, 9)
    expect(textOf('Result')).toContain('core hardness + 50 HV')
  })

  it('asks of the surface as hardened what the finished one needs where most comes off, once and with one load', () => {
    const { case: planned } = planOf(demo('OX-098-21'))
    const asked = quantityOf(order, 'surface hardness', 'as hardened')
    // Derived: the stretched exponential of shape 1.7 through 350 HV (core 300 + 50) at the depth, turned round.
    const worst = Math.max(...(planned?.hardnessAfter ?? []).map(({ off }) => off.most))
    const left = 1 - (worst / (planned?.ordered.least ?? 0)) ** 1.7
    const needed = 300 + 50 * ((470 - 300) / 50) ** (1 / left)
    expect(asked).toMatchObject({ standing: 'asked', least: Math.ceil(needed / 10) * 10, unit: 'HV1' })
    expect(sentencesOf(order).filter(line => /surface/.test(line) && /not under/i.test(line))).toHaveLength(1)
    expect(order.returns).toContainEqual(expect.objectContaining({ of: 'coupon', label: 'surface hardness' }))
  })
  it('expects what the grade reaches where the drawing asks no hardness: 650 HV (working value of a hardener)', () => {
    const open = orderFor(planOf(demo('OX-098-21', ['hardness: min 470 HV, ', ''])), 'nitride')
    expect(quantityOf(open, 'surface hardness', 'as hardened')).toMatchObject({ standing: 'expected', value: 650 })
  })
  it('says of the end faces that no depth is asked there', () => {
    expect(textOf('Zones')).toContain('No depth is asked of the end faces, top and bottom')
  })

  it('reads the surface with HV1 in both states, since the case is a gradient (HV0.5 to HV1 on thin cases)', () => {
    for (const state of ['as hardened', 'finished'])
      expect(quantityOf(order, 'surface hardness', state).unit).toBe('HV1')
    // Bueckle: 0.25 mm of case and 470 HV bear 470 · (0.7 · 0.25)² / 1.8544 = 7.8 kgf, so HV1 is borne.
    expect((470 * (0.7 * 0.25) ** 2) / 1.8544).toBeGreaterThan(1)
  })

  it('keeps what must be left after our finishing apart, for information', () => {
    const lines = pointOf(order, 'Result').text.filter(line => /must be left/.test(line))
    expect(lines).toHaveLength(1)
    expect(lines[0]).toMatch(/^After our finishing, for information/)
    expect(quantityOf(order, 'case depth NHD', 'finished')).toMatchObject({ standing: 'planned', least: 0.25 })
    expect(quantityOf(order, 'surface hardness', 'finished')).toMatchObject({ standing: 'planned', least: 470 })
  })

  it('orders two stages, the layer that they leave and the ceiling of the second (5 to 50 µm by cycle and stages)', () => {
    expect(quantityOf(order, 'compound layer', 'as hardened')).toMatchObject({ standing: 'asked', most: 0.015 })
    expect(quantityOf(order, 'temperature of the parts').most).toBe(540)
    expect(textOf('Process allowed')).toContain('In two stages')
    const cooler = orderFor(planOf(demo('OX-098-21', ['temper: 620', 'temper: 600'])), 'nitride')
    expect(quantityOf(cooler, 'compound layer', 'as hardened').most).toBe(0.025)
    expect(quantityOf(cooler, 'temperature of the parts').most).toBe(520)
    for (const other of [cooler, orderFor(planOf(demo('OX-098-21', ['gas nitriding', 'plasma nitriding'])), 'nitride')])
      expect(textOf('Process allowed', other)).not.toContain('two stages')
  })

  it('warns of a band closer than ±0.15 mm about a mean of 0.25 mm or more (a German trade committee), and of no other', () => {
    expect(textOf('Result')).toContain('closer than the usual scatter')
    const carburised = orderFor(planOf(demo('OX-098-34')), 'case-harden')
    expect(textOf('Result', carburised)).not.toContain('closer than the usual scatter')
  })

  it('limits ovality and bow each for itself, as the stock is planned for: 0.018 and 0.010 were measured', () => {
    for (const surface of ['seat', 'bore'])
      expect(quantityOf(order, `ovality of ${surface}`, 'as hardened')).toMatchObject({
        standing: 'asked',
        most: 0.018,
      })
    expect(quantityOf(order, 'bow of the axis', 'as hardened')).toMatchObject({ standing: 'asked', most: 0.01 })
    expect(sentencesOf(order).join('\n')).not.toMatch(/round and straight/)
  })

  it('asks for five marked pieces and has their rows on the form: 45 readings of pieces, 4 of the coupon', () => {
    expect(quantityOf(order, 'pieces that we mark').value).toBe(5)
    const readings = (of: string) =>
      order.returns.filter(row => row.of === of).reduce((sum, row) => sum + row.readings, 0)
    expect(readings('piece')).toBe(9 * 5)
    expect(readings('coupon')).toBe(4)
    const rows = order.returns.map(({ label }) => label)
    for (const label of ['surface hardness', 'compound layer', 'ovality of seat', 'bow of the axis'])
      expect(rows).toContain(label)
  })

  it('has the parts come clean and go back preserved: oil is for the grinder', () => {
    const text = sentencesOf(order).join('\n')
    expect(text).toContain('come metal-clean, dry')
    expect(text).not.toMatch(/\boiled\b/)
  })

  it('never quotes the case in HRC, never asks for straightening, and leaves the cycle to the licensed treater', () => {
    const text = sentencesOf(order).join('\n')
    expect(text.match(/\d+ HRC/)).toBeNull()
    expect(textOf('Nonconformance')).toContain('no straightening')
    expect(textOf('Process allowed')).toContain('The treater chooses and confirms the cycle')
    expect(text).not.toMatch(/dissociation|ammonia flow|ramp|potential/i)
    expect(order.cautions[0]).toContain('licensed heat treater')
    expect(order.cautions.join(' ')).toContain('300 ppm')
  })

  it('masks what the drawing masks, all round, and exempts it in writing', () => {
    const masked = orderFor(planOf(demo('OX-098-21', ['process: gas', 'masked: [flange], process: gas'])), 'nitride')
    const zones = pointOf(masked, 'Zones').text
    expect(zones.join('\n')).toContain('Must not be treated: flange')
    expect(zones.join('\n')).toContain('exempt from the limits')
    expect(zones.join('\n')).toContain('never half of a circumference')
    expect(zones.join('\n')).toContain('copper plate')
    expect(zones[0]).not.toContain('flange')
    expect(textOf('Zones')).toContain('Nothing is masked')
  })

  it('speaks to who hardens by a coil of coil and quench, of no charge, furnace or mask (common practice, no source)', () => {
    const text = demo(
      'OX-098-34',
      ['16MnCr5, hardness: 180 HV', '42CrMo4, hardness: 280 HV, temper: 640'],
      [
        'carburising, hardness: min 650 HV, depth: min 0.4',
        'induction hardening, hardness: min 550 HV, depth: min 0.8, masked: [bore, top, bottom]',
      ],
    )
    const coil = orderFor(planOf(text), 'induction-harden')
    const said = sentencesOf(coil).join('\n')
    expect(textOf('Coil and quench', coil)).toMatch(/soft seam[\s\S]*Temper/)
    expect(textOf('Zones', coil)).toContain('Must stay soft: bore, top and bottom.')
    expect(textOf('Coupon', coil)).toContain('is hardened first')
    expect(said).not.toMatch(/thermocouple|[Mm]ask|charge number|worst place of the charge/)
    expect(sentencesOf(order).join('\n')).toMatch(/thermocouple[\s\S]*charge number/)
  })
  it('tells where the depth of an induction-hardened case ends, so that nobody takes 80 % of another hardness', () => {
    const pin = planOf(
      demo(
        'OX-098-34',
        ['16MnCr5, hardness: 180 HV', '42CrMo4, hardness: 280 HV, temper: 640'],
        [
          'carburising, hardness: min 650 HV, depth: min 0.4',
          'induction hardening, hardness: min 550 HV, depth: min 0.8',
        ],
      ),
    )
    // 80 % of the least hardness that the drawing asks for: 440 HV (ISO 18203, surface hardening depth).
    expect(quantityOf(orderFor(pin, 'induction-harden'), 'hardness where the depth ends').value).toBeCloseTo(440, 6)
  })
})

describe('the order for a carburised part', () => {
  const pin = (depth: string) => orderFor(planOf(demo('OX-098-34', ['depth: min 0.4', depth])), 'case-harden')
  const asked = pin('depth: min 0.4')

  it('names quench and temper, and what our stock is planned for (memory: 160 to 180 °C)', () => {
    expect(textOf('Process allowed', asked)).toContain('Carburising, quench and temper.')
    expect(textOf('Quench', asked)).toContain('Free in oil, hung or stood on end.')
    expect(quantityOf(asked, 'temper')).toMatchObject({ standing: 'planned', least: 160, most: 180 })
    expect(order.points.map(({ title }) => title)).not.toContain('Quench')
  })

  it('forbids a reading in HRC of a case that the cone goes through, and allows it of a deeper one (memory: ISO 6508-1)', () => {
    expect(textOf('Result', asked)).toContain('Quote no hardness of the case in HRC: at')
    expect(textOf('Result', asked)).toContain('reads the core under less')
    expect(textOf('Result', pin('depth: min 0.9'))).toContain('may be read in HRC too')
    expect(textOf('Result')).toContain('Quote no hardness of the case in HRC.')
  })
})

describe('the order for stress relief', () => {
  it('asks for a window and aims at its middle: 20 K over nitriding at 540 °C, 50 K under a temper of 620 °C (steel cards)', () => {
    const window = quantityOf(relief, 'stress-relieving temperature')
    expect(window).toMatchObject({ standing: 'asked', least: 540 + 20, most: 620 - 50 })
    expect(quantityOf(relief, 'middle of the window').value).toBe(565)
    expect(relief.returns).toHaveLength(1)
    expect(relief.returns[0]).toMatchObject({ of: 'load', least: 560, most: 570 })
  })

  it('is told to the treater of the next visit as it was aimed at', () => {
    expect(quantityOf(order, 'stress-relieving temperature, aim')).toMatchObject({ standing: 'given', value: 565 })
  })

  it('goes by the bar certificate where the temper is not known', () => {
    const unknown = planOf(demo('OX-098-21', [', temper: 620', '']))
    expect(sentencesOf(orderFor(unknown, 'stress-relieve')).join('\n')).toContain('as the bar certificate says')
  })
})

describe('zones that a drawing masks (areas that shall, may and shall not be treated: ISO 15787)', () => {
  const zonesOf = (masked: string): string => {
    const masking = demo('OX-098-21', ['process: gas nitriding', `masked: [${masked}], process: gas nitriding`])
    return pointOf(orderFor(planOf(masking), 'nitride'), 'Zones').text.join('\n')
  }
  const treated = (text: string) => /Must be treated: ([^.]*)\./.exec(text)?.[1] ?? ''

  it.each(['flange', 'seat', 'top', 'bottom'])('tell %s as masked, and not as to be treated', name => {
    expect(zonesOf(name)).toContain(`Must not be treated: ${name}.`)
    expect(treated(zonesOf(name))).not.toContain(name)
    expect(treated(textOf('Zones'))).toContain(name)
  })
  it('tell a whole side as masked, and no surface of it as to be treated', () => {
    const text = zonesOf('outside')
    expect(text).toContain('Must not be treated: outside.')
    for (const name of ['flange', 'seat']) expect(treated(text)).not.toContain(name)
    expect(treated(text)).toContain('bore')
  })
})
