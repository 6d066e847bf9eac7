import { byPlace, type Finding, hasErrors } from '../finding.ts'
import { isDate } from './date.ts'
import { openDocument, present } from './open-document.ts'
import { validateBatch } from './validators.ts'
import { openYaml } from './yaml-source.ts'

/** What a batch file says; the command line may say the rest. */
export type BatchFile = {
  readonly number?: string
  /** Good pieces wanted. */
  readonly quantity?: number
  /** Date of issue, YYYY-MM-DD. */
  readonly date?: string
  /** Heat number of the bar. */
  readonly heat?: string
  /** The day that the first operation is begun on, YYYY-MM-DD. */
  readonly begins?: string
}

export type ReadBatch = { readonly batch?: BatchFile; readonly findings: readonly Finding[] }

/** Reads a batch file. `file` is what findings call it. */
export function readBatch(text: string, file: string): ReadBatch {
  const { source, findings } = openYaml(text, file)
  if (!source) return { findings }
  const document = openDocument(source, validateBatch)
  const view = document.root.into('batch')
  const [date, begins] = (['date', 'begins'] as const).map(key => {
    const day = view?.text(key)
    if (day !== undefined && !isDate(day))
      view?.report({ code: 'input/unreadable', message: `${key} "${day}" is no day`, hint: 'write YYYY-MM-DD' }, key)
    return day
  })
  const batch = present({
    number: view?.label('number'),
    quantity: view?.count('quantity'),
    date,
    begins,
    heat: view?.label('heat'),
  })
  const sorted = byPlace(document.findings)
  return hasErrors(sorted) ? { findings: sorted } : { batch, findings: sorted }
}

/** A batch number that is given by itself is judged as the one in a file is. Its findings stand at `file`. */
export const readBatchNumber = (number: string, file: string): ReadBatch => {
  const { batch, findings } = readBatch(`batch: {number: ${JSON.stringify(number)}}`, file)
  const placed = findings.map(finding => ({ ...finding, at: { file, line: 1, column: 1 } }))
  return { findings: placed, ...(batch && { batch }) }
}
