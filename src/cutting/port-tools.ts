import type { PortWindow } from '../ports/port.ts'
import { type Drill, type EndMill, toolsOf } from '../shop/tool.ts'
import type { CuttingTask } from './cutting-task.ts'

/** The end mill that the window was planned for, by its name. Without one nothing is milled: the search has been reported. */
export const cutterFor = ({ shop }: CuttingTask, { tools }: PortWindow): EndMill | undefined =>
  toolsOf(shop, 'end mill').find(({ name }) => name === tools.cutter)

/** The larger one that may rough it. */
export const rougherFor = ({ shop }: CuttingTask, { tools }: PortWindow): EndMill | undefined =>
  toolsOf(shop, 'end mill').find(({ name }) => name === tools.rougher)

export const drillFor = ({ shop }: CuttingTask, { tools }: PortWindow): Drill | undefined =>
  toolsOf(shop, 'drill').find(({ name }) => name === tools.drill)
