import type { DrawnSize, Roughness } from './limits.ts'
import type { Degree, Millimetre } from './units.ts'

/** Which side of the wall a turned feature is cut into. */
export type TurnedSide = 'outside' | 'bore'

type Named = {
  /** As printed: `chamfer of flange`, `O-ring`. */
  readonly name: string
  /** As the drawing has it: `0.5 x 45°`. */
  readonly written: string
  /** Pointer into the part file, for findings. */
  readonly path: string
}

/** An edge of a band turned off at an angle: a chamfer at its free edge, a lead at its far end, where a part goes in. */
export type Chamfer = Named & {
  readonly kind: 'chamfer' | 'lead'
  readonly side: TurnedSide
  readonly band: string
  readonly end: 'upper' | 'lower'
  /** Along the axis. */
  readonly length: DrawnSize
  /** Between the surface and the chamfer. */
  readonly angle: Degree
}

/** A relief in the corner of a shoulder, so that a wheel can run out. */
export type Undercut = Named & {
  readonly kind: 'undercut'
  readonly side: 'outside'
  /** The band that it is cut into: the smaller one at the shoulder. */
  readonly band: string
  /** The band that stands over it. */
  readonly shoulder: string
  /** Below the finished band, radial. */
  readonly depth: DrawnSize
  /** Along the finished band. */
  readonly width: DrawnSize
  /** Into the face of the shoulder; nothing where only the cylinder is ground. */
  readonly face?: Millimetre
  readonly radius: Millimetre
}

/** The face of a shoulder that the part hangs by. */
export type Underside = Named & {
  readonly kind: 'underside'
  readonly side: 'outside'
  /** The band that it is the underside of. */
  readonly band: string
  readonly roughness?: Roughness
  /** Square to the band below within this zone. */
  readonly square?: Millimetre
}

export type Groove = Named & {
  readonly kind: 'groove'
  readonly side: TurnedSide
  readonly band: string
  /** Depth of its upper flank below the finished top face. */
  readonly at: DrawnSize
  readonly width: DrawnSize
  /** Diameter of its floor. */
  readonly floor: DrawnSize
  readonly roughness?: Roughness
  /** Radius in its floor's corners, at most. */
  readonly corner?: Millimetre
  /** Of a ring groove: the height that its ring is called. */
  readonly ring?: Millimetre
}

export type Hole = Named & {
  readonly kind: 'hole'
  /** Square through the wall, or along the axis through a flange. */
  readonly through: 'wall' | 'flange' | 'groove floor'
  readonly band: string
  readonly at: readonly Degree[]
  /** Of a hole through the wall: its middle below the finished top face. */
  readonly depth?: DrawnSize
  /** Of holes through a flange: the diameter of the circle that they stand on. */
  readonly circle?: DrawnSize
  readonly size: DrawnSize
}

/** Turned out from the lower end, blind: what a piston is hollow by. */
export type Inside = Named & {
  readonly kind: 'inside'
  readonly side: 'bore'
  readonly band: string
  readonly size: DrawnSize
  /** Up from the lower end. */
  readonly deep: DrawnSize
  readonly corner: Millimetre
}

/** A crown that is turned to a sphere. */
export type Dome = Named & {
  readonly kind: 'dome'
  readonly side: 'outside'
  readonly band: string
  readonly height: Millimetre
}

/** Across the part, through both bosses, square to the thrust direction. */
export type PinBore = Named & {
  readonly kind: 'pin bore'
  readonly band: string
  /** Azimuth of its axis. */
  readonly at: readonly Degree[]
  readonly size: DrawnSize
  /** Its axis below the crown's edge. */
  readonly depth: DrawnSize
  /** Toward the thrust side. */
  readonly offset: Millimetre
  readonly roughness?: Roughness
  /** Wire of the clip at either end. */
  readonly clip?: Millimetre
}

/** A skirt smaller along the pin than across it, and smaller toward its ends. */
export type Oval = Named & {
  readonly kind: 'oval'
  readonly side: 'outside'
  readonly band: string
  /** On diameter, along the pin. */
  readonly ovality: Millimetre
  /** On diameter, how much smaller the top of the skirt is than its size point. */
  readonly taper: Millimetre
}

/** Milled out of the lower end, or through the skirt where it has an upper and a lower edge. */
export type CutOut = Named & {
  readonly kind: 'cut-out'
  readonly band: string
  readonly at: readonly Degree[]
  /** Chord on the outside. */
  readonly width: DrawnSize
  /** Up from the lower end, or of the window. */
  readonly height: DrawnSize
  /** Of a window: its upper edge below the top face. */
  readonly from?: DrawnSize
  readonly corner: Millimetre
}

/** What a drawing gives beside bands and ports. */
export type Feature = Chamfer | Undercut | Underside | Groove | Hole | CutOut | Inside | Dome | PinBore | Oval
export type FeatureKind = Feature['kind']

export const isTurned = (feature: Feature): feature is Chamfer | Undercut | Underside | Groove | Inside | Dome | Oval =>
  feature.kind !== 'hole' && feature.kind !== 'cut-out' && feature.kind !== 'pin bore'
