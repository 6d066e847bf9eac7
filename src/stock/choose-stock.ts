import { leastStock, nominalStock } from '../handbook/stock-chain.ts'
import { type KnownSpread, known, none, type Origin } from '../known.ts'
import type { Millimetre } from '../units.ts'
import { type Notebook, reckoned } from '../working.ts'
import type { FinishChain } from './finish-chain.ts'
import { NO_GROWTH, type Stocks } from './solve-chain.ts'

/**
 * Nominal stock of one finish that just cleans up at the worst place, on diameter; of a face twice what comes off it. Widths
 * of lengths count twice for a face, so that the two stand in the same ratio.
 */
export function stockThatCleansUp(
  notebook: Notebook,
  chain: FinishChain,
  index: number,
  growth: KnownSpread,
): Millimetre {
  const finish = chain.finishes[index]
  if (!finish) return 0
  const about = { operation: finish.operation.number, about: chain.surface }
  const own = index === 0 ? growth : NO_GROWTH
  const twice = chain.kind === 'face' ? 2 : 1
  const next = chain.finishes[index + 1]
  const after = next ? finish.tolerance : chain.finalTolerance
  const before = (index === 0 ? chain.softTolerance : chain.finishes[index - 1]?.tolerance) ?? none('nothing before')
  const widened = (value: Millimetre, origin: Origin) => known(twice * value, 'mm', origin)
  const { eccentricity: e, form: f, needed: r } = finish
  const S_least = reckoned(notebook, leastStock, { e, f, r }, about)
  return notebook.use(
    nominalStock,
    {
      S_least,
      T_before: widened(before.value, before),
      T_after: widened(after.value, after),
      g: widened(own.nominal, own),
      g_least: widened(own.least, own),
    },
    about,
  )
}

/** Up to the next step, by which a stock may be written. */
export const roundedUp = (value: Millimetre, step: Millimetre): Millimetre =>
  Number((Math.ceil(value / step - 1e-6) * step).toFixed(6))

/**
 * So that what is chosen can be told from what does not serve, on diameter: as much as the gauge cannot tell; two micrometres
 * a side for a hone after grinding, since the grinder's roughness and roundness are held, not hit. A lap takes too little for it.
 */
const spareFor = ({ finishes }: FinishChain, index: number): Millimetre => {
  const finish = finishes[index]
  if (!finish || finish.stockKey === 'lap') return 0
  return 2 * Math.max(finish.told.value, finish.stockKey === 'hone' && index > 0 ? 0.002 : 0)
}

/** The least stocks that clean up, in steps of the shop. */
export const leastStocks = (notebook: Notebook, chain: FinishChain, growth: KnownSpread, step: Millimetre): Stocks =>
  chain.finishes.map((_, index) =>
    roundedUp(stockThatCleansUp(notebook, chain, index, growth) + spareFor(chain, index), stepOf(chain, step, index)),
  )

/** A face is given in steps on the face; a lap takes so little that its steps are a tenth. */
export const stepOf = (chain: FinishChain, step: Millimetre, index = 0): Millimetre => {
  if (chain.finishes[index]?.stockKey === 'lap') return step / 10
  return chain.kind === 'face' ? 2 * step : step
}
