import { EVENT_ID, type Event, getScalarValue, parseEvents, SCALAR_STYLE, type ScalarEvent } from 'js-yaml'
import type { Place } from '../finding.ts'
import type { YamlSource } from './yaml-source.ts'
import { DEEPEST, LONGEST, step } from './yaml-walk.ts'

const NUMBER = /^[-+]?(?:\.[0-9]+|[0-9]+(?:\.[0-9]*)?)(?:[eE][-+]?[0-9]+)?$/
/** Nothing, octal and hexadecimal numbers, infinity. */
const UNUSUAL = /^(?:~|null|0o|0x|[-+]?\.(?:inf|nan))/i
const FLAGS: ReadonlyMap<string, boolean> = new Map([
  ...['true', 'True', 'TRUE'].map(word => [word, true] as const),
  ...['false', 'False', 'FALSE'].map(word => [word, false] as const),
])

/** Something for the whole reader, be it a fault or only unusual. */
class NotPlain extends Error {}

/**
 * Reads a file of mappings, lists and scalars within their lines, as nearly every part and shop file is, to the same values
 * and places as the whole reader, in a fifth of the time that it needs at the start of a command. Gives nothing where there
 * is any fault or anything unusual (anchors, tags, block texts, empty values, keys twice): the whole reader then says what
 * it is. A test holds the two together.
 */
export function readPlainYaml(text: string, file: string): YamlSource | undefined {
  // Other line ends, tabs and a byte order mark are columns or not.
  if (/[\r\t\uFEFF]/.test(text)) return undefined
  try {
    return readEvents(parseEvents(text, { maxDepth: DEEPEST }), text, file)
  } catch (error) {
    // What the library throws is a fault in the file.
    if (error instanceof NotPlain || (error instanceof Error && error.name === 'YAMLException')) return undefined
    throw error
  }
}

function readEvents(events: readonly Event[], text: string, file: string): YamlSource {
  const places = new Map<string, Place>()
  const keys = new Map<string, Place>()
  const written = new Map<string, string>()
  let next = 0
  const take = (): Event => {
    const event = events[next]
    if (!event) throw new NotPlain()
    next += 1
    return event
  }
  const { placeAt, endsInLine } = linesOf(text, file)

  const textOf = (event: ScalarEvent): { readonly text: string; readonly place: Place } => {
    refuseMarked(event)
    const quoted = event.style === SCALAR_STYLE.SINGLE_QUOTED || event.style === SCALAR_STYLE.DOUBLE_QUOTED
    if (!quoted && (event.style !== SCALAR_STYLE.PLAIN || event.valueStart < 0)) throw new NotPlain()
    const place = placeAt(event.valueStart - (quoted ? 1 : 0))
    const value = getScalarValue(text, event)
    if (!endsInLine(event.valueEnd) || value.length > LONGEST) throw new NotPlain()
    return { text: value, place }
  }

  const scalar = (event: ScalarEvent, pointer: string): string | number | boolean => {
    const { text, place } = textOf(event)
    places.set(pointer, place)
    if (event.style !== SCALAR_STYLE.PLAIN) return text
    if (UNUSUAL.test(text)) throw new NotPlain()
    if (!NUMBER.test(text)) return FLAGS.get(text) ?? text
    const value = Number(text)
    if (!Number.isFinite(value)) throw new NotPlain()
    written.set(pointer, text)
    return value
  }

  const mapping = (start: number, pointer: string): Record<string, unknown> => {
    places.set(pointer, placeAt(start))
    // No prototype: a key such as __proto__ is then a key like any other.
    const result: Record<string, unknown> = Object.create(null)
    for (let key = take(); key.type !== EVENT_ID.POP; key = take()) {
      if (key.type !== EVENT_ID.SCALAR) throw new NotPlain()
      const { text: name, place } = textOf(key)
      if (Object.hasOwn(result, name)) throw new NotPlain()
      const here = pointer + step(name)
      keys.set(here, place)
      result[name] = value(take(), here)
    }
    return result
  }

  const value = (event: Event, pointer: string): unknown => {
    if (event.type === EVENT_ID.SCALAR) return scalar(event, pointer)
    if (event.type !== EVENT_ID.MAPPING && event.type !== EVENT_ID.SEQUENCE) throw new NotPlain()
    refuseMarked(event)
    if (event.type === EVENT_ID.MAPPING) return mapping(event.start, pointer)
    places.set(pointer, placeAt(event.start))
    const items: unknown[] = []
    for (let item = take(); item.type !== EVENT_ID.POP; item = take()) {
      items.push(value(item, pointer + step(items.length)))
    }
    return items
  }

  const [document, ...others] = events.filter(event => event.type === EVENT_ID.DOCUMENT)
  if (!document || document.explicitStart || document.explicitEnd || others.length > 0) throw new NotPlain()
  take()
  const root = take()
  if (root.type !== EVENT_ID.MAPPING) throw new NotPlain()
  refuseMarked(root)
  return { data: mapping(root.start, ''), places, keys, written, file }
}

function refuseMarked({ anchorStart, tagStart }: { readonly anchorStart: number; readonly tagStart: number }): void {
  if (anchorStart >= 0 || tagStart >= 0) throw new NotPlain()
}

/** Lines and columns, of places that are asked for from first to last. */
function linesOf(text: string, file: string) {
  const endFrom = (start: number): number => {
    const found = text.indexOf('\n', start)
    return found < 0 ? text.length : found
  }
  let line = 1
  let start = 0
  let end = endFrom(0)
  return {
    placeAt: (offset: number): Place => {
      while (offset > end) {
        line += 1
        start = end + 1
        end = endFrom(start)
      }
      return { file, line, column: offset - start + 1 }
    },
    /** Whether it lies in the line of the last place. */
    endsInLine: (offset: number): boolean => offset <= end,
  }
}
