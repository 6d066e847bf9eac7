import { isOnHand } from '../shop/tools-to-get.ts'
import type { CuttingTask } from './cutting-task.ts'

/** A tool that the works has not: planned with, named once, and left for somebody to buy or borrow. */
export function sayToGet(task: CuttingTask, { name }: { readonly name: string }, why: string): void {
  if (isOnHand(task.shop, name)) return
  task.report({
    code: 'cutting/to-get',
    severity: 'warning',
    message: `to get: ${name}; ${why}`,
    hint: 'planned as if it were here: list the one that you get under `tools:` in the shop file, with its own figures',
    path: '/body',
  })
}
