import Handlebars from 'handlebars'

/** Plain data, ready to print. */
export type View = { readonly [field: string]: unknown }

/** Fills a view into the template of that name. */
export type Fill = (name: string, view: View) => string

const opened = new WeakMap<ReadonlyMap<string, string>, Fill>()

/** Templates from their texts, compiled once however many packets they print. */
export function openTemplates(texts: ReadonlyMap<string, string>): Fill {
  const fill = opened.get(texts) ?? compilerOf(texts)
  opened.set(texts, fill)
  return fill
}

/** Compiles a template when it is first asked for. Nothing but `each` and `if`; a name that the view lacks is refused. */
function compilerOf(texts: ReadonlyMap<string, string>): Fill {
  const handlebars = Handlebars.create()
  for (const helper of ['unless', 'with', 'log', 'lookup', 'blockHelperMissing', 'helperMissing']) {
    handlebars.unregisterHelper(helper)
  }
  const compiled = new Map<string, Handlebars.TemplateDelegate>()
  return (name, view) => {
    const text = texts.get(name)
    if (text === undefined) throw new Error(`no template ${name}: a packet needs it`)
    if (/\{\{\{|\{\{&/.test(text)) throw new SyntaxError(`template ${name}: text must be escaped, so no {{{ and no {{&`)
    const template =
      compiled.get(name) ??
      handlebars.compile(text, { strict: true, knownHelpersOnly: true, knownHelpers: { each: true, if: true } })
    compiled.set(name, template)
    try {
      return template(guarded(view, 'view'))
    } catch (fault) {
      throw new SyntaxError(`template ${name}: ${fault instanceof Error ? fault.message : String(fault)}`)
    }
  }
}

/** What the engine itself asks of any value. */
const ASKED = new Set([
  'length',
  'toJSON',
  'toHTML',
  'hash',
  'forEach',
  'valueOf',
  'toString',
  'then',
  'call',
  'string',
])

/** Any name that the view does not own is an error: the engine alone stays silent in `if` and `each`. */
function guarded<T>(value: T, path: string): T {
  if (value === null || typeof value !== 'object') return value
  return new Proxy(value, {
    get(target, key) {
      if (typeof key === 'symbol' || Object.hasOwn(target, key)) {
        return guarded(Reflect.get(target, key), `${path}.${String(key)}`)
      }
      if (ASKED.has(key) || Array.isArray(target)) return Reflect.get(target, key)
      throw new Error(`asks for ${path}.${key}, which the sheet does not have`)
    },
  })
}
