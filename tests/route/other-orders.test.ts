import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Purpose } from '../../src/route/operation.ts'
import { orderOperations } from '../../src/route/order-operations.ts'
import { otherOrders } from '../../src/route/other-orders.ts'
import { ROUTE_RULES } from '../../src/route/rules/route-rules.ts'
import { task } from './task.ts'

const ALL: readonly Purpose[] = ['mill-ports', 'deburr-soft', 'grind-outside', 'hone-bore', 'crack-test', 'lap-outside']
const some = fc.shuffledSubarray([...ALL], { minLength: 2, maxLength: 5 })

const permutations = <T>(items: readonly T[]): readonly (readonly T[])[] =>
  items.length <= 1
    ? [items]
    : items.flatMap((item, index) => permutations(items.toSpliced(index, 1)).map(rest => [item, ...rest]))

/** As a route has them: numbered in tens, waits by number. */
function routed(purposes: readonly Purpose[]) {
  const ordering = orderOperations(
    purposes.map(purpose => task(purpose)),
    ROUTE_RULES,
  )
  if (!ordering.ok) throw new Error('deadlock')
  const numberOf = (purpose: Purpose) => 10 * (ordering.tasks.findIndex(one => one.purpose === purpose) + 1)
  return ordering.tasks.map(({ purpose }) => ({
    number: numberOf(purpose),
    purpose,
    waits: ordering.waits
      .filter(({ first }) => first.purpose === purpose)
      .map(({ then, rule: { name, because, otherwise, source } }) => ({
        side: 'before' as const,
        operation: numberOf(then.purpose),
        rule: name,
        because,
        otherwise,
        source,
      })),
  }))
}

describe('other orders that the rules allow', () => {
  it('are all those that trying every permutation finds, and no more', () => {
    fc.assert(
      fc.property(some, purposes => {
        const route = routed(purposes)
        const own = route.map(({ purpose }) => purpose)
        const keeps = (order: readonly Purpose[]): boolean =>
          order.every((then, index) =>
            order.slice(index + 1).every(later => !ROUTE_RULES.some(rule => rule.applies(task(later), task(then)))),
          )
        const allowed = permutations(own)
          .filter(keeps)
          .map(order => order.join(' '))
          .filter(order => order !== own.join(' '))
        const found = otherOrders(route).map(order => order.join(' '))
        expect(new Set(found).size).toBe(found.length)
        // No more than two dozen are looked at.
        if (allowed.length <= 24) expect(found.toSorted()).toEqual(allowed.toSorted())
        else for (const order of found) expect(allowed).toContain(order)
      }),
      { numRuns: 60 },
    )
  })
})
