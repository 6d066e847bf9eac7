import type { AsMilled } from '../stock/stock.ts'
import type { Millimetre } from '../units.ts'

/** How far the top face stands above the finished one as the milling must see it, so that an edge ends at this depth. */
export const topStockAt = ({ topStock, topStockAt: at }: AsMilled, depth: Millimetre): Millimetre =>
  at?.(depth) ?? topStock
