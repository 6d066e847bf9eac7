import { NINETY_PERCENT } from '../handbook/cost.ts'
import { triangularMean, triangularVariance } from '../handbook/triangular.ts'
import type { Money } from '../shop/shop.ts'
import type { Cost, CostItem, CostSource } from './cost.ts'

/** Pieces expected to come to each operation, and to be good at the end. */
export type Entering = ReadonlyMap<number | 'end', number>

/** Items that spread by themselves: the times of cutting and of gauging are misjudged by the same hand, and spread as one. */
function apart(items: readonly CostItem[]): readonly Pick<CostItem, 'least' | 'usual' | 'most'>[] {
  const isTime = ({ kind }: CostItem): boolean => kind === 'run' || kind === 'gauging'
  const times = items.filter(isTime)
  const sum = (end: 'least' | 'usual' | 'most') => times.reduce((total, item) => total + item[end], 0)
  return [
    ...items.filter(item => !isTime(item)),
    ...(times.length > 0 ? [{ least: sum('least'), usual: sum('usual'), most: sum('most') }] : []),
  ]
}

/** How many items are named as those that drive it. */
const DRIVERS = 3

export function summed(
  { batch: { quantity, start } }: CostSource,
  money: Money,
  items: readonly CostItem[],
  entering: Entering,
): Cost {
  const sum = (end: 'least' | 'usual' | 'most') => items.reduce((total, item) => total + item[end], 0)
  const batch = { least: sum('least'), usual: sum('usual'), most: sum('most') }
  const ends = apart(items).map(({ least, usual, most }) => ({ a: least, c: usual, b: most }))
  const mean = ends.reduce((total, one) => total + triangularMean.value(one), 0)
  const sd = Math.sqrt(ends.reduce((total, one) => total + triangularVariance.value(one), 0))
  const good = entering.get('end') ?? start
  return {
    currency: money.currency,
    each: { least: batch.least / quantity, usual: batch.usual / quantity, most: batch.most / quantity },
    likely: { least: (mean - NINETY_PERCENT * sd) / quantity, most: (mean + NINETY_PERCENT * sd) / quantity },
    batch,
    eachExpected: batch.usual / good,
    scrap: batch.usual * (1 - good / start),
    items,
    drivenBy: items
      .toSorted((a, b) => b.most - b.least - (a.most - a.least))
      .slice(0, DRIVERS)
      .map(({ what }) => what),
  }
}
