import type { Waiver } from '../part/part.ts'
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

/** The lines beside an operation: why it is done, then the rules that hold its place, nearest neighbour first. */
export function reasonsFor(task: Task, ordered: readonly Task[], holding: readonly Wait[]): readonly string[] {
  const place = (other: Task) => ordered.indexOf(other)
  const after = holding.filter(({ then }) => then === task).toSorted((a, b) => place(b.first) - place(a.first))
  const before = holding.filter(({ first }) => first === task).toSorted((a, b) => place(a.then) - place(b.then))
  const lines = [
    ...after.map(({ first, rule }) => `after ${named(first)}: ${rule.because}`),
    ...before.map(({ then, rule }) => `before ${named(then)}: ${rule.because}`),
  ]
  return [...task.why, ...new Set(lines)]
}

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

const named = ({ name }: Task): string => name.charAt(0).toLowerCase() + name.slice(1)
