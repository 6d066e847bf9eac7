import { Parser } from 'htmlparser2'
import { isPictureName } from '../pictures/picture-name.ts'
import { type Spot, TemplateProblem } from './template.ts'
import { placeIn } from './template-syntax.ts'

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

/** Each attribute with what may stand in it. */
const ATTRIBUTES: Readonly<Record<string, (value: string) => boolean>> = {
  class: value => wordsOf(value).every(word => CLASSES.has(word)),
  // The two that both painters read, up to the length of a page; no address and no behaviour.
  style: value => /^(\s*(width|min-height)\s*:\s*\d{1,3}(\.\d+)?mm\s*(;|$))*$/.test(value),
  scope: value => /^(col|row|colgroup|rowgroup)$/.test(value),
  colspan: value => /^[1-9]\d?$/.test(value),
  'data-picture': value => value === '' || isPictureName(value),
  'data-code': value => value === 'code128' || value === 'datamatrix',
  'data-text': value => value !== '',
  // Of a cell to write in: the characteristic that is read there, and the piece.
  'data-number': value => /^\d{0,4}$/.test(value),
  'data-piece': value => /^[A-Z]?\d{0,5}$/.test(value),
}
const SPANS = Array.from({ length: 12 }, (_, index) => `c${index + 1}`)
const CLASSES = new Set([
  ...['columns', 'beside', ...SPANS, 'keep', 'bottom', 'page'],
  ...['small', 'caution', 'big', 'ring'],
  ...['num', 'write', 'size', 'mid', 'tight', 'right'],
])

const wordsOf = (value: string): readonly string[] => value.split(/\s+/).filter(word => word !== '')

type Open = Element & { readonly children: Node[]; readonly at?: Spot | undefined }

/**
 * Reads the text that a template gave. Throws on anything outside the subset: a page must not lose what was written. The text
 * may have comments in it that say where in the template it came from.
 */
export function parseMarkup(markup: string, template: string): readonly Node[] {
  let at: Spot | undefined
  const refuse = (what: string, where = at): never => {
    throw new TemplateProblem(template, what, where)
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
        if (open.length > DEEPEST) return refuse('elements are nested too deeply')
        const element = { ...opened(name, attributes, refuse), at }
        parent.children.push(element)
        open.push(element)
      },
      ontext: text => {
        const parent = within()
        if (LONG_WORD.test(text)) refuse(`a word of more than ${LONGEST_WORD} letters`)
        if (CONTENT[parent.name].includes('#')) parent.children.push(text)
        else if (text.trim() !== '') refuse(`the text "${text.trim().slice(0, 60)}" cannot stand in <${parent.name}>`)
      },
      onclosetag: (name, implied) => {
        if (implied && CONTENT[within().name].length > 0) refuse(`<${name}> is not closed`, within().at)
        open.pop()
      },
      oncomment: comment => {
        at = placeIn(comment) ?? at
      },
      onprocessinginstruction: name => refuse(`<${name}> is outside the markup that can be printed`),
      oncdatastart: () => refuse('<![CDATA[ is outside the markup that can be printed'),
    },
    { xmlMode: true },
  )
  parser.write(markup)
  parser.end()
  return root.children
}

/** Letters; a value of a file has at most 200. */
const LONGEST_WORD = 1000
const LONG_WORD = new RegExp(`\\S{${LONGEST_WORD + 1}}`)
/** Our own go six deep. */
const DEEPEST = 50

const isElement = (name: string): name is ElementName => Object.hasOwn(CONTENT, name)

function opened(name: ElementName, attributes: Record<string, string>, refuse: (what: string) => never): Open {
  for (const [key, value] of Object.entries(attributes)) {
    const takes = Object.hasOwn(ATTRIBUTES, key) ? ATTRIBUTES[key] : undefined
    if (!takes) return refuse(`attribute ${key} of <${name}> is unknown`)
    if (!takes(value)) return refuse(`${key} "${value.slice(0, 60)}" of <${name}> is unknown`)
  }
  if (name === 'figure' && !('data-picture' in attributes) && !('data-text' in attributes)) {
    return refuse('<figure> has neither data-picture nor data-text')
  }
  return { name, classes: wordsOf(attributes['class'] ?? ''), attributes, children: [] }
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
