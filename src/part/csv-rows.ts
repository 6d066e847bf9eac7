import { CsvError, type InfoRecord, parse } from 'csv-parse/sync'
import { errorAt, type Finding, type Place } from '../finding.ts'

type RawRecord = { readonly record: string[]; readonly info: InfoRecord; readonly raw: string }

/** A line of a list: its cells, the line it begins in and the column of every cell. */
export type CsvRow = { readonly cells: readonly string[]; readonly line: number; readonly starts: readonly number[] }

export const placeInRow = (file: string, { line, starts }: CsvRow, index: number): Place => ({
  file,
  line,
  column: starts[Math.max(0, index)] ?? 1,
})

/** Cells with the line that each row begins in and the column of every cell. */
export function csvRows(text: string, delimiter: string, file: string): readonly CsvRow[] | Finding {
  try {
    // With these options the library gives every record with where it stands; its types know only the cells.
    const records: readonly unknown[] = parse(text, {
      delimiter,
      info: true,
      raw: true,
      bom: true,
      relax_column_count: true,
      skip_empty_lines: true,
    })
    return (records as readonly RawRecord[]).map(({ record, info, raw }) => {
      const written = raw.replace(/[\r\n]+$/, '')
      const line = info.lines - written.split('\n').length + 1
      return { cells: record, line, starts: startsOf(written.replace(/^\uFEFF/, ''), delimiter) }
    })
  } catch (error) {
    if (!(error instanceof CsvError)) throw error
    const line = typeof error['lines'] === 'number' ? error['lines'] : 1
    return errorAt(
      'input/unreadable',
      `the list cannot be read: ${error.message}`,
      { file, line, column: 1 },
      'close every quote',
    )
  }
}

/** Column of each cell in a line as it was written: a delimiter inside quotes parts nothing. */
function startsOf(line: string, delimiter: string): readonly number[] {
  const starts = [1]
  let quoted = false
  let column = 0
  for (const letter of line) {
    column++
    if (letter === '"') quoted = !quoted
    else if (letter === delimiter && !quoted) starts.push(column + 1)
  }
  return starts
}
