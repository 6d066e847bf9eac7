import type { OrderPoint, Quantity } from './order.ts'

/** A sentence with the quantities that fill its slots, in turn. */
export type Said = { readonly text: string; readonly quantities: readonly Quantity[] }

/** A point before it has its number. */
export type Draft = Omit<OrderPoint, 'number'>

/** ``say`Not over ${layer}.` ``: words stay, quantities become slots, so that the sheet writes them in its own units. */
export function say(words: readonly string[], ...given: readonly (string | Quantity)[]): Said {
  const quantities: Quantity[] = []
  const slot = (one: string | Quantity | undefined): string => {
    if (one === undefined) return ''
    if (typeof one === 'string') return plain(one)
    quantities.push(one)
    return `{${quantities.length - 1}}`
  }
  return { text: words.map((word, index) => word + slot(given[index])).join(''), quantities }
}

/** A brace that the user wrote, in a title say, would be taken for a slot. */
const plain = (text: string): string => text.replaceAll('{', '(').replaceAll('}', ')')

/** A point of the sentences that there are; nothing said, no point. */
export function point(title: string, ...said: readonly (Said | string | false | undefined)[]): readonly Draft[] {
  const text: string[] = []
  const quantities: Quantity[] = []
  for (const one of said) {
    if (!one) continue
    const { text: sentence, quantities: own } = typeof one === 'string' ? say`${one}` : one
    text.push(sentence.replace(/\{(\d+)\}/g, (_, slot) => `{${Number(slot) + quantities.length}}`))
    quantities.push(...own)
  }
  return text.length === 0 ? [] : [{ title, text, quantities }]
}

/** `a`, `a and b`, `a, b and c`. */
export function listed(items: readonly string[]): string {
  const last = items.at(-1) ?? ''
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} and ${last}`
}

export const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`
