import { type Finding, hasErrors } from '../finding.ts'
import type { Part } from '../part/part.ts'
import { partFrom } from '../part/read-part.ts'
import { shopFrom } from '../part/read-shop.ts'
import { fileOfSetting, openForNumbers } from '../part/set-values.ts'
import type { Changed } from '../plan/sweep.ts'
import type { Shop } from '../shop/shop.ts'
import { jsonText } from './json.ts'
import { type Loaded, load } from './load.ts'
import type { Options } from './options.ts'
import { reportBeside } from './report.ts'
import { STATUS, UsageProblem, type World } from './world.ts'

/** Most values that one sweep plans: more than a table or a picture can show. */
const MOST = 500

/** A part and its shop with one number that may take other values; those it shall take. */
export type Swept = {
  readonly path: string
  readonly values: readonly number[]
  readonly part: Part
  readonly shop: Shop
  readonly loaded: Loaded
  readonly changedTo: (value: number) => Changed
}

/**
 * Opens a sweep, hands it to `show` and ends with its status. The files' own findings come first; of the values that make no
 * part the first one's.
 */
export async function withSweep(
  file: string,
  text: string,
  { options, world }: { readonly options: Options; readonly world: World },
  show: (swept: Swept, findings: Finding[]) => Promise<void>,
): Promise<number> {
  const { path, values } = rangeOf(text)
  const loaded = load(file, options, world)
  const findings: Finding[] = [...loaded.findings]
  if (!loaded.part || !loaded.shop || hasErrors(findings)) {
    if (options.json) world.out(jsonText({ path, findings }))
    reportBeside(findings, world)
    return STATUS.errors
  }
  const { part, shop } = loaded
  const change = changer(path, loaded, part, shop)
  const changedTo = (value: number): Changed => {
    const changed = change(value)
    if ('findings' in changed && !hasErrors(findings)) findings.push(...changed.findings)
    return changed
  }
  await show({ path, values, part, shop, loaded, changedTo }, findings)
  reportBeside(findings, world)
  return hasErrors(findings) ? STATUS.errors : STATUS.fine
}

/** Reads again only the file that the path belongs to. */
export function changer(path: string, { file, texts }: Loaded, part: Part, shop: Shop): (value: number) => Changed {
  const isShop = fileOfSetting(path) === 'shop'
  const { withNumber, findings } = isShop
    ? openForNumbers(texts.shop, texts.shopFile, path, 'shop')
    : openForNumbers(texts.part, file, path, 'part')
  if (!withNumber) return () => ({ findings })
  return value => {
    const read = isShop ? shopFrom(withNumber(value)) : partFrom(withNumber(value))
    const changed = { part, shop, ...read }
    return hasErrors(read.findings) ? { findings: read.findings } : { part: changed.part, shop: changed.shop }
  }
}

/** `stock.bore=0.10:0.40:0.02`: ends included, each value to the places that the step is written with. */
function rangeOf(text: string): { readonly path: string; readonly values: readonly number[] } {
  const found = /^([^=]+)=(-?[\d.]+):(-?[\d.]+):([\d.]+)$/.exec(text.replaceAll(' ', ''))
  const [, path = '', ...ends] = found ?? []
  const [from = Number.NaN, to = Number.NaN, step = Number.NaN] = ends.map(Number)
  const count = Math.floor((to - from) / step + 1e-9) + 1
  if (!found || !(count >= 1 && count <= MOST)) {
    throw new UsageProblem(
      `--sweep wants path=from:to:step with at most ${MOST} values, as in stock.bore=0.10:0.40:0.02, got "${text}"`,
    )
  }
  const places = Math.max(...ends.map(end => end.split('.')[1]?.length ?? 0))
  return { path, values: Array.from({ length: count }, (_, i) => Number((from + i * step).toFixed(places))) }
}
