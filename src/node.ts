/** What only a program with files can do: the package's own templates and typeface, and the fingerprint of the command. */

export { type Basis, fingerprintOf } from './commands/fingerprint.ts'
export { loadPaper, type PaperFiles } from './commands/paper-files.ts'
