export type Process =
  | 'saw'
  | 'turn'
  | 'drill'
  | 'mill'
  | 'deburr'
  | 'stress-relieve'
  | 'nitride'
  | 'case-harden'
  | 'induction-harden'
  | 'plate'
  | 'grind'
  | 'hone'
  | 'lap'
  | 'inspect'
  | 'mark'

export const HARDENING_PROCESSES: ReadonlySet<Process> = new Set(['nitride', 'case-harden', 'induction-harden'])

/** What the operation is for: several share a process. One a route, but for the checks that leave and come back. */
export type Purpose =
  | 'saw-blanks'
  | 'rough-turn'
  | 'stress-relieve'
  | 'finish-turn'
  | 'mark'
  | 'mill-ports'
  | 'deburr-soft'
  | 'check-before-sending'
  | 'nitride'
  | 'check-on-return'
  | 'grind-outside'
  | 'grind-bore'
  | 'hone-bore'
  | 'deburr-ports'
  | 'final-inspection'

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
  /** The surfaces it is held or located by: names of the part file. */
  readonly locatedBy: readonly string[]
  /** The surfaces it makes: `bore`, a band's name, `top`, `bottom`, `length`, a port's name. */
  readonly surfaces: readonly string[]
  /** One line each: why this operation, and why here. */
  readonly because: readonly string[]
  readonly cautions: readonly string[]
}
