import { outOfRange } from '../formula.ts'
import { chanceOfEnough, yieldAfter } from '../handbook/start-quantity.ts'
import { known, type Origin, told, worked } from '../known.ts'
import type { Operation } from '../route/operation.ts'
import { setting } from '../shop/origin.ts'
import type { Shop } from '../shop/shop.ts'
import type { Notebook } from '../working.ts'

export type StartQuantity =
  | { readonly ok: true; readonly pieces: number; readonly confidence: number; readonly yield: number }
  | { readonly ok: false; readonly yield: number; readonly reason: string }

const MOST_SPARE = chanceOfEnough.inputs.s.upTo ?? 0

/** Nothing where even the most that are reckoned with are too few. */
function fewestSpare(Q: number, Y: number, confidence: number): number | undefined {
  for (let s = 0; s <= MOST_SPARE; s++) if (chanceOfEnough.value({ Q, s, Y }) >= confidence) return s
  return undefined
}

/** Before every operation, the fewest pieces that still give the good ones wanted with the confidence asked for, by what is yet to be lost. */
export function goOnWith(
  quantity: number,
  operations: readonly Operation[],
  { habits: { yields, confidence } }: Pick<Shop, 'habits'>,
): readonly { readonly operation: number; readonly pieces: number }[] {
  return operations.map(({ number }, index) => {
    const Y = operations.slice(index).reduce((product, { process }) => product * (yields[process] ?? 1), 1)
    return { operation: number, pieces: quantity + (fewestSpare(quantity, Y, confidence) ?? MOST_SPARE) }
  })
}

const NONE_LOST = worked('nothing lost before')
const ASKED: Origin = { from: 'batch', source: 'good pieces wanted' }
const TRIED = worked('fewest spare pieces that reach the chance wanted')

/** Smallest number of pieces that gives the good ones wanted with the confidence asked for, before set-up pieces and coupons. */
export function startQuantity(
  quantity: number,
  operations: readonly Operation[],
  shop: Pick<Shop, 'habits' | 'set'>,
  notebook: Notebook,
): StartQuantity {
  const { yields, confidence } = shop.habits
  const Y = operations.reduce((before, { number, name, process }) => {
    const y = yields[process] ?? 1
    if (y === 1) return before
    const given = {
      Y: before === 1 ? known(1, '', NONE_LOST) : before,
      ...told(setting(shop, 'habits', `yields/${process}`), { y }),
    }
    return notebook.use(yieldAfter, given, { operation: number, about: name })
  }, 1)
  const [fault] = outOfRange(chanceOfEnough, { Q: quantity, s: 0, Y })
  if (fault) return { ok: false, yield: Y, reason: `${fault.value} pieces: a batch is ${fault.allowed} pieces` }
  const s = fewestSpare(quantity, Y, confidence)
  if (s !== undefined) {
    const given = { Y: Y === 1 ? known(1, '', NONE_LOST) : Y, ...told(ASKED, { Q: quantity }), ...told(TRIED, { s }) }
    const chance = notebook.use(chanceOfEnough, given, { about: 'batch' })
    return { ok: true, pieces: quantity + s, confidence: chance, yield: Y }
  }
  const reason = `with a yield of ${Y.toFixed(3)} ${MOST_SPARE} spare pieces are too few for ${quantity} good ones with a chance of ${confidence}`
  return { ok: false, yield: Y, reason }
}
