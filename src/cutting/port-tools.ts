import type { PortWindow } from '../ports/port.ts'
import type { Drill, EndMill } from '../shop/tool.ts'
import { toolNamed } from '../shop/tools-to-get.ts'
import type { CuttingTask } from './cutting-task.ts'

/** The end mill that the window was planned for, by its name. Without one nothing is milled: the search has been reported. */
export const cutterFor = ({ shop }: CuttingTask, { tools }: PortWindow): EndMill | undefined =>
  toolNamed(shop, 'end mill', tools.cutter)

/** The larger one that may rough it. */
export const rougherFor = ({ shop }: CuttingTask, { tools }: PortWindow): EndMill | undefined =>
  toolNamed(shop, 'end mill', tools.rougher)

export const drillFor = ({ shop }: CuttingTask, { tools }: PortWindow): Drill | undefined =>
  toolNamed(shop, 'drill', tools.drill)
