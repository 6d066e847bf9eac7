import { createHash } from 'node:crypto'
import { join } from 'node:path'
import { byPlace, type Finding, hasErrors } from '../finding.ts'
import type { Characteristic } from '../inspection/characteristic.ts'
import type { OwnColumns } from '../part/read-own-list.ts'
import { readPistons } from '../part/read-pistons.ts'
import { readResults } from '../part/read-results.ts'
import { readResultsCsv } from '../part/read-results-csv.ts'
import type { Results } from '../part/results.ts'
import type { Plan } from '../plan/plan.ts'
import { bookWith, contentOf, type Entry, entryOf, inOrder, type ResultsEntry, readBook } from '../record/book.ts'
import { checkResults } from '../record/check-results.ts'
import type { FinerGauge } from '../record/judge-results.ts'
import { measuredRow } from '../record/measured-row.ts'
import { pairBatch } from '../record/pair-batch.ts'
import { recordBatch } from '../record/record-batch.ts'
import type { Yields } from '../record/standing.ts'
import { uncertaintyOf } from '../shop/choose-gauge.ts'
import type { Shop } from '../shop/shop.ts'
import { fingerprintOf } from './fingerprint.ts'
import { folderOf, issuedPlan } from './issue.ts'
import { jsonText } from './json.ts'
import { keepRow, proposalText, savedBy } from './keep-record.ts'
import { load } from './load.ts'
import { pairingText } from './pairing-text.ts'
import { printResults } from './print-results.ts'
import { clearanceOf, columnsOf, lostOf, type RecordOptions } from './record-options.ts'
import { recordedText } from './recorded-text.ts'
import { reportBeside } from './report.ts'
import { STATUS, UsageProblem, type World } from './world.ts'

const BOOK = 'book.yaml'

/** Judges measured results by the plan as issued, and adds them to the book of the batch. */
export async function record(
  file: string,
  resultFiles: readonly string[],
  { for: readers, ...options }: RecordOptions,
  world: World,
): Promise<number> {
  const columns = columnsOf(options.columns)
  const read = resultFiles.map(name => readAny(name, world, { columns, after: options.operation }))
  const said = read.flatMap(({ results }) => results ?? [])
  const batch = options.batch ?? said.find(results => results.batch !== undefined)?.batch
  const loaded = load(file, { ...options, ...(batch !== undefined && { batch }) }, world)
  if (!loaded.part || !loaded.shop) {
    reportBeside(loaded.findings, world)
    return STATUS.errors
  }
  const of = { part: loaded.part, batch: loaded.request }
  const plan = issuedPlan(of, options, world)
  const folder = folderOf(of, options)
  const bookFile = join(folder, BOOK)
  const bookText = world.exists(bookFile) ? world.readText(bookFile) : ''
  const { entries: before, broken } = readBook(bookText)
  if (broken)
    throw new UsageProblem(
      `${bookFile} cannot be read in line ${broken.line}: mend that line, it is the book of the batch`,
    )
  const lost = lostOf(options.lost ?? [], options.date ?? world.today())
  const { shop } = loaded
  const names = shop.gauges.map(({ name }) => name)
  const findings = byPlace([
    ...read.flatMap(({ findings }) => findings),
    ...[...said, ...lost].flatMap(results => checkResults(plan, results, names)),
  ])
  const moved = movedOn(plan, loaded.part, shop, file)
  if (hasErrors(findings)) {
    reportBeside([...findings, ...moved], world)
    world.err(`nothing is added to ${bookFile}\n`)
    return STATUS.errors
  }
  const issued: Entry = { issued: plan.fingerprint, date: plan.date, pieces: plan.batch.start }
  const text = bookWith(bookText, [issued, ...[...said, ...lost].map(results => entryOf(results, hashOf(results)))])
  const all = readBook(text).entries
  const entries = inOrder(all.filter((entry): entry is ResultsEntry => 'results' in entry))
  const tray = options.pair === undefined ? undefined : readPistons(world.readText(options.pair), options.pair)
  const wanted = clearanceOf(options)
  const recorded = recordBatch({ plan, entries, yields: yieldsOf(plan, shop), gaugesFor: finerIn(shop) })
  const added = all.length - before.length
  const pairing =
    tray?.pistons && wanted
      ? pairBatch({
          plan,
          judged: recorded.judged,
          lost: new Set(recorded.standing.lost.map(({ serial }) => serial)),
          pistons: tray.pistons,
          clearance: wanted,
        })
      : undefined
  const proposed = recorded.learnt && measuredRow(plan, recorded.learnt, shop)
  const written = readers
    ? await printResults({ plan, recorded, pairing, entries }, readers, { folder, options, world })
    : []
  if (options.keep && proposed)
    keepRow({ text: loaded.texts.shop, file: loaded.texts.shopFile, row: proposed.row, world })
  if (said.length + lost.length > 0 && added > 0) world.write({ path: bookFile, content: text })
  const everything = [...findings, ...(tray?.findings ?? []), ...recorded.findings, ...moved]
  const { findings: _, ...data } = recorded
  world.out(
    options.json
      ? jsonText({
          part: plan.part,
          batch: plan.batch,
          fingerprint: plan.fingerprint,
          book: entries.map(({ results, date }) => ({ results, date })),
          ...data,
          ...(pairing && { pairing }),
          ...(proposed && { measured: proposed }),
          ...(written.length > 0 && { written }),
          findings: everything,
        })
      : recordedText(plan, recorded, options) +
          (proposed
            ? `\n${proposalText(proposed)}${savedBy({ plan, part: loaded.part, shop, asIssued: moved.length === 0 }, { loaded, row: proposed.row, world })}`
            : '') +
          (pairing ? pairingText(pairing, options) : '') +
          written.map(path => `${path}\n`).join(''),
  )
  reportBeside(everything, world)
  return hasErrors(everything) ? STATUS.errors : STATUS.fine
}

function readAny(
  name: string,
  world: World,
  list: { readonly columns: OwnColumns | undefined; readonly after: number | undefined },
): { readonly results?: Results; readonly findings: readonly Finding[] } {
  const text = world.readText(name)
  if (!/\.(csv|txt)$/i.test(name)) return readResults(text, name)
  return readResultsCsv(text, name, {
    ...(list.columns && { columns: list.columns }),
    ...(list.after !== undefined && { after: list.after }),
  })
}

const hashOf = (results: Results): string => createHash('sha256').update(contentOf(results)).digest('hex').slice(0, 12)

/** The paper is what was issued: where the files have changed since, it says so and judges by the paper. */
function movedOn(
  plan: Plan,
  part: Parameters<typeof fingerprintOf>[0]['part'],
  shop: Shop,
  file: string,
): readonly Finding[] {
  const { number, quantity, heat } = plan.batch
  const batch = { number, quantity, ...(heat !== undefined && { heat }) }
  if (fingerprintOf({ part, shop, batch, date: plan.date }) === plan.fingerprint) return []
  return [
    {
      code: 'results/moved-on',
      severity: 'note',
      message: `the files are no longer those that the plan of ${plan.date} was issued from: the pieces are judged by the plan as issued`,
      at: { file, line: 1, column: 1 },
      hint: 'traveller --force issues anew, and replaces the paper',
    },
  ]
}

function yieldsOf(plan: Plan, shop: Shop): Yields {
  const { yields, confidence } = shop.habits
  return {
    whole: plan.batch.yield,
    confidence,
    ahead: upTo =>
      plan.operations
        .filter(({ number }) => upTo === undefined || number > upTo)
        .reduce((product, { process }) => product * (yields[process] ?? 1), 1),
  }
}

/** Of the kind of the gauge that was planned, those that reach, the plainest first. */
const finerIn =
  (shop: Shop) =>
  (of: Characteristic): readonly FinerGauge[] => {
    const kind = shop.gauges.find(({ name }) => name === of.gauge)?.kind
    const size = of.nominal ?? of.upper ?? of.lower ?? 0
    return shop.gauges
      .filter(gauge => gauge.kind === kind && size >= gauge.from && size <= gauge.to)
      .map(gauge => ({ name: gauge.name, uncertainty: uncertaintyOf(gauge, size) }))
      .toSorted((one, other) => other.uncertainty - one.uncertainty)
  }
