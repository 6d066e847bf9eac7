import { createHash } from 'node:crypto'
import { makePlan, type Planned } from '../plan/make-plan.ts'
import { type Loaded, planWith } from './load.ts'
import type { Options } from './options.ts'
import { PROGRAM, VERSION } from './version.ts'
import type { World } from './world.ts'

/** Reads a part and makes the whole Plan of it. */
export function planFile(file: string, options: Options, world: World): Planned & { readonly loaded: Loaded } {
  return planWith(file, options, world, (part, shop, { request, date, texts }) =>
    makePlan({
      part,
      shop,
      batch: request,
      issue: {
        date: date ?? world.today(),
        fingerprint: fingerprintOf(texts.part, texts.shop),
        program: `${PROGRAM} ${VERSION}`,
      },
    }),
  )
}

/** Ties paper to what it was made from: part file, shop file and program version. */
function fingerprintOf(partText: string, shopText: string): string {
  const hash = createHash('sha256')
  for (const text of [partText, shopText, VERSION]) hash.update(`${text.length}:`).update(text)
  return hash.digest('hex').slice(0, 12)
}
