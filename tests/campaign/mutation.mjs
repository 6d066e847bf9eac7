// node tests/campaign/mutation.mjs [--count 200] [--seed N] [--each 20] [--longest 6] [--room stock]... [--at src/stock/shapes.ts:40]...
//   [--number 7]... [--test tests/stock]...
// Puts small faults into the rooms that work figures out and runs over each the tests that reach its place, quickest first, until
// one fails, for `--each` seconds of the processor's time at most; files of tests over `--longest` stay out. All are compiled in at
// once, each behind a switch. A fault that no test sees survives: a check is missing there, the code has no effect, or the fault
// changes nothing. One that the compiler refuses is killed, as `npm test` compiles first. `--number` and `--test` try some faults of
// a sample, and some files of tests, alone.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { bundled } from './bundled.mjs'
import { bundledTests, compilerOn, copied, reachOf, runnerOn } from './mutation-desk.mjs'
import { lineOf, mutationsOf } from './mutations.mjs'
import { fits } from './switched.mjs'

const ROOMS = ['stock', 'hardening', 'ports', 'cutting', 'orders']

const root = fileURLToPath(new URL('../../', import.meta.url))
const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '200' },
    seed: { type: 'string', default: String(Date.now() % 1_000_000) },
    longest: { type: 'string', default: '6' },
    each: { type: 'string', default: '20' },
    room: { type: 'string', multiple: true, default: ROOMS },
    at: { type: 'string', multiple: true, default: [] },
    test: { type: 'string', multiple: true, default: ['tests/'] },
    number: { type: 'string', multiple: true, default: [] },
  },
})
const desk = mkdtempSync(join(tmpdir(), 'linerwright-mutation-'))
const tree = copied(root, desk)
const runner = runnerOn(desk)

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
    const [fault] = chosen.all.splice(Math.floor(pick() * chosen.all.length), 1)
    if (fits(textOf(fault.file), fault)) sample.push(fault)
  }
  return sample
}

/** The tests of the fault's own room come first among those that take as long. */
const ranked = (fault, reach) =>
  reach
    .filter(({ reached }) => reached.has(fault.id))
    .map(of => ({ ...of, rank: of.file.startsWith(`tests/${fault.room}/`) ? of.took / 4 : of.took }))
    .sort((one, other) => one.rank - other.rank)

async function judged(fault, reach, compiles) {
  let spent = 0
  const files = ranked(fault, reach)
  for (const { file, took, tried } of files) {
    if (spent > 0 && spent + took > Number(values.each)) break
    const { passed, by } = await tried(fault.id)
    if (!passed) return { state: 'killed', by: `${file}: ${by}` }
    spent += took
  }
  if (!compiles(fault)) return { state: 'refused' }
  return { state: 'survived', by: `${files.length} files of tests that reach it, ${spent.toFixed(1)} s` }
}

const said = ({ file, line, start, end, to }) =>
  `${file}:${line} ${textOf(file).slice(start, end).replaceAll(/\s+/g, ' ')} -> ${to.replaceAll(/\s+/g, ' ')}`

function tabled(results) {
  console.log('room         killed refused survived  rate')
  for (const room of [...ROOMS, 'all']) {
    const of = results.filter(result => room === 'all' || result.room === room)
    const numbers = ['killed', 'refused', 'survived'].map(state => of.filter(result => result.state === state).length)
    const [killed, refused] = numbers
    const rate = of.length > 0 ? `${Math.round((100 * (killed + refused)) / of.length)} %` : '-'
    console.log(`${room.padEnd(11)} ${numbers.map(n => String(n).padStart(7)).join(' ')} ${rate.padStart(6)}`)
  }
}

try {
  const { randomOf } = await bundled(root, desk, 'random', ['./tests/campaign/random.ts'])
  const { next: pick } = randomOf(Number(values.seed), 0)
  const isAsked = ({ file, line }) => values.at.some(at => at === file || at === `${file}:${line}`)
  const sample = (
    values.at.length > 0
      ? ROOMS.flatMap(filesOf)
          .flatMap(everyMutationOf)
          .filter(fault => isAsked(fault) && fits(textOf(fault.file), fault))
      : sampled({ pick, count: Number(values.count), files: values.room.flatMap(filesOf) })
  ).map((fault, id) => ({ ...fault, id }))
  console.log(`mutation: ${sample.length} faults, seed ${values.seed}`)
  const files = await bundledTests({ tree, desk, faults: sample, tests: values.test })
  const reach = await reachOf({
    desk,
    tree,
    files,
    runner,
    longest: Number(values.longest),
    tell: line => console.log(line),
  })
  console.log(`  ${reach.length} files of tests pass without a fault`)
  const compiles = compilerOn(tree, desk)
  const isTried = ({ id }) => values.number.length === 0 || values.number.includes(String(id + 1))
  const results = []
  for (const fault of sample.filter(isTried)) {
    const result = { ...fault, ...(await judged(fault, reach, compiles)) }
    results.push(result)
    console.log(`${fault.id + 1} ${result.state}${result.by ? ` (${result.by})` : ''}: ${said(fault)}`)
  }
  tabled(results)
  const survivors = results.filter(({ state }) => state === 'survived')
  console.log(`${survivors.length} survived`)
  for (const fault of survivors) console.log(`  ${said(fault)}`)
} finally {
  runner.stop()
  rmSync(desk, { recursive: true, force: true })
}
