import type { PortRole } from './part.ts'

/** Words of the trade by what they say; each is looked for anywhere in the name, the short ones as words of their own. */
const SAYS = {
  decompressor: /decompress/,
  inlet: /inlet|intake|induction/,
  transfer: /transfer|scaveng/,
  boost: /boost/,
  exhaust: /exhaust/,
  auxiliary: /auxiliary|(?<![a-z])(aux|sub|side)(?![a-z])/,
  main: /(?<![a-z])mains?(?![a-z])/,
  third: /(?<![a-z])third(?![a-z])/,
}

/**
 * What flows through a port, as its name says in the trade; nothing where it says nothing, or two things at once. A transfer
 * may be told by what it stands beside (`transfer, exhaust side`), an exhaust not.
 */
export function roleNamed(name: string): PortRole | undefined {
  const lower = name.toLowerCase()
  const says = (word: keyof typeof SAYS): boolean => SAYS[word].test(lower)
  if (says('decompressor')) return 'decompressor'
  if (says('transfer')) return says('boost') || says('third') ? 'boost' : 'transfer'
  if (says('exhaust')) {
    if (says('inlet')) return undefined
    return says('auxiliary') || says('boost') ? 'aux exhaust' : 'exhaust'
  }
  if (says('boost')) return 'boost'
  if (says('inlet')) return 'inlet'
  if (says('main')) return 'transfer'
  if (says('third')) return 'boost'
  // A side port alone may be anything.
  return /aux/.test(lower) ? 'aux exhaust' : undefined
}

/** What the part file may say of a port, `other` for what is none of them. */
export const PORT_ROLES: readonly PortRole[] = [
  'exhaust',
  'aux exhaust',
  'transfer',
  'boost',
  'inlet',
  'decompressor',
  'other',
]

/** The exhausts: what opens the cylinder to the outside first and closes it last. */
export const isExhaust = (role: PortRole): boolean => role === 'exhaust' || role === 'aux exhaust'
