import { stripVTControlCharacters } from 'node:util'

/** A column of a table on the terminal: numbers to the right, words to the left. */
export type Column = { readonly head: string; readonly align?: 'left' | 'right' }

/** Letters that show: what sets a colour takes no room. */
const widthOf = (text: string): number => [...stripVTControlCharacters(text)].length

/** Rows in columns two spaces apart, the head ruled off; trailing blanks are cut. */
export function table(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const widths = columns.map(({ head }, i) => Math.max(widthOf(head), ...rows.map(row => widthOf(row[i] ?? ''))))
  const line = (cells: readonly string[]): string =>
    columns
      .map(({ align = 'left' }, i) => {
        const text = cells[i] ?? ''
        const fill = ' '.repeat((widths[i] ?? 0) - widthOf(text))
        return align === 'right' ? fill + text : text + fill
      })
      .join('  ')
      .trimEnd()
  const rule = widths.map(width => '─'.repeat(width)).join('  ')
  return `${[line(columns.map(({ head }) => head)), rule, ...rows.map(line)].join('\n')}\n`
}
