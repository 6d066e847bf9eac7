import type { Options } from './options.ts'
import { planFile } from './plan-file.ts'
import { route } from './route.ts'
import { showPlanned } from './view.ts'
import { UsageProblem, type World } from './world.ts'

/** The route; with `--why` the rules of one operation; with `--alternatives` the next best beside it. */
export async function routeCommand(file: string, options: Options, world: World): Promise<number> {
  const { why, alternatives, operation } = options
  if ([why, alternatives, operation].filter(given => given !== undefined).length > 1)
    throw new UsageProblem('--why, --alternatives and --operation ask different things: give one of them')
  if (why !== undefined)
    return showPlanned(planFile(file, options, world), options, world, (await import('./route-why.ts')).routeWhy(why))
  if (alternatives !== undefined)
    return (await import('./route-alternatives.ts')).routeAlternatives(file, alternatives, options, world)
  return showPlanned(planFile(file, options, world), options, world, route)
}
