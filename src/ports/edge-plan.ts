import type { Limits } from '../limits.ts'
import type { Degree, Millimetre } from '../units.ts'

/** One cut, growth or reading that the finished edge depends on; half of its range, as much as it moves the edge. */
export type EdgeMember = {
  readonly name: string
  readonly symbol: string
  readonly operation: number
  readonly half: Millimetre
}

/** What makes a chain close, the cheapest first: closer milling, a reading on each piece, the designer's consent. */
export type EdgeCure = 'none needed' | 'closer milling' | 'top face ground to the edge' | 'wider limits'

/** A cure that was tried: the tolerance of the milling that it wants, or the half width of the limits; why it does not serve. */
export type WeighedCure = {
  readonly cure: EdgeCure
  readonly serves: boolean
  readonly figure: Millimetre
  readonly because?: string
}

/** What is taken off the top face of each piece: its edge, as measured from the top face after hardening, less a target. */
export type TakeOff = {
  readonly operation: number
  readonly port: string
  /** Depth that the edge shall have below the ground face, in the bore as it then is. */
  readonly target: Millimetre
  readonly least: Millimetre
  readonly nominal: Millimetre
  readonly most: Millimetre
}

/** The break of a timing edge on the bore side, measured along the bore. */
export type EdgeBreak = {
  /** The edge that times the port: the top one by the crown, an inlet's bottom one by the skirt. */
  readonly of: 'top' | 'bottom'
  /** Before hardening, or before the bore is finished. */
  readonly broken: { readonly least: Millimetre; readonly most: Millimetre }
  /** What grinding and honing then take off the bore a side; negative where plating puts more on. */
  readonly taken: { readonly least: Millimetre; readonly most: Millimetre }
  /** On the finished part, after the stone. */
  readonly left: { readonly least: Millimetre; readonly most: Millimetre }
  /** How much sooner than its sharp corner the edge opens; absent without an engine, and for an inlet without a skirt. */
  readonly sooner?: { readonly least: Degree; readonly most: Degree }
  /** Plated over: the layer a side before honing. */
  readonly layer?: { readonly least: Millimetre; readonly most: Millimetre }
}

/** The timing edge of a port, from the milling to the finished part. Its place is that of its sharp corner. */
export type EdgePlan = {
  readonly members: readonly EdgeMember[]
  readonly expression: string
  /** Depth that the middle of the chain comes out at, and half widths about it. */
  readonly nominal: Millimetre
  readonly worstCase: Millimetre
  readonly rootSumSquare: Millimetre
  /** Depths that the finished edge may have, and who says so. */
  readonly allowed: Limits & { readonly from: 'drawing' | 'works' }
  /** Tolerance that the milling is given. */
  readonly milledTo: Millimetre
  /** Share of pieces outside, were every member bell-shaped within its range, or anything in it as likely. */
  readonly outside: { readonly bellShaped: number; readonly even: number }
  readonly cure: EdgeCure
  readonly weighed: readonly WeighedCure[]
  readonly takeOff?: TakeOff
  readonly edgeBreak?: EdgeBreak
}

/** An error by which a port stands off round the bore, either way: of its middle, and so of both side edges. */
export type PlaceMember = { readonly name: string; readonly angle: Degree; readonly side: Millimetre }

type AngleAndSide = { readonly angle: Degree; readonly side: Millimetre }

/**
 * Where a port stands round the bore, seen from what its place is measured from. Turning about its own axis moves the side
 * edges of a window alone: heights and timing stay.
 */
export type PlaceRound = {
  /** `flat on flange`, or the first port. */
  readonly from: string
  readonly members: readonly PlaceMember[]
  /** Along the finished bore in mm, of either side edge. */
  readonly worstCase: AngleAndSide
  readonly rootSumSquare: AngleAndSide
  /** Either way, as it is inspected. */
  readonly allowed: AngleAndSide
}
