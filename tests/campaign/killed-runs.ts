import { spawn, spawnSync } from 'node:child_process'
import { cpSync, type FSWatcher, mkdirSync, readdirSync, readFileSync, rmSync, watch } from 'node:fs'
import { join } from 'node:path'
import { type Random, randomOf } from './random.ts'

/** The built command, the folder that it is run in, and an empty folder to write into. */
export type Place = { readonly main: string; readonly root: string; readonly desk: string }

const SIGNALS = ['SIGTERM', 'SIGINT', 'SIGHUP', 'SIGKILL'] as const
type Signal = (typeof SIGNALS)[number]

const PART = 'parts/OX-131-07.yaml'
const BATCH = ['parts/OX-098-21.yaml', '--batch', 'parts/batch-2631.yaml'] as const
const COMMANDS = {
  traveller: (folder: string) => ['traveller', PART, '--date', '2026-11-30', '--out', folder],
  programs: (folder: string) => ['ports', PART, '--date', '2026-11-30', '--nc', folder],
  record: (folder: string) => ['record', ...BATCH, 'parts/results-2631-turned.yaml', '--out', folder],
}
/** What lies there before: a batch is issued before anything is recorded of it. */
const ISSUE = (folder: string): readonly string[] => ['traveller', ...BATCH, '--out', folder]
type Name = keyof typeof COMMANDS

type Files = ReadonlyMap<string, string>
/** What lies there before, in a folder to copy; what an undisturbed run leaves, and how long it takes, ms. */
type Whole = { readonly issued?: string; readonly before: Files; readonly files: Files; readonly takes: number }

/**
 * Kills the command so many times, in the middle of its work and in the middle of its writing, and looks at what lies in the
 * folder afterwards. Gives what is wrong; nothing is as it should be.
 */
export async function killedRuns(
  { main, root, desk }: Place,
  { seed, from = 0, count }: { readonly seed: number; readonly from?: number; readonly count: number },
  tell: (line: string) => void = () => undefined,
): Promise<readonly string[]> {
  const whole = new Map<Name, Whole>()
  const faults: string[] = []
  for (let number = from; number < from + count; number++) {
    const random = randomOf(seed, number)
    const name = random.pick<Name>(['traveller', 'programs', 'record'])
    const signal = random.pick(SIGNALS)
    const folder = join(desk, `run-${number}`)
    mkdirSync(folder)
    const expected = whole.get(name) ?? undisturbed({ main, root, desk }, name)
    whole.set(name, expected)
    if (expected.issued !== undefined) cpSync(expected.issued, folder, { recursive: true })
    const ended = await killed({ main, root, folder, name, signal, random, takes: expected.takes })
    const wrong = [...ended.wrong, ...wrongIn({ main, root, folder }, signal, expected)]
    faults.push(...wrong.map(what => `number ${number}, ${name}, ${signal} ${ended.when}: ${what}`))
    tell(`${number} ${name} ${signal} ${ended.when}: ${wrong.join('; ') || 'nothing wrong'}`)
    rmSync(folder, { recursive: true })
  }
  return faults
}

function undisturbed({ main, root, desk }: Place, name: Name): Whole {
  const folder = join(desk, name)
  mkdirSync(folder)
  const run = (args: readonly string[]): void => {
    const { status, stderr } = spawnSync(process.execPath, [main, ...args], { cwd: root, encoding: 'utf8' })
    if (status !== 0) throw new Error(`${name} undisturbed ends with ${status}: ${stderr.slice(0, 500)}`)
  }
  const issued = name === 'record' ? join(desk, 'issued') : undefined
  if (issued !== undefined) {
    run(ISSUE(issued))
    cpSync(issued, folder, { recursive: true })
  }
  const before = filesIn(folder)
  const start = performance.now()
  run(COMMANDS[name](folder))
  const takes = performance.now() - start
  return { ...(issued !== undefined && { issued }), before, files: filesIn(folder), takes }
}

const filesIn = (folder: string): Files =>
  new Map(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter(entry => entry.isFile())
      .map(({ name, parentPath }) => [name, readFileSync(join(parentPath, name), 'latin1')]),
  )

const foldersIn = (folder: string): readonly string[] => [
  folder,
  ...readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter(entry => entry.isDirectory())
    .map(({ name, parentPath }) => join(parentPath, name)),
]

type Run = {
  readonly main: string
  readonly root: string
  readonly folder: string
  readonly name: Name
  readonly signal: Signal
  readonly random: Random
  readonly takes: number
}

/** Half of them at any moment, half as soon as something is written into the folder. */
async function killed(run: Run): Promise<{ readonly when: string; readonly wrong: readonly string[] }> {
  const { main, root, folder, name, signal, random, takes } = run
  const writing = random.chance(0.5)
  const after = writing ? random.between(0, 2) : random.between(0, takes)
  const child = spawn(process.execPath, [main, ...COMMANDS[name](folder)], {
    cwd: root,
    stdio: ['ignore', 'ignore', 'pipe'],
  })
  let said = ''
  child.stderr.on('data', chunk => {
    said += String(chunk)
  })
  let timer: NodeJS.Timeout | undefined
  let watcher: FSWatcher | undefined
  const kill = () => {
    timer ??= setTimeout(() => child.kill(signal), after)
  }
  if (writing) watcher = watch(folder, { recursive: true }, kill)
  else kill()
  const [code, by] = await new Promise<[number | null, NodeJS.Signals | null]>(resolve => {
    child.on('close', (...how) => resolve(how))
  })
  clearTimeout(timer)
  watcher?.close()
  const wrong = [
    ...(code === 0 || by === signal ? [] : [`ended with ${code ?? by}`]),
    ...(/\n\s+at .*:\d+:\d+/.test(said) ? ['a stack trace'] : []),
  ]
  return { when: `${after.toFixed(1)} ms after ${writing ? 'the first writing' : 'the start'}`, wrong }
}

/**
 * Every file is as it was before or as the undisturbed run leaves it, and none is left over: at once, or where nothing could be done,
 * by the next run that writes there.
 */
function wrongIn(
  { main, root, folder }: { readonly main: string; readonly root: string; readonly folder: string },
  signal: Signal,
  { before, files }: Whole,
): readonly string[] {
  if (signal === 'SIGKILL') {
    for (const written of foldersIn(folder)) {
      const next = join(written, 'next.yaml')
      spawnSync(process.execPath, [main, 'new', 'pin', next], { cwd: root })
      rmSync(next)
    }
  }
  const found = filesIn(folder)
  const isNew = (name: string): boolean => found.has(name) && found.get(name) !== before.get(name)
  const wanted = [...files].flatMap(([name, content]) => (before.get(name) === content ? [] : [name]))
  const written = wanted.filter(isNew)
  const some = written.length > 0 && written.length < wanted.length && signal !== 'SIGKILL'
  return [
    ...[...before].flatMap(([name]) => (found.has(name) ? [] : [`${name} is gone`])),
    ...[...found].flatMap(([name, content]) => {
      if (!files.has(name)) return [`${name} is left over`]
      return [files.get(name), before.get(name)].includes(content) ? [] : [`${name} is not whole`]
    }),
    ...(some ? [`${written.length} of ${wanted.length} files`] : []),
  ]
}
