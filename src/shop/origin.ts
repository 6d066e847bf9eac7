import { FINE_TURNED } from '../handbook/fine-turning.ts'
import { fromBuiltIn, fromHandbook, fromShop, type Origin } from '../known.ts'
import type { Shop } from './shop.ts'
import { isOnHand } from './tools-to-get.ts'

type Set = Pick<Shop, 'set'>

/** Stands among what the shop file sets for an entry that it took over from the built-in list. */
export const builtInOf = (list: string, name: string): string => `/${list}/built-in/${name}`

/** Who gave what is on hand: a list of the shop file stands in place of the built-in one. */
export const onHand = (
  { set, tools }: Set & Partial<Pick<Shop, 'tools'>>,
  list: 'machines' | 'tools' | 'gauges',
  name: string,
): Origin =>
  list === 'tools' && tools !== undefined && !isOnHand({ tools }, name)
    ? fromBuiltIn(`tool to get, ${name}: common practice, no source`)
    : listed(set, list, name)

const listed = (set: Shop['set'], list: string, name: string): Origin =>
  set.has(`/${list}`) && !set.has(builtInOf(list, name))
    ? fromShop(`${list}, ${name}`)
    : fromBuiltIn(`built-in ${list}, ${name}: common practice, no source`)

/** Stands among what is set for a habit that is kept closer for one part than the works usually keeps it. */
export const closerOf = (key: string): string => `/habits/closer/${key}`

/** Who gave a key of the fixture or of the habits, `sine-bar`, `yields/nitride`. */
export const setting = ({ set }: Set, part: 'fixture' | 'habits', key: string): Origin => {
  if (part === 'habits' && set.has(closerOf(key))) return fromHandbook(FINE_TURNED.source)
  return set.has(`/${part}/${key}`) ? fromShop(`${part}/${key}`) : fromBuiltIn('common practice, no source')
}
