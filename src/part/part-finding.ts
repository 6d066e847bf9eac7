import type { Finding, Severity } from '../finding.ts'
import type { FindingCode } from '../finding-code.ts'
import { type Part, placeOf } from './part.ts'

/** A finding at a place of the part file; `path` may name a key that the file leaves out. */
export function partFinding({
  part,
  severity,
  code,
  path,
  message,
  hint,
}: {
  readonly part: Part
  readonly severity: Severity
  readonly code: FindingCode
  readonly path: string
  readonly message: string
  readonly hint: string
}): Finding {
  return { code, severity, message, at: placeOf(part, path), hint }
}
