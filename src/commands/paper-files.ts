import { createHash } from 'node:crypto'
import { join } from 'node:path'
import { suggestionOrList } from '../part/suggestion.ts'
import { oneLine } from '../refusal.ts'
import type { PageScript } from '../sheets/screen-data.ts'
import { type Template, TemplateProblem } from '../sheets/template.ts'
import { readTemplate } from '../sheets/template-syntax.ts'
import { openTypeface, type Typeface } from '../sheets/typeface.ts'
import { nodeWorld } from './node-world.ts'
import type { World } from './world.ts'

/** What paper is printed with, besides the wishes of whoever prints it. */
export type PaperFiles = {
  /** Every template by its file name without `.hbs`. */
  readonly templates: ReadonlyMap<string, Template>
  readonly typeface: Typeface
  /** What makes the screen a tool. */
  readonly script: PageScript
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
  script: scriptOf(world),
})

function scriptOf(world: World): PageScript {
  const text = world.readText(world.asset('page/packet.js')).trim()
  return { text, digest: `sha256-${createHash('sha256').update(text).digest('base64')}` }
}

/** The one typeface of our paper, from the package's own font files.
 * @internal */
export const typefaceOf = (world: World): Typeface =>
  openTypeface({
    regular: world.readBytes(world.asset('fonts/DejaVuSansCondensed.ttf')),
    bold: world.readBytes(world.asset('fonts/DejaVuSansCondensed-Bold.ttf')),
  })

/** Our own templates, each replaced by the works' one of the same name. One that would replace none of ours is refused. */
function templatesOf(world: World, own: string | undefined): ReadonlyMap<string, Template> {
  const ours = templatesIn(world.asset('templates'), world)
  if (own === undefined) return ours
  const theirs = templatesIn(own, world)
  for (const [name, template] of theirs) {
    if (!ours.has(name)) {
      const hint = suggestionOrList(name, [...ours.keys()], 'there are')
      throw new TemplateProblem(template.file, `no sheet has a template "${name}": ${hint}`)
    }
    readTemplate(template)
  }
  const unused = world.list(own).filter(name => !name.endsWith(ENDING))
  if (unused.length > 0) world.err(`${own}: not a template, so not used: ${oneLine(unused.join(', '))}\n`)
  if (theirs.size === 0) throw new TemplateProblem(own, `the folder has no template, no file that ends in ${ENDING}`)
  return new Map([...ours, ...theirs])
}

const ENDING = '.hbs'

const templatesIn = (folder: string, world: World): ReadonlyMap<string, Template> =>
  new Map(
    world
      .list(folder)
      .filter(name => name.endsWith(ENDING))
      .map(name => {
        const file = join(folder, name)
        return [name.slice(0, -ENDING.length), { file, text: world.readText(file) }] as const
      }),
  )
