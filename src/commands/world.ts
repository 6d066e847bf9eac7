import { Refusal } from '../refusal.ts'

export type FileToWrite = { readonly path: string; readonly content: string | Uint8Array }

/** Everything a command may touch. Tests pass a plain object. */
export type World = {
  /** Text of a file; a `FileProblem` is thrown when it cannot be read. */
  readonly readText: (path: string) => string
  readonly readBytes: (path: string) => Uint8Array
  /** Names of the files in a folder. */
  readonly list: (folder: string) => readonly string[]
  readonly exists: (path: string) => boolean
  /** Whole or not at all: the files are complete under their names, or none of them is there. */
  readonly write: (...files: readonly FileToWrite[]) => void
  readonly remove: (...paths: readonly string[]) => void
  readonly out: (text: string) => void
  readonly err: (text: string) => void
  /** YYYY-MM-DD. */
  readonly today: () => string
  readonly terminal: {
    readonly out: boolean
    readonly err: boolean
    readonly colour: boolean
    /** Letters on a line of standard error. */
    readonly columns?: number
  }
  /** Lets a signal be heard between two pieces of long work. */
  readonly pause: () => Promise<void>
  /** `Node 20.20.2, linux`: for whoever mends a fault. */
  readonly runsOn: string
  /** Folder of the package's own files: templates, fonts. */
  readonly asset: (name: string) => string
}

/** A file that cannot be read or written: ends the command with status 2. */
export class FileProblem extends Refusal {
  override readonly name = 'FileProblem'
}

/** A command line that asks for what cannot be: ends the command with status 2. */
export class UsageProblem extends Refusal {
  override readonly name = 'UsageProblem'
}

/** The worst of several is the highest. */
export const STATUS: { readonly fine: 0; readonly errors: 1; readonly unusable: 2; readonly ourFault: 3 } = {
  fine: 0,
  errors: 1,
  unusable: 2,
  ourFault: 3,
}
