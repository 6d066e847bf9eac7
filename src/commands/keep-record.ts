import { fixed, length } from '../figures.ts'
import { withItem } from '../part/add-to-list.ts'
import type { Part } from '../part/part.ts'
import { readShop } from '../part/read-shop.ts'
import type { Plan } from '../plan/plan.ts'
import type { ProposedRow } from '../record/measured-row.ts'
import type { Measured } from '../shop/record.ts'
import type { Shop } from '../shop/shop.ts'
import type { Loaded } from './load.ts'
import { wholePlan } from './plan-file.ts'
import { table } from './table.ts'
import { UsageProblem, type World } from './world.ts'

/** A row of `measured:` in one line of the shop file. */
const rowText = (row: Measured): string =>
  JSON.stringify(row)
    .replace(/"([a-z-]+)":/g, '$1: ')
    .replaceAll(',', ', ')

/** The shop file with the row, written once it reads as meant. */
export function keepRow({
  text,
  file,
  row,
  world,
}: {
  readonly text: string
  readonly file: string
  readonly row: Measured
  readonly world: World
}): void {
  const edited = withItem(text, 'measured', rowText(row))
  const { shop, findings } = readShop(edited, file)
  const kept = shop?.measured.some(
    ({ date, pieces, firm }) => date === row.date && pieces === row.pieces && firm === row.firm,
  )
  if (!kept)
    throw new UsageProblem(
      `${file} cannot take the row by itself (${findings[0]?.message ?? 'its measured: is written in another way'}): add it by hand: ${rowText(row)}`,
    )
  world.write({ path: file, content: edited })
}

/** What planning with the row would ask for instead: stock on diameter, case, hours in the furnace. */
export function savedBy(
  {
    plan,
    part,
    shop,
    asIssued,
  }: {
    readonly plan: Plan
    readonly part: Part
    readonly shop: Shop
    /** Nothing has changed since it was issued: it is what would be planned today. */
    readonly asIssued: boolean
  },
  { loaded, row, world }: { readonly loaded: Loaded; readonly row: Measured; readonly world: World },
): string {
  const now = asIssued ? plan : wholePlan(part, shop, loaded, world).plan
  const then = wholePlan(part, { ...shop, measured: [...shop.measured, row] }, loaded, world).plan
  if (!now || !then) return 'With this row the part could not be planned: check says why.\n'
  const stock = then.stock.flatMap(entry => {
    const before = now.stock.find(
      ({ surface, operation }) => surface === entry.surface && operation === entry.operation,
    )
    if (!before || entry.kind === 'face') return []
    return [
      [`${entry.surface}, ${entry.operation}`, length(before.onDiameter.nominal), length(entry.onDiameter.nominal)],
    ]
  })
  const hours = (of: Plan): string => (of.case?.time === undefined ? '' : fixed(of.case.time.nominal, 0))
  const rows = [
    ...stock,
    [
      'case to order, least',
      length(now.case?.ordered.least ?? 0, 'mm', 2),
      length(then.case?.ordered.least ?? 0, 'mm', 2),
    ],
    ['hours of treatment', hours(now), hours(then)],
  ]
  return `If the shop file had it, a plan made today would ask for (batch ${plan.batch.number} stays as it was issued):\n${table(
    [{ head: 'stock on diameter (mm)' }, { head: 'now', align: 'right' }, { head: 'with it', align: 'right' }],
    rows,
  )}`
}

/** Old beside new. */
export function proposalText({ row, before }: ProposedRow): string {
  return `${before ? `measured, as it stands:\n  - ${rowText(before)}\n` : ''}measured, with this batch (--keep adds it to the shop file):\n  - ${rowText(row)}\n`
}
