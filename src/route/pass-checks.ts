import type { Part } from '../part/part.ts'
import { hardensThrough } from '../part/takes-case.ts'
import { FINISHING_PROCESSES, HARDENING_PROCESSES } from '../process.ts'
import type { Operation, PassCheck } from './operation.ts'

/** The two rules of work that leaves and comes back: a part may waive either by its name. Common practice, no source. */
export const PASS_RULES = {
  despatch: {
    name: 'checked-before-leaving',
    because: 'whose fault it is, and whether it pays to send it, is only known of work that was checked when it left',
  },
  receipt: {
    name: 'checked-on-return',
    because: 'a fault made outside is only found, and only argued, before more work is put in',
  },
} as const

type Placed = Omit<Operation, 'checks'>

/**
 * Work is checked as it leaves for a firm or a furnace and as it comes back. Both are lines of the operation that comes next,
 * not operations of their own: the trip's first operation has what is seen as the pieces go, the one after the trip what is
 * seen before more is done to them.
 */
export function withPassChecks(part: Part, operations: readonly Placed[]): readonly Operation[] {
  const waived = new Set(part.waive.map(({ rule }) => rule))
  const trips = tripsOf(operations)
  const line = (kind: PassCheck['kind'], trip: readonly Placed[]): readonly PassCheck[] =>
    waived.has(PASS_RULES[kind].name)
      ? []
      : [
          {
            kind,
            of: trip.map(({ number }) => number),
            text: [...new Set(trip.flatMap(one => looksAt(part, one)[kind]))].join('; '),
            because: PASS_RULES[kind].because,
          },
        ]
  return operations.map((operation, index) => {
    const back = trips.find(trip => trip.at(-1) === operations[index - 1])
    const out = trips.find(([first]) => first === operation)
    const checks = [...(back ? line('receipt', back) : []), ...(out ? line('despatch', out) : [])]
    return checks.length > 0 ? { ...operation, checks } : operation
  })
}

/** What follows on at one firm, or one furnace of the works, is one trip. */
function tripsOf(operations: readonly Placed[]): readonly (readonly Placed[])[] {
  const trips: Placed[][] = []
  for (const [index, operation] of operations.entries()) {
    if (!leaves(operation)) continue
    const last = trips.at(-1)
    const before = operations[index - 1]
    if (last && before && last.at(-1) === before && before.workCentre === operation.workCentre) last.push(operation)
    else trips.push([operation])
  }
  return trips
}

const FURNACES: ReadonlySet<Operation['process']> = new Set([...HARDENING_PROCESSES, 'stress-relieve', 'plate'])
const leaves = ({ place, process }: Placed): boolean => place === 'outside' || FURNACES.has(process)

function looksAt(part: Part, { process, purpose }: Placed): Record<PassCheck['kind'], readonly string[]> {
  if (HARDENING_PROCESSES.has(process))
    return {
      despatch: ['every size that hardening will move', 'each edge broken', 'clean and dry'],
      receipt: hardensThrough(part)
        ? ['hardness and cracks', 'growth and out-of-round on the parts']
        : ['case depth and hardness on the coupon', 'growth and out-of-round on the parts'],
    }
  if (purpose === 'plate')
    return {
      despatch: ['size and form of the bore', 'each edge chamfered'],
      receipt: ['thickness by the difference of the bore', 'adhesion and pores'],
    }
  if (FINISHING_PROCESSES.has(process))
    return { despatch: ['sizes and count as they leave'], receipt: ['sizes, cracks and burns as they come back'] }
  if (purpose === 'stress-relieve')
    return { despatch: ['count, heat number, length'], receipt: ['count, furnace chart'] }
  if (purpose === 'crack-test')
    return { despatch: ['count', 'clean and dry'], receipt: ['crack-test report', 'demagnetised, clean, oiled'] }
  return { despatch: [], receipt: [] }
}
