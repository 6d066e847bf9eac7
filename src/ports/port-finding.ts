import type { Finding, Severity } from '../finding.ts'
import type { FindingCode } from '../finding-code.ts'
import { type Part, type Port, placeOf } from '../part/part.ts'

export type PortFault = {
  readonly code: FindingCode
  readonly severity?: Severity
  /** Starts after the port's name. */
  readonly message: string
  readonly hint?: string
  /** Key of the port that the fault stands at; the port itself when left out. */
  readonly key?: string
}

/** A fault of one port, at its key in the part file. */
export function portFinding(part: Part, port: Port, { code, severity, message, hint, key }: PortFault): Finding {
  return {
    code,
    severity: severity ?? 'error',
    message: `${port.name}: ${message}`,
    at: placeOf(part, key === undefined ? port.path : `${port.path}/${key}`),
    ...(hint === undefined ? {} : { hint }),
  }
}
