import { hasErrors } from '../finding.ts'
import { packet } from '../sheets/packet.ts'
import type { Options } from './options.ts'
import { fileStem, paperOptions, writeDocument } from './paper.ts'
import { planFile } from './plan-file.ts'
import { overEach } from './progress.ts'
import { counted, reportBeside } from './report.ts'
import { STATUS, type World } from './world.ts'

type Outcome = { readonly file: string; readonly written: readonly string[]; readonly failed: boolean }

/** Prints the packet of every part. A plan that cannot work gets no paper: its errors are printed instead. */
export async function traveller(files: readonly string[], options: Options, world: World): Promise<number> {
  const paper = paperOptions(options, world)
  const outcomes = await overEach(files, world, async (file): Promise<Outcome> => {
    const { plan, findings } = planFile(file, options, world)
    reportBeside(findings, world)
    if (!plan || hasErrors(findings)) {
      world.err(`${file}: no packet: ${counted(findings)}\n`)
      return { file, written: [], failed: true }
    }
    const printed = await packet(plan, paper)
    return { file, written: writeDocument(fileStem(plan), printed, plan, options, world), failed: false }
  })
  const written = outcomes.flatMap(outcome => outcome.written)
  if (options.json) world.out(`${JSON.stringify(outcomes, null, 2)}\n`)
  else for (const path of written) world.out(`${path}\n`)
  return outcomes.some(({ failed }) => failed) ? STATUS.errors : STATUS.fine
}
