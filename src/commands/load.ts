import { dirname, join } from 'node:path'
import type { BatchRequest } from '../batch/batch.ts'
import { byPlace, type Finding, hasErrors } from '../finding.ts'
import { type FileKind, kindOfFile } from '../part/file-kind.ts'
import { fittedOf } from '../part/fitted.ts'
import { type Part, placeOf } from '../part/part.ts'
import { type BatchFile, readBatch, readBatchNumber } from '../part/read-batch.ts'
import { type ReadPart, readPart } from '../part/read-part.ts'
import { readShop } from '../part/read-shop.ts'
import { fileOfSetting, setValues } from '../part/set-values.ts'
import { type Setting, settingOf } from '../part/setting.ts'
import { BUILT_IN_SHOP } from '../shop/built-in-shop.ts'
import { type FactSaid, factSaid, saidOver } from '../shop/facts-said.ts'
import type { Shop } from '../shop/shop.ts'
import type { Options } from './options.ts'
import { FileProblem, UsageProblem, type World } from './world.ts'

/** Good pieces planned for when nobody says how many. */
const QUANTITY = 10
/** Printed where nobody has given a batch number. */
const BATCH = 'draft'

export type Loaded = {
  readonly file: string
  readonly part?: Part
  readonly shop?: Shop
  readonly request: BatchRequest
  /** That of `--date` or of the batch file. */
  readonly date?: string
  readonly findings: readonly Finding[]
  /** As read, with what `--set` changed. */
  readonly texts: { readonly part: string; readonly shop: string; readonly shopFile: string }
}

/** Reads a part with its shop file and batch: `--shop`, or `shop.yaml` beside the part, or the built-in shop. */
export function load(file: string, options: Options, world: World): Loaded {
  const written = world.readText(file)
  const kind = kindOfFile(written)
  if (kind !== 'part') throw new UsageProblem(`${file} is a ${kind} file; a part file is wanted`)
  const beside = join(dirname(file), 'shop.yaml')
  const shopFile = options.shop ?? (world.exists(beside) ? beside : undefined)
  const shopWritten = shopFile === undefined ? '' : world.readText(shopFile)
  const set = settingsOf(options.set ?? [])
  const changedPart = setValues(written, file, set.part)
  const changedShop = setValues(shopWritten, shopFile ?? 'shop.yaml', set.shop, 'shop')
  const partText = changedPart.text ?? written
  const shopText = changedShop.text ?? shopWritten
  const own = readPart(partText, file)
  const { part, findings: inPart } = own.part?.fits === undefined ? own : withMate(own.part, own.findings, file, world)
  const { shop, findings: inShop } =
    shopFile === undefined && shopText === ''
      ? { shop: BUILT_IN_SHOP, findings: [] }
      : readShop(shopText, shopFile ?? 'shop.yaml')
  const { batch, findings: inBatch } = batchOf(options, world)
  const date = options.date ?? batch.date
  return {
    file,
    texts: { part: partText, shop: shopText, shopFile: shopFile ?? 'shop.yaml' },
    ...(part && { part }),
    ...(shop && { shop: saidOver(shop, set.said) }),
    request: {
      number: batch.number ?? BATCH,
      quantity: options.quantity ?? batch.quantity ?? QUANTITY,
      ...(batch.heat !== undefined && { heat: batch.heat }),
      ...begun(options.start ?? batch.begins),
    },
    ...(date !== undefined && { date }),
    findings: byPlace([...changedPart.findings, ...changedShop.findings, ...inPart, ...inShop, ...inBatch]),
  }
}

/** The liner that a piston runs in stands in a file of its own, beside the piston's. */
function withMate(part: Part, findings: readonly Finding[], file: string, world: World): ReadPart {
  const mate = join(dirname(file), part.fits ?? '')
  const at = placeOf(part, '/fits')
  const fault = (message: string, hint: string): ReadPart => ({
    part,
    findings: [...findings, { code: 'input/feature', severity: 'error', message, hint, at }],
  })
  if (!world.exists(mate))
    return fault(`fits: there is no ${part.fits} beside this file`, 'name the part file of the liner')
  const read = readPart(world.readText(mate), mate)
  const fitted = read.part && fittedOf(read.part)
  if (!fitted) return fault(`fits: ${part.fits} has errors, or no bore`, `check ${part.fits} first`)
  return { part: { ...part, fitted }, findings }
}

/**
 * Settings by the file that they belong to; a path that neither file has is judged with the part's. A fact said in one word is
 * a habit of the shop file, and goes before its records.
 */
function settingsOf(
  texts: readonly string[],
): Readonly<Record<'part' | 'shop', readonly Setting[]>> & { readonly said: readonly FactSaid[] } {
  const settings = texts.map((text): Setting => {
    const setting = settingOf(text)
    if (setting) return setting
    throw new UsageProblem(`--set wants a path and a value, as in stock.bore=0.16 or exhaust.opens+=2, got "${text}"`)
  })
  const isShop = ({ path }: Setting): boolean => fileOfSetting(path) === 'shop'
  const spelt = settings.map(setting =>
    factSaid(setting.path) ? { ...setting, path: `habits.${setting.path}` } : setting,
  )
  return {
    part: spelt.filter(setting => !isShop(setting)),
    shop: spelt.filter(isShop),
    said: settings.flatMap(({ path }) => factSaid(path) ?? []),
  }
}

const begun = (begins: string | undefined) => (begins === undefined ? {} : { begins })

/** `--batch` is a batch number, or a batch file by its ending. */
function batchOf({ batch }: Options, world: World): { batch: BatchFile; findings: readonly Finding[] } {
  if (batch === undefined) return { batch: {}, findings: [] }
  if (!/\.ya?ml$/i.test(batch)) {
    const { batch: given, findings } = readBatchNumber(batch, '--batch')
    const fault = findings.find(({ severity }) => severity === 'error')
    if (fault || !given) throw new UsageProblem(`--batch: ${fault?.message ?? 'that is no batch number'}`)
    return { batch: given, findings }
  }
  const read = readBatch(world.readText(batch), batch)
  return { batch: read.batch ?? {}, findings: read.findings }
}

/** Reads and plans as far as `make` goes. A part that has errors is not planned: the next phase never starts on it. */
export function planWith<P extends { readonly findings: readonly Finding[] }>(
  file: string,
  options: Options,
  world: World,
  make: (part: Part, shop: Shop, loaded: Loaded) => { readonly plan?: P; readonly findings: readonly Finding[] },
): { readonly plan?: P; readonly findings: readonly Finding[]; readonly loaded: Loaded } {
  const loaded = load(file, options, world)
  const { part, shop, findings } = loaded
  if (!part || !shop || hasErrors(findings)) return { findings, loaded }
  const planned = make(part, shop, loaded)
  const all = byPlace([...findings, ...planned.findings])
  return { findings: all, loaded, ...(planned.plan && { plan: { ...planned.plan, findings: all } }) }
}

/** Of several files those that are parts, so that \`parts/*.yaml\` may be said where a shop and a batch file lie beside them. */
export function partsAmong(files: readonly string[], world: World): readonly string[] {
  if (files.length < 2) return files
  return files.filter(file => {
    const kind = kindOf(file, world)
    if (kind !== 'part') world.err(`${file}: a ${kind} file, passed over\n`)
    return kind === 'part'
  })
}

/** A file that cannot be read is taken for a part: whoever reads it says why. */
export function kindOf(file: string, world: World): FileKind {
  try {
    return kindOfFile(world.readText(file))
  } catch (error) {
    if (error instanceof FileProblem) return 'part'
    throw error
  }
}
