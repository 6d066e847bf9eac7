// node tests/campaign/kill.mjs [--count 200] [--seed N] [--from N]
// Kills the built command at random moments: no file may be half-written, and nothing may be left behind.
import { cpSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { bundled } from './bundled.mjs'

const root = fileURLToPath(new URL('../../', import.meta.url))
const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '200' },
    seed: { type: 'string', default: String(Date.now() % 1_000_000) },
    from: { type: 'string', default: '0' },
  },
})
const [count, seed, from] = [values.count, values.seed, values.from].map(Number)
const bundle = mkdtempSync(join(root, 'node_modules/.campaign-'))
const desk = mkdtempSync(join(tmpdir(), 'linerwright-kill-'))
process.chdir(root)
console.log(`kill: ${count} runs, seed ${seed}`)
try {
  const { killedRuns } = await bundled(root, bundle, 'kill', ['./tests/campaign/killed-runs.ts'])
  // The command as it is built now, whatever is built and changed while the campaign runs.
  for (const part of ['dist', 'templates', 'package.json'])
    cpSync(join(root, part), join(bundle, part), { recursive: true })
  const main = join(bundle, 'dist/main.cjs')
  const faults = await killedRuns({ main, root, desk }, { seed, from, count }, console.log)
  console.log(`${faults.length} faults`)
  for (const fault of faults) console.log(`  ${fault}`)
  process.exitCode = faults.length === 0 ? 0 : 1
} finally {
  rmSync(bundle, { recursive: true, force: true })
  rmSync(desk, { recursive: true, force: true })
}
