import type { Band, Surface } from '../band.ts'
import type { Feature } from '../feature.ts'
import type { Place } from '../finding.ts'
import type { QuenchWay } from '../handbook/quench-ovality.ts'
import type { DrawnSize, Limits } from '../limits.ts'
import type { HardeningProcess } from '../process.ts'
import type { Celsius, CubicCentimetre, Degree, Millimetre, SpindleSpeed, Vickers } from '../units.ts'

export type PartKind = 'liner' | 'sleeve' | 'pin' | 'piston'

export type Face = Surface & { readonly path: string }

/** Stroke geometry. */
export type Engine = {
  readonly stroke: Millimetre
  readonly rod: Millimetre
  /** Positive toward the crankpin's side on the downstroke. */
  readonly pinOffset: Millimetre
  /** Piston crown edge below the liner's top face at top dead centre; negative when it stands proud. */
  readonly crownBelowTop: Millimetre
  readonly speed?: SpindleSpeed
  /** Above the crown at top dead centre, with all that is between head and crown, cm³. */
  readonly headVolume?: CubicCentimetre
  /** From the crown's edge down to the skirt's lower edge. */
  readonly skirt?: Millimetre
  /** A piston without rings, or where its rings run. */
  readonly rings?: 'none' | Rings
}

export type Rings = {
  /** Below the crown's edge: top of the first ring, bottom of the last. */
  readonly from?: Millimetre
  readonly to?: Millimetre
  /** Azimuths of the pegs that the gaps stand at. */
  readonly pegs: readonly Degree[]
}

export type Material = {
  /** As the handbook lists it: `42CrMo4`. */
  readonly grade: string
  /** As the user wrote it: `4140`. */
  readonly written: string
  readonly hardness?: Vickers
  /** Tempering temperature of the bar certificate. */
  readonly temper?: Celsius
}

/** As left after finishing; depth by the process's own definition. */
export type Hardening = {
  readonly process: HardeningProcess
  readonly hardness?: { readonly least: Vickers }
  readonly depth?: { readonly least: Millimetre }
  /** Temperature of the process where the part fixes it. */
  readonly temperature?: Celsius
  /** How a part carburised or hardened through is quenched, where the drawing or the hardener says it. */
  readonly quench?: QuenchWay
  /** Surfaces that shall not be treated. */
  readonly masked: readonly string[]
  readonly path: string
}

export type PlatingProcess = 'hard chrome' | 'nickel silicon carbide'

/** A surface that is built up by plating and honed to size. The thickness is per side, as left after honing. */
export type PartPlating = {
  readonly process: PlatingProcess
  /** A band of the bore, by name. */
  readonly surface: string
  readonly thickness: {
    readonly least: Millimetre
    readonly most?: Millimetre
    /** What the sizes are worked from; left out, the planner chooses the least that leaves what is asked. */
    readonly aim?: Millimetre
  }
  readonly hardness?: { readonly least: Vickers }
  /** Broken on the port edges and the ends of the bore before plating, where the drawing gives it. */
  readonly chamfer?: Millimetre
  readonly path: string
}

/** Stock on diameter that the user fixes; a face's is on the face. What is left out, the planner chooses. */
export type StockChoice = {
  readonly outside?: Millimetre
  readonly bore?: Millimetre
  readonly hone?: Millimetre
  /** Honing before the bore is plated. */
  readonly preplate?: Millimetre
  readonly lap?: Millimetre
  readonly top?: Millimetre
}

/** What flows through a port. A decompressor is shut while the engine runs; `other` is none of them, and no rule of a role is held against it. */
export type PortRole = 'exhaust' | 'aux exhaust' | 'transfer' | 'boost' | 'inlet' | 'decompressor' | 'other'

/** Corner radius on the developed finished bore, or in the cutter's own plane. */
export type Corner = {
  readonly on: 'bore' | 'cutter'
  readonly radius: Millimetre
}

/**
 * Lengths of a port that the part file gives a tolerance of their own: a port is planned to the middle of their limits. The
 * others take the works' habits.
 */
export type DrawnPort = {
  /** Crank degrees. */
  readonly opens?: Limits & { readonly written: string }
  readonly top?: DrawnSize
  readonly height?: DrawnSize
  readonly bottom?: DrawnSize
  readonly width?: DrawnSize
}

/** One window, or the two or three that bars leave, on the finished bore. A mirrored port has been made into two of these. */
export type Port = {
  readonly name: string
  readonly role: PortRole
  /** Azimuth of the centre line on the finished bore, in (-180, 180]. */
  readonly at: Degree
  /** Name of the port's mirror image, when it has one. */
  readonly mirrorOf?: string
  /** Crank degrees after top dead centre, or the depth of the top edge: exactly one of the two. */
  readonly opens?: Degree
  readonly top?: Millimetre
  /** How long the drawing says that it is open, crank degrees: only held against the opening. */
  readonly duration?: Degree
  /** Along the bore, or the depth of the bottom edge: exactly one of the two. */
  readonly height?: Millimetre
  readonly bottom?: Millimetre
  /** Chord on the finished bore, or the angle it spans: exactly one of the two. A bridge is part of the width. */
  readonly width?: Millimetre
  readonly arc?: Degree
  readonly corner: Corner
  /** One bar down the middle, or two that leave three windows of one width across the stream, the first at the lower azimuth. */
  readonly bridge?: Millimetre | readonly [Millimetre, Millimetre]
  readonly up: Degree
  readonly back: Degree
  readonly cut: 'level' | 'straight'
  readonly drawn?: DrawnPort
  readonly path: string
}

/** The bars left in a port's width. */
export const barsOf = ({ bridge }: Pick<Port, 'bridge'>): readonly Millimetre[] =>
  bridge === undefined ? [] : typeof bridge === 'number' ? [bridge] : bridge

/** A flat, notch or dowel hole on an outside band that brings azimuth 0 back. */
export type Datum = {
  readonly kind: 'flat' | 'notch' | 'dowel hole'
  /** Name of the band. */
  readonly on: string
  readonly at: Degree
  readonly depth: Millimetre
  readonly path: string
}

export type Waiver = {
  readonly rule: string
  readonly because: string
  readonly path: string
}

export type GeneralTolerance = 'f' | 'm' | 'c' | 'v'

/** What a piston runs in. */
export type Fitted = {
  readonly number: string
  readonly revision: string
  readonly grade: string
  /** The running bore. */
  readonly bore: Limits
}

export type Part = {
  readonly number: string
  readonly title: string
  readonly revision: string
  readonly kind: PartKind
  readonly engine?: Engine
  readonly material: Material
  readonly length: DrawnSize
  /** From the top face down; the last one ends at the nominal length. */
  readonly outside: readonly Band[]
  /** From the top face down. A plain bore is one band named `bore`. A solid pin has none. */
  readonly bore: readonly Band[]
  readonly top: Face
  readonly bottom: Face
  readonly hardening?: Hardening
  readonly plating?: PartPlating
  readonly stock: StockChoice
  readonly ports: readonly Port[]
  readonly datum?: Datum
  /** Chamfers, undercuts, grooves, holes, cut-outs: in the order of the file. */
  readonly features: readonly Feature[]
  /** File of the liner that a piston runs in, and what has been read of it. */
  readonly fits?: string
  readonly fitted?: Fitted
  readonly generalTolerance: GeneralTolerance
  readonly waive: readonly Waiver[]
  /** Where every value of the part file stands, by pointer: `/ports/1/corner`. */
  readonly places: ReadonlyMap<string, Place>
  readonly file: string
}

/** The place of a value, or of the nearest thing around it that the file has. */
export function placeOf({ places, file }: Pick<Part, 'places' | 'file'>, path: string): Place {
  for (let at = path; at !== ''; at = at.slice(0, at.lastIndexOf('/'))) {
    const place = places.get(at)
    if (place) return place
  }
  return places.get('') ?? { file, line: 1, column: 1 }
}
