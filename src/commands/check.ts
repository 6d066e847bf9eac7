import { type Finding, hasErrors } from '../finding.ts'
import { readBatch } from '../part/read-batch.ts'
import { readBench } from '../part/read-bench.ts'
import { readResults } from '../part/read-results.ts'
import { readShop } from '../part/read-shop.ts'
import { readTrial } from '../part/read-trial.ts'
import { jsonText } from './json.ts'
import { kindOf } from './load.ts'
import type { Options } from './options.ts'
import { planFile } from './plan-file.ts'
import { overEach } from './progress.ts'
import { counted, listed } from './report.ts'
import { STATUS, type World } from './world.ts'

/** A shop, batch, bench, results or trial file is judged by itself; a part is planned. */
function findingsOf(file: string, options: Options, world: World): readonly Finding[] {
  switch (kindOf(file, world)) {
    case 'shop':
      return readShop(world.readText(file), file).findings
    case 'batch':
      return readBatch(world.readText(file), file).findings
    case 'bench':
      return readBench(world.readText(file), file).findings
    case 'results':
      return readResults(world.readText(file), file).findings
    case 'trial':
      return readTrial(world.readText(file), file).findings
    case 'part':
      return planFile(file, options, world).findings
  }
}

/** Reads and plans every part, and lists every problem: here the findings are the result, so they go to standard output. */
export async function check(files: readonly string[], options: Options, world: World): Promise<number> {
  const { results, failed, status } = await overEach({
    files,
    world,
    trace: options.trace === true,
    work: file => ({ file, findings: findingsOf(file, options, world) }),
  })
  const checked = [...results, ...failed.map(file => ({ file, findings: [], refused: true }))]
  const all = checked.flatMap(({ findings }) => findings)
  if (options.json) world.out(jsonText(checked))
  else {
    for (const { file, findings } of results) {
      world.out(listed(findings, world.terminal.colour))
      world.out(`${file}: ${counted(findings)}\n`)
    }
  }
  return Math.max(status, hasErrors(all) ? STATUS.errors : STATUS.fine)
}
