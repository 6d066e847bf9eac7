import { join } from 'node:path'
import type { Plan } from '../plan/plan.ts'
import type { ResultsReader } from '../reader.ts'
import type { ResultsEntry } from '../record/book.ts'
import type { PairedBatch } from '../record/pair-batch.ts'
import type { Recorded } from '../record/record-batch.ts'
import type { Options } from './options.ts'
import { UsageProblem, type World } from './world.ts'

/** What each reader would have, where there is nothing to print for him. */
const NOTHING: { readonly [reader in ResultsReader]: string } = {
  inspection: 'nothing is measured yet',
  grinder: 'no piece is waiting to be ground',
  fitter: '--pair and --clearance say what to pair, and no pair was found',
  customer: 'no finished piece is measured',
  file: 'nothing is measured yet',
}

/** Prints what came back into the folder of the batch, and says which files. The sheets are loaded for this alone. */
export async function printResults(
  {
    plan,
    recorded,
    pairing,
    entries,
  }: {
    readonly plan: Plan
    readonly recorded: Recorded
    readonly pairing: PairedBatch | undefined
    readonly entries: readonly ResultsEntry[]
  },
  readers: readonly ResultsReader[],
  { folder, options, world }: { readonly folder: string; readonly options: Options; readonly world: World },
): Promise<readonly string[]> {
  const [{ resultsPaper, resultsReadersOf }, { paperFiles }] = await Promise.all([
    import('../sheets/results-paper.ts'),
    import('./paper-files.ts'),
  ])
  const dates = entries.flatMap(({ date }) => (date === undefined ? [] : [date])).toSorted()
  const given = { plan, recorded, pairing, dates }
  const served = resultsReadersOf(given)
  const without = readers.find(reader => !served.includes(reader))
  if (without !== undefined) throw new UsageProblem(`--for ${without}: ${NOTHING[without]}`)
  const { paper, units, templates } = options
  // On a screen it is read only: what is measured is taken on the page of the packet.
  const { script: _, ...files } = paperFiles(world, templates)
  const { documents, html } = await resultsPaper(given, { ...files, paper, units, readers })
  const written = [
    ...documents.map(({ name, pdf }) => ({ path: join(folder, `${name}.pdf`), content: pdf })),
    ...(html === undefined ? [] : [{ path: join(folder, 'results.html'), content: html }]),
  ]
  world.write(...written)
  return written.map(({ path }) => path)
}
