import type { Severity } from '../finding.ts'
import type { Fault } from './quantity.ts'

/** A fault with the pointer of what it is about. */
export type PartFault = Fault & { readonly path: string; readonly severity?: Severity }
