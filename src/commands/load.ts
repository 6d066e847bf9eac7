import { createHash } from 'node:crypto'
import { dirname, join } from 'node:path'
import type { BatchRequest } from '../batch/batch.ts'
import { byPlace, type Finding, hasErrors } from '../finding.ts'
import type { Part } from '../part/part.ts'
import { type BatchFile, readBatch } from '../part/read-batch.ts'
import { readPart } from '../part/read-part.ts'
import { readShop } from '../part/read-shop.ts'
import { makePlan, type Planned } from '../plan/make-plan.ts'
import { BUILT_IN_SHOP } from '../shop/built-in-shop.ts'
import type { Shop } from '../shop/shop.ts'
import type { Options } from './options.ts'
import { PROGRAM, VERSION } from './version.ts'
import type { World } from './world.ts'

/** Good pieces planned for when nobody says how many. */
const QUANTITY = 10
/** Printed where nobody has given a batch number. */
const BATCH = 'draft'

export type Loaded = {
  readonly file: string
  readonly part?: Part
  readonly shop?: Shop
  readonly request: BatchRequest
  readonly date: string
  readonly fingerprint: string
  readonly findings: readonly Finding[]
}

/** Reads a part with its shop file and batch: `--shop`, or `shop.yaml` beside the part, or the built-in shop. */
export function load(file: string, options: Options, world: World): Loaded {
  const partText = world.readText(file)
  const beside = join(dirname(file), 'shop.yaml')
  const shopFile = options.shop ?? (world.exists(beside) ? beside : undefined)
  const shopText = shopFile === undefined ? '' : world.readText(shopFile)
  const { part, findings: inPart } = readPart(partText, file)
  const { shop, findings: inShop } =
    shopFile === undefined ? { shop: BUILT_IN_SHOP, findings: [] } : readShop(shopText, shopFile)
  const { batch, findings: inBatch } = batchOf(options, world)
  return {
    file,
    ...(part && { part }),
    ...(shop && { shop }),
    request: {
      number: batch.number ?? BATCH,
      quantity: options.quantity ?? batch.quantity ?? QUANTITY,
      ...(batch.heat !== undefined && { heat: batch.heat }),
    },
    date: options.date ?? batch.date ?? world.today(),
    fingerprint: fingerprintOf(partText, shopText),
    findings: byPlace([...inPart, ...inShop, ...inBatch]),
  }
}

/** `--batch` is a batch number, or a batch file by its ending. */
function batchOf({ batch }: Options, world: World): { batch: BatchFile; findings: readonly Finding[] } {
  if (batch === undefined) return { batch: {}, findings: [] }
  if (!/\.ya?ml$/i.test(batch)) return { batch: { number: batch }, findings: [] }
  const read = readBatch(world.readText(batch), batch)
  return { batch: read.batch ?? {}, findings: read.findings }
}

/** Ties paper to what it was made from: part file, shop file and program version. */
export function fingerprintOf(partText: string, shopText: string): string {
  const hash = createHash('sha256')
  for (const text of [partText, shopText, VERSION]) hash.update(`${text.length}:`).update(text)
  return hash.digest('hex').slice(0, 12)
}

/** Reads and plans. A part that has errors is not planned: the next phase never starts on it. */
export function planFile(file: string, options: Options, world: World): Planned & { readonly loaded: Loaded } {
  const loaded = load(file, options, world)
  const { part, shop, request, date, fingerprint, findings } = loaded
  if (!part || !shop || hasErrors(findings)) return { findings, loaded }
  const planned = makePlan(part, shop, request, { date, fingerprint, program: `${PROGRAM} ${VERSION}` })
  const all = byPlace([...findings, ...planned.findings])
  return { findings: all, loaded, ...(planned.plan && { plan: { ...planned.plan, findings: all } }) }
}
