import { basename } from 'node:path'
import type { PartKind } from '../part/part.ts'
import { partTemplate } from '../part/part-template.ts'
import type { Options } from './options.ts'
import { STATUS, UsageProblem, type World } from './world.ts'

/** Writes a commented part file to start from. A file that is there already stays, unless told otherwise. */
export function newPart(kind: PartKind, file: string, { force }: Options, world: World): number {
  if (world.exists(file) && !force) throw new UsageProblem(`${file} is there already: --force writes over it`)
  world.write({ path: file, content: partTemplate(kind, basename(file).replace(/\.ya?ml$/i, '')) })
  world.out(`${file}: a ${kind} to start from. Next: linerwright check ${file}\n`)
  return STATUS.fine
}
