import type { Part } from '../part/part.ts'
import { makePlan, type Planned } from '../plan/make-plan.ts'
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
export function wholePlan(
  part: Part,
  shop: Shop,
  { request: batch, date: given }: Loaded,
  world: Pick<World, 'today'>,
): Planned {
  const date = given ?? world.today()
  const fingerprint = fingerprintOf({ part, shop, batch, date })
  return makePlan({ part, shop, batch, issue: { date, fingerprint, program: `${PROGRAM} ${VERSION}` } })
}
