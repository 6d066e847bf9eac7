import type { PlannedPort, PortWindow } from '../ports/port.ts'
import type { Tool } from '../shop/shop.ts'
import type { CuttingTask } from './cutting-task.ts'
import type { EndMill } from './end-mill-setting.ts'
import type { EntryDrill } from './entry-drilling.ts'
import { figure } from './figure.ts'

/** Teeth and stick-out of a cutter whose own are not listed. Common practice, no source. */
const USUAL = { teeth: 4, fluteOverDiameter: 3, reachOverShank: 3, point: 140 } as const

/** The end mill that the window was planned for: by name, else by its diameter. Without one nothing is milled. */
export function cutterFor(task: CuttingTask, port: PlannedPort, window: PortWindow): EndMill | undefined {
  const tool = toolFor(task, 'end mill', window.tools?.cutter, window.cutter)
  if (!tool) {
    // Where the window knows its tools, the search for a cutter has already been reported.
    if (window.tools === undefined) {
      task.report({
        code: 'cutting/no-cutter',
        severity: 'error',
        message: `${port.name}: the works has no end mill of ${figure(window.cutter)} mm`,
        hint: 'list it under `tools:` in the shop file',
        path: '/ports',
      })
    }
    return undefined
  }
  const { diameter } = tool
  const shank = tool.shank ?? diameter
  const fluteLength = tool.fluteLength ?? USUAL.fluteOverDiameter * diameter
  return {
    name: tool.name,
    diameter,
    teeth: tool.teeth ?? USUAL.teeth,
    fluteLength,
    reach: Math.max(tool.reach ?? USUAL.reachOverShank * shank, fluteLength),
    shank,
  }
}

export function drillFor(task: CuttingTask, window: PortWindow): EntryDrill | undefined {
  const tool = toolFor(task, 'drill', window.tools?.drill, window.entryHole.diameter)
  return tool && { name: tool.name, diameter: tool.diameter, point: tool.point ?? USUAL.point }
}

type Sized = Tool & { readonly diameter: number }

function toolFor({ shop }: CuttingTask, kind: Tool['kind'], name: string | undefined, size: number): Sized | undefined {
  const sized = shop.tools.flatMap(tool =>
    tool.kind === kind && tool.diameter !== undefined ? [{ ...tool, diameter: tool.diameter }] : [],
  )
  return sized.find(tool => tool.name === name) ?? sized.find(({ diameter }) => Math.abs(diameter - size) < 1e-6)
}
