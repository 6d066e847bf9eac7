import { RESULT_COLUMNS, type ResultColumn } from '../part/result-columns.ts'

/** One reading of one piece, as typed. */
export type TypedReading = {
  readonly piece: string
  readonly number: number
  readonly operation: number
  readonly typed: string
  readonly unit: string
  readonly date: string
}

export type ExportHead = {
  readonly part: string
  readonly revision: string
  readonly batch: string
  readonly by: string
  readonly temperature: string
}

/** The results file of a batch: one reading a line, RFC 4180. */
export function readingsCsv(readings: readonly TypedReading[], head: ExportHead): string {
  const rows = readings.map(({ piece, number, operation, typed, unit, date }) => {
    const cells: Partial<Record<ResultColumn, string>> = {
      part: head.part,
      revision: head.revision,
      batch: head.batch,
      serial: piece,
      operation: String(operation),
      feature: String(number),
      value: typed.trim().replace(',', '.').replace('\u2212', '-'),
      unit,
      temperature: head.temperature.replace(',', '.'),
      date,
      by: head.by,
    }
    return RESULT_COLUMNS.map(name => quoted(cells[name] ?? '')).join(',')
  })
  return [RESULT_COLUMNS.join(','), ...rows, ''].join('\r\n')
}

const quoted = (cell: string): string => (/[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)
