import type { Waiver } from '../part/part.ts'
import type { Wait } from './order-operations.ts'
import type { RouteRule, Task } from './rules/route-rule.ts'

/**
 * The lines beside an operation: why it is done, then the rules that hold its place. A rule that holds it against several
 * others is told once, against the nearest of them.
 */
export function reasonsFor(task: Task, ordered: readonly Task[], waits: readonly Wait[]): readonly string[] {
  const lines = new Map<string, string>()
  for (const earlier of ordered.toReversed()) {
    for (const { rule } of waits.filter(({ first, then }) => then === task && first === earlier)) {
      const key = `after ${rule.name}`
      if (!lines.has(key)) lines.set(key, `after ${named(earlier)}: ${rule.because}`)
    }
  }
  for (const later of ordered) {
    for (const { rule } of waits.filter(({ first, then }) => first === task && then === later)) {
      const key = `before ${rule.name}`
      if (!lines.has(key)) lines.set(key, `before ${named(later)}: ${rule.because}`)
    }
  }
  return [...task.why, ...lines.values()]
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
