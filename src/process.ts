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
  | 'crack-test'
  | 'mark'

export const HARDENING_PROCESSES: ReadonlySet<Process> = new Set(['nitride', 'case-harden', 'induction-harden'])

/** What takes a surface to its last size. */
export const FINISHING_PROCESSES: ReadonlySet<Process> = new Set(['grind', 'hone', 'lap'])
