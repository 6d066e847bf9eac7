import type { Finding } from '../finding.ts'
import { BAKE, BAKE_SOURCE, bakeHours } from '../handbook/hydrogen-bake.ts'
import { depositionTime } from '../handbook/plating.ts'
import { largestLoad, standardLoad } from '../handbook/vickers-load.ts'
import type { Part } from '../part/part.ts'
import type { Operation } from '../route/operation.ts'
import { chamferOf, heatWanted, maskedIn, takesHydrogen } from '../route/plating-needs.ts'
import type { Shop } from '../shop/shop.ts'
import type { Hour } from '../units.ts'
import type { Notebook } from '../working.ts'
import { platingFindings } from './plating-findings.ts'
import { type PlatingSizes, platingSizes } from './plating-sizes.ts'
import { NO_GROWTH, type SolvedChain } from './solve-chain.ts'
import type { CasePlan, PlatingPlan, StockEntry, Verdict } from './stock.ts'
import { cutsOf } from './stock-entries.ts'

export type PlannedPlating = {
  readonly plan: PlatingPlan
  /** From the plated size to the drawing. */
  readonly solved: SolvedChain
  readonly entry: StockEntry
  readonly findings: readonly Finding[]
}

/** Sizes of a plated bore, the layer left at the worst places, its bake, and what to look out for. */
export function planPlating(
  notebook: Notebook,
  part: Part,
  shop: Shop,
  operations: readonly Operation[],
  order: CasePlan | undefined,
): PlannedPlating | undefined {
  const sizes = platingSizes(notebook, part, shop)
  const hone = operations.find(({ purpose }) => purpose === 'hone-bore')
  if (!sizes || !hone) return undefined
  const { asked, row, left, layer } = sizes
  const about = { about: `${asked.surface}, ${asked.process}` }
  const hours = bakeOf(notebook, part, order, about)
  const { rate } = row
  const inBath = (v: number) => notebook.use(depositionTime, { t: sizes.aim, s: sizes.honeStock, v }, about)
  const plan: PlatingPlan = {
    process: asked.process,
    surface: asked.surface,
    base: {
      ...(part.material.hardness !== undefined && { hardness: part.material.hardness }),
      ...(part.material.temper !== undefined && { temper: part.material.temper }),
    },
    asked: { least: asked.thickness.least, ...(asked.thickness.most !== undefined && { most: asked.thickness.most }) },
    aim: sizes.aim,
    left,
    layer,
    stock: { least: -layer.most, nominal: -layer.nominal, most: -layer.least },
    honeStock: sizes.honeStock,
    before: sizes.before,
    plated: sizes.plated,
    finished: sizes.finished,
    chamfer: chamferOf(asked) ?? row.portChamfer,
    masked: maskedIn(part, asked),
    relieved: heatWanted(part, 'stress-relieved-for-plating'),
    bake: { hours, ...BAKE.temperature, startWithin: BAKE.startWithin },
    hardness: {
      ...(asked.hardness && { asked: asked.hardness.least }),
      usual: row.hardness,
      testLoad: testLoad(notebook, sizes, about),
    },
    ...(rate && { time: { least: inBath(rate.most), most: inBath(rate.least) } }),
    honedWith: row.honedWith,
    ringPartner: row.ringPartner,
  }
  const solved = platedChain(sizes, hone)
  const entry = platedEntry(notebook, sizes, solved)
  return { plan, solved, entry, findings: platingFindings(part, order, sizes, entry, hours) }
}

type About = { readonly about: string }

/** Steel only. A part with a case falls in the category of its layer. */
function bakeOf(notebook: Notebook, part: Part, order: CasePlan | undefined, about: About): Hour {
  const hours = takesHydrogen(part) ? bakeHours(part.material.hardness ?? 0, order?.surfaceHardness) : 0
  notebook.note({
    ...about,
    symbol: 't_bake',
    meaning: 'least bake after plating',
    value: hours,
    unit: 'h',
    expression: `${BAKE.temperature.least} to ${BAKE.temperature.most} °C, begun within ${BAKE.startWithin} h`,
    source: BAKE_SOURCE,
  })
  return hours
}

function testLoad(notebook: Notebook, { row, left }: PlatingSizes, about: About): string {
  const largest = notebook.use(largestLoad, { HV: row.hardness.least, N_r: Math.max(left.least, 1e-3) }, about)
  return `HV${standardLoad(largest).load}`
}

/** Honing after plating as a chain of one cut: it follows the bore, so nothing is off centre but the layer itself. */
function platedChain(
  { band, row, plated, finished, honeStock, needed, form }: PlatingSizes,
  hone: Operation,
): SolvedChain {
  return {
    chain: {
      surface: band.name,
      kind: 'bore',
      path: band.path,
      final: finished,
      softTolerance: plated.upper - plated.lower,
      cased: false,
      finishes: [
        {
          operation: hone,
          stockKey: 'hone',
          eccentricity: 0,
          form,
          needed,
          tolerance: finished.upper - finished.lower,
        },
      ],
      band,
      plated: row,
    },
    growth: NO_GROWTH,
    stocks: [2 * honeStock],
    soft: plated,
    hardened: plated,
    after: [finished],
  }
}

const ENOUGH = -1e-9

/** Thin: the hone does not clean up. Deep: less plating is left than asked. Impossible: no aim leaves it within what is asked. */
function platedEntry(notebook: Notebook, { asked, left }: PlatingSizes, solved: SolvedChain): StockEntry {
  const [cut] = cutsOf(notebook, solved)
  if (!cut) throw new Error('a plated bore is honed')
  const { cleanUp, ...rest } = cut
  const { least, most } = asked.thickness
  const plating = left.least - least
  const narrow = most !== undefined && left.most - left.least > most - least + 1e-9
  const verdict = ((): Verdict => {
    if (cleanUp >= ENOUGH && plating >= ENOUGH) return 'ok'
    if (plating < ENOUGH) return narrow ? 'impossible' : 'deep'
    return 'thin'
  })()
  return { ...rest, margin: { cleanUp, plating }, verdict }
}
