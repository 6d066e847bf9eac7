import Handlebars from 'handlebars'
import { type Node, parseMarkup } from './markup.ts'
import { type Template, TemplateProblem } from './template.ts'
import { firstAskedFor, readTemplate, withPlaces } from './template-syntax.ts'

/** Plain data, ready to print. */
export type View = { readonly [field: string]: unknown }

/** Fills a view into the template of that name. */
export type Fill = (name: string, view: View) => readonly Node[]

const opened = new WeakMap<ReadonlyMap<string, Template>, Fill>()

/** Templates from their texts, compiled once however many packets they print. */
export function openTemplates(templates: ReadonlyMap<string, Template>): Fill {
  const fill = opened.get(templates) ?? compilerOf(templates)
  opened.set(templates, fill)
  return fill
}

type Compiled = (view: View) => string

/** Compiles a template when it is first asked for. A name that the view lacks is refused, and so is markup that cannot be printed. */
function compilerOf(templates: ReadonlyMap<string, Template>): Fill {
  const handlebars = Handlebars.create()
  for (const helper of ['unless', 'with', 'log', 'lookup', 'blockHelperMissing', 'helperMissing']) {
    handlebars.unregisterHelper(helper)
  }
  const compiled = new Map<string, Compiled>()
  const compile = (template: Template): Compiled => {
    const program = readTemplate(template)
    const made = handlebars.compile(program, {
      strict: true,
      knownHelpersOnly: true,
      knownHelpers: { each: true, if: true },
    })
    return view => {
      try {
        return made(guarded(view, 'view'))
      } catch (fault) {
        const at = fault instanceof MissingName ? firstAskedFor(program, fault.field) : undefined
        throw new TemplateProblem(template.file, fault instanceof Error ? fault.message : String(fault), at)
      }
    }
  }
  return (name, view) => {
    const template = templates.get(name)
    if (template === undefined) throw new Error(`no template ${name}: a packet needs it`)
    const fill = compiled.get(name) ?? compile(template)
    compiled.set(name, fill)
    try {
      return parseMarkup(fill(view), template.file)
    } catch (slip) {
      // Once more with places in it, to say where: the second time it throws too, and better.
      if (slip instanceof TemplateProblem && slip.at === undefined) {
        parseMarkup(compile({ ...template, text: withPlaces(template.text) })(view), template.file)
      }
      throw slip
    }
  }
}

class MissingName extends Error {
  readonly field: string
  constructor(path: string, field: string) {
    super(`asks for ${path}.${field}, which the sheet does not have`)
    this.field = field
  }
}

/** What the engine itself asks of any value. */
const ASKED = new Set(['length', 'toJSON', 'valueOf', 'toString', 'hash', 'forEach', 'then', 'call', 'string'])

/** Any name that the view does not own is an error: the engine alone stays silent in `if` and `each`. */
function guarded<T>(value: T, path: string): T {
  if (value === null || typeof value !== 'object') return value
  return new Proxy(value, {
    // So that the engine asks for it, and meets our answer.
    has: () => true,
    get(target, key) {
      if (typeof key === 'symbol' || Object.hasOwn(target, key)) {
        return guarded(Reflect.get(target, key), `${path}.${String(key)}`)
      }
      // The engine asks for this of what it is about to print as a text.
      if (key === 'toHTML') {
        throw new Error(`prints ${path}, which is no text: take {{#each}} for a list, or one of its fields`)
      }
      if (ASKED.has(key) || Array.isArray(target)) return Reflect.get(target, key)
      throw new MissingName(path, key)
    },
  })
}
