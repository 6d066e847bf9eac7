import { type TurningTool, toolsOf } from '../shop/tool.ts'
import type { CuttingTask } from './cutting-task.ts'

/** The turning tool for outside and faces: the largest nose to rough, the smallest to finish. */
export function chooseTurningTool(task: CuttingTask, nose: 'largest' | 'smallest'): TurningTool | undefined {
  const tools = toolsOf(task.shop, 'turning tool').toSorted((a, b) => a.noseRadius - b.noseRadius)
  const tool = nose === 'largest' ? tools.at(-1) : tools[0]
  if (!tool) {
    task.report({
      code: 'cutting/no-tool',
      severity: 'error',
      message: 'the works has no turning tool',
      hint: 'list one under `tools:` in the shop file',
    })
  }
  return tool
}
