// Runs a campaign in a worker, and stands beside it with a watch: an input that the worker does not come back from is
// named, and the campaign goes on behind it.
import { execFileSync } from 'node:child_process'
import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { parseArgs } from 'node:util'
import { Worker } from 'node:worker_threads'
import { bundled } from './bundled.mjs'

const root = fileURLToPath(new URL('../../', import.meta.url))
/** ms without a word from the worker, over the five seconds that a command may take. */
const PATIENCE = 30_000

/** `kind` is `mutants` or `plausible`; `defaults` its usual options. */
export async function watched(kind, defaults) {
  const { values } = parseArgs({
    options: {
      count: { type: 'string', default: String(defaults.count) },
      seed: { type: 'string', default: String(Date.now() % 1_000_000) },
      from: { type: 'string', default: '0' },
      seconds: { type: 'string', default: 'Infinity' },
      process: { type: 'string', default: String(defaults.process ?? 0) },
      shop: { type: 'string', default: String(defaults.shop ?? 0) },
      paper: { type: 'string', default: String(defaults.paper ?? 0) },
      show: { type: 'string', default: '12' },
    },
  })
  const options = Object.fromEntries(Object.entries(values).map(([key, text]) => [key, Number(text)]))
  const desk = mkdtempSync(join(root, 'node_modules/.campaign-'))
  process.chdir(root)
  console.log(`${kind}: ${options.count} inputs, seed ${options.seed}`)
  try {
    // The command as it is built now, whatever is built while the campaign runs.
    cpSync(join(root, 'dist'), join(desk, 'dist'), { recursive: true })
    const face = ['./tests/campaign/campaign.ts']
    const campaign = await bundled(root, desk, 'campaign', face)
    const tally = await allOf(pathToFileURL(join(desk, 'campaign.mjs')).href, campaign, kind, options, desk)
    console.log(campaign.report(tally))
    for (const { kind: fault, number, count } of tally.faults.slice(0, options.show)) {
      console.log(`\n== ${count} times: ${fault}\n   first: --seed ${options.seed} --from ${number} --count 1`)
      if (!fault.startsWith('hang')) console.log(await campaign.smallest(kind, options, number, fault))
    }
    process.exitCode = tally.faults.length === 0 ? 0 : 1
  } finally {
    rmSync(desk, { recursive: true, force: true })
  }
}

async function allOf(module, campaign, kind, options, desk) {
  const tally = campaign.openTally()
  const until = Date.now() + 1000 * options.seconds
  const last = options.from + options.count
  let next = options.from
  while (next < last && Date.now() < until) {
    const outcome = await stretch(module, { kind, options, from: next, to: last, until }, message => {
      next = message.number + 1
      const known = tally.faults.length
      campaign.count(tally, message)
      for (const { kind: fault, number } of tally.faults.slice(known)) console.log(`  input ${number}: ${fault}`)
      if (options.process > 0 && message.number % options.process === 0)
        asProcess(campaign, tally, kind, options, message.number, desk)
      if (tally.done % 1000 === 0) console.log(`  ${tally.done} done, ${tally.faults.length} kinds of fault`)
    })
    if (outcome === 'hang') {
      campaign.count(tally, {
        number: next,
        faults: [{ kind: `hang: number ${next}`, detail: '' }],
        refusals: [],
        statuses: [],
      })
      next += 1
    }
  }
  return tally
}

function stretch(module, workerData, heard) {
  return new Promise((resolve, reject) => {
    const code = `import { parentPort, workerData } from 'node:worker_threads'
import { campaign } from ${JSON.stringify(module)}
await campaign(workerData, message => parentPort.postMessage(message))`
    const worker = new Worker(new URL(`data:text/javascript,${encodeURIComponent(code)}`), { workerData })
    let last = Date.now()
    const watch = setInterval(() => {
      if (Date.now() - last < PATIENCE) return
      clearInterval(watch)
      worker.terminate().then(() => resolve('hang'))
    }, 1000)
    worker.on('message', message => {
      last = Date.now()
      heard(message)
    })
    worker.on('error', error => {
      clearInterval(watch)
      reject(error)
    })
    worker.on('exit', () => {
      clearInterval(watch)
      resolve('done')
    })
  })
}

/** The same input given to the built command as a process of its own: it ends with a status it promises, and prints no trace. */
function asProcess(campaign, tally, kind, options, number, desk) {
  const { files, commands } = campaign.inputOf(kind, options, number)
  const folder = mkdtempSync(join(desk, 'files-'))
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text)
  let said = ''
  let status = 0
  try {
    execFileSync(process.execPath, [join(desk, 'dist/main.cjs'), ...commands[0]], {
      cwd: folder,
      stdio: 'pipe',
      timeout: PATIENCE,
      maxBuffer: 1e9,
    })
  } catch (error) {
    status = error.status ?? 3
    said = String(error.stderr ?? '')
  }
  tally.processes += 1
  if (![0, 1, 2].includes(status) || /\n\s+at .*\(.*:\d+:\d+\)/.test(said))
    campaign.count(tally, {
      number,
      again: true,
      faults: [{ kind: `process: status ${status}`, detail: said.slice(0, 2000) }],
      refusals: [],
      statuses: [],
    })
}
