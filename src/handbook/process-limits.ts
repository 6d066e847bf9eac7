import type { Millimetre } from '../units.ts'

/** What nobody holds with a process, in steel of 300 HV and less at 10 to 80 mm: mm, and µm for Ra. */
export type ProcessLimits = {
  /** Words for a finding: `finish turning`. */
  readonly process: string
  /** Whole width of a size. */
  readonly tolerance: number
  readonly roughness: number
  /** Roundness and cylindricity; of a face its flatness. */
  readonly form: number
}

/** Nobody sets up closer than this, radial. Estimate. */
export const CLOSEST_SET_UP: Millimetre = 0.003

/** The groups of materials that a limit differs for. */
export type LimitGroup = 'steel' | 'iron' | 'aluminium' | 'bronze'

export const PROCESS_LIMITS_SOURCE = 'common practice, no source'

export const TURNING_LIMITS: Readonly<Record<LimitGroup, ProcessLimits>> = {
  steel: { process: 'finish turning', tolerance: 0.01, roughness: 0.4, form: 0.003 },
  iron: { process: 'finish turning', tolerance: 0.012, roughness: 0.8, form: 0.003 },
  aluminium: { process: 'finish turning', tolerance: 0.008, roughness: 0.2, form: 0.002 },
  bronze: { process: 'finish turning', tolerance: 0.01, roughness: 0.3, form: 0.003 },
}

/**
 * What a last lathe cut holds day in, day out, and leaves, without more care than a sharp tool: mm on diameter, µm of Ra.
 * Common practice, no source: soft steel between IT8 and IT9 and Ra 1.6; iron between IT7 and IT8; bronze and aluminium IT7 and Ra 0.8.
 */
export const USUAL_TURNED: Readonly<Record<LimitGroup, { readonly tolerance: number; readonly roughness: number }>> = {
  steel: { tolerance: 0.05, roughness: 1.6 },
  iron: { tolerance: 0.03, roughness: 1.6 },
  aluminium: { tolerance: 0.02, roughness: 0.8 },
  bronze: { tolerance: 0.025, roughness: 0.8 },
}

/** A bore of up to 25 mm is bored closer: half the tolerance. */
export const BORING_LIMITS: Readonly<Record<LimitGroup, ProcessLimits>> = {
  steel: { process: 'fine boring', tolerance: 0.008, roughness: 0.3, form: 0.002 },
  iron: { process: 'fine boring', tolerance: 0.008, roughness: 0.3, form: 0.002 },
  aluminium: { process: 'fine boring', tolerance: 0.008, roughness: 0.15, form: 0.002 },
  bronze: { process: 'boring', tolerance: 0.01, roughness: 0.3, form: 0.003 },
}
export const SMALL_BORE = { upTo: 25, tolerance: 0.004 } as const

type FinishingLimit =
  | 'grind-outside'
  | 'centreless'
  | 'grind-bore'
  | 'grind-top'
  | 'hone-bore'
  | 'hone-bore, iron'
  | 'lap-outside'

export const FINISHING_LIMITS: Readonly<Record<FinishingLimit, ProcessLimits>> = {
  'grind-outside': { process: 'cylindrical grinding', tolerance: 0.003, roughness: 0.1, form: 0.0005 },
  centreless: { process: 'centreless grinding', tolerance: 0.002, roughness: 0.05, form: 0.0004 },
  'grind-bore': { process: 'bore grinding', tolerance: 0.005, roughness: 0.15, form: 0.001 },
  'grind-top': { process: 'face grinding', tolerance: 0.004, roughness: 0.1, form: 0.002 },
  'hone-bore': { process: 'honing', tolerance: 0.003, roughness: 0.05, form: 0.001 },
  'hone-bore, iron': { process: 'honing of iron', tolerance: 0.003, roughness: 0.2, form: 0.001 },
  'lap-outside': { process: 'lapping', tolerance: 0.001, roughness: 0.01, form: 0.0002 },
}

/** A bore below this is not turned, mm. */
export const LEAST_TURNED_BORE = 3

/** mm that a tapered bore may be closer at one end: more is not honed out, it is ground. */
export const MOST_HONED_TAPER = 0.25

/** Walls in the jaws, on an honest day: an error below the first, a warning below the second; of the bore's diameter, and mm. */
export const WALL_LIMITS = {
  least: 0.5,
  refused: 0.015,
  warned: 0.03,
  /** Iron breaks where steel bends. */
  ironTimes: 1.5,
} as const

/** mm that a port's edge keeps from either end of the part. */
export const LEAST_END_LAND = 0.5

/** Depth that a grooving insert reaches, with pecks, by its width, mm; a groove narrower than the first has no insert. */
export const GROOVE_DEPTHS: readonly { readonly width: number; readonly depth: number }[] = [
  { width: 0.5, depth: 1.6 },
  { width: 1, depth: 3 },
  { width: 1.2, depth: 3.6 },
  { width: 1.5, depth: 5 },
  { width: 2, depth: 12 },
  { width: 2.5, depth: 20 },
]
