import { readdirSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { run } from '../../src/commands/program.ts'
import schema from '../../src/plan/plan.schema.json' with { type: 'json' }
import { type Desk, desk } from '../commands/fake-world.ts'

/** One input: the files, and the command lines that are given to the program one after the other. */
export type Case = {
  readonly files: Readonly<Record<string, string>>
  readonly commands: readonly (readonly string[])[]
}

export type Fault = {
  /** What is wrong, without the figures of the case: the same for the same cause. */
  readonly kind: string
  readonly detail: string
}

export type Verdict = {
  readonly statuses: readonly number[]
  /** Codes of the errors of the first command, each once. */
  readonly refusals: readonly string[]
  readonly faults: readonly Fault[]
}

/** No command may take longer, in ms of the processor: how busy the machine is else does not count. */
export const LONGEST = 5000

const templates = new URL('../../templates/', import.meta.url)
/** The desk lists the package's own templates by their names alone, and reads them where they are. */
const TEMPLATES = Object.fromEntries(readdirSync(templates).map(name => [`${templates.pathname}${name}`, '']))

const validate = new Ajv2020({ strict: true, allErrors: false }).compile(schema)

/** Gives a case to the program and says what is wrong with how it behaved. */
export async function judge({ files, commands }: Case): Promise<Verdict> {
  const statuses: number[] = []
  const refusals = new Set<string>()
  const faults: Fault[] = []
  for (const [index, argv] of commands.entries()) {
    const world = desk({ ...TEMPLATES, ...files })
    const began = process.cpuUsage()
    const status = await run([...argv, '--trace'], world).catch((error: unknown) => {
      world.err(error instanceof Error ? (error.stack ?? '') : String(error))
      return 3
    })
    const { user, system } = process.cpuUsage(began)
    const took = (user + system) / 1000
    statuses.push(status)
    if (took > LONGEST) faults.push({ kind: `slow: ${argv[0]}`, detail: `${Math.round(took)} ms` })
    if (![0, 1, 2].includes(status)) {
      const said = world.complained()
      faults.push({ kind: `crash: ${causeOf(said)}`, detail: said.slice(0, 3000) })
      continue
    }
    faults.push(...faultsOnPaper(world, Object.values(files).join('\n')))
    if (index === 0) {
      const found = findingsOf(argv, world)
      for (const { severity, code } of found) if (severity === 'error') refusals.add(code)
      faults.push(...planFaults(argv, world))
    }
  }
  return { statuses, refusals: [...refusals], faults }
}

/** The message without its figures, and the first functions with a name on the trace that are not the range check. */
function causeOf(said: string): string {
  const message = /(?:[A-Z]\w*Error|Error): (.*)/.exec(said)?.[1] ?? said
  const names = [...said.matchAll(/\n\s+at (?:async |new )?([\w.]+) \(/g)].map(([, name = '']) => name)
  const named = names.filter(name => !/^(Object\.)?(value|use|formula)$|^(Array|Map|Object|Module)\./.test(name))
  return `${withoutFigures(message.replace(/ \(linerwright.*/, '').slice(0, 120))} in ${named.slice(0, 2).join(' from ')}`
}

const withoutFigures = (text: string): string => text.replace(/-?\d+(\.\d+)?(e[+-]?\d+)?/g, 'N').replace(/\s+/g, ' ')

type Found = { readonly severity: string; readonly code: string }

function findingsOf(argv: readonly string[], world: Desk): readonly Found[] {
  if (!argv.includes('--json')) return []
  const data: unknown = JSON.parse(world.printed() || '{}')
  return typeof data === 'object' && data !== null && 'findings' in data ? (data.findings as readonly Found[]) : []
}

/** The Plan as `--json` gives it, held against its published schema: what is no number there is `null` by then. */
function planFaults(argv: readonly string[], world: Desk): readonly Fault[] {
  if (argv[0] !== 'plan' || !argv.includes('--json') || world.printed() === '') return []
  const plan: unknown = JSON.parse(world.printed())
  if (typeof plan !== 'object' || plan === null || !('operations' in plan) || validate(plan)) return []
  return (validate.errors ?? []).slice(0, 1).map(({ instancePath, message }) => ({
    kind: `schema: ${instancePath.replace(/\/\d+/g, '/N')} ${message}`,
    detail: instancePath,
  }))
}

/** What a person would read: the terminal and the paper. A name that the input itself has is no fault. */
function faultsOnPaper(world: Desk, input: string): readonly Fault[] {
  const texts = [
    world.printed(),
    world.complained(),
    ...[...world.files]
      .filter(([name]) => name.startsWith('out/'))
      .map(([, text]) => (typeof text === 'string' ? text : '')),
  ]
  return texts.flatMap(text => {
    // A name that the input has may well be one of them.
    const found = [...text.matchAll(/NaN|Infinity|undefined|\[object Object\]/g)].find(
      ({ 0: word, index }) =>
        !input.includes(word) &&
        !/[\w"'./]$/.test(text.slice(Math.max(0, index - 1), index)) &&
        !/^[\w"'-]/.test(text.slice(index + word.length)),
    )
    if (!found) return []
    const around = text.slice(Math.max(0, found.index - 60), found.index + 50)
    return [{ kind: `text: ${found[0]}: ${withoutFigures(around).slice(0, 100)}`, detail: around }]
  })
}
