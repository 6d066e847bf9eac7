import type { Place } from '../finding.ts'
import type { Process } from '../process.ts'
import type {
  Celsius,
  Day,
  Degree,
  Hour,
  Kilowatt,
  Micrometre,
  Millimetre,
  Minute,
  Newton,
  SpindleSpeed,
  Vickers,
} from '../units.ts'
import type { Contact, Firm } from './firm.ts'
import type { Measured } from './record.ts'
import type { Tool } from './tool.ts'
import type { WorkingDays } from './working-days.ts'

/** The tilted rotary that mills the ports, in the axes of ISO 841: see DEVELOPERS.md, axes and signs. */
export type Fixture = {
  readonly headFaces: '+X' | '-X'
  /** Where the top face stands in X at zero tilt, from the pivot. */
  readonly faceDistance: Millimetre
  /** Rotary centre line above the pivot. */
  readonly pivotHeight: Millimetre
  readonly positiveRotary: 'Y to Z' | 'Z to Y'
  /** Which way a positive figure of the tilt axis turns, where the machine has one: an axis that moves the work may count either way. */
  readonly positiveTilt: 'Z to X' | 'X to Z'
  readonly rotaryLimits: readonly [Degree, Degree]
  readonly tiltLimits: readonly [Degree, Degree]
  /** Between the rollers of the sine bar that sets the tilt. */
  readonly sineBar: Millimetre
  /** Diameter of the ball that picks up. */
  readonly ball: Millimetre
  readonly holder: Holder
  readonly chuck: Chuck
  /** The next three: absent where the works does not say, and then nothing is checked against them. */
  readonly rotary?: Rotary
  readonly plate?: TiltPlate
  readonly head?: MachineHead
}

/** The body of the rotary behind its chuck: the cylinder about its axis that holds all of it. */
export type Rotary = { readonly diameter: Millimetre; readonly length: Millimetre }

/** The plate that carries the rotary and tilts with it: its ends in X and its upper face in Z at zero tilt, from the pivot. */
export type TiltPlate = {
  readonly from: Millimetre
  readonly to: Millimetre
  readonly width: Millimetre
  readonly top: Millimetre
  readonly thickness: Millimetre
}

/** The machine's head over the spindle's face: a circle about the spindle that holds what comes down beside the work. */
export type MachineHead = {
  readonly diameter: Millimetre
  /** How far the spindle's face stands below it. */
  readonly spindleLength: Millimetre
  /** Z of the spindle's face fully up, from the pivot; absent where the works does not say. */
  readonly fullyUp?: Millimetre
}

/** What carries the cutter: a round nose of a length under the spindle. */
export type Holder = {
  readonly diameter: Millimetre
  readonly length: Millimetre
  readonly spindleDiameter: Millimetre
}

/** The chuck or plate that the held end of the part stands against. */
export type Chuck = {
  readonly diameter: Millimetre
  readonly length: Millimetre
  /** Where its front face stands in X at zero tilt, from the pivot; left out, where the least grip puts it. */
  readonly faceDistance?: Millimetre
  /** A collet presses all round; jaws, where the works does not say. */
  readonly kind?: 'jaws' | 'collet'
  /** What all jaws press with together while ports are milled; absent where the works does not say. */
  readonly force?: Newton
}

export type Machine = {
  readonly workCentre: string
  readonly name: string
  readonly processes: readonly Process[]
  readonly speedLimit?: SpindleSpeed
  /** Marked on the chuck, where that is lower. */
  readonly chuckLimit?: SpindleSpeed
  readonly power?: Kilowatt
  /** Set-up of one operation on it. */
  readonly setup: Minute
  /** Load, unload, and gauge for each piece. */
  readonly handling: Minute
  /** Working days that work usually waits there before it is begun. */
  readonly queue?: Day
}

export type GaugeKind =
  | 'outside'
  | 'bore'
  | 'depth'
  | 'length'
  | 'form'
  | 'roughness'
  | 'hardness'
  | 'angle'
  | 'contour'
  | 'groove'
  | 'edge'
  | 'visual'

export type Gauge = {
  readonly name: string
  readonly kind: GaugeKind
  /** What it measures, in mm; roughness in µm, hardness in HV, angles in degrees. */
  readonly from: Millimetre
  readonly to: Millimetre
  readonly resolution: Millimetre
  /** Expanded uncertainty, k = 2. For roughness and hardness: the fraction of the reading. */
  readonly uncertainty: Millimetre
}

/** What each process holds and disturbs, as planned: the works may set its own. */
export type Habits = {
  /** Tolerance on diameter of a rough-turned, a finish-turned, a ground-before-honing surface. */
  readonly roughTurningTolerance: Millimetre
  readonly finishTurningTolerance: Millimetre
  readonly boreGrindingTolerance: Millimetre
  readonly faceTurningTolerance: Millimetre
  readonly faceGrindingTolerance: Millimetre
  /** Left for each side by roughing, for finish turning after stress relief. */
  readonly roughingAllowance: Millimetre
  /** On the depth of a port's timing edge, of its floor, and on its width. */
  readonly portEdgeTolerance: Millimetre
  readonly portFloorTolerance: Millimetre
  readonly portWidthTolerance: Millimetre
  /** Of the part in the rotary's jaws while its ports are milled, along it. */
  readonly leastGrip: Millimetre
  /** To set another tilt of the rotary by hand and prove it. */
  readonly tiltChange: Minute
  /** Steps that a chosen stock is rounded to. */
  readonly stockStep: Millimetre
  /** Eccentricity, radial, between the surface that locates and the surface cut. */
  readonly turnedOutsideToBore: Millimetre
  readonly mandrelRunout: Millimetre
  readonly chuckRunout: Millimetre
  readonly boreGrindingRunout: Millimetre
  /** Roughness height and damaged layer left by finish turning. */
  readonly turnedRoughness: Micrometre
  readonly turnedLayer: Micrometre
  readonly groundRoughness: Micrometre
  readonly groundLayer: Micrometre
  /** As its pieces come back from hardening, where the works knows but has no record: over the length of the part. */
  readonly ovality?: Millimetre
  readonly bow?: Millimetre
  /** Cut beyond the compound layer, so that none stays. */
  readonly cleanUpAllowance: Millimetre
  readonly nitridingTemperature: Celsius
  readonly nitridingTimeLimit: Hour
  readonly sawKerf: Millimetre
  readonly facingAllowance: Millimetre
  readonly barLength: Millimetre
  readonly barRemnant: Millimetre
  /** Good pieces out of pieces in, by process. */
  readonly yields: Readonly<Partial<Record<Process, number>>>
  /** Chance wanted of ending with enough good pieces. */
  readonly confidence: number
  readonly setupPieces: number
  readonly couponPieces: number
}

/** What the works reckons with, in one money. */
export type Money = {
  /** Its name or sign, as printed. */
  readonly currency: string
  /** An hour of a work centre, by its name. */
  readonly rates: Readonly<Record<string, number>>
  /** A kilogram of bar, by its grade. */
  readonly bars: Readonly<Record<string, number>>
  /** What wears, by the name of its tool: its price, and the minutes that it cuts where the works says them. */
  readonly cutters: Readonly<Record<string, { readonly price: number; readonly life?: Minute }>>
}

/** What a control wants written instead of the plain words. `{tool}` stands for the tool's number. */
export type NcWords = {
  readonly toolChange?: string
  readonly clamp?: string
  readonly unclamp?: string
  readonly coolantOn?: string
  readonly coolantOff?: string
  /** Letter of the axis that sets the tilt; without one it is set by hand. */
  readonly tiltAxis?: string
  readonly tiltClamp?: string
  readonly tiltUnclamp?: string
  /** Takes the spindle fully up, which comes before every tilt; without it the program stops for that. */
  readonly spindleUp?: string
  /** How rotary and tilt axis are clamped where no word does it; left out, by hand, for which the program stops. */
  readonly clamping?: 'by hand' | 'automatic'
}

export type Shop = {
  readonly name: string
  readonly contact?: Contact
  /** The works' own week and holidays. Left out, Monday to Friday. */
  readonly working?: WorkingDays
  /** Of a working day. */
  readonly hours?: Hour
  readonly money?: Money
  readonly fixture: Fixture
  readonly machines: readonly Machine[]
  readonly tools: readonly Tool[]
  readonly gauges: readonly Gauge[]
  readonly firms: readonly Firm[]
  readonly measured: readonly Measured[]
  readonly habits: Habits
  /** Surface and core hardness that the works' hardener reaches on a grade, where it knows better than the handbook. */
  readonly reached: readonly {
    readonly grade: string
    readonly surface: Vickers
    readonly core: Vickers
    /** Nitriding depth constant at 520 °C, mm/h^0.5. */
    readonly depthConstant?: number
  }[]
  /** Words of the control that mills the ports, where they are not those of ISO 6983. */
  readonly ncWords?: NcWords
  /** Thresholds of the rules about ports that the works sets for itself, by `<rule>.<threshold>`. */
  readonly portChecks?: Readonly<Record<string, number>>
  /** Pointers that the shop file itself sets: a figure without one is the built-in default. */
  readonly set: ReadonlySet<string>
  readonly places: ReadonlyMap<string, Place>
  readonly file: string
}
