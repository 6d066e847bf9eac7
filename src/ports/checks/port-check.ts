import type { Severity } from '../../finding.ts'
import type { FindingCode } from '../../finding-code.ts'
import type { Part, Port } from '../../part/part.ts'
import type { Millimetre } from '../../units.ts'
import type { GasExchange } from '../gas-exchange.ts'
import type { PlannedPort, PortWindow } from '../port.ts'
import type { Boxed } from './land-between.ts'

export type CheckedPort = { readonly port: Port; readonly planned: PlannedPort }
export type CheckedWindow = CheckedPort & {
  readonly window: PortWindow
  readonly onBore: Boxed
  /** Half-way through the wall. */
  readonly onMiddle: Boxed
  readonly onOutside: Boxed
}

/** What the rules look at: the part with its ports as planned. */
export type Ported = {
  readonly part: Part
  readonly ports: readonly CheckedPort[]
  readonly windows: readonly CheckedWindow[]
  readonly radius: Millimetre
  /** Absent without an engine. */
  readonly gasExchange?: GasExchange
  /** Finished outside radius of the band that each port breaks through. */
  readonly outside: (port: PlannedPort) => Millimetre
}

export type CheckFault = {
  readonly port: Port
  readonly message: string
  readonly hint?: string
  readonly key?: string
  readonly severity?: Severity
}

/** A rule about ports. Name, reason and source are printed with what it finds. */
export type PortCheck = {
  readonly name: string
  readonly code: FindingCode
  readonly severity: Severity
  readonly because: string
  readonly source: string
  /** `limit` gives the thresholds of the rule by their names. */
  readonly test: (ported: Ported, limit: (threshold: string) => number) => readonly CheckFault[]
}

/** The ports of a role that open by the crown, earliest first. */
export const ofRole = ({ ports }: Ported, role: Port['role']): readonly (CheckedPort & { readonly opens: number })[] =>
  ports
    .flatMap(({ port, planned }) =>
      planned.role === role && planned.opens !== undefined ? [{ port, planned, opens: planned.opens }] : [],
    )
    .toSorted((a, b) => a.opens - b.opens)
