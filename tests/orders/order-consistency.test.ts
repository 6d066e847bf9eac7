import { describe, expect, it } from 'vitest'
import type { Quantity } from '../../src/orders/order.ts'
import { ORDERS, PLANS, quantitiesOf, sentencesOf } from './planned-orders.ts'

/** What a quantity is of, in which state: under one such name there is one figure. */
const nameOf = ({ label, state }: Quantity): string => `${label}, ${state ?? ''}`

describe('every outside operation', () => {
  it.each(PLANS)('of %s is in one order, with all that follows at the same firm', (_, { operations, orders }) => {
    const outside = operations.filter(({ place }) => place === 'outside')
    expect(orders.flatMap(order => order.operations)).toEqual(outside.map(({ number }) => number))
    for (const { operations: held, firm, leadTime } of orders) {
      const own = outside.filter(({ number }) => held.includes(number))
      // The firm is chosen once: route, operation and order name the same.
      for (const { workCentre, firms } of own) {
        expect(workCentre).toBe(firm)
        expect(firms.map(({ name }) => name)).toEqual([firm])
      }
      expect(leadTime).toBe(Math.max(...own.flatMap(({ firms }) => firms.map(one => one.leadTime))))
      // Nothing of the house's own lies between.
      const between = operations.filter(({ number }) => number > (held[0] ?? 0) && number < (held.at(-1) ?? 0))
      expect(between.every(({ place }) => place === 'outside')).toBe(true)
    }
    for (const [index, order] of orders.entries()) {
      const last = operations.findIndex(({ number }) => number === order.operations.at(-1))
      const next = orders[index + 1]
      if (next && operations[last + 1]?.number === next.operations[0]) expect(next.firm).not.toBe(order.firm)
    }
  })
})

describe.each(ORDERS)('the order for %s', (_, order, plan) => {
  const all = quantitiesOf(order)
  const sentences = sentencesOf(order)

  it('gives no quantity two values, since it gives none twice', () => {
    const names = all.map(nameOf)
    expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([])
  })

  it('reads each surface with one test load', () => {
    const loads = new Map<string, Set<string>>()
    for (const one of [...all, ...order.returns]) {
      if (/^HV\d/.test(one.unit)) loads.set(nameOf(one), (loads.get(nameOf(one)) ?? new Set()).add(one.unit))
    }
    for (const [surface, units] of loads) expect([...units], surface).toHaveLength(1)
  })

  it('says no point twice, and numbers them from 1', () => {
    const titles = order.points.map(({ title }) => title)
    expect(new Set(titles).size).toBe(titles.length)
    expect(new Set(sentences).size).toBe(sentences.length)
    expect(new Set(order.cautions).size).toBe(order.cautions.length)
    expect(order.points.map(({ number }) => number)).toEqual(titles.map((_, index) => index + 1))
  })

  it('has a figure for every slot and a slot for every figure, and speaks in whole sentences', () => {
    for (const { text, quantities } of order.points) {
      const slots = text.flatMap(line => [...line.matchAll(/\{(\d+)\}/g)].map(([, slot]) => Number(slot)))
      expect(slots).toEqual(quantities.map((_, index) => index))
      for (const line of text) expect(line).toMatch(/\S\.$/)
    }
  })

  it('keeps every number of its sentences as a quantity, standards and names apart', () => {
    const { part, batch, material, operations, case: held } = plan
    const names = [
      ...[part.number, part.title, batch.number, batch.heat ?? '', material.grade, held?.definition ?? ''],
      ...operations.flatMap(({ surfaces, locatedBy, name }) => [...surfaces, ...locatedBy, name]),
    ].filter(name => /\d/.test(name))
    for (const line of sentences) {
      const rest = names
        .reduce((text, name) => text.replaceAll(name, ''), line)
        .replace(/\{\d+\}/g, '')
        // A standard by its number, a magnification.
        .replace(/(ISO|ASTM B)\s?\d+(-\d+)?(\(\d+\))?(:\d+)?|×\d+/g, '')
      expect(rest, line).not.toMatch(/\d/)
    }
  })

  it('says under and over only of what is asked', () => {
    for (const { text, quantities } of order.points) {
      for (const line of text) {
        for (const [, slot] of line.matchAll(/\b(?:under|over) \{(\d+)\}/g)) {
          expect(quantities[Number(slot)]?.standing, line).toBe('asked')
        }
      }
    }
  })

  it('calls what it only expects expected', () => {
    for (const { text, quantities } of order.points) {
      for (const line of text) {
        for (const [, slot] of line.matchAll(/\{(\d+)\}/g)) {
          if (quantities[Number(slot)]?.standing === 'expected') expect(line).toMatch(/expect/)
        }
      }
    }
  })

  it('asks back only what it asked for, in the same figures', () => {
    const said = new Map(all.map(one => [nameOf(one), one]))
    for (const row of order.returns) {
      const asked = said.get(nameOf(row))
      if (asked) {
        const { label, state, standing, value, least, most, unit, places, written } = asked
        expect(row).toMatchObject(
          JSON.parse(JSON.stringify({ label, state, standing, value, least, most, unit, places, written })),
        )
      } else {
        // A size read before, after or as found, without a limit, which the points ask to be measured.
        expect([row.value, row.least, row.most], row.label).toEqual([undefined, undefined, undefined])
        expect(['before', 'after', 'found']).toContain(row.state)
        expect(sentences.some(line => /^Measure/.test(line))).toBe(true)
        expect(all.some(({ label, state }) => label === row.label && state === 'on arrival')).toBe(true)
      }
      if (row.of === 'piece') expect(row.readings).toBeLessThanOrEqual(order.pieces)
      else expect(row.readings).toBe(1)
    }
  })

  it('names firm, pieces and what they weigh', () => {
    expect(order.firm).not.toBe('')
    expect(order.pieces).toBe(plan.batch.start)
    expect(order.mass.each).toBeGreaterThan(0)
    expect(order.mass.all / order.mass.each).toBeCloseTo(order.pieces, 9)
    expect(order.cautions.length).toBeGreaterThan(0)
  })
})
