import type { StockSide } from '../plan/plan.ts'
import { chanceLines, marginLines } from '../sheets/views/margin-lines.ts'
import { basisRows, firstArticleLines, nearlyAllHead, oddsRows } from '../sheets/views/odds-rows.ts'
import { paperFigures } from '../sheets/views/paper-figures.ts'
import type { Options } from './options.ts'
import { table } from './table.ts'

/** How the stock may fall over a batch, and the figures that it rests on with where each comes from. */
export function stockOdds({ stock }: StockSide, { units }: Options): string {
  const figures = paperFigures(units)
  const odds = oddsRows(stock, figures)
  const basis = basisRows(stock, figures)
  const right = (head: string) => ({ head, align: 'right' as const })
  const spread = table(
    [
      { head: 'surface' },
      right('operation'),
      right('all at their limits'),
      right('root of squares'),
      { head: `${nearlyAllHead(stock)} (${units}, diameter)` },
      { head: 'not cleaned up: a piece; any of the batch' },
      { head: 'too little case' },
    ],
    odds.map(row => [
      row.surface,
      row.operation,
      row.worstCase,
      row.rootSumSquare,
      row.nearlyAll,
      row.notCleanedUp,
      row.tooLittleCase,
    ]),
  )
  const rests = table(
    [{ head: 'it rests on' }, { head: 'for' }, right('value'), { head: 'from' }, { head: 'source' }],
    basis.map(row => [row.figure, row.surfaces, row.value, row.from, row.source]),
  )
  const lines = [...chanceLines(stock), ...marginLines(stock, figures), ...firstArticleLines(stock, figures)].map(
    line => `${line}\n`,
  )
  return [...(odds.length > 0 ? [spread] : []), ...(basis.length > 0 ? [rests] : []), ...lines].join('\n')
}
