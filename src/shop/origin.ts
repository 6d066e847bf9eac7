import { fromBuiltIn, fromShop, type Origin } from '../known.ts'
import type { Shop } from './shop.ts'

type Set = Pick<Shop, 'set'>

/** Who gave what is on hand: a list of the shop file stands in place of the built-in one. */
export const onHand = ({ set }: Set, list: 'machines' | 'tools' | 'gauges', name: string): Origin =>
  set.has(`/${list}`)
    ? fromShop(`${list}, ${name}`)
    : fromBuiltIn(`built-in ${list}, ${name}: common practice, no source`)

/** Who gave a key of the fixture or of the habits, `sine-bar`, `yields/nitride`. */
export const setting = ({ set }: Set, part: 'fixture' | 'habits', key: string): Origin =>
  set.has(`/${part}/${key}`) ? fromShop(`${part}/${key}`) : fromBuiltIn('common practice, no source')
