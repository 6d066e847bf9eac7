import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { type Millimetre, micrometres } from '../units.ts'
import { ENOUGH } from './enough.ts'
import { spareOf } from './margin-words.ts'
import type { SolvedChain } from './solve-chain.ts'
import type { StockEntry, Verdict } from './stock.ts'
import type { Cut } from './stock-entries.ts'

/** The last bits of a difference do not tell. */
const ROUNDING = 1e-9

/** What a surface may grow less than expected by a range that is reckoned and not measured; only its first cut rests on it. */
export const unmeasuredOf = ({ chain, growth }: SolvedChain, index: number): Millimetre =>
  index === 0 && chain.cased && growth.from !== 'measured' ? growth.nominal - growth.least : 0

/**
 * Marginal where the gauge cannot tell on which side the spare is, and where a stock that cleans up at the expected growth is
 * short only at the least that is reckoned of it.
 */
export function verdictOf({
  cut,
  held,
  unmeasured,
  serves,
}: {
  readonly cut: Pick<Cut, 'cleanUp' | 'told'>
  readonly held: Millimetre | undefined
  readonly unmeasured: Millimetre
  readonly serves: () => boolean
}): Verdict {
  const { cleanUp } = cut
  const tells = cut.told.value
  const spare = spareOf(cleanUp, held)
  if (Math.abs(spare) < tells - ROUNDING) return 'marginal'
  if (spare >= ENOUGH) return 'ok'
  const caseHeld = held === undefined || held >= ENOUGH
  if (caseHeld && unmeasured > 0 && cleanUp + unmeasured >= ENOUGH) return 'marginal'
  if (!serves()) return 'impossible'
  return held !== undefined && held < -tells ? 'deep' : 'thin'
}

/** What a marginal stock rests on, where it is short at all. */
export function marginalFindings({
  entry,
  solved: { chain, growth },
  unmeasured,
  at,
  where,
}: {
  readonly entry: StockEntry
  readonly solved: SolvedChain
  readonly unmeasured: Millimetre
  readonly at: Finding['at']
  readonly where: string
}): readonly Finding[] {
  const { margin, told, eats } = entry
  const short = -spareOf(margin.cleanUp, margin.case)
  if (short <= -ENOUGH) return []
  const µm = (value: Millimetre): string => fixed(micrometres(value), 1)
  if (short >= told.value - ROUNDING && unmeasured > 0) {
    const side = chain.kind === 'bore' ? 'closes' : 'grows'
    return [
      {
        severity: 'warning',
        code: 'stock/marginal',
        message: `${where}: cleans up where it ${side} ${µm(growth.least + short)} µm a side or more; ${µm(growth.least)} to ${µm(growth.most)} is reckoned, ${µm(growth.nominal)} expected, none measured`,
        at,
        hint: `measure a first article before the batch is turned, or leave ${fixed(2 * short, 3)} mm more on diameter`,
      },
    ]
  }
  const gauge =
    told.gauge === undefined || told.uncertainty === undefined
      ? 'less than can be told in the work'
      : `less than can be told in the work: ${told.gauge} is uncertain by ${µm(told.uncertainty)} µm`
  return [
    {
      severity: 'warning',
      code: 'stock/marginal',
      message: `${where}: ${µm(short)} µm a side short at the worst place, ${gauge}`,
      at,
      hint: eats
        ? `${eats.input} asks for most, ${fixed(eats.stock, 3)} mm on diameter: measure it, or hold it closer`
        : 'measure what it rests on, or hold it closer',
    },
  ]
}
