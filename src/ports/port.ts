import type { Spread } from '../limits.ts'
import type { PortRole } from '../part/part.ts'
import type { Degree, Millimetre, SquareMillimetre } from '../units.ts'
import type { EdgePlan, PlaceRound } from './edge-plan.ts'
import type { Uncovering } from './gas-exchange.ts'
import type { HeldCutter } from './held-cutter.ts'

export type Edges = {
  readonly highest: Millimetre
  readonly lowest: Millimetre
  /** Azimuths at which they lie; the middle one where the edge is level. */
  readonly highestAt?: Degree
  readonly lowestAt?: Degree
}
/** `window`: developed on the finished bore, corners off. `flow`: that area seen along the flow direction. */
export type Areas = {
  readonly window: SquareMillimetre
  readonly flow: SquareMillimetre
}
/** Depth below the finished top face, azimuth on the cylinder named. */
export type EdgePoint = {
  readonly azimuth: Degree
  readonly depth: Millimetre
}

export type PortWindow = {
  /** Azimuth of the window's middle on the finished bore. */
  readonly at: Degree
  readonly rotary: Degree
  readonly tilt: Degree
  readonly crossOffset: Millimetre
  readonly x: Millimetre
  readonly z: Millimetre
  readonly area: Areas
  /** Chord of the window on the finished bore. */
  readonly width: Millimetre
  readonly height: Millimetre
  /** x, y in the set-up's machine frame. */
  readonly entryHole: {
    readonly diameter: Millimetre
    readonly x: Millimetre
    readonly y: Millimetre
    /** Radius of the largest circle about it within the window. */
    readonly room: Millimetre
    /** Its middle on the outside, where it is punched, and on the bore as milled. */
    readonly outside?: EdgePoint
    readonly bore?: EdgePoint
  }
  /** Depths below the finished top face; `asCut` in the bore as milled, from the top face as it then stands. */
  readonly edges: { readonly finished: Edges; readonly asCut: Edges }
  /** Diameter of the cutter that finishes the window. */
  readonly cutter: Millimetre
  /** Largest cutter that would reach every corner. */
  readonly largestCutter: Millimetre
  /** Names of the tools chosen, where the works has them. */
  readonly tools: {
    readonly cutter?: string
    /** A larger one that may rough it, where the works has one: the drill is then large enough for it. */
    readonly rougher?: string
    readonly drill?: string
  }
  /** Radius of the tightest inside corner in the cutter's plane. */
  readonly tightestCorner?: Millimetre
  /** Along the cutter's axis, from first touch of the outside to full break-through. */
  readonly plunge: {
    readonly zTop: Millimetre
    readonly zThrough: Millimetre
    readonly zFarWall: Millimetre
    readonly wall: Millimetre
  }
  /** Straight cut: how far the top edge falls from its highest point to the lowest of the roof, along the bore. */
  readonly roofFall?: Millimetre
  /** Radii of the cylinders that the cutter passes: outside and bore as milled, and the finished bore. */
  readonly walls: {
    readonly outside: Millimetre
    readonly bore: Millimetre
    readonly finished: Millimetre
    /** A side, of the window's own wall in hardening: the cut is larger by the middle of it. */
    readonly growth?: Spread
  }
  /** What the cutter must have: length below the shank, and stick-out. */
  readonly needed?: { readonly flutes: Millimetre; readonly reach: Millimetre }
  /** The cutter in its holder at the lowest that it goes. */
  readonly held?: HeldCutter
  /** The larger one that may rough it: length that it must have below the shank, and in its holder likewise. */
  readonly roughing?: { readonly flutes: Millimetre; readonly held: HeldCutter }
  /** The drill of the entry hole likewise. */
  readonly drillHeld?: HeldCutter
  /** Square to the cutter, from the shank to the nearest shoulder of the outside; absent where there is none. */
  readonly shoulderRoom?: Millimetre
  /** Along the cutter, from the end of the cut to the far wall of the bore. */
  readonly farWallRoom?: Millimetre
  /** From the centre of the top face as it stands, picked up after tilting. */
  readonly fromFace?: { readonly x: Millimetre; readonly z: Millimetre }
  /** Length of the finishing path of the cutter's centre. */
  readonly pathLength: Millimetre
  /** Closed outlines, corners rounded, counter-clockwise seen from inside the bore. */
  readonly outline: {
    readonly finished: readonly EdgePoint[]
    /** As milled, on the finished bore: before its wall has grown. */
    readonly unhardened?: readonly EdgePoint[]
    readonly asCut: readonly EdgePoint[]
    readonly outside: readonly EdgePoint[]
    /** In the cutter's plane, about the window's centre: mm along machine X and Y. */
    readonly cutterPlane: readonly {
      readonly x: Millimetre
      readonly y: Millimetre
    }[]
  }
}

export type PlannedPort = {
  readonly name: string
  readonly role: PortRole
  readonly at: Degree
  readonly up: Degree
  readonly back: Degree
  readonly cut: 'level' | 'straight'
  /** Degrees after top dead centre, on the way down and round; absent without an engine. */
  readonly opens?: Degree
  readonly closes?: Degree
  readonly duration?: Degree
  /** An inlet, by the skirt's lower edge: crank degrees before and after top dead centre; absent where the skirt is not given. */
  readonly bySkirt?: { readonly opensBefore: Degree; readonly closesAfter: Degree; readonly duration: Degree }
  readonly top: Millimetre
  readonly bottom: Millimetre
  readonly height: Millimetre
  readonly width: Millimetre
  readonly arc: Degree
  readonly corner: Millimetre
  readonly area: Areas
  /** Crank degrees that the opening moves for each 0.1 mm of the top edge. */
  readonly dAnglePerTenth?: Degree
  /** Crank degrees that the port would open late if it were cut to its finished depth in the bore as milled. */
  readonly ignoredShift?: Degree
  /** Against the mirror image: how much deeper this one's top, bottom and how much wider its arc. */
  readonly leftRight?: { readonly top: Millimetre; readonly bottom: Millimetre; readonly arc: Degree }
  /** Flow area below the crown's edge, by degrees after top dead centre, from opening to closing. */
  readonly uncovered?: readonly Uncovering[]
  readonly windows: readonly PortWindow[]
  /** The timing edge from the milling to the finished part: added when the lengths are known. */
  readonly edge?: EdgePlan
  /** What moves it round the bore: added when it is known how it is clocked; absent of the port that places are measured from. */
  readonly place?: PlaceRound
}
