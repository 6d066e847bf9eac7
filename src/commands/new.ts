import { basename } from 'node:path'
import { hasErrors } from '../finding.ts'
import { batchTemplate } from '../part/batch-template.ts'
import type { PartKind } from '../part/part.ts'
import { partFromBench } from '../part/part-from-bench.ts'
import { partTemplate, schemaLine } from '../part/part-template.ts'
import { readBench } from '../part/read-bench.ts'
import { resultsTemplate } from '../part/results-template.ts'
import { shopTemplate } from '../part/shop-template.ts'
import { resultsForm, stagesMeasured } from '../record/results-form.ts'
import { planAt } from './issue.ts'
import type { Options } from './options.ts'
import { reportBeside } from './report.ts'
import { schemaFor } from './schema-for.ts'
import { STATUS, UsageProblem, type World } from './world.ts'

export type NewKind = PartKind | 'shop' | 'batch' | 'results'

export type NewOptions = Options & {
  /** Of results: the plan as issued that they are of. */
  readonly plan?: string
  /** Of a liner or a sleeve: the bench file of one that was measured. */
  readonly from?: string
}

/** Writes a commented file to start from. A file that is there already stays, unless told otherwise. */
export function newFile(kind: NewKind, file: string, options: NewOptions, world: World): number {
  if (world.exists(file) && !options.force) throw new UsageProblem(`${file} is there already: --force writes over it`)
  const named = kind === 'shop' || kind === 'batch' || kind === 'results' ? kind : 'part'
  const schema = schemaFor(named, file, options, world)
  const name = basename(file).replace(/\.ya?ml$/i, '')
  if (options.plan !== undefined && kind !== 'results')
    throw new UsageProblem('--plan goes with new results: the plan as issued that they are of')
  if (options.from !== undefined && kind !== 'liner' && kind !== 'sleeve')
    throw new UsageProblem('--from goes with new liner and new sleeve: the bench file of one that was measured')
  const asked = { kind, name, date: world.today(), schema: schema?.written }
  const content =
    options.from !== undefined
      ? measuredPart(options.from, asked, world)
      : options.plan === undefined
        ? contentOf(asked)
        : formOf(options.plan, options.operation, asked, world)
  if (content === undefined) return STATUS.errors
  world.write(...(schema?.copy ? [schema.copy] : []), { path: file, content })
  const what = named === 'part' ? `a ${kind}` : `a ${kind} file`
  const next = options.plan === undefined ? `check ${file}` : `record PART ${file}`
  world.out(`${file}: ${what} to start from. Next: linerwright ${next}\n`)
  if (!schema) world.out('An editor that completes keys needs the schema: --schema puts it beside the file\n')
  return STATUS.fine
}

type Asked = {
  readonly kind: NewKind
  /** Of the file. */
  readonly name: string
  /** YYYY-MM-DD. */
  readonly date: string
  readonly schema: string | undefined
}

/** A results file that asks for what is measured at one stage of a plan as issued. */
function formOf(
  path: string,
  operation: number | undefined,
  { date, schema }: Pick<Asked, 'date' | 'schema'>,
  world: World,
): string {
  const plan = planAt(path, world)
  const stages = stagesMeasured(plan)
  if (!stages.some(stage => stage.operation === operation)) {
    const list = stages.map(({ operation, name }) => `${operation} ${name}`).join(', ')
    const what = operation === undefined ? 'say which' : `nothing is measured after ${operation}`
    throw new UsageProblem(`--operation: ${what}: ${list}`)
  }
  return resultsForm(plan, operation ?? 0, { date, schemaLine: schemaLine(schema) })
}

/** A part file of a liner as it was measured, or what its bench file lacks for one, reported. */
function measuredPart(bench: string, { kind, name, schema }: Asked, world: World): string | undefined {
  const read = readBench(world.readText(bench), bench)
  const made =
    read.bench && partFromBench(read.bench, { file: bench, kind: kind === 'sleeve' ? kind : 'liner', name, schema })
  const findings = [...read.findings, ...(made?.findings ?? [])]
  reportBeside(findings, world)
  return hasErrors(findings) ? undefined : made?.text
}

function contentOf({ kind, name, date, schema }: Asked): string {
  switch (kind) {
    case 'shop':
      return shopTemplate(schema)
    case 'batch':
      return batchTemplate(name.replace(/^batch-(?=.)/i, ''), date, schema)
    case 'results':
      return resultsTemplate(date, schema)
    default:
      return partTemplate(kind, name, schema)
  }
}
