import type { HardnessResult, LostPiece, Reading, Results } from '../part/results.ts'

/** One line of the batch's book. */
export type Entry =
  | { readonly issued: string; readonly date: string; readonly pieces: number; readonly replaces?: string }
  | {
      readonly results: string
      readonly hash: string
      readonly date?: string
      readonly readings: readonly Reading[]
      readonly hardness?: HardnessResult
      readonly lost: readonly LostPiece[]
    }

export type ResultsEntry = Extract<Entry, { readonly results: string }>

const HEAD = '# Everything that happened to this batch, one line each. Lines are added, none is changed.\n'

/** A line that cannot be read, and which. */
export type Broken = { readonly line: number }

/** Entries of a book: a list in YAML, of which every line is one item. */
export function readBook(text: string): { readonly entries: readonly Entry[]; readonly broken?: Broken } {
  const entries: Entry[] = []
  for (const [index, line] of text.split('\n').entries()) {
    if (line === '' || line.startsWith('#')) continue
    const entry = line.startsWith('- ') ? parsed(line.slice(2)) : undefined
    if (!entry) return { entries, broken: { line: index + 1 } }
    entries.push(entry)
  }
  return { entries }
}

function parsed(text: string): Entry | undefined {
  try {
    const value: unknown = JSON.parse(text)
    if (typeof value !== 'object' || value === null) return undefined
    return 'issued' in value || 'results' in value ? (value as Entry) : undefined
  } catch {
    return undefined
  }
}

/** The book with more lines: what stands there stays as it is. An entry that stands there already is not added again. */
export function bookWith(text: string, more: readonly Entry[]): string {
  const { entries } = readBook(text)
  const known = new Set(entries.map(signOf))
  const added = inOrder(more).filter(entry => !known.has(signOf(entry)))
  const start = text === '' ? HEAD : text
  return start + added.map(entry => `- ${JSON.stringify(entry)}\n`).join('')
}

const signOf = (entry: Entry): string => ('issued' in entry ? `issued ${entry.issued}` : `results ${entry.hash}`)

/** By date, then by content: files given in any order make one book. */
export const inOrder = <E extends Entry>(entries: readonly E[]): readonly E[] =>
  entries.toSorted(
    (one, other) => (one.date ?? '').localeCompare(other.date ?? '') || signOf(one).localeCompare(signOf(other)),
  )

/** What a hash is taken of: what was measured, wherever it stood written. */
export const contentOf = ({ readings, hardness, lost, date, batch, part }: Results): string =>
  JSON.stringify({
    part,
    batch,
    date,
    readings: readings.map(({ at: _, ...reading }) => reading),
    hardness: hardness && { ...hardness, at: undefined },
    lost: lost.map(({ at: _, ...piece }) => piece),
  })

export const entryOf = (results: Results, hash: string): ResultsEntry => ({
  results: results.file,
  hash,
  ...(results.date !== undefined && { date: results.date }),
  readings: results.readings,
  ...(results.hardness && { hardness: results.hardness }),
  lost: results.lost,
})
