import type { Spread } from '../limits.ts'
import type { Measured, MeasuredGrowth } from '../shop/record.ts'
import type { Notebook } from '../working.ts'
import type { Growth } from './growth.ts'
import { pooledGrowth } from './pooled-loads.ts'

/** Growth of each side as a record has it; or one figure for all that it does not part. */
export type Recorded = {
  readonly outside?: Spread
  readonly bore?: Spread
  readonly length?: Spread
  readonly alike?: Spread
}

/** From the loads of the record where it keeps them, else as it is written. */
export function recordedGrowth(notebook: Notebook, row: Measured, reckoned: Growth): Recorded {
  const { growth, loads } = row
  const written: Recorded = growth === undefined ? {} : 'least' in growth ? { alike: growth } : partedOf(growth)
  const pooled = (side: 'outside' | 'bore'): Spread | undefined => {
    const own = loads?.[side]
    return own ? pooledGrowth(notebook, { loads: own, expected: reckoned[side], about: `growth, ${side}` }) : undefined
  }
  const [outside, bore] = [pooled('outside') ?? written.outside, pooled('bore') ?? written.bore]
  return { ...written, ...(outside && { outside }), ...(bore && { bore }) }
}

const partedOf = ({ outside, bore, length }: MeasuredGrowth): Recorded => ({
  ...(outside && { outside }),
  ...(bore && { bore }),
  ...(length && { length }),
})
