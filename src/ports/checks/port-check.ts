import type { Severity } from '../../finding.ts'
import type { FindingCode } from '../../finding-code.ts'
import type { Part, Port } from '../../part/part.ts'
import { isExhaust } from '../../part/port-role.ts'
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

type Opening = CheckedPort & { readonly opens: number }

/** The ports of a role that open by the crown, earliest first. */
export const ofRole = (ported: Ported, role: Port['role']): readonly Opening[] =>
  opening(ported, planned => planned.role === role)

/** Exhausts and auxiliary exhausts that open by the crown, earliest first: the blowdown begins with the first. */
export const exhaustsOf = (ported: Ported): readonly Opening[] => opening(ported, ({ role }) => isExhaust(role))

const opening = ({ ports }: Ported, wanted: (planned: PlannedPort) => boolean): readonly Opening[] =>
  ports
    .flatMap(({ port, planned }) =>
      wanted(planned) && planned.opens !== undefined ? [{ port, planned, opens: planned.opens }] : [],
    )
    .toSorted((a, b) => a.opens - b.opens)

/** Chord of the widest single window, which is what a ring bulges into: a bar holds it. */
export const widestWindow = ({ windows, width }: PlannedPort): Millimetre =>
  windows.length > 1 ? Math.max(...windows.map(window => window.width)) : width
