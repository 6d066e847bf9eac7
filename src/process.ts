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

/** How the part file, a record and an order call a hardening. */
export type HardeningProcess =
  | 'gas nitriding'
  | 'plasma nitriding'
  | 'salt-bath nitriding'
  | 'nitrocarburising'
  | 'carburising'
  | 'induction hardening'
  | 'through hardening'

/** How the route calls it. */
export type HardeningPurpose = 'nitride' | 'case-harden' | 'induction-harden'

export const HARDENED_BY: Readonly<Record<HardeningProcess, HardeningPurpose>> = {
  'gas nitriding': 'nitride',
  'plasma nitriding': 'nitride',
  'salt-bath nitriding': 'nitride',
  nitrocarburising: 'nitride',
  carburising: 'case-harden',
  'induction hardening': 'induction-harden',
  'through hardening': 'case-harden',
}

export const isHardeningProcess = (word: string | undefined): word is HardeningProcess =>
  word !== undefined && Object.hasOwn(HARDENED_BY, word)

export const HARDENING_PROCESSES: ReadonlySet<Process> = new Set(Object.values(HARDENED_BY))

/** What takes a surface to its last size. */
export const FINISHING_PROCESSES: ReadonlySet<Process> = new Set(['grind', 'hone', 'lap'])
