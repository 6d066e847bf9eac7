import { hasErrors } from '../finding.ts'
import { labels } from '../sheets/labels.ts'
import { packet } from '../sheets/packet.ts'
import { planToIssue, writeIssued } from './issue.ts'
import { jsonText } from './json.ts'
import { partsAmong } from './load.ts'
import type { Options } from './options.ts'
import { paperOptions } from './paper.ts'
import { planFile } from './plan-file.ts'
import { printAgain } from './print-again.ts'
import { overEach } from './progress.ts'
import { counted, reportBeside } from './report.ts'
import { STATUS, type World } from './world.ts'

type Outcome = { readonly file: string; readonly written: readonly string[]; readonly failed: boolean }

/** Issues the packet of every part, or with `--sheet` prints sheets of an issued one again. A plan that cannot work gets no paper: its errors are printed instead. */
export async function traveller(files: readonly string[], options: Options, world: World): Promise<number> {
  const paper = { ...paperOptions(options, world), ...(options.for && { readers: options.for }) }
  const { sheet } = options
  const work = async (file: string, beside: World): Promise<Outcome> => {
    if (sheet) {
      return { file, written: await printAgain(file, sheet, { options, paper, world: beside }), failed: false }
    }
    const { plan, findings } = planFile(file, options, beside)
    reportBeside(findings, beside)
    if (!plan || hasErrors(findings)) {
      beside.err(`${file}: no packet: ${counted(findings)}\n`)
      return { file, written: [], failed: true }
    }
    const issued = planToIssue(plan, options, beside)
    const tags = options.labels && (await labels(issued, options.labels, paper))
    const printed = await packet(issued, paper)
    const documents = [...printed.documents, ...(tags ? [{ name: 'labels', pdf: tags }] : [])]
    return {
      file,
      written: writeIssued({ plan: issued, printed: { ...printed, documents }, options, world: beside }),
      failed: false,
    }
  }
  const { results, failed, status } = await overEach({
    files: partsAmong(files, world),
    world,
    trace: options.trace === true,
    work,
  })
  const outcomes = [...results, ...failed.map((file): Outcome => ({ file, written: [], failed: true }))]
  const written = outcomes.flatMap(outcome => outcome.written)
  if (options.json) world.out(jsonText(outcomes))
  else for (const path of written) world.out(`${path}\n`)
  return Math.max(status, results.some(({ failed }) => failed) ? STATUS.errors : STATUS.fine)
}
