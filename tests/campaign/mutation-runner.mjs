// Runs the tests of a room again and again in one warm process, at the word of its parent, quickest files first.
import { createVitest } from 'vitest/node'

const root = process.argv[2]
process.chdir(root)

class AsGiven {
  sort = files => files
  shard = files => files
}

/** The files of this run alone: what vitest keeps knows the earlier runs too. */
let ended = []

const vitest = await createVitest('test', {
  root,
  config: 'tests/vitest.config.ts',
  watch: false,
  // Every file of a run shares the modules that an earlier one loaded: most of a short run is loading them.
  isolate: false,
  pool: 'threads',
  maxWorkers: 1,
  fileParallelism: false,
  bail: 1,
  reporters: [{ onTestModuleEnd: module => ended.push(module) }],
  sequence: { sequencer: AsGiven },
})

const took = new Map()
const costOf = ({ moduleId }) => took.get(moduleId) ?? 0

async function run({ filters, leftOut, changed }) {
  for (const path of changed) vitest.invalidateFile(path)
  const all = await vitest.globTestSpecifications(filters)
  const specs = all.filter(({ moduleId }) => !leftOut.some(part => moduleId.includes(part)))
  ended = []
  await vitest.runTestSpecifications(
    specs.sort((one, other) => costOf(one) - costOf(other)),
    true,
  )
  for (const module of ended) if (!took.has(module.moduleId)) took.set(module.moduleId, module.diagnostic().duration)
  const failed = ended.filter(module => module.state() === 'failed')
  const file = failed[0]?.relativeModuleId
  return { files: specs.length, passed: failed.length === 0 && ended.length === specs.length, file, by: file }
}

process.on('message', async message => {
  try {
    process.send(await run(message))
  } catch (error) {
    process.send({ files: 0, passed: false, by: String(error) })
  }
})
process.on('disconnect', () => process.exit())
process.send('ready')
