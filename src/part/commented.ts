/** What a commented file needs of a schema. */
export type Described = {
  readonly description?: string
  readonly properties?: { readonly [key: string]: Described }
}

/** A value for each key by its path, as `chuck.diameter`; `filled` are those that stand in the file as it is written. */
type Values = {
  readonly filled?: Readonly<Record<string, string>>
  readonly offered?: Readonly<Record<string, string>>
}

const LEFT_OUT = /Left out: (-?[\d.]+)\.(?: |$)/

/**
 * The keys of an object with what the schema says of each: those that are filled in, and the others behind a # at the start of
 * the line, with the value that holds where they are left out, or an example.
 */
export function keysWithText(node: Described, values: Values, depth = 1, above = ''): readonly string[] {
  const indent = '  '.repeat(depth)
  return Object.entries(node.properties ?? {}).flatMap(([key, child]) => {
    const path = `${above}${key}`
    const says = child.description ?? ''
    const filled = values.filled?.[path]
    if (filled !== undefined) return [besides(`${indent}${key}: ${filled}`, says)]
    const offered = values.offered?.[path] ?? LEFT_OUT.exec(says)?.[1]
    if (offered !== undefined) return [besides(`#${indent}${key}: ${offered}`, says)]
    return child.properties === undefined
      ? toRead(`${key}: ${says}`)
      : [besides(`#${indent}${key}:`, says), ...keysWithText(child, values, depth + 1, `${path}.`)]
  })
}

/** The keys of an entry of a list with what the schema says of each, to be read only. */
export const keysExplained = (node: Described, above = ''): readonly string[] =>
  Object.entries(node.properties ?? {}).flatMap(([key, child]) => [
    ...toRead(`${above}${key}: ${child.description ?? ''}`),
    ...keysExplained(child, `${above}${key}.`),
  ])

/** Letters on a line that is to be read. */
const WIDTH = 120

/** Text behind a # and one space, broken between words: more than one space stands before what may be said. */
export function toRead(text: string): readonly string[] {
  const lines: string[] = []
  let line = '#'
  for (const word of text.split(' ')) {
    if (line !== '#' && line.length + 1 + word.length > WIDTH) {
      lines.push(line)
      line = '#'
    }
    line = `${line} ${word}`
  }
  return [...lines, line]
}

const COLUMN = 44

const besides = (line: string, says: string): string => (says === '' ? line : `${line.padEnd(COLUMN)} # ${says}`)
