import type { Part } from '../part/part.ts'
import { makePlan, type Planned, type PlanRequest } from '../plan/make-plan.ts'
import type { Shop } from '../shop/shop.ts'
import { fingerprintOf } from './fingerprint.ts'
import { type Loaded, planWith } from './load.ts'
import type { Options } from './options.ts'
import { PROGRAM, VERSION } from './version.ts'
import type { World } from './world.ts'

/** Reads a part and makes the whole Plan of it. */
export function planFile(file: string, options: Options, world: World): Planned & { readonly loaded: Loaded } {
  return planWith(file, options, world, (part, shop, loaded) => wholePlan(part, shop, loaded, world))
}

/** The whole Plan of what has been read. */
export const wholePlan = (part: Part, shop: Shop, loaded: Loaded, world: Pick<World, 'today'>): Planned =>
  makePlan(requestOf(part, shop, loaded, world))

/** What the Plan is made of. */
export function requestOf(
  part: Part,
  shop: Shop,
  { request: batch, date: given }: Loaded,
  world: Pick<World, 'today'>,
): PlanRequest {
  const date = given ?? world.today()
  const fingerprint = fingerprintOf({ part, shop, batch, date })
  return { part, shop, batch, issue: { date, fingerprint, program: `${PROGRAM} ${VERSION}` } }
}
