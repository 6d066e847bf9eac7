import { Parser } from 'htmlparser2'

export type ElementName =
  | ('h2' | 'h3' | 'p' | 'ul' | 'li' | 'dl' | 'dt' | 'dd' | 'figure' | 'div' | 'hr')
  | ('table' | 'thead' | 'tbody' | 'tr' | 'th' | 'td')
  | ('b' | 'small' | 'span' | 'br')

/** What a template may say: a small closed part of HTML, so that paper and screen can show all of it alike. */
export type Element = {
  readonly name: ElementName
  readonly classes: readonly string[]
  readonly attributes: Readonly<Record<string, string>>
  readonly children: readonly Node[]
}
export type Node = Element | string

const INLINE = ['b', 'small', 'span', 'br']
const BLOCK = ['h2', 'h3', 'p', 'ul', 'dl', 'table', 'figure', 'div', 'hr']

/** Each element with what may stand in it. `#` is text. */
const CONTENT: { readonly [name in ElementName]: readonly string[] } = {
  h2: ['#', ...INLINE],
  h3: ['#', ...INLINE],
  p: ['#', ...INLINE],
  ul: ['li'],
  li: ['#', ...INLINE],
  dl: ['dt', 'dd'],
  dt: ['#', ...INLINE],
  dd: ['#', ...INLINE],
  table: ['thead', 'tbody'],
  thead: ['tr'],
  tbody: ['tr'],
  tr: ['th', 'td'],
  th: ['#', ...INLINE],
  td: ['#', ...INLINE],
  figure: [],
  div: BLOCK,
  hr: [],
  b: ['#', ...INLINE],
  small: ['#', ...INLINE],
  span: ['#'],
  br: [],
}

const ATTRIBUTES = new Set(['class', 'style', 'scope', 'colspan', 'data-picture', 'data-code', 'data-text'])
const SPANS = Array.from({ length: 12 }, (_, index) => `c${index + 1}`)
const CLASSES = new Set([
  ...['columns', ...SPANS, 'keep', 'bottom', 'page'],
  ...['small', 'caution', 'big', 'ring'],
  ...['num', 'write', 'size', 'mid', 'tight', 'right'],
])

/** Reads the text that a template gave. Throws on anything outside the subset: a page must not lose what was written. */
export function parseMarkup(markup: string, template: string): readonly Node[] {
  const refuse = (what: string): never => {
    throw new SyntaxError(`template ${template}: ${what}`)
  }
  const root: Open = { name: 'div', classes: [], attributes: {}, children: [] }
  const open: Open[] = [root]
  const within = (): Open => open.at(-1) ?? root
  const parser = new Parser(
    {
      onopentag: (name, attributes) => {
        const parent = within()
        if (!isElement(name)) return refuse(`<${name}> is outside the markup that can be printed`)
        if (!CONTENT[parent.name].includes(name)) return refuse(`<${name}> cannot stand in <${parent.name}>`)
        const element = opened(name, attributes, refuse)
        parent.children.push(element)
        open.push(element)
      },
      ontext: text => {
        const parent = within()
        if (CONTENT[parent.name].includes('#')) parent.children.push(text)
        else if (text.trim() !== '') refuse(`the text "${text.trim()}" cannot stand in <${parent.name}>`)
      },
      onclosetag: (name, implied) => {
        if (implied && CONTENT[within().name].length > 0) refuse(`<${name}> is not closed`)
        open.pop()
      },
      oncomment: () => undefined,
    },
    { xmlMode: true },
  )
  parser.write(markup)
  parser.end()
  return root.children
}

type Open = Element & { readonly children: Node[] }

const isElement = (name: string): name is ElementName => Object.hasOwn(CONTENT, name)

function opened(name: ElementName, attributes: Record<string, string>, refuse: (what: string) => never): Open {
  for (const key of Object.keys(attributes))
    if (!ATTRIBUTES.has(key)) refuse(`attribute ${key} of <${name}> is unknown`)
  const classes = (attributes['class'] ?? '').split(/\s+/).filter(word => word !== '')
  for (const word of classes) if (!CLASSES.has(word)) refuse(`class "${word}" of <${name}> is unknown`)
  return { name, classes, attributes, children: [] }
}

export const has = (element: Element, word: string): boolean => element.classes.includes(word)
export const isNode = (node: Node): node is Element => typeof node !== 'string'
export const elements = (element: Element): readonly Element[] => element.children.filter(isNode)
/** All the words of a node, as one text. */
export const textOf = (node: Node): string => (isNode(node) ? node.children.map(textOf).join('') : node)

/** Millimetres from `style="width:18mm"`. */
export function styled(element: Element, property: string): number | undefined {
  const found = new RegExp(`(?:^|;)\\s*${property}\\s*:\\s*([\\d.]+)mm`).exec(element.attributes['style'] ?? '')
  return found ? Number(found[1]) : undefined
}
