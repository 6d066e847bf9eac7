import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { LAPPING } from '../handbook/lapping.ts'
import type { CasePlan, HardnessBand } from '../hardening/case-plan.ts'
import { type Part, placeOf } from '../part/part.ts'
import { type Hour, type Millimetre, micrometres } from '../units.ts'
import { type Notebook, SCRATCH } from '../working.ts'
import { roundedUp, stepOf, stockThatCleansUp } from './choose-stock.ts'
import { ENOUGH } from './enough.ts'
import { restsOnGrowth, turnedFindings } from './growth-findings.ts'
import { honedAloneFindings } from './honed-alone.ts'
import { bearsOf, eatsMost, spareOf } from './margin-words.ts'
import { marginalFindings, unmeasuredOf, verdictOf } from './marginal.ts'
import { growthsOf, HEAVY_STOCK, type SettledStock } from './settle-stock.ts'
import type { SolvedChain } from './solve-chain.ts'
import type { StockEntry } from './stock.ts'
import { type Cut, caseMarginOf, cutsOf, removalOf } from './stock-entries.ts'
import { whatWouldServe } from './what-would-serve.ts'

export type Judged = { readonly entries: readonly StockEntry[]; readonly findings: readonly Finding[] }

/** Every finish with its margins, and a finding wherever one of them is short. */
export function judgeStock(notebook: Notebook, part: Part, step: Millimetre, settled: SettledStock): Judged {
  const asked = settled.planned.case?.asked ?? part.hardening?.depth?.least ?? 0
  const judged = settled.chains.map(solved => {
    const cuts = cutsOf(notebook, solved)
    const { chain } = solved
    if (cuts.length === 0) return { entries: [], findings: turnedFindings(part, solved) }
    // Nothing slides on a face: it is treated, and no depth is asked of it.
    const margin =
      chain.cased && chain.kind !== 'face' ? caseMarginOf(notebook, settled.orderedLeast, cuts, asked) : undefined
    const window = { part, solved, settled, asked, step }
    const entries = cuts.map((cut): StockEntry => {
      const { cleanUp, ...rest } = cut
      const hardness = chain.cased ? hardnessAt(settled.planned.case, mostThrough(cuts, cut)) : undefined
      const spare = spareOf(cleanUp, margin)
      const bears = bearsOf(solved, cuts.indexOf(cut), spare)
      const eats = eatsMost(solved, cuts.indexOf(cut), lessCase =>
        hoursSaved(settled.planned.case, cuts, settled, lessCase),
      )
      return {
        ...rest,
        margin: { cleanUp, ...(margin !== undefined && { case: margin }) },
        ...(hardness && {
          hardnessAtFinish: hardness.expected,
          hardnessBand: { low: hardness.low, high: hardness.high },
        }),
        ...(bears && { bears }),
        ...(eats && { eats }),
        verdict: verdictOf({
          cut,
          held: margin,
          unmeasured: unmeasuredOf(solved, cuts.indexOf(cut)),
          serves: () => serves(window),
        }),
      }
    })
    return {
      entries,
      findings: [
        ...entries.flatMap((entry, index) => stockFindings(window, entry, index, margin)),
        ...honedAloneFindings(part, solved),
        ...restsOnGrowth(part, solved),
      ],
    }
  })
  return { entries: judged.flatMap(({ entries }) => entries), findings: judged.flatMap(({ findings }) => findings) }
}

type Window = {
  readonly part: Part
  readonly solved: SolvedChain
  readonly settled: SettledStock
  readonly asked: Millimetre
  readonly step: Millimetre
}

/** Time goes with the square of the depth; only the surface that loses most decides it. */
function hoursSaved(
  order: CasePlan | undefined,
  cuts: readonly Cut[],
  { orderedLeast }: SettledStock,
  lessCase: Millimetre,
): Hour | undefined {
  const decides = Math.max(0, ...(order?.hardnessAfter ?? []).map(({ off }) => off.most))
  if (!order || orderedLeast <= lessCase || removalOf(cuts).most < decides - 1e-9) return undefined
  return order.time.nominal * (1 - (1 - lessCase / orderedLeast) ** 2)
}

/** What is taken, per side, when every stock is the least that cleans up. */
function leastRemoval({ part, solved, settled }: Window): Millimetre {
  const { chain, stocks } = solved
  const growth = growthsOf(SCRATCH, part, settled.growth).of(chain)
  const most = removalOf(cutsOf(SCRATCH, solved)).most
  return chain.finishes.reduce(
    (sum, _, index) => sum + (stockThatCleansUp(SCRATCH, chain, index, growth) - (stocks[index] ?? 0)) / 2,
    most,
  )
}

/** Whether any figure cleans up and keeps the case. */
function serves(window: Window): boolean {
  return !window.solved.chain.cased || window.solved.chain.kind === 'face' || shortOfLimit(window) <= -ENOUGH
}

/** What the deepest order is short of, where the least is taken that cleans up. A process that is not planned has no limit. */
const shortOfLimit = (window: Window): Millimetre =>
  leastRemoval(window) + window.asked - (window.settled.planned.limit?.least ?? Number.POSITIVE_INFINITY)

function stockFindings(
  window: Window,
  entry: StockEntry,
  index: number,
  held: Millimetre | undefined,
): readonly Finding[] {
  const { part, solved, settled, step } = window
  const { chain } = solved
  const finish = chain.finishes[index]
  if (!finish) return []
  const at = placeOf(part, finish.fixed === undefined ? chain.path : `/stock/${finish.stockKey}`)
  const where = `${chain.surface}, ${finish.operation.name.toLowerCase()}`
  const unit = chain.kind === 'face' ? 2 : 1
  const findings: Finding[] = []
  const { limit } = settled.planned
  const atLimit = limit !== undefined && settled.orderedLeast > limit.least - 1e-9
  const short = -entry.margin.cleanUp
  const growth = growthsOf(SCRATCH, part, settled.growth).of(chain)
  const enough = roundedUp(stockThatCleansUp(SCRATCH, chain, index, growth), stepOf(chain, step, index)) / unit
  if (entry.verdict === 'impossible') {
    return index > 0
      ? []
      : [
          {
            severity: 'error',
            code: 'stock/impossible',
            message: `${chain.surface}: no stock both cleans up and keeps ${fixed(window.asked, 2)} mm of case; the least that cleans up takes up to ${fixed(leastRemoval(window), 3)} mm per side${limit ? `, and no order may be deeper than ${fixed(limit.least, 2)} mm: ${limit.because}` : ''}`,
            at,
            hint: whatWouldServe(chain, shortOfLimit(window), window.asked),
          },
        ]
  }
  if (entry.verdict === 'marginal')
    return marginalFindings({ entry, solved, unmeasured: unmeasuredOf(solved, index), at, where })
  if (short > -ENOUGH) {
    findings.push({
      severity: 'error',
      code: 'stock/thin',
      message: `${where}: at the worst place ${fixed(entry.perSide.least, 3)} mm per side comes off and ${fixed(entry.perSide.needed, 3)} mm must go: ${fixed(short, 3)} mm short`,
      at,
      hint: `leave ${fixed(enough, 2)} mm ${chain.kind === 'face' ? 'on the face' : 'on diameter'} or more (stock.${finish.stockKey})`,
    })
  }
  if (index === 0 && held !== undefined && held < ENOUGH) {
    const less = roundedDown(entry.onDiameter.nominal + 2 * held, stepOf(chain, step)) / unit
    findings.push({
      severity: 'error',
      code: 'stock/deep',
      message: `${chain.surface}: up to ${fixed(removalOf(cutsOf(SCRATCH, solved)).most, 3)} mm per side comes off; with ${fixed(window.asked, 2)} mm asked the case would have to be ${fixed(-held, 3)} mm deeper than ${atLimit ? `can be had: ${limit.because}` : `the ${fixed(settled.orderedLeast, 2)} mm ordered`}`,
      at,
      hint: `leave ${fixed(Math.max(0, less), 2)} mm or less (stock.${finish.stockKey})`,
    })
  }
  if (finish.stockKey === 'lap' && entry.onDiameter.nominal > LAPPING.stock.most + 1e-9) {
    findings.push({
      severity: 'warning',
      code: 'stock/more-than-lapped',
      message: `${where}: ${fixed(micrometres(entry.onDiameter.nominal), 0)} µm on diameter; a lap takes ${micrometres(LAPPING.stock.least)} to ${micrometres(LAPPING.stock.most)} µm (common practice)`,
      at,
      hint: 'grind closer to size, or finer: a lap follows the form it finds and takes a micrometre or two a minute',
    })
  }
  if (chain.hard && chain.kind !== 'face' && entry.onDiameter.nominal > HEAVY_STOCK + 1e-9) {
    findings.push({
      severity: 'warning',
      code: 'stock/heavy',
      message: `${where}: ${fixed(entry.onDiameter.nominal, 2)} mm on diameter off a hard surface burns and cracks it easily; over ${HEAVY_STOCK} mm is unusual (common practice)`,
      at,
      hint: 'finish closer before hardening, in small passes after it, and look for cracks',
    })
  }
  return findings
}

const roundedDown = (value: Millimetre, step: Millimetre): Millimetre =>
  Number((Math.floor(value / step + 1e-6) * step).toFixed(6))

/** Hardness at a depth below the surface as hardened, between the points of the profile. */
function hardnessAt(order: CasePlan | undefined, depth: Millimetre): HardnessBand | undefined {
  const profile = order?.profile ?? []
  const after = profile.findIndex(point => point.depth >= depth)
  const b = profile[after] ?? profile.at(-1)
  if (!b) return undefined
  const a = after > 0 ? (profile[after - 1] ?? b) : b
  const share = b.depth === a.depth ? 1 : Math.min(1, (depth - a.depth) / (b.depth - a.depth))
  const at = (of: (point: HardnessBand) => number) => of(a) + (of(b) - of(a)) * share
  return { low: at(({ low }) => low), expected: at(({ expected }) => expected), high: at(({ high }) => high) }
}

/** Taken per side where most is, up to and with one cut of its surface. */
const mostThrough = (cuts: readonly Cut[], cut: Cut): Millimetre => removalOf(cuts.slice(0, cuts.indexOf(cut) + 1)).most
