import { errorAt, type Finding } from '../finding.ts'
import { type CsvRow, placeInRow } from './csv-rows.ts'
import { present } from './open-document.ts'
import { placesOf } from './read-results.ts'
import type { CsvReader, ReadList } from './read-results-csv.ts'
import type { Reading } from './results.ts'

/** How a firm's own list calls what we call otherwise: a line a piece, a column a surface. */
export type OwnColumns = ReadonlyMap<string, string>

export function readOwnList(
  head: CsvRow,
  body: readonly CsvRow[],
  { file, numberAt, columns, after }: CsvReader & { readonly columns: OwnColumns; readonly after: number | undefined },
): ReadList {
  const findings: Finding[] = []
  const names = head.cells.map(cell => cell.trim())
  const places = [...columns].map(([ours, theirs]) => ({ ours, theirs, index: names.indexOf(theirs) }))
  for (const { ours, theirs, index } of places)
    if (index < 0)
      findings.push(
        errorAt(
          'input/missing-key',
          `--columns wants ${ours} from "${theirs}", and no column is called so`,
          placeInRow(file, head, 0),
          names.join(', '),
        ),
      )
  const serialAt = places.find(({ ours }) => ours === 'serial')
  if (!serialAt)
    findings.push(
      errorAt(
        'input/missing-key',
        '--columns does not say which column is the serial',
        placeInRow(file, head, 0),
        'add serial=…',
      ),
    )
  if (findings.length > 0 || !serialAt) return { head: {}, readings: [], findings }
  const readings = body.flatMap(row => {
    const serial = (row.cells[serialAt.index] ?? '').trim()
    return places
      .filter(({ ours }) => ours !== 'serial')
      .flatMap(({ ours, index }): readonly Reading[] => {
        const value = numberAt(row, index, ours)
        if (value === undefined) return []
        if (serial === '') {
          findings.push(
            errorAt('input/missing-key', 'the line has a value and no serial', placeInRow(file, row, serialAt.index)),
          )
          return []
        }
        const places = placesOf((row.cells[index] ?? '').trim().replace(',', '.'), value)
        return [{ serial, of: ours, value, places, at: placeInRow(file, row, index), ...present({ after }) }]
      })
  })
  return { head: {}, readings, findings }
}
