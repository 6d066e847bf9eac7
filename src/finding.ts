import type { FindingCode } from './finding-code.ts'
import { writtenOut } from './refusal.ts'

export type Severity = 'error' | 'warning' | 'note'

/** Where in a file: line and column count from 1. */
export type Place = {
  readonly file: string
  readonly line: number
  readonly column: number
}

/** Something the user can cause and should know. Anything only we can cause is a thrown error. */
export type Finding = {
  readonly code: FindingCode
  readonly severity: Severity
  /** States the fact, with the value found, the limit and the unit. */
  readonly message: string
  readonly at: Place
  /** States what to do. */
  readonly hint?: string
}

export const hasErrors = (findings: readonly Finding[]): boolean =>
  findings.some(({ severity }) => severity === 'error')

export const errorAt = (code: FindingCode, message: string, at: Place, hint?: string): Finding => ({
  code,
  severity: 'error',
  message,
  at,
  ...(hint !== undefined && { hint }),
})

export const warningAt = (code: FindingCode, message: string, at: Place, hint: string): Finding => ({
  code,
  severity: 'warning',
  message,
  at,
  hint,
})

/** By file and place, errors before warnings before notes where the place is the same; otherwise as they came. */
export function byPlace(findings: readonly Finding[]): readonly Finding[] {
  const rank = { error: 0, warning: 1, note: 2 }
  return findings.toSorted(
    (a, b) =>
      (a.at.file < b.at.file ? -1 : a.at.file > b.at.file ? 1 : 0) ||
      a.at.line - b.at.line ||
      a.at.column - b.at.column ||
      rank[a.severity] - rank[b.severity],
  )
}

/** `file:line:column  severity  code  message`, and the hint on its own line. */
export function printed({ at, severity, code, message, hint }: Finding): string {
  const line = writtenOut(`${at.file}:${at.line}:${at.column}  ${severity}  ${code}  ${message}`)
  return hint === undefined ? line : `${line}\n  hint: ${writtenOut(hint)}`
}
