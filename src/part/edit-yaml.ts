import { isMap, isScalar, isSeq, type Node, type Pair, stringify, type YAMLMap } from 'yaml'
import { parseYaml } from './yaml-source.ts'

type Steps = readonly (string | number)[]
type Parsed = { readonly text: string; readonly contents: Node | null }

/**
 * The text with one value put in its place, all the rest as it was: comments, order and, as far as can be, line numbers, so
 * that findings still point into the user's file. `value` is YAML for one flow value.
 */
export function withValue(text: string, steps: Steps, value: string): string {
  const { document } = parseYaml(text)
  const contents: Node | null = document.contents
  const edited = spliced({ text, contents }, steps, value)
  if (edited !== undefined && sits(edited, steps, value)) return edited
  document.setIn([...steps], parseYaml(value).document.contents)
  return document.toString({ lineWidth: 0, flowCollectionPadding: false })
}

/** Whether the edited text reads as meant. */
function sits(edited: string, steps: Steps, value: string): boolean {
  const { document } = parseYaml(edited)
  if (document.errors.length > 0) return false
  // A node turns into its plain values here.
  return JSON.stringify(document.getIn([...steps], true)) === JSON.stringify(parseYaml(value).document.contents)
}

/** Nothing where the place of the value cannot be told from the text. */
function spliced({ text, contents }: Parsed, steps: Steps, value: string): string | undefined {
  if (!isMap(contents)) return undefined
  let holder: unknown = contents
  for (const [index, step] of steps.entries()) {
    const rest = nested(steps.slice(index + 1), value)
    if (isSeq<Node>(holder)) {
      const item: Node | undefined = holder.items[Number(step)]
      if (index === steps.length - 1) return replaced(text, item, value)
      holder = item
      continue
    }
    if (!isMap(holder)) return undefined
    const map = holder as YAMLMap<Node, Node>
    const pair = map.items.find(({ key }) => isScalar(key) && String(key.value) === String(step))
    if (!pair) return added(text, map, `${quotedKey(step)}: ${rest}`)
    const inner = pair.value
    if (isNothing(inner)) return afterKey(text, pair, rest)
    if (index === steps.length - 1) return replaced(text, inner, value)
    if (isScalar(inner))
      return replaced(text, inner, wrapped(inner.source ?? String(inner.value), steps.slice(index + 1), value))
    holder = inner
  }
  return undefined
}

const quotedKey = (key: string | number): string => stringify(String(key)).trim()

/** `{bore: 0.16}` for what stands below a key that the file leaves out. */
const nested = (steps: Steps, value: string): string =>
  steps.reduceRight<string>((inner, step) => `{${quotedKey(step)}: ${inner}}`, value)

/** A size written short gets its keys: `48 H6` and Ra make `{size: 48 H6, Ra: 0.3}`. Any other short form gives way. */
function wrapped(short: string, steps: Steps, value: string): string {
  const [key, ...below] = steps
  const entry = `${quotedKey(key ?? '')}: ${nested(below, value)}`
  return key === 'cut' || key === 'size' ? `{${entry}}` : `{size: ${short}, ${entry}}`
}

const isNothing = (node: unknown): boolean =>
  node === null || node === undefined || (isScalar(node) && node.value === null && (node.source ?? '') === '')

function replaced(text: string, node: Node | undefined | null, value: string): string | undefined {
  const range = node?.range
  return range ? text.slice(0, range[0]) + value + text.slice(range[1]) : undefined
}

function afterKey(text: string, { key }: Pair<Node, Node | null>, value: string): string | undefined {
  const end = key.range?.[1]
  const colon = end === undefined ? -1 : text.indexOf(':', end)
  return colon < 0 ? undefined : `${text.slice(0, colon + 1)} ${value}${text.slice(colon + 1)}`
}

function added(text: string, map: YAMLMap<Node, Node>, entry: string): string | undefined {
  const [first] = map.items
  const last = map.items.at(-1)
  const end = (isNothing(last?.value) ? last?.key : last?.value)?.range?.[1]
  if (map.flow) {
    const inside = end ?? (map.range?.[0] ?? 0) + 1
    return text.slice(0, inside) + (last ? ', ' : '') + entry + text.slice(inside)
  }
  const start = first?.key.range?.[0]
  if (start === undefined || end === undefined) return undefined
  const indent = ' '.repeat(start - (text.lastIndexOf('\n', start - 1) + 1))
  // A collection written over several lines ends with its line end, a value in the middle of a line does not.
  const from = text[end - 1] === '\n' ? end - 1 : text.indexOf('\n', end)
  const line = from < 0 ? text.length : from
  return `${text.slice(0, line)}\n${indent}${entry}${text.slice(line)}`
}
