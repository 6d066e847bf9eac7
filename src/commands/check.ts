import { hasErrors } from '../finding.ts'
import type { Options } from './options.ts'
import { planFile } from './plan-file.ts'
import { overEach } from './progress.ts'
import { counted, listed } from './report.ts'
import { STATUS, type World } from './world.ts'

/** Reads and plans every part, and lists every problem: here the findings are the result, so they go to standard output. */
export async function check(files: readonly string[], options: Options, world: World): Promise<number> {
  const checked = await overEach(files, world, file => ({ file, findings: planFile(file, options, world).findings }))
  const all = checked.flatMap(({ findings }) => findings)
  if (options.json) world.out(`${JSON.stringify(checked, null, 2)}\n`)
  else {
    for (const { file, findings } of checked) {
      world.out(listed(findings, world.terminal.colour))
      world.out(`${file}: ${counted(findings)}\n`)
    }
  }
  return hasErrors(all) ? STATUS.errors : STATUS.fine
}
