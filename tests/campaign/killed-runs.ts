import { spawn, spawnSync } from 'node:child_process'
import { type FSWatcher, mkdirSync, readdirSync, readFileSync, rmSync, watch } from 'node:fs'
import { join } from 'node:path'
import { type Random, randomOf } from './random.ts'

/** The built command, the folder that it is run in, and an empty folder to write into. */
export type Place = { readonly main: string; readonly root: string; readonly desk: string }

const SIGNALS = ['SIGTERM', 'SIGINT', 'SIGHUP', 'SIGKILL'] as const
type Signal = (typeof SIGNALS)[number]

const PART = 'parts/OX-131-07.yaml'
const COMMANDS = {
  traveller: (folder: string) => ['traveller', PART, '--date', '2026-11-30', '--out', folder],
  programs: (folder: string) => ['ports', PART, '--date', '2026-11-30', '--nc', folder],
}
type Name = keyof typeof COMMANDS

type Files = ReadonlyMap<string, string>
/** What an undisturbed run writes, and how long it takes, ms. */
type Whole = { readonly files: Files; readonly takes: number }

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
    const name = random.pick<Name>(['traveller', 'programs'])
    const signal = random.pick(SIGNALS)
    const folder = join(desk, `run-${number}`)
    mkdirSync(folder)
    const expected = whole.get(name) ?? undisturbed({ main, root, desk }, name)
    whole.set(name, expected)
    const ended = await killed({ main, root, folder, name, signal, random, takes: expected.takes })
    const wrong = [...ended.wrong, ...wrongIn({ main, root, folder }, signal, expected.files)]
    faults.push(...wrong.map(what => `number ${number}, ${name}, ${signal} ${ended.when}: ${what}`))
    tell(`${number} ${name} ${signal} ${ended.when}: ${wrong.join('; ') || 'nothing wrong'}`)
    rmSync(folder, { recursive: true })
  }
  return faults
}

function undisturbed({ main, root, desk }: Place, name: Name): Whole {
  const folder = join(desk, name)
  mkdirSync(folder)
  const before = performance.now()
  const { status, stderr } = spawnSync(process.execPath, [main, ...COMMANDS[name](folder)], {
    cwd: root,
    encoding: 'utf8',
  })
  if (status !== 0) throw new Error(`${name} undisturbed ends with ${status}: ${stderr.slice(0, 500)}`)
  return { files: filesIn(folder), takes: performance.now() - before }
}

const filesIn = (folder: string): Files =>
  new Map(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter(entry => entry.isFile())
      .map(({ name, parentPath }) => [name, readFileSync(join(parentPath, name), 'latin1')]),
  )

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
  if (writing) watcher = watch(folder, kill)
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

/** No file is another than the undisturbed run writes, and none is left over: at once, or where nothing could be done, by the next run. */
function wrongIn(
  { main, root, folder }: { readonly main: string; readonly root: string; readonly folder: string },
  signal: Signal,
  whole: Files,
): readonly string[] {
  if (signal === 'SIGKILL') {
    const next = join(folder, 'next.yaml')
    spawnSync(process.execPath, [main, 'new', 'pin', next], { cwd: root })
    rmSync(next)
  }
  const found = filesIn(folder)
  const some = found.size > 0 && found.size < whole.size && signal !== 'SIGKILL'
  return [
    ...[...found].flatMap(([name, content]) =>
      !whole.has(name) ? [`${name} is left over`] : whole.get(name) === content ? [] : [`${name} is not whole`],
    ),
    ...(some ? [`${found.size} of ${whole.size} files`] : []),
  ]
}
