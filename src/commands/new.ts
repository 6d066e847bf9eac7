import { basename } from 'node:path'
import { batchTemplate } from '../part/batch-template.ts'
import type { PartKind } from '../part/part.ts'
import { partTemplate } from '../part/part-template.ts'
import { resultsTemplate } from '../part/results-template.ts'
import { shopTemplate } from '../part/shop-template.ts'
import type { Options } from './options.ts'
import { schemaFor } from './schema-for.ts'
import { STATUS, UsageProblem, type World } from './world.ts'

export type NewKind = PartKind | 'shop' | 'batch' | 'results'

/** Writes a commented file to start from. A file that is there already stays, unless told otherwise. */
export function newFile(kind: NewKind, file: string, options: Options, world: World): number {
  if (world.exists(file) && !options.force) throw new UsageProblem(`${file} is there already: --force writes over it`)
  const named = kind === 'shop' || kind === 'batch' || kind === 'results' ? kind : 'part'
  const schema = schemaFor(named, file, options, world)
  const name = basename(file).replace(/\.ya?ml$/i, '')
  const content = contentOf({ kind, name, date: world.today(), schema: schema?.written })
  world.write(...(schema?.copy ? [schema.copy] : []), { path: file, content })
  const what = named === 'part' ? `a ${kind}` : `a ${kind} file`
  world.out(`${file}: ${what} to start from. Next: linerwright check ${file}\n`)
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
