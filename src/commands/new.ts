import { basename } from 'node:path'
import type { PartKind } from '../part/part.ts'
import { partTemplate } from '../part/part-template.ts'
import type { Options } from './options.ts'
import { schemaFor } from './schema-for.ts'
import { STATUS, UsageProblem, type World } from './world.ts'

/** Writes a commented part file to start from. A file that is there already stays, unless told otherwise. */
export function newPart(kind: PartKind, file: string, options: Options, world: World): number {
  if (world.exists(file) && !options.force) throw new UsageProblem(`${file} is there already: --force writes over it`)
  const schema = schemaFor('part', file, options, world)
  const content = partTemplate(kind, basename(file).replace(/\.ya?ml$/i, ''), schema?.written)
  world.write(...(schema?.copy ? [schema.copy] : []), { path: file, content })
  world.out(`${file}: a ${kind} to start from. Next: linerwright check ${file}\n`)
  if (!schema) world.out('An editor that completes keys needs the schema: --schema puts it beside the file\n')
  return STATUS.fine
}
