import { describe, expect, it } from 'vitest'
import { readShop } from '../../src/part/read-shop.ts'

const read = (text: string) => readShop(text, 'shop.yaml')
const firmOf = (lines: string) => {
  const { shop, findings } = read(`firms:\n  - {name: Quillfen, processes: [nitride], ${lines}}`)
  return { firm: shop?.firms[0], findings }
}

describe('what a works says of itself', () => {
  const { shop, findings } = read(`
shop: {name: Oxmere, address: Sluice Lane 4, telephone: 01632 960 171, e-mail: a@oxmere.example, contact: R. Tarn,
  days: [Mon, Tue, Wed, Thu], hours: 7.5, closed: [2026-12-24 to 2027-01-01, 2027-03-26], currency: crowns}
rates: {lathe: 62}
bar-prices: {4140: 2.60}
machines: [{work-centre: lathe, name: Lathe, processes: [turn], queue: 2}]
tools:
  - {name: roughing tool, kind: turning tool, nose-radius: 0.8, price: 4.5, life: 20}
  - {name: finishing tool, kind: turning tool, nose-radius: 0.4, price: 4.5}
  - {name: old tool, kind: turning tool, nose-radius: 0.4}`)

  it('is whom to ring, when it works and in which money it reckons', () => {
    expect(findings).toEqual([])
    expect(shop).toMatchObject({
      contact: { address: 'Sluice Lane 4', telephone: '01632 960 171', email: 'a@oxmere.example', person: 'R. Tarn' },
      working: {
        days: ['Mon', 'Tue', 'Wed', 'Thu'],
        closed: [
          { from: '2026-12-24', to: '2027-01-01' },
          { from: '2027-03-26', to: '2027-03-26' },
        ],
      },
      hours: 7.5,
      machines: [{ queue: 2 }],
    })
  })

  it('has its prices by work centre, grade and tool, a grade by any of its names', () => {
    expect(shop?.money).toEqual({
      currency: 'crowns',
      rates: { lathe: 62 },
      bars: { '42CrMo4': 2.6 },
      cutters: { 'roughing tool': { price: 4.5, life: 20 }, 'finishing tool': { price: 4.5 } },
    })
  })

  it('is nothing where it says nothing', () => {
    const { shop: silent } = read('shop: {name: Oxmere}')
    expect(silent?.contact).toBeUndefined()
    expect(silent?.working).toBeUndefined()
    expect(silent?.money).toBeUndefined()
  })

  it.each([
    ['a day that is none', 'shop: {name: A, closed: [2026-02-30]}', 'input/unreadable'],
    ['two days the wrong way round', 'shop: {name: A, closed: [2027-01-01 to 2026-12-24]}', 'input/out-of-range'],
    ['a rate of a machine that it has not', 'rates: {anvil: 40}', 'input/not-used'],
    ['a price below nothing', 'bar-prices: {42CrMo4: -2}', 'input/out-of-range'],
    ['a day of another week', 'shop: {name: A, days: [Monday]}', 'input/not-one-of'],
  ])('does not take %s', (_, text, code) => {
    expect(read(text).findings.map(finding => finding.code)).toContain(code)
  })
})

describe('what a works says of a firm', () => {
  it.each([
    ['lead-time: 10', { leadTime: 10 }],
    // A third of the way up, rounded up.
    ['lead-time: 8 to 12', { leadTime: 10, leadTimeLeast: 8, leadTimeMost: 12 }],
    ['lead-time: 14 calendar days', { leadTime: 14, counts: 'calendar days' }],
    [
      'lead-time: 10 to 14 calendar days',
      { leadTime: 12, leadTimeLeast: 10, leadTimeMost: 14, counts: 'calendar days' },
    ],
    ['lead-time: 2 weeks', { leadTime: 14 }],
  ])('%s', (line, wanted) => {
    const { firm, findings } = firmOf(line)
    expect(findings).toEqual([])
    expect(firm).toEqual({ name: 'Quillfen', processes: ['nitride'], ...wanted })
  })

  it('is its own week, rounds and loads, and its prices by process', () => {
    const { firm } = firmOf(
      'lead-time: 5, days: [Mon, Tue], closed: [2026-12-21], carriage: 2, rounds: [Tue], loads: [Mon], ' +
        'carriage-charge: 20, minimum: 180, per-kg: 6.5, prices: [{processes: [stress-relieve], minimum: 65}]',
    )
    expect(firm).toMatchObject({
      working: { days: ['Mon', 'Tue'], closed: [{ from: '2026-12-21', to: '2026-12-21' }] },
      carriage: 2,
      rounds: ['Tue'],
      loads: ['Mon'],
      carriageCharge: 20,
      prices: [
        { processes: ['stress-relieve'], minimum: 65, lot: 0, each: 0, perKg: 0 },
        { processes: ['nitride'], minimum: 180, lot: 0, each: 0, perKg: 6.5 },
      ],
    })
  })

  it('does not take a lead time that ends before it begins', () => {
    expect(firmOf('lead-time: 12 to 8').findings.map(({ code }) => code)).toEqual(['input/out-of-range'])
  })
})
