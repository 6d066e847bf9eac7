import type { Waiver } from '../part/part.ts'
import type { RouteWait } from './operation.ts'
import type { Wait } from './order-operations.ts'
import type { RouteRule, Task } from './rules/route-rule.ts'

/**
 * The waits that hold a place: those that no chain of other waits implies. A rule that is implied everywhere is told once,
 * for the pair that stands closest.
 */
export function holdingWaits(ordered: readonly Task[], waits: readonly Wait[]): readonly Wait[] {
  const place = new Map(ordered.map((task, index) => [task, index]))
  const apart = ({ first, then }: Wait) => (place.get(then) ?? 0) - (place.get(first) ?? 0)
  const before = new Map<Task, Set<Task>>()
  const waitedFor = new Map(
    ordered.map(task => [task, new Set(waits.filter(({ then }) => then === task).map(({ first }) => first))]),
  )
  for (const task of ordered) {
    const all = new Set<Task>()
    for (const first of waitedFor.get(task) ?? []) {
      all.add(first)
      for (const earlier of before.get(first) ?? []) all.add(earlier)
    }
    before.set(task, all)
  }
  const implied = ({ first, then }: Wait) =>
    [...(waitedFor.get(then) ?? [])].some(between => between !== first && before.get(between)?.has(first))
  const closest = (rule: RouteRule) =>
    waits.filter(wait => wait.rule === rule).reduce((best, wait) => (apart(wait) < apart(best) ? wait : best))
  const kept = waits.filter(wait => !implied(wait))
  const told = new Set(kept.map(({ rule }) => rule))
  const untold = [...new Set(waits.map(({ rule }) => rule))].filter(rule => !told.has(rule))
  return [...kept, ...untold.map(closest)]
}

/** The rules that hold the place of an operation, nearest neighbour first: those it comes after, then those it comes before. */
export function waitsOf(
  task: Task,
  ordered: readonly Task[],
  { holding, numberOf }: { readonly holding: readonly Wait[]; readonly numberOf: (task: Task) => number },
): readonly RouteWait[] {
  const place = (other: Task) => ordered.indexOf(other)
  const told = (side: RouteWait['side'], other: Task, { name, because, otherwise, source }: RouteRule): RouteWait => ({
    side,
    operation: numberOf(other),
    rule: name,
    because,
    otherwise,
    source,
  })
  const after = holding.filter(({ then }) => then === task).toSorted((a, b) => place(b.first) - place(a.first))
  const before = holding.filter(({ first }) => first === task).toSorted((a, b) => place(a.then) - place(b.then))
  return [
    ...after.map(({ first, rule }) => told('after', first, rule)),
    ...before.map(({ then, rule }) => told('before', then, rule)),
  ]
}

/** The lines beside an operation: why it is done, then the rules that hold its place. */
export const reasonsFor = (
  { why }: Task,
  waits: readonly RouteWait[],
  nameOf: (operation: number) => string,
): readonly string[] => [
  ...why,
  ...new Set(waits.map(({ side, operation, because }) => `${side} ${lowered(nameOf(operation))}: ${because}`)),
]

/** What a waived rule would have held, with the part's own reason for waiving it. */
export function waivedReasons(
  task: Task,
  tasks: readonly Task[],
  waived: readonly { readonly rule: RouteRule; readonly waiver: Waiver }[],
): readonly string[] {
  return waived
    .filter(({ rule }) => tasks.some(other => rule.applies(task, other) || rule.applies(other, task)))
    .map(({ rule, waiver }) => `rule ${rule.name} waived: ${waiver.because}`)
}

const lowered = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1)
