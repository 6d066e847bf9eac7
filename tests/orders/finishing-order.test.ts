import { describe, expect, it } from 'vitest'
import { demo, NO_GRINDERS, orderFor, planOf, pointOf, quantityOf, sentencesOf } from './planned-orders.ts'

const plan = planOf(demo('OX-098-21'))
const order = orderFor(plan, 'grind-bore')
const GRIND = 'Grind bore and top face'
const textOf = (title: string, of = order): string => pointOf(of, title).text.join('\n')

describe('the order to the grinder (common practice, no source)', () => {
  it('is one visit with the honing that follows at the same firm: 8 days, not 16', () => {
    expect(order.operations).toEqual([90, 100, 110])
    expect(order.leadTime).toBe(8)
    expect(orderFor(plan, 'hone-bore')).toBe(order)
  })

  it('has at most thirteen points, and one for the crack test in the same visit', () => {
    expect(order.points.map(({ title }) => title)).toEqual([
      'Condition on arrival',
      'Datums and set-up',
      'Stock',
      'Take no more than',
      'Eccentricity',
      'Wheel, stones, coolant',
      'Port edges',
      'Burn',
      'Packing',
      'Set-up piece',
      'Not good',
      'Crack test',
    ])
  })

  it('sets true within one figure: half of a run-out of 15 µm, as the stock is planned for', () => {
    expect(quantityOf(order, 'off axis when set, radial', 'operation 90').most).toBe(0.0075)
    expect(sentencesOf(order).filter(line => /set true/i.test(line))).toHaveLength(1)
  })

  it('stops the set-up at what the sizes that it prints can bear, worked out from them', () => {
    // The bore comes at 47.869 at most and goes to 47.9705 at least: 0.05075 a side. Off that go 0.0125 off axis, a quarter of
    // an ovality of 0.018 and half of a bow of 0.010 (radius about a best-fit axis); a layer of 0.015 and Rz 8 µm must go.
    const arrives = quantityOf(order, 'bore Ø', 'on arrival')
    const ground = quantityOf(order, 'bore Ø', GRIND)
    const least = ((ground.least ?? 0) - (arrives.most ?? 0)) / 2 - 0.0125 - 0.018 / 4 - 0.01 / 2
    const spare = least - 0.015 - 0.008
    expect(spare).toBeCloseTo(0.00575, 6)
    const label = (what: string) => `${what}, bore (${GRIND})`
    expect(quantityOf(order, label('stock a side at the thinnest place'), GRIND).value).toBeCloseTo(least, 9)
    expect(quantityOf(order, label('off axis as planned for'), GRIND).value).toBeCloseTo(0.0125, 9)
    const stop = quantityOf(order, label('off axis at set-up'), GRIND)
    expect(stop.standing).toBe('asked')
    expect(stop.most).toBeCloseTo(0.0125 + spare, 9)
  })

  it('keeps the figure that it stops at among the workings', () => {
    const stop = plan.workings.find(({ symbol, operation }) => symbol === 'e_stop' && operation === 90)
    expect(stop?.value).toBe(quantityOf(order, `off axis at set-up, bore (${GRIND})`, GRIND).most)
    expect(stop?.expression).toContain('min(')
  })

  it('gives the pair by which it is judged inside the pair of the drawing, and has the form ask for the same', () => {
    const length = order.finish.find(({ label }) => label === 'length')
    // 92 ±0.010 for the ground face, drawn in by 6 µm of the micrometer at either end (ISO 14253-1).
    expect(length?.limits.least).toBeCloseTo(91.99, 9)
    expect(length?.limits.most).toBeCloseTo(92.01, 9)
    expect(length?.least).toBeCloseTo(91.996, 9)
    expect(length?.most).toBeCloseTo(92.004, 9)
    expect(order.returns.find(({ label, state }) => label === 'length' && state === GRIND)?.least).toBeCloseTo(
      91.996,
      9,
    )
  })

  it('asks for roughness of the surface that has it, and calls a length a length when it comes and when it goes', () => {
    expect(order.finish.map(({ label }) => label)).toContain('top roughness Ra')
    expect(order.arrives.map(({ label }) => label)).toEqual(['seat Ø', 'bore Ø', 'length'])
    expect(order.finish.some(({ label, unit }) => label.startsWith('length') && unit === 'µm')).toBe(false)
  })

  it('leaves the size between grinding and honing to the firm: no row of the form', () => {
    expect(order.finish.filter(({ onTheWay }) => onTheWay).map(({ label, operation }) => [label, operation])).toEqual([
      ['bore Ø', 90],
      ['bore roundness', 90],
      ['bore roughness Rz', 90],
    ])
    expect(order.returns.some(({ label, state }) => label.startsWith('bore') && state === GRIND)).toBe(false)
  })

  it('calls up no temper etch on a nitrided part (scope of ISO 14104:2017), and calls it up on a carburised one', () => {
    expect(textOf('Burn')).toContain('No temper etch')
    expect(sentencesOf(order).join('\n')).not.toMatch(/etch to ISO 14104/)
    const pin = orderFor(planOf(demo('OX-098-34'), NO_GRINDERS), 'grind-outside')
    expect(textOf('Burn', pin)).toContain('Temper etch to ISO 14104')
  })

  it('asks for crack detection on every piece of a hardened batch, and of an iron liner for nothing of a case', () => {
    expect(textOf('Crack test')).toContain('Every piece, wet fluorescent magnetic particles')
    const iron = sentencesOf(orderFor(planOf(demo('OX-112-03')), 'hone-bore')).join('\n')
    expect(iron).toContain('EN-GJL-250, not hardened')
    expect(iron).not.toMatch(/\bcase\b|nitrid|hardener|magnetic/i)
  })

  it('speaks of the case as it was hardened, and of what has come off since', () => {
    expect(textOf('Condition on arrival')).toContain('both as hardened')
    const grindsBore = {
      ...NO_GRINDERS,
      machines: [
        ...NO_GRINDERS.machines,
        {
          workCentre: 'internal grinder',
          name: 'internal grinder',
          processes: ['grind'],
          setup: 45,
          handling: 2,
        } as const,
      ],
    }
    const honed = orderFor(planOf(demo('OX-098-21'), grindsBore), 'hone-bore')
    expect(quantityOf(honed, 'taken off bore a side since hardening').most).toBeCloseTo(0.101, 3)
  })

  it('gives a ring lap no wheel and a chuckless pin no chuck', () => {
    const pin = orderFor(planOf(demo('OX-098-34'), NO_GRINDERS), 'lap-outside')
    expect(textOf('Wheel, stones, coolant', pin)).toContain('Ring lap')
    expect(textOf('Datums and set-up', pin)).not.toContain('never on old centres')
  })

  it('weighs what comes: 7.84 g/cm³ of a tube of 55.0 and 47.85 by 92 with a flange', () => {
    // π/4 · ((62² − 55²) · 4 + (55² − 47.85²) · 92) mm³ · 7.84e-6 kg/mm³, ports counted as full.
    const expected = (Math.PI / 4) * ((62 ** 2 - 55 ** 2) * 4 + (55 ** 2 - 47.85 ** 2) * 92) * 7.84e-6
    expect(order.mass.each).toBeCloseTo(expected, 2)
  })
})

describe('numbers on drawing, order and form', () => {
  it('are the same: those that the inspection of the operation has', () => {
    const here = plan.inspection.characteristics.filter(
      ({ operation, stage }) => stage === 'in-process' && order.operations.includes(operation),
    )
    expect(order.finish.map(({ characteristic }) => characteristic)).toEqual(here.map(({ number }) => number))
    for (const { label, state, characteristic } of order.returns) {
      const made = order.finish.find(one => one.label === label && one.state === state)
      expect(characteristic).toBe(made?.characteristic)
    }
  })
})
