import type { RouteRule, Task } from './rules/route-rule.ts'

/** `first` must come before `then`, by this rule. */
export type Wait = { readonly first: Task; readonly then: Task; readonly rule: RouteRule }
export type Ordering =
  | { readonly ok: true; readonly tasks: readonly Task[]; readonly waits: readonly Wait[] }
  | { readonly ok: false; readonly unmet: readonly Wait[] }

/** Takes, each time, the earliest-declared task that waits for nothing. A deadlock names the rules that caused it. */
export function orderOperations(tasks: readonly Task[], rules: readonly RouteRule[]): Ordering {
  const waits: Wait[] = []
  for (const first of tasks)
    for (const then of tasks) for (const rule of rules) if (rule.applies(first, then)) waits.push({ first, then, rule })
  const ordered = new Set<Task>()
  while (ordered.size < tasks.length) {
    const unmet = waits.filter(({ first }) => !ordered.has(first))
    const waiting = new Set(unmet.map(({ then }) => then))
    const next = tasks.find(task => !ordered.has(task) && !waiting.has(task))
    if (!next) return { ok: false, unmet }
    ordered.add(next)
  }
  return { ok: true, tasks: [...ordered], waits }
}
