import type { PortRole } from '../part/part.ts'
import type { Degree, Millimetre } from '../units.ts'

/** A published, remembered or habitual range, shown as what it is: never a limit. */
export type Reference = {
  readonly what: string
  readonly value: number
  readonly unit: string
  readonly from: number
  readonly to: number
  readonly source: string
}

/** What the ports do together, for the engine's speed where the part gives one. */
export type GasExchange = {
  /** mm³. */
  readonly sweptVolume: number
  /** mm³, above the exhaust's top edge; absent without an exhaust. */
  readonly trappedVolume?: number
  /** m/s. */
  readonly meanPistonSpeed?: number
  readonly blowdown?: {
    readonly angle: Degree
    /** ms. */
    readonly time?: number
    /** mm²·deg, downstroke only. */
    readonly angleArea: number
    /** s/m. */
    readonly specificTimeArea?: number
  }
  readonly areas: readonly {
    readonly role: PortRole
    /** mm²·deg, both strokes, all ports of the role. */
    readonly angleArea: number
    /** s/m. */
    readonly specificTimeArea?: number
  }[]
  readonly streams: readonly {
    readonly port: string
    /** Behind the axis, away from the exhaust; absent where the pair's streams run side by side. */
    readonly behind?: Millimetre
    /** As a share of the bore from the exhaust side. */
    readonly fraction?: number
    readonly exit: Degree
  }[]
  readonly references: readonly Reference[]
}
