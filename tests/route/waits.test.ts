import { readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { run } from '../../src/commands/program.ts'
import { ROUTE_RULES } from '../../src/route/rules/route-rules.ts'
import { demo, desk } from '../commands/fake-world.ts'
import { demoPlan } from '../sheets/demo-packet.ts'

const PARTS = readdirSync('parts')
  .filter(name => /^OX-.*\.yaml$/.test(name))
  .map(name => name.replace(/\.yaml$/, ''))

describe('what holds an operation in its place', () => {
  it.each(PARTS)('%s: both ends of a wait tell of it, and the route keeps it', name => {
    const { operations } = demoPlan(name)
    for (const { number, waits, because } of operations)
      for (const { side, operation, rule, because: why } of waits) {
        expect(Math.sign(operation - number), `${rule} at ${number}`).toBe(side === 'after' ? -1 : 1)
        const other = operations.find(one => one.number === operation)
        expect(other?.waits.some(wait => wait.operation === number && wait.rule === rule && wait.side !== side)).toBe(
          true,
        )
        expect(because.some(reason => reason.startsWith(side) && reason.endsWith(`: ${why}`))).toBe(true)
      }
  })

  it('is given to every operation but a first without a rule', () => {
    for (const { number, waits } of demoPlan().operations) expect(waits.length, String(number)).toBeGreaterThan(0)
  })

  it('says what happens otherwise, in other words than why', () => {
    for (const { name, because, otherwise } of ROUTE_RULES) {
      expect(otherwise.split(' ').length, name).toBeGreaterThan(4)
      expect(otherwise, name).not.toBe(because)
    }
  })

  it('is shown by route --why, and an operation that is not there is refused with the list of those that are', async () => {
    const part = 'parts/OX-098-21.yaml'
    const files = { [part]: demo('OX-098-21.yaml'), 'parts/shop.yaml': demo('shop.yaml') }
    const world = desk(files)
    expect(await run(['route', part, '--why', '80'], world)).toBe(0)
    const said = world.printed()
    const grind = demoPlan().operations.find(({ number }) => number === 80)
    for (const { rule, otherwise } of grind?.waits ?? []) {
      expect(said).toContain(`rule ${rule}: `)
      expect(said).toContain(`otherwise ${otherwise}`)
    }
    const other = desk(files)
    expect(await run(['route', part, '--why', '85'], other)).toBe(2)
  })
})
