import type { RouteRule, Task } from './rules/route-rule.ts'

/** `first` must come before `then`, by this rule. */
export type Wait = { readonly first: Task; readonly then: Task; readonly rule: RouteRule }
export type Ordering =
  | { readonly ok: true; readonly tasks: readonly Task[]; readonly waits: readonly Wait[] }
  | { readonly ok: false; readonly unmet: readonly Wait[] }

/** Takes, each time, the earliest-declared task that waits for nothing. A deadlock names the rules that caused it. */
export function orderOperations(tasks: readonly Task[], rules: readonly RouteRule[]): Ordering {
  const waits = tasks.flatMap(first =>
    tasks.flatMap(then => rules.filter(rule => rule.applies(first, then)).map(rule => ({ first, then, rule }))),
  )
  const ordered: Task[] = []
  while (ordered.length < tasks.length) {
    const unmet = waits.filter(({ first }) => !ordered.includes(first))
    const next = tasks.find(task => !ordered.includes(task) && !unmet.some(({ then }) => then === task))
    if (!next) return { ok: false, unmet }
    ordered.push(next)
  }
  return { ok: true, tasks: ordered, waits }
}
