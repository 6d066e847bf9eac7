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
}

export type ReadBatch = { readonly batch?: BatchFile; readonly findings: readonly Finding[] }

/** Reads a batch file. `file` is what findings call it. */
export function readBatch(text: string, file: string): ReadBatch {
  const { source, findings } = openYaml(text, file)
  if (!source) return { findings }
  const document = openDocument(source, validateBatch)
  const view = document.root.into('batch')
  const date = view?.text('date')
  if (date !== undefined && !isDate(date)) {
    view?.report({ code: 'input/unreadable', message: `date "${date}" is no day`, hint: 'write YYYY-MM-DD' }, 'date')
  }
  const batch = present({
    number: view?.text('number'),
    quantity: view?.count('quantity'),
    date,
    heat: view?.text('heat'),
  })
  const sorted = byPlace(document.findings)
  return hasErrors(sorted) ? { findings: sorted } : { batch, findings: sorted }
}
