// node --experimental-vm-modules mutation-runner.mjs DESK: runs bundled files of tests with one fault switched on, at the word of
// its parent. Each run loads the file and our modules anew, so that nothing worked out with another fault is left; packages stay.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { SourceTextModule, SyntheticModule } from 'node:vm'
import { collector } from './plain-tests.mjs'

const [desk] = process.argv.slice(2)
process.chdir(join(desk, 'tree'))

let tried = -1
let reached = new Set()
globalThis.linerwrightFault = id => {
  reached.add(id)
  return id === tried
}

const synthetic = namespace =>
  new SyntheticModule(Object.keys(namespace), function () {
    for (const [name, value] of Object.entries(namespace)) this.setExport(name, value)
  })
const packages = new Map()
async function packageOf(name) {
  if (!packages.has(name)) packages.set(name, synthetic(await import(name)))
  return packages.get(name)
}

const bundles = new Map()
function bundleOf(file) {
  if (!bundles.has(file))
    bundles.set(file, { code: readFileSync(join(desk, 'bundles', file.replace(/ts$/, 'js')), 'utf8') })
  return bundles.get(file)
}

async function failureIn(file) {
  const url = pathToFileURL(join(desk, 'tree', file)).href
  const { library, failure } = collector(url)
  const bundle = bundleOf(file)
  const module = new SourceTextModule(bundle.code, {
    identifier: url,
    ...(bundle.cachedData && { cachedData: bundle.cachedData }),
    initializeImportMeta: meta => {
      meta.url = url
    },
    importModuleDynamically: name => import(name),
  })
  bundle.cachedData ??= module.createCachedData()
  try {
    await module.link(name => (name === 'vitest' ? synthetic(library) : packageOf(name)))
    await module.evaluate()
  } catch (error) {
    return `does not load: ${String(error?.message ?? error).split('\n')[0]}`
  }
  return await failure()
}

async function run({ file, fault }) {
  tried = fault
  reached = new Set()
  const began = process.cpuUsage()
  const by = await failureIn(file)
  const { user, system } = process.cpuUsage(began)
  return { passed: by === undefined, by, ...(fault < 0 && { reached: [...reached] }), took: (user + system) / 1e6 }
}

process.on('unhandledRejection', () => undefined)
process.on('message', async message => process.send(await run(message)))
process.on('disconnect', () => process.exit())
process.send('ready')
