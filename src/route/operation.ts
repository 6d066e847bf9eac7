import { HARDENED_BY, type HardeningPurpose, type Process } from '../process.ts'
import type { Millimetre } from '../units.ts'

/** What the operation is for: several share a process. Each stands at most once in a route. */
export type Purpose =
  | 'saw-blanks'
  | 'rough-turn'
  | 'stress-relieve'
  | 'finish-turn'
  | 'turn'
  | 'mill-ports'
  | 'mill-features'
  | 'turn-inside'
  | 'bore-pin'
  | 'deburr-soft'
  | 'nitride'
  | 'case-harden'
  | 'induction-harden'
  | 'hone-for-plating'
  | 'relieve-for-plating'
  | 'plate'
  | 'bake-after-plating'
  | 'grind-outside'
  | 'grind-bore'
  | 'grind-top'
  | 'hone-bore'
  | 'lap-outside'
  | 'crack-test'
  | 'deburr-ports'
  | 'final-inspection'

export const isHardening = (purpose: Purpose): purpose is HardeningPurpose =>
  HARDENING_PURPOSES.some(known => known === purpose)
const HARDENING_PURPOSES: readonly HardeningPurpose[] = Object.values(HARDENED_BY)

/** The face that the top face is ground from: the bottom, or the underside of the band named. */
export type AxialLocator = { readonly face: 'bottom' } | { readonly face: 'shoulder'; readonly band: string }

/** A line of the operation that comes next: what is looked at as the work leaves the works, or comes back to it. */
export type PassCheck = {
  readonly kind: 'despatch' | 'receipt'
  /** The operations of the trip, by their numbers. */
  readonly of: readonly number[]
  readonly text: string
  readonly because: string
}

/** A rule that holds an operation after, or before, another of the route. */
export type RouteWait = {
  readonly side: 'after' | 'before'
  /** The other, by its number. */
  readonly operation: number
  readonly rule: string
  readonly because: string
  /** What happens where the order is not kept. */
  readonly otherwise: string
  readonly source: string
}

/** An operation in its place in the route, before sizes and times are known. */
export type Operation = {
  /** Tens, in order. */
  readonly number: number
  readonly purpose: Purpose
  readonly name: string
  readonly process: Process
  readonly place: 'house' | 'outside'
  readonly workCentre: string
  /** What to hold it by, in the imperative. */
  readonly holding: string
  /** How far off axis it may stand when it is set true, radial, where that bears on the sizes. */
  readonly setTrue?: Millimetre
  /** The surfaces it is held or located by: names of the part file. */
  readonly locatedBy: readonly string[]
  /** In which state those surfaces then are; left out where they do not bear on the sizes. */
  readonly locatedAs?: 'turned' | 'ground'
  /** What holds it there, where that bears on the sizes. */
  readonly heldIn?: 'jaws' | 'mandrel' | 'centres' | 'work blade'
  /** Of the band that jaws grip: at which end of it they do. */
  readonly gripsAt?: 'top' | 'bottom'
  /** Where it grinds the top face: the face that it measures from. */
  readonly axialLocator?: AxialLocator
  /** What is checked before it begins: the work as it comes back from a firm or a furnace, and as it leaves for one. */
  readonly checks?: readonly PassCheck[]
  /** Where number and batch are marked in this operation: a name of the part file. */
  readonly marks?: string
  /** The surfaces it makes: `bore`, a band's name, `top`, `bottom`, `length`, a port's name. */
  readonly surfaces: readonly string[]
  /** One line each: why this operation, and why here. */
  readonly because: readonly string[]
  /** What holds it there, nearest neighbour first; what a chain of others implies is left out. */
  readonly waits: readonly RouteWait[]
  readonly cautions: readonly string[]
}
