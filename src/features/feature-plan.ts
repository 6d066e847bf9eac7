import type { FeatureKind, TurnedSide } from '../feature.ts'
import type { Finding } from '../finding.ts'
import type { OperationSize } from '../operation-size.ts'
import type { Degree, Millimetre } from '../units.ts'
import type { Working } from '../working.ts'

/** Depth below the finished top face, distance from the axis. */
export type LinePoint = { readonly depth: Millimetre; readonly radius: Millimetre }

/** A feature as it is made, and what of it is drawn. */
export type PlannedFeature = {
  readonly name: string
  readonly kind: FeatureKind
  readonly band: string
  /** The operation that makes it. */
  readonly operation: number
  readonly written: string
  /** Of a turned one: its side, and where its cut runs. The wall ends at the surface or at this line, whichever is met first. */
  readonly side?: TurnedSide
  readonly line?: readonly LinePoint[]
  /** Of a chamfer or lead: its small end as it is turned and as it is left, of a bore its large one. */
  readonly end?: { readonly cut: Millimetre; readonly finished: Millimetre }
  /** Of a groove: how deep it is cut below the surface as it is turned, radial. */
  readonly deep?: Millimetre
  /** Largest radius in its corners. */
  readonly corner?: Millimetre
  readonly angle?: Degree
  /** Of a hole or a cut-out: its azimuths, and its outline in one of them as half widths about its middle. */
  readonly at?: readonly Degree[]
  readonly through?: 'wall' | 'flange' | 'groove floor'
  /** Of a pin bore: its axis toward the thrust side, and the wire of its clips. */
  readonly offset?: Millimetre
  readonly clip?: Millimetre
  /** Of a domed crown: its radius. */
  readonly sphere?: Millimetre
  /** Of an oval skirt: how far the axis is moved for each side, what radius the tool is set to, and where the relief fades out. */
  readonly relief?: { readonly offset: Millimetre; readonly radius: Millimetre; readonly fades: Degree }
  readonly middle?: LinePoint
  readonly across?: { readonly width: Millimetre; readonly height: Millimetre }
  /** What a gauge sees beside its sizes. */
  readonly roughness?: number
  readonly square?: Millimetre
}

export type FeaturePlan = {
  readonly features: readonly PlannedFeature[]
  /** As they must measure when an operation is done; those of the drawing at the final inspection. */
  readonly sizes: ReadonlyMap<number, readonly OperationSize[]>
  readonly findings: readonly Finding[]
  readonly workings: readonly Working[]
}
