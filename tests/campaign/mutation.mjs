// node tests/campaign/mutation.mjs [--count 200] [--seed N] [--seconds N] [--room stock]... [--at src/stock/shapes.ts:40]...
// Puts one small fault at a time into the rooms that work figures out and runs the tests of that room, of the plan and of the house
// over it, in a worktree of its own at the last commit. A fault that no test sees survives: a check is missing there, the code has
// no effect, or the fault changes nothing. A fault that the compiler refuses is killed, as `npm test` compiles first.
import { execFileSync, fork, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { transformSync } from 'esbuild'
import { bundled } from '../bench/bundled.mjs'
import { lineOf, mutated, mutationsOf } from './mutations.mjs'

const ROOMS = ['stock', 'hardening', 'ports', 'cutting', 'orders']
/** The proof takes minutes, so that a fault which it alone sees counts as a survivor; the others judge names and imports, not figures. */
const leftOut = [
  '/tests/ports/proof/',
  ...['rooms', 'no-shelf', 'developers'].map(name => `/tests/house/${name}.test.ts`),
]
/** A fault that never ends is seen. */
const AT_MOST_MS = 240_000

const root = fileURLToPath(new URL('../../', import.meta.url))
const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '200' },
    seed: { type: 'string', default: String(Date.now() % 1_000_000) },
    seconds: { type: 'string', default: '86400' },
    room: { type: 'string', multiple: true, default: ROOMS },
    at: { type: 'string', multiple: true, default: [] },
  },
})
const until = Date.now() + Number(values.seconds) * 1000
const desk = mkdtempSync(join(tmpdir(), 'linerwright-mutation-'))
const tree = join(desk, 'tree')

const filesOf = room =>
  readdirSync(join(tree, 'src', room), { recursive: true })
    .filter(name => name.endsWith('.ts'))
    .sort()
    .map(name => ({ room, file: `src/${room}/${name}` }))
const textOf = file => readFileSync(join(tree, file), 'utf8')
const everyMutationOf = ({ room, file }) => {
  const text = textOf(file)
  return mutationsOf(text).map(mutation => ({ ...mutation, room, file, line: lineOf(text, mutation) }))
}

/** One of a list, each as likely as its lines are many. */
function weighted(list, chance) {
  let left = chance * list.reduce((sum, { lines }) => sum + lines, 0)
  for (const each of list) {
    left -= each.lines
    if (left < 0) return each
  }
  return list.at(-1)
}

/** The sample: a file by its length, then a place in it, none twice. */
function sampled({ pick, count, files }) {
  const left = files.map(file => ({ lines: textOf(file.file).split('\n').length, all: everyMutationOf(file) }))
  const sample = []
  while (sample.length < count) {
    const open = left.filter(({ all }) => all.length > 0)
    if (open.length === 0) break
    const chosen = weighted(open, pick())
    sample.push(...chosen.all.splice(Math.floor(pick() * chosen.all.length), 1))
  }
  return sample
}

let runner
/** What the runner still knows with a fault in it. */
let stale = []
async function started() {
  runner = fork(join(tree, 'tests/campaign/mutation-runner.mjs'), [tree], { stdio: 'ignore' })
  await new Promise(resolve => runner.once('message', resolve))
}
async function tested(room, changed) {
  if (!runner?.connected) await started()
  const answer = new Promise(resolve => {
    runner.once('message', resolve)
    runner.once('exit', () => resolve({ passed: false, by: 'the runner fell' }))
    setTimeout(() => resolve({ passed: false, by: 'no end' }), AT_MOST_MS).unref()
  })
  runner.send({
    filters: [`tests/${room}/`, 'tests/plan/', 'tests/house/'],
    leftOut,
    changed: [...stale, ...changed],
  })
  const result = await answer
  runner.removeAllListeners()
  if (result.by === 'no end') {
    const ended = once(runner, 'exit')
    runner.kill('SIGKILL')
    await ended
  }
  return result
}

const compiles = text => {
  try {
    return transformSync(text, { loader: 'ts' }) !== undefined
  } catch {
    return false
  }
}
const typed = () =>
  spawnSync(process.execPath, [join(tree, 'node_modules/typescript/bin/tsc'), '-p', '.'], { cwd: tree }).status === 0

async function judged(mutation) {
  const path = join(tree, mutation.file)
  const text = textOf(mutation.file)
  const changed = mutated(text, mutation)
  if (!compiles(changed)) return { state: 'skipped' }
  writeFileSync(path, changed)
  try {
    const { passed, by } = await tested(mutation.room, [path])
    if (!passed) return { state: 'killed', by }
    return typed() ? { state: 'survived' } : { state: 'killed', by: 'tsc' }
  } finally {
    writeFileSync(path, text)
    stale = [path]
  }
}

const said = ({ file, line, start, end, to }) =>
  `${file}:${line} ${textOf(file).slice(start, end).replaceAll(/\s+/g, ' ')} -> ${to.replaceAll(/\s+/g, ' ')}`

function tabled(results) {
  console.log('room        killed survived skipped  rate')
  for (const room of [...ROOMS, 'all']) {
    const of = results.filter(result => room === 'all' || result.room === room)
    const [killed, survived, skipped] = ['killed', 'survived', 'skipped'].map(
      state => of.filter(result => result.state === state).length,
    )
    const rate = killed + survived > 0 ? `${Math.round((100 * killed) / (killed + survived))} %` : '-'
    console.log(
      `${room.padEnd(10)} ${[killed, survived, skipped].map(n => String(n).padStart(7)).join(' ')} ${rate.padStart(6)}`,
    )
  }
}

try {
  execFileSync('git', ['worktree', 'add', '--quiet', '--detach', tree, 'HEAD'], { cwd: root })
  symlinkSync(join(root, 'node_modules'), join(tree, 'node_modules'))
  const { randomOf } = await bundled(root, desk, 'random', ['./tests/campaign/random.ts'])
  const { next: pick } = randomOf(Number(values.seed), 0)
  const files = values.room.flatMap(filesOf)
  const isAsked = ({ file, line }) => values.at.some(at => at === file || at === `${file}:${line}`)
  const sample =
    values.at.length > 0
      ? ROOMS.flatMap(filesOf).flatMap(everyMutationOf).filter(isAsked)
      : sampled({ pick, count: Number(values.count), files })
  console.log(`mutation: ${sample.length} faults, seed ${values.seed}`)
  for (const room of new Set(sample.map(mutation => mutation.room))) {
    let soundness = await tested(room, [])
    for (; !soundness.passed && soundness.file; soundness = await tested(room, [])) {
      console.log(`  ${room}: ${soundness.file} fails before any fault is put in and is left out`)
      leftOut.push(soundness.file)
    }
    if (!soundness.passed) throw new Error(`the tests of ${room} do not run: ${soundness.by}`)
    console.log(`  ${room}: ${soundness.files} files of tests pass`)
  }
  const results = []
  for (const mutation of sample) {
    if (Date.now() > until) break
    const result = { ...mutation, ...(await judged(mutation)) }
    results.push(result)
    console.log(`${results.length} ${result.state}${result.by ? ` by ${result.by}` : ''}: ${said(mutation)}`)
  }
  tabled(results)
  const survivors = results.filter(({ state }) => state === 'survived')
  console.log(`${survivors.length} survived`)
  for (const mutation of survivors) console.log(`  ${said(mutation)}`)
} finally {
  runner?.kill('SIGKILL')
  spawnSync('git', ['worktree', 'remove', '--force', tree], { cwd: root })
  rmSync(desk, { recursive: true, force: true })
}
