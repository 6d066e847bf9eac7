import { join } from 'node:path'
import { openTypeface, type Typeface } from '../sheets/typeface.ts'
import { nodeWorld } from './node-world.ts'
import type { World } from './world.ts'

/** What paper is printed with, besides the wishes of whoever prints it. */
export type PaperFiles = {
  /** Text of every template by its file name without `.hbs`. */
  readonly templates: ReadonlyMap<string, string>
  readonly typeface: Typeface
}

/**
 * The package's own templates and typeface, read from where it is installed. `templates` is a folder whose templates stand in
 * the place of those of the same name.
 */
export function loadPaper({ templates }: { readonly templates?: string } = {}): PaperFiles {
  return paperFiles(nodeWorld(), templates)
}

/** The same from any world.
 * @internal */
export const paperFiles = (world: World, own?: string): PaperFiles => ({
  templates: templatesOf(world, own),
  typeface: typefaceOf(world),
})

/** The one typeface of our paper, from the package's own font files.
 * @internal */
export const typefaceOf = (world: World): Typeface =>
  openTypeface({
    regular: world.readBytes(world.asset('fonts/DejaVuSansCondensed.ttf')),
    bold: world.readBytes(world.asset('fonts/DejaVuSansCondensed-Bold.ttf')),
  })

/** Our own templates, each replaced by the works' one of the same name. */
function templatesOf(world: World, own: string | undefined): ReadonlyMap<string, string> {
  const ours = world.asset('templates')
  const texts = [ours, ...(own === undefined ? [] : [own])].flatMap(folder =>
    world
      .list(folder)
      .filter(name => name.endsWith('.hbs'))
      .map(name => [name.slice(0, -'.hbs'.length), world.readText(join(folder, name))] as const),
  )
  return new Map(texts)
}
