import { InvalidArgumentError } from 'commander'
import type { Units } from '../figures.ts'
import { READERS, RESULTS_READERS, type Reader, type ResultsReader } from '../reader.ts'
import type { LabelGrid } from '../sheets/labels.ts'

/** Options that most commands share, as commander hands them over. */
export type Options = {
  readonly shop?: string
  readonly quantity?: number
  readonly batch?: string
  readonly operation?: number
  /** Of a route: the operation to give reasons for. */
  readonly why?: number
  /** Of a route: how many others are held beside it. */
  readonly alternatives?: number
  readonly json?: boolean
  readonly out: string
  readonly format: 'pdf' | 'html' | 'both'
  readonly paper: 'a4' | 'letter'
  readonly units: Units
  readonly date?: string
  /** The day that the first operation is begun on. */
  readonly start?: string
  /** Of a quote: several. */
  readonly quantities?: readonly number[]
  /** Calendar file to write. */
  readonly calendar?: string
  readonly templates?: string
  readonly force?: boolean
  /** Whose paper. */
  readonly for?: readonly Reader[]
  /** Sheets of the issued plan to print again. */
  readonly sheet?: readonly string[]
  /** Sheet of labels to print tags and box labels on. */
  readonly labels?: LabelGrid
  /** Put the schema beside a new file. */
  readonly schema?: boolean
  /** A fault of the program shows where. */
  readonly trace?: boolean
  /** `stock.bore=0.16`, each one value of the part or shop file, changed for this run alone. */
  readonly set?: readonly string[]
  /** `stock.bore=0.10:0.40:0.02` */
  readonly sweep?: string
  /** `exhaust.height:time-area=0.0152` */
  readonly solve?: string
  /** File of a liner measured on the bench. */
  readonly measured?: string
  /** Ports given by their opening stay where they are cut. */
  readonly asMade?: boolean
  /** Sizes as planned, judged by what `--set` says is known now. */
  readonly asCut?: boolean
  readonly nc?: string
  readonly svg?: string
}

/** `floor,orders`: readers of a packet, each once. */
export const readers = (text: string): readonly Reader[] => amongReaders(text, READERS)

/** `grinder,customer`: readers of what came back. */
export const resultsReaders = (text: string): readonly ResultsReader[] => amongReaders(text, RESULTS_READERS)

function amongReaders<R extends string>(text: string, all: readonly R[]): readonly R[] {
  const names = listed(text)
  const unknown = names.find(name => !all.some(reader => reader === name))
  if (unknown !== undefined) throw new InvalidArgumentError(`"${unknown}" is nobody: ${all.join(', ')}`)
  return all.filter(reader => names.includes(reader))
}

/** `80,ports` */
export function listed(text: string): readonly string[] {
  const names = text.split(',').map(name => name.trim())
  if (names.includes('')) throw new InvalidArgumentError(`names with commas between them are wanted, got "${text}"`)
  return [...new Set(names)]
}

/** `70x37`, or `63.5x38.1/66x38.1` where labels do not touch: a label, and from one label to the next. Millimetres. */
export function labelGrid(text: string): LabelGrid {
  const found = /^(\d+(?:\.\d+)?)x(\d+(?:\.\d+)?)(?:\/(\d+(?:\.\d+)?)x(\d+(?:\.\d+)?))?$/.exec(text)
  const [width = 0, height = 0, across = width, down = height] =
    found?.slice(1).flatMap(size => (size ? [Number(size)] : [])) ?? []
  if (width === 0 || height === 0)
    throw new InvalidArgumentError(
      `width and height of a label in mm are wanted, as 70x37, or 63.5x38.1/66x38.1 with the pitch, got "${text}"`,
    )
  if (across < width || down < height)
    throw new InvalidArgumentError(`the pitch behind the slash is no less than the label before it, got "${text}"`)
  return { width, height, pitch: { across, down } }
}

/** Gathers an option that may be given several times. */
export const gathered = (text: string, before: readonly string[] = []): readonly string[] => [...before, text]

export const wholeNumber =
  (most: number) =>
  (text: string): number => {
    const value = Number(text)
    if (!/^\d+$/.test(text) || value < 1 || value > most) {
      throw new InvalidArgumentError(`a whole number from 1 to ${most} is wanted, got "${text}"`)
    }
    return value
  }

/** `6,12,24,48` */
export function wholeNumbers(most: number): (text: string) => readonly number[] {
  return text => text.split(',').map(each => wholeNumber(most)(each.trim()))
}

export function calendarDate(text: string): string {
  const date = new Date(`${text}T00:00:00Z`)
  const real = /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text)
  if (!real) throw new InvalidArgumentError(`a date YYYY-MM-DD is wanted, got "${text}"`)
  return text
}
