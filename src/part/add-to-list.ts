import { isMap, isScalar, isSeq, type Node } from 'yaml'
import { parseYaml } from './yaml-source.ts'

/**
 * The text with one more item, in flow style, at the end of a list that stands at the top of the file; a list that is not there is
 * begun at the end. Comments, order and all other lines stay as they are.
 */
export function withItem(text: string, key: string, item: string): string {
  const contents: Node | null = parseYaml(text).document.contents
  const pair = isMap(contents)
    ? contents.items.find(({ key: name }) => isScalar(name) && name.value === key)
    : undefined
  const end = text === '' || text.endsWith('\n') ? '' : '\n'
  if (!pair) return `${text}${end}${key}:\n  - ${item}\n`
  const list: unknown = pair.value
  if (!isSeq<Node>(list))
    return `${text.slice(0, placeAfter(text, pair.key))} \n  - ${item}${text.slice(placeAfter(text, pair.key))}`
  const last = list.items.at(-1)
  if (list.flow === true || !last) {
    const close = text.lastIndexOf(']', (list.range?.[1] ?? text.length) - 1)
    const comma = list.items.length > 0 ? ', ' : ''
    return `${text.slice(0, close)}${comma}${item}${text.slice(close)}`
  }
  const from = last.range?.[0] ?? 0
  const dash = text.lastIndexOf('-', from - 1)
  const indent = text.slice(text.lastIndexOf('\n', dash) + 1, dash)
  const after = text.indexOf('\n', last.range?.[1] ?? from)
  const at = after < 0 ? text.length : after
  // The range of a block ends after its last line.
  const place = text[(last.range?.[1] ?? 0) - 1] === '\n' ? (last.range?.[1] ?? 0) - 1 : at
  return `${text.slice(0, place)}\n${indent}- ${item}${text.slice(place)}`
}

const placeAfter = (text: string, key: unknown): number => {
  const end = isScalar(key) ? (key.range?.[1] ?? 0) : 0
  return text.indexOf(':', end) + 1
}
