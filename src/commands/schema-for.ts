import { dirname, join, relative, resolve, sep } from 'node:path'
import type { Options } from './options.ts'
import { type FileToWrite, UsageProblem, type World } from './world.ts'

export type SchemaPlace = {
  /** As it stands in the file, from the file's folder. */
  readonly written: string
  /** To be put there. */
  readonly copy?: FileToWrite
}

/**
 * Where an editor finds the schema of a new file, from the file's own folder so that both may move together: in the package
 * that the project around the file has installed, or in the checkout that the file lies in; with `--schema` beside the file.
 * Nowhere, when the program is installed for the whole machine: a path there would be this machine's own.
 */
export function schemaFor(
  name: 'part' | 'shop' | 'batch' | 'results',
  file: string,
  { schema, force }: Options,
  world: World,
): SchemaPlace | undefined {
  const ours = `dist/${name}.schema.json`
  const folder = resolve(dirname(file))
  if (schema) {
    const path = join(dirname(file), `${name}.schema.json`)
    const content = world.readText(world.asset(ours))
    if (world.exists(path) && !force && world.readText(path) !== content) {
      throw new UsageProblem(`${path} is there already, and is not ours: --force writes over it`)
    }
    return { written: `./${name}.schema.json`, copy: { path, content } }
  }
  const installed = upwards(folder)
    .map(above => join(above, 'node_modules', 'linerwright', ours))
    .find(path => world.exists(path))
  const inCheckout = upwards(folder)
    .map(above => join(above, ours))
    .find(path => path === world.asset(ours))
  const found = installed ?? inCheckout
  return found === undefined ? undefined : { written: fromHere(relative(folder, found)) }
}

/** A folder and all those that it lies in. */
function upwards(folder: string): readonly string[] {
  const above = dirname(folder)
  return above === folder ? [folder] : [folder, ...upwards(above)]
}

/** With strokes that lean forward, whatever the machine's. */
const fromHere = (path: string): string => {
  const written = path.split(sep).join('/')
  return written.startsWith('.') ? written : `./${written}`
}
