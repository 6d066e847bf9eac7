import type { PortRole } from '../part/part.ts'
import type { CubicMillimetre, Degree, Millimetre, Millisecond, SquareMillimetre } from '../units.ts'

/** Flow area below the crown's edge at one crank angle after top dead centre. */
export type Uncovering = { readonly angle: Degree; readonly area: SquareMillimetre }

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
  /** Crank degrees from top to bottom dead centre: 180 without a pin offset. */
  readonly bottomDeadCentre?: Degree
  /** mm³, above the exhaust's top edge; absent without an exhaust. */
  readonly trappedVolume?: number
  /** mm³, as the part gives it. */
  readonly headVolume?: CubicMillimetre
  /** Compression ratios: from exhaust closing, and over the whole stroke. */
  readonly trappedRatio?: number
  readonly geometricRatio?: number
  /** m/s. */
  readonly meanPistonSpeed?: number
  readonly blowdown?: {
    readonly angle: Degree
    /** Degrees after top dead centre. */
    readonly from?: Degree
    readonly to?: Degree
    /** ms. */
    readonly time?: Millisecond
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
    /** s/m, by the mean area: what the published targets are about. */
    readonly meanAreaTimeArea?: number
    /** All ports of the role together, from the first opening to the last closing. */
    readonly uncovered?: readonly Uncovering[]
  }[]
  /** Roles that share a flow, summed where there are several: the boost with the mains, auxiliary exhausts with the exhaust. */
  readonly together: readonly {
    readonly roles: readonly PortRole[]
    readonly angleArea: number
    /** s/m. */
    readonly specificTimeArea?: number
    /** s/m. */
    readonly meanAreaTimeArea?: number
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
