import { byPlace, errorAt, type Finding, hasErrors, type Place } from '../finding.ts'
import type { Millimetre } from '../units.ts'
import { csvRows, placeInRow } from './csv-rows.ts'

/** A piston in the tray: its largest skirt size at 20 °C, and what is known beside it. */
export type TrayPiston = {
  readonly serial: string
  readonly size: Millimetre
  /** Clearance that this one wants, where its alloy asks for another. */
  readonly wants?: Millimetre
  readonly grade?: string
  /** Gap of its ring in the master, and the master's size. */
  readonly ringGap?: Millimetre
  readonly master?: Millimetre
  readonly at: Place
}

const COLUMNS = ['serial', 'size', 'wants', 'grade', 'ring-gap', 'master'] as const

/** Reads a tray of pistons in CSV: serial and size, and what else is known. */
export function readPistons(
  text: string,
  file: string,
): { readonly pistons?: readonly TrayPiston[]; readonly findings: readonly Finding[] } {
  const firstLine = text.slice(0, text.search(/[\r\n]|$/))
  const delimiter = firstLine.includes(';') ? ';' : ','
  const rows = csvRows(text, delimiter, file)
  if ('code' in rows) return { findings: [rows] }
  const [head, ...body] = rows
  const start = { file, line: 1, column: 1 }
  if (!head) return { findings: [errorAt('input/empty', 'the list has no lines', start)] }
  const names = head.cells.map(cell => cell.trim().toLowerCase())
  const findings: Finding[] = [
    ...names.flatMap((name, index) =>
      COLUMNS.some(known => known === name)
        ? []
        : [
            errorAt(
              'input/unknown-key',
              `no column is called "${name.slice(0, 40)}"`,
              placeInRow(file, head, index),
              COLUMNS.join(', '),
            ),
          ],
    ),
    ...(['serial', 'size'] as const)
      .filter(name => !names.includes(name))
      .map(name =>
        errorAt('input/missing-key', `the list has no column ${name}`, start, 'its first line names the columns'),
      ),
  ]
  if (findings.length > 0) return { findings }
  const seen = new Map<string, number>()
  const pistons = body.flatMap((row): readonly TrayPiston[] => {
    const cell = (name: (typeof COLUMNS)[number]): string => (row.cells[names.indexOf(name)] ?? '').trim()
    const at = (name: (typeof COLUMNS)[number]): Place => placeInRow(file, row, names.indexOf(name))
    const number = (name: 'size' | 'wants' | 'ring-gap' | 'master'): number | undefined => {
      const written = delimiter === ';' ? cell(name).replace(',', '.') : cell(name)
      if (!names.includes(name) || written === '') return undefined
      if (/^\d+(\.\d*)?$/.test(written)) return Number(written)
      findings.push(
        errorAt('input/unreadable', `${name} "${written.slice(0, 40)}" is no number`, at(name), 'write 47.9450'),
      )
      return undefined
    }
    const [serial, size, wants] = [cell('serial'), number('size'), number('wants')]
    const [ringGap, master, grade] = [
      number('ring-gap'),
      number('master'),
      names.includes('grade') ? cell('grade') : '',
    ]
    if (serial === '') findings.push(errorAt('input/missing-key', 'the line has no serial', at('serial')))
    const before = seen.get(serial)
    if (before !== undefined)
      findings.push(errorAt('results/twice', `piston ${serial} stands in line ${before} too`, at('serial')))
    seen.set(serial, row.line)
    if (serial === '' || size === undefined) return []
    return [
      {
        serial,
        size,
        at: at('size'),
        ...(wants !== undefined && { wants }),
        ...(grade !== '' && { grade }),
        ...(ringGap !== undefined && { ringGap }),
        ...(master !== undefined && { master }),
      },
    ]
  })
  const sorted = byPlace(findings)
  return hasErrors(sorted) ? { findings: sorted } : { pistons, findings: sorted }
}
