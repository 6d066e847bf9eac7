import type { Options } from './options.ts'
import { planFile } from './plan-file.ts'
import { showPlanned, type View } from './view.ts'
import type { World } from './world.ts'

/** Plans one part and shows one side of the plan. */
export const show = (file: string, options: Options, world: World, view: View): number =>
  showPlanned(planFile(file, options, world), options, world, view)
