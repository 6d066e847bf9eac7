import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { run } from '../../src/commands/program.ts'
import type { OutsideOrder } from '../../src/orders/order.ts'
import { demoPlan } from '../sheets/demo-packet.ts'
import { demo, desk } from './fake-world.ts'

const files = { 'liner.yaml': demo('OX-098-21.yaml'), 'shop.yaml': demo('shop.yaml') }
const NUMBERS = demoPlan('OX-098-21').orders.map(({ operations: [first = 0] }) => first)

async function printed(operation: number, form: 'text' | 'yaml') {
  const world = desk(files)
  const status = await run(['subcontract', 'liner.yaml', '--operation', String(operation), '--as', form], world)
  return { status, text: world.printed(), files: [...world.files.keys()] }
}

describe('an order without paper', () => {
  test.each(NUMBERS)('of operation %i is plain text for an e-mail, and no file is written', async operation => {
    const { status, text, files: left } = await printed(operation, 'text')
    expect(status).toBe(0)
    expect(left).toEqual(Object.keys(files))
    const lines = text.split('\n')
    // RFC 5322, 2.1.1: lines of no more than 78 letters.
    expect(lines.filter(line => [...line].length > 78)).toEqual([])
    const order = parse((await printed(operation, 'yaml')).text) as OutsideOrder
    const whole = text.replaceAll(/\s+/g, ' ')
    for (const { title } of order.points) expect(text).toMatch(new RegExp(`\\d+\\. ${title}`))
    for (const caution of order.cautions) expect(whole).toContain(caution.replaceAll(/\s+/g, ' '))
    for (const { telephone } of [order.from, order.to]) expect(whole).toContain(String(telephone))
    expect(whole).toContain(`on ${order.pieces} pieces`)
  })

  test.each(NUMBERS)('of operation %i is the order of the plan in YAML', async operation => {
    const order = parse((await printed(operation, 'yaml')).text) as OutsideOrder
    expect(order.operations[0]).toBe(operation)
    const world = desk(files)
    await run(['plan', 'liner.yaml', '--json'], world)
    const { orders } = JSON.parse(world.printed()) as { readonly orders: readonly OutsideOrder[] }
    const planned = orders.find(({ number }) => number === order.number)
    const rounded = (value: unknown): unknown =>
      JSON.parse(JSON.stringify(value), (_, inner: unknown) =>
        typeof inner === 'number' ? Number(inner.toPrecision(9)) : inner,
      )
    expect(rounded(order)).toEqual(rounded(planned))
  })
})
