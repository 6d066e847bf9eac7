import { outOfRange } from '../formula.ts'
import { chanceOfEnough, yieldAfter } from '../handbook/start-quantity.ts'
import type { Operation } from '../route/operation.ts'
import type { Habits } from '../shop/shop.ts'
import type { Notebook } from '../working.ts'

export type StartQuantity =
  | { readonly ok: true; readonly pieces: number; readonly confidence: number; readonly yield: number }
  | { readonly ok: false; readonly yield: number; readonly reason: string }

/** Smallest number of pieces that gives the good ones wanted with the confidence asked for, before set-up pieces and coupons. */
export function startQuantity(
  quantity: number,
  operations: readonly Operation[],
  { yields, confidence }: Pick<Habits, 'yields' | 'confidence'>,
  notebook: Notebook,
): StartQuantity {
  const Y = operations.reduce((before, { number, name, process }) => {
    const y = yields[process] ?? 1
    return y === 1 ? before : notebook.use(yieldAfter, { Y: before, y }, { operation: number, about: name })
  }, 1)
  const [fault] = outOfRange(chanceOfEnough, { Q: quantity, s: 0, Y })
  if (fault) return { ok: false, yield: Y, reason: `${fault.value} pieces: a batch is ${fault.allowed} pieces` }
  const most = chanceOfEnough.inputs.s.upTo ?? 0
  for (let s = 0; s <= most; s++) {
    if (chanceOfEnough.value({ Q: quantity, s, Y }) < confidence) continue
    const chance = notebook.use(chanceOfEnough, { Q: quantity, s, Y }, { about: 'batch' })
    return { ok: true, pieces: quantity + s, confidence: chance, yield: Y }
  }
  const reason = `with a yield of ${Y.toFixed(3)} ${most} spare pieces are too few for ${quantity} good ones with a chance of ${confidence}`
  return { ok: false, yield: Y, reason }
}
