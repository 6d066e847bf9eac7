import type { PlannedPort, PortWindow } from '../ports/port.ts'
import { type Drill, type EndMill, toolsOf } from '../shop/tool.ts'
import type { Millimetre } from '../units.ts'
import type { CuttingTask } from './cutting-task.ts'
import { figure } from './figure.ts'

/** The end mill that the window was planned for: by name, else by its diameter. Without one nothing is milled. */
export function cutterFor(task: CuttingTask, port: PlannedPort, window: PortWindow): EndMill | undefined {
  const tool = named(toolsOf(task.shop, 'end mill'), window.tools?.cutter, window.cutter)
  // Where the window knows its tools, the search for a cutter has already been reported.
  if (!tool && window.tools === undefined) {
    task.report({
      code: 'cutting/no-cutter',
      severity: 'error',
      message: `${port.name}: the works has no end mill of ${figure(window.cutter)} mm`,
      hint: 'list it under `tools:` in the shop file',
      path: '/ports',
    })
  }
  return tool
}

export const drillFor = (task: CuttingTask, window: PortWindow): Drill | undefined =>
  named(toolsOf(task.shop, 'drill'), window.tools?.drill, window.entryHole.diameter)

const named = <T extends EndMill | Drill>(
  tools: readonly T[],
  wanted: string | undefined,
  size: Millimetre,
): T | undefined =>
  tools.find(({ name }) => name === wanted) ?? tools.find(({ diameter }) => Math.abs(diameter - size) < 1e-6)
