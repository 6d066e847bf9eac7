import type { Tool } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import type { CuttingTask } from './cutting-task.ts'

/** The turning tool for outside and faces: the largest nose to rough, the smallest to finish. */
export function chooseTurningTool(
  task: CuttingTask,
  nose: 'largest' | 'smallest',
): (Tool & { readonly noseRadius: Millimetre }) | undefined {
  const tools = task.shop.tools
    .flatMap(tool =>
      tool.kind === 'turning tool' && tool.noseRadius !== undefined ? [{ ...tool, noseRadius: tool.noseRadius }] : [],
    )
    .toSorted((a, b) => a.noseRadius - b.noseRadius)
  const tool = nose === 'largest' ? tools.at(-1) : tools[0]
  if (!tool) {
    task.report({
      code: 'cutting/no-tool',
      severity: 'error',
      message: 'the works has no turning tool with a nose radius',
      hint: 'list one under `tools:` in the shop file',
    })
  }
  return tool
}
