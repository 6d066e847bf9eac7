import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Purpose } from '../../src/route/operation.ts'
import { orderOperations } from '../../src/route/order-operations.ts'
import type { RouteRule } from '../../src/route/rules/route-rule.ts'
import { ROUTE_RULES } from '../../src/route/rules/route-rules.ts'
import { task } from './task.ts'

const ALL: readonly Purpose[] = [
  'saw-blanks',
  'rough-turn',
  'stress-relieve',
  'finish-turn',
  'mill-ports',
  'deburr-soft',
  'nitride',
  'grind-outside',
  'grind-bore',
  'hone-bore',
  'crack-test',
  'deburr-ports',
  'final-inspection',
]
const anyTasks = fc.shuffledSubarray([...ALL], { minLength: 1 }).map(purposes => purposes.map(purpose => task(purpose)))

const ordered = (tasks: ReturnType<typeof task>[]) => {
  const ordering = orderOperations(tasks, ROUTE_RULES)
  if (!ordering.ok) throw new Error(`deadlock: ${ordering.unmet.map(({ rule }) => rule.name)}`)
  return ordering.tasks
}

describe('ordering of operations', () => {
  it('keeps the members', () => {
    fc.assert(
      fc.property(anyTasks, tasks => {
        expect(new Set(ordered(tasks))).toEqual(new Set(tasks))
      }),
    )
  })

  it('puts nothing later that a rule wants first', () => {
    fc.assert(
      fc.property(anyTasks, tasks => {
        const order = ordered(tasks)
        for (const [index, then] of order.entries()) {
          for (const later of order.slice(index + 1)) {
            expect(ROUTE_RULES.filter(rule => rule.applies(later, then)).map(({ name }) => name)).toEqual([])
          }
        }
      }),
    )
  })

  it('changes nothing when done twice', () => {
    fc.assert(
      fc.property(anyTasks, tasks => {
        const once = ordered(tasks)
        expect(ordered([...once])).toEqual(once)
      }),
    )
  })

  it('names the rules that contradict each other', () => {
    const rule = (name: string, first: Purpose, then: Purpose): RouteRule => ({
      name,
      because: '',
      otherwise: '',
      source: '',
      applies: (a, b) => a.purpose === first && b.purpose === then,
    })
    const ordering = orderOperations(
      [task('deburr-soft'), task('mill-ports')],
      [rule('one', 'deburr-soft', 'mill-ports'), rule('other', 'mill-ports', 'deburr-soft')],
    )
    expect(!ordering.ok && ordering.unmet.map(({ rule }) => rule.name).toSorted()).toEqual(['one', 'other'])
  })
})
