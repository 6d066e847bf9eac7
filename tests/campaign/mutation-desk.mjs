// A copy of the house with faults behind switches: every file of tests bundled with the sources it reaches, and a process that runs them.
import { fork, spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, join, relative, sep } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'
import { mutated } from './mutations.mjs'
import { SWITCH, switched } from './switched.mjs'

/** Where nothing tells the processor time of another process, ms. */
const AT_MOST_MS = 900_000
/** Left out: they start other processes, whole campaigns, or judge the text of the sources. */
const LEFT_OUT =
  /^tests\/(?:campaign|package|bench|house|long|proof|rendered)\/|^tests\/commands\/(?:built-command|killed)/
const KNOWN = join(tmpdir(), 'linerwright-mutation-reach.json')

const filesIn = (root, folder, like) =>
  readdirSync(join(root, folder), { recursive: true })
    .map(name => `${folder}/${name.split(sep).join('/')}`)
    .filter(name => like.test(name))
    .sort()

/** The house as it stands, without its history, so that it may change meanwhile. */
export function copied(root, desk) {
  const tree = join(desk, 'tree')
  const isOurs = path => !['.git', 'node_modules'].includes(basename(path))
  cpSync(root, tree, { recursive: true, filter: isOurs })
  symlinkSync(join(root, 'node_modules'), join(tree, 'node_modules'))
  return tree
}

/** Bundles every file of tests, the faults behind switches in the sources. Gives their names. */
export async function bundledTests({ tree, desk, faults, tests }) {
  const isAsked = file => !LEFT_OUT.test(file) && tests.some(part => file.includes(part))
  const files = filesIn(tree, 'tests', /\.test\.ts$/).filter(isAsked)
  const ours = {
    name: 'ours',
    setup({ onLoad }) {
      onLoad({ filter: /\.ts$/ }, ({ path }) => {
        const file = relative(tree, path).split(sep).join('/')
        const contents = switched(
          readFileSync(path, 'utf8'),
          faults.filter(fault => fault.file === file),
        )
        return { contents: contents.replaceAll('import.meta.url', `'${pathToFileURL(path).href}'`), loader: 'ts' }
      })
    },
  }
  const setUp = "import '../tests/setup.ts'"
  mkdirSync(join(tree, 'entries'))
  const entries = files.map((file, index) => {
    const entry = join(tree, 'entries', `${index}.ts`)
    writeFileSync(entry, `${setUp}\nimport '../${file}'`)
    return { in: entry, out: file.replace(/\.ts$/, '') }
  })
  await build({
    entryPoints: entries,
    outdir: join(desk, 'bundles'),
    absWorkingDir: tree,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    plugins: [ours],
    logLevel: 'error',
  })
  return files
}

/** The processor time of a process in seconds, where the system tells it. */
function processorTime(pid) {
  const stat = `/proc/${pid}/stat`
  if (!existsSync(stat)) return undefined
  const fields = readFileSync(stat, 'utf8')
    .replace(/^.*\) /s, '')
    .split(' ')
  return (Number(fields[11]) + Number(fields[12])) / 100
}

/**
 * Runs a file with a fault switched on in a warm process, for so many seconds of the processor at most: a loop without end is seen, a
 * busy machine is not. A process that falls or never ends is started anew.
 */
export function runnerOn(desk) {
  let child
  const start = async () => {
    child = fork(join(desk, 'tree/tests/campaign/mutation-runner.mjs'), [desk], {
      stdio: 'ignore',
      execArgv: ['--experimental-vm-modules', '--max-old-space-size=2000'],
    })
    await new Promise(resolve => child.once('message', resolve))
  }
  return {
    async run({ file, fault, atMost }) {
      if (!child?.connected) await start()
      const from = { wall: Date.now(), busy: processorTime(child.pid) ?? 0 }
      let watch
      const result = await new Promise(resolve => {
        child.once('message', resolve)
        child.once('exit', () => resolve({ passed: false, by: 'the process fell', reached: [], took: 0 }))
        watch = setInterval(() => {
          const busy = processorTime(child.pid)
          const isOver = busy === undefined ? Date.now() - from.wall > AT_MOST_MS : busy - from.busy > atMost
          if (!isOver) return
          resolve({ passed: false, by: 'no end', reached: [], took: 0 })
          child.removeAllListeners()
          child.kill('SIGKILL')
          child = undefined
        }, 500)
        child.send({ file, fault })
      })
      clearInterval(watch)
      child?.removeAllListeners()
      return result
    },
    stop: () => child?.kill('SIGKILL'),
  }
}

/** What runs have shown of a bundle is kept in the system's folder for what may go: the same bundle would show the same again. */
function remembered(read) {
  const known = existsSync(KNOWN) ? JSON.parse(readFileSync(KNOWN, 'utf8')) : {}
  return async (bundle, what, run) => {
    const key = createHash('sha256').update(read).update(bundle).digest('hex')
    known[key] ??= {}
    if (known[key][what]) return known[key][what]
    known[key][what] = await run()
    writeFileSync(KNOWN, JSON.stringify(known))
    return known[key][what]
  }
}

/**
 * The files of tests that reach a fault, with how long each takes without one; those over `longest` seconds stay out. `tried` runs one
 * of them with a fault switched on.
 */
export async function reachOf({ desk, tree, files, runner, longest, tell }) {
  const read = createHash('sha256')
  for (const folder of ['parts', 'templates'])
    for (const file of filesIn(tree, folder, /\.\w+$/)) read.update(readFileSync(join(tree, file)))
  const once = remembered(read.digest('hex'))
  const reach = []
  for (const file of files) {
    const text = readFileSync(join(desk, 'bundles', file.replace(/ts$/, 'js')), 'utf8')
    if (!text.includes(SWITCH)) continue
    const bundle = text.replaceAll(desk, '')
    const { passed, by, reached, took } = await once(bundle, 'sound', () =>
      runner.run({ file, fault: -1, atMost: longest }),
    )
    const tried = fault => once(bundle, fault, () => runner.run({ file, fault, atMost: 10 * took + 10 }))
    if (passed) reach.push({ file, reached: new Set(reached), took, tried })
    else tell(`  ${file} is left out: ${by}`)
  }
  return reach
}

/** Whether the compiler takes the sources with this fault in them. It knows what it has seen, so that a second look is short. */
export function compilerOn(tree, desk) {
  const typed = () =>
    spawnSync(
      process.execPath,
      [
        join(tree, 'node_modules/typescript/bin/tsc'),
        ...['-p', '.', '--incremental', '--tsBuildInfoFile', join(desk, 'seen.tsbuildinfo')],
      ],
      { cwd: tree },
    ).status === 0
  let isWarm = false
  return fault => {
    isWarm ||= typed()
    if (!isWarm) throw new Error('the house does not compile before any fault is put in')
    const path = join(tree, fault.file)
    const text = readFileSync(path, 'utf8')
    writeFileSync(path, mutated(text, fault))
    try {
      return typed()
    } finally {
      writeFileSync(path, text)
    }
  }
}
