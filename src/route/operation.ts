import type { Process } from '../process.ts'
import type { Millimetre } from '../units.ts'

/** What the operation is for: several share a process. Each stands at most once in a route. */
export type Purpose =
  | 'saw-blanks'
  | 'rough-turn'
  | 'check-blanks-before-sending'
  | 'stress-relieve'
  | 'check-blanks-on-return'
  | 'finish-turn'
  | 'mark'
  | 'mill-ports'
  | 'mill-features'
  | 'deburr-soft'
  | 'check-before-sending'
  | 'nitride'
  | 'case-harden'
  | 'induction-harden'
  | 'check-on-return'
  | 'check-before-finishing'
  | 'hone-for-plating'
  | 'check-before-plating'
  | 'relieve-for-plating'
  | 'plate'
  | 'bake-after-plating'
  | 'check-after-plating'
  | 'grind-outside'
  | 'grind-bore'
  | 'grind-top'
  | 'hone-bore'
  | 'lap-outside'
  | 'check-after-finishing'
  | 'deburr-ports'
  | 'final-inspection'

export type HardeningPurpose = 'nitride' | 'case-harden' | 'induction-harden'

export const isHardening = (purpose: Purpose): purpose is HardeningPurpose =>
  purpose === 'nitride' || purpose === 'case-harden' || purpose === 'induction-harden'

/** The face that the top face is ground from: the bottom, or the underside of the band named. */
export type AxialLocator = { readonly face: 'bottom' } | { readonly face: 'shoulder'; readonly band: string }

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
  /** Of a check: the operations that it lets the work go out to, or takes it back from. */
  readonly guards?: readonly Purpose[]
  /** The surfaces it makes: `bore`, a band's name, `top`, `bottom`, `length`, a port's name. */
  readonly surfaces: readonly string[]
  /** One line each: why this operation, and why here. */
  readonly because: readonly string[]
  readonly cautions: readonly string[]
}
