import { byPlace, errorAt, type Finding, hasErrors, type Place } from '../finding.ts'
import { type CsvRow, csvRows, placeInRow } from './csv-rows.ts'
import { isDate } from './date.ts'
import { present } from './open-document.ts'
import { type OwnColumns, readOwnList } from './read-own-list.ts'
import { placesOf } from './read-results.ts'
import { RESULT_COLUMNS, type ResultColumn } from './result-columns.ts'
import type { Reading, Results } from './results.ts'

const KNOWN: ReadonlySet<string> = new Set(RESULT_COLUMNS)
const NEEDED = ['serial', 'feature', 'value'] as const

/** Lengths that a list may have; what has no unit is mm. */
const FACTORS: Readonly<Record<string, number>> = { '': 1, mm: 1, µm: 0.001, um: 0.001, in: 25.4, inch: 25.4 }
/** Units in which a reading is judged as it stands. */
const AS_IT_STANDS: ReadonlyMap<string, string> = new Map([
  ...['HV', 'HRC', '°', '°C', 'A/cm', '-'].map(unit => [unit, unit] as const),
  ['deg', '°'],
])

/** Reads a results file in CSV, RFC 4180, with commas or semicolons; where semicolons part the cells a number may have a decimal comma. */
export function readResultsCsv(
  text: string,
  file: string,
  { columns, after }: { readonly columns?: OwnColumns; readonly after?: number } = {},
): { readonly results?: Results; readonly findings: readonly Finding[] } {
  const start: Place = { file, line: 1, column: 1 }
  const findings: Finding[] = []
  const firstLine = text.slice(0, text.search(/[\r\n]|$/))
  const delimiter = firstLine.split(';').length > firstLine.split(',').length ? ';' : ','
  const rows = csvRows(text, delimiter, file)
  if ('code' in rows) return { findings: [rows] }
  const [head, ...body] = rows
  if (!head) return { findings: [errorAt('input/empty', 'the list has no lines', start)] }
  const numberAt = (row: CsvRow, index: number, name: string): number | undefined => {
    const written = (row.cells[index] ?? '').trim()
    if (written === '') return undefined
    const plain = delimiter === ';' ? written.replace(',', '.') : written
    const value = /^[+-]?(\d+(\.\d*)?|\.\d+)$/.test(plain) ? Number(plain) : Number.NaN
    if (Number.isFinite(value)) return value
    findings.push(
      errorAt(
        'input/unreadable',
        `${name} "${written.slice(0, 40)}" is no number`,
        placeInRow(file, row, index),
        'write 48.0012',
      ),
    )
    return undefined
  }
  const read = columns
    ? readOwnList(head, body, { columns, after, file, numberAt })
    : longList(head, body, { file, numberAt })
  findings.push(...read.findings)
  const sorted = byPlace(findings)
  if (hasErrors(sorted)) return { findings: sorted }
  return { results: { file, lost: [], at: start, ...read.head, readings: read.readings }, findings: sorted }
}

export type CsvReader = {
  readonly file: string
  readonly numberAt: (row: CsvRow, index: number, name: string) => number | undefined
}
export type ReadList = {
  readonly head: Pick<Results, 'part' | 'revision' | 'batch' | 'date'>
  readonly readings: readonly Reading[]
  readonly findings: readonly Finding[]
}

/** What is wrong with the line that names the columns. */
function headFindings(head: CsvRow, names: readonly string[], file: string): Finding[] {
  const findings: Finding[] = []
  if (!names.some(name => KNOWN.has(name))) {
    const hint = `${RESULT_COLUMNS.join(', ')}; or --columns for a list of another kind`
    return [errorAt('input/missing-key', 'the first line does not name the columns', placeInRow(file, head, 0), hint)]
  }
  for (const [index, name] of names.entries()) {
    const at = placeInRow(file, head, index)
    if (!KNOWN.has(name))
      findings.push(
        errorAt(
          'input/unknown-key',
          `no column is called "${name.slice(0, 40)}"`,
          at,
          `${RESULT_COLUMNS.join(', ')}; or --columns for a list of another kind`,
        ),
      )
    else if (names.indexOf(name) !== index)
      findings.push(errorAt('input/duplicate-key', `column ${name} stands twice`, at))
  }
  for (const name of NEEDED)
    if (!names.includes(name))
      findings.push(
        errorAt(
          'input/missing-key',
          `the list has no column ${name}`,
          placeInRow(file, head, 0),
          'its first line names the columns',
        ),
      )
  return findings
}

/** A line that was cut off has lost a reading, and one with a cell too many has them in other columns. */
function lengthFindings(head: CsvRow, row: CsvRow, needed: number, file: string): readonly Finding[] {
  const [has, wants] = [row.cells.length, head.cells.length]
  const isLong = row.cells.slice(wants).some(cell => cell.trim() !== '')
  if (has > needed && !isLong) return []
  const hint = isLong ? 'a decimal comma? write 48.0012' : 'write all cells, and leave those empty that say nothing'
  const at = placeInRow(file, row, Math.min(has, wants) - 1)
  return [errorAt('input/unreadable', `the line has ${has} cells, and the first line names ${wants}`, at, hint)]
}

function longList(head: CsvRow, body: readonly CsvRow[], { file, numberAt }: CsvReader): ReadList {
  const names = head.cells.map(cell => cell.trim().toLowerCase())
  const findings = headFindings(head, names, file)
  if (findings.length > 0) return { head: {}, readings: [], findings }
  const index = (name: ResultColumn) => names.indexOf(name)
  const heads = new Map<ResultColumn, { readonly text: string; readonly at: Place }>()
  const needed = Math.max(...NEEDED.map(index))
  const readings = body.flatMap((row): readonly Reading[] => {
    const off = lengthFindings(head, row, needed, file)
    findings.push(...off)
    if (off.length > 0) return []
    const text = (name: ResultColumn): string | undefined => {
      const cell = (row.cells[index(name)] ?? '').trim()
      return cell === '' ? undefined : cell
    }
    const at = (name: ResultColumn): Place => placeInRow(file, row, index(name))
    for (const name of ['part', 'revision', 'batch'] as const) {
      const [before, now] = [heads.get(name), text(name)]
      if (now === undefined) continue
      if (!before) heads.set(name, { text: now, at: at(name) })
      else if (before.text !== now)
        findings.push(
          errorAt(
            'input/choose-one',
            `${name} ${now} here, ${before.text} in line ${before.at.line}`,
            at(name),
            'one list is of one batch',
          ),
        )
    }
    const date = text('date')
    if (date !== undefined && !isDate(date))
      findings.push(
        errorAt('input/unreadable', `date "${date.slice(0, 40)}" is no day`, at('date'), 'write YYYY-MM-DD'),
      )
    const [serial, of, written] = [text('serial'), text('feature'), text('value')]
    if (written === undefined) return []
    for (const [name, value] of [
      ['serial', serial],
      ['feature', of],
    ] as const)
      if (value === undefined)
        findings.push(errorAt('input/missing-key', `the line has a value and no ${name}`, at(name)))
    const unit = text('unit') ?? ''
    const factor = FACTORS[unit] ?? (AS_IT_STANDS.has(unit) ? 1 : undefined)
    if (factor === undefined)
      findings.push(
        errorAt('input/wrong-unit', `unit "${unit.slice(0, 20)}" is not known`, at('unit'), 'mm, µm, in, HV'),
      )
    const value = numberAt(row, index('value'), 'value')
    if (serial === undefined || of === undefined || value === undefined || factor === undefined) return []
    const [operation, temperature] = [
      numberAt(row, index('operation'), 'operation'),
      numberAt(row, index('temperature'), 'temperature'),
    ]
    const gauge = present({ gauge: text('gauge'), id: text('gauge-id') })
    return [
      {
        serial,
        of,
        value: Number((value * factor).toFixed(9)),
        places: placesOf(written.replace(',', '.'), value),
        at: at('value'),
        ...present({
          after: operation,
          unit: unit === '' ? undefined : (AS_IT_STANDS.get(unit) ?? 'mm'),
          depth: numberAt(row, index('depth'), 'depth'),
          direction: numberAt(row, index('direction'), 'direction'),
          temperature,
          date,
          by: text('by'),
          note: text('note'),
          gauge: Object.keys(gauge).length > 0 ? gauge : undefined,
        }),
      },
    ]
  })
  const said = (name: ResultColumn): string | undefined => heads.get(name)?.text
  const dates = readings.flatMap(({ date }) => (date === undefined ? [] : [date])).toSorted()
  return {
    head: present({ part: said('part'), revision: said('revision'), batch: said('batch'), date: dates.at(-1) }),
    readings,
    findings,
  }
}
