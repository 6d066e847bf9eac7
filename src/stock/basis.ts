import { compoundLayer } from '../handbook/compound-layer.ts'
import { FINE_BORED, FINE_GROUND } from '../handbook/distortion.ts'
import type { Plating } from '../handbook/plating.ts'
import { routeProcessOf } from '../hardening/case-surfaces.ts'
import type { Part } from '../part/part.ts'
import type { Operation } from '../route/operation.ts'
import { setByShop } from '../shop/habit-key.ts'
import type { Habits, Measured, Shop } from '../shop/shop.ts'
import { distortionOf, locatingFigures, measuredFor, measuredSource } from './set-up-error.ts'
import type { SolvedChain } from './solve-chain.ts'
import type { Basis, StockEntry } from './stock.ts'

/** The figures that each entry stands on, each with where it comes from, and what a measured first article would save. */
export function withBasis(
  entries: readonly StockEntry[],
  part: Part,
  shop: Shop,
  operations: readonly Operation[],
  chains: readonly SolvedChain[],
): readonly StockEntry[] {
  return entries.map(entry => {
    const finishOf = ({ chain }: SolvedChain) =>
      chain.surface === entry.surface
        ? chain.finishes.findIndex(({ operation }) => operation.number === entry.operation)
        : -1
    const solved = chains.find(chain => finishOf(chain) >= 0)
    const index = solved ? finishOf(solved) : -1
    if (!solved || index < 0) return entry
    const first = index === 0
    const growth = first && solved.chain.cased ? measuredGrowthOf(part, shop) : undefined
    const { least, nominal, most } = solved.growth
    const open = first && solved.chain.cased && !growth
    return {
      ...entry,
      basis: basisOf(part, shop, operations, solved, index),
      // Growth known, the stock need not bear its least nor the case its most.
      ...(open && { firstArticle: { stock: 2 * (nominal - least), case: most - least } }),
    }
  })
}

function basisOf(
  part: Part,
  shop: Shop,
  operations: readonly Operation[],
  { chain, growth }: SolvedChain,
  index: number,
): readonly Basis[] {
  const finish = chain.finishes[index]
  if (!finish) return []
  const { operation } = finish
  const habit = (key: keyof Habits, figure: string, unit: 'mm' | 'µm'): Basis => {
    const value = shop.habits[key]
    const own = setByShop(shop, key)
    return {
      figure,
      value: typeof value === 'number' ? value : 0,
      unit,
      from: own ? 'shop' : 'default',
      source: own ? 'shop file' : 'common practice, no source',
    }
  }
  const measured = (figure: string, value: number, row: Measured): Basis => ({
    figure,
    value,
    unit: 'mm',
    from: 'measured',
    source: measuredSource(row),
  })
  if (chain.plated) return platedBasis(chain.plated)
  if (operation.process === 'lap') return finished(FINE_GROUND)
  if (operation.process === 'hone' && operation.locatedAs === 'turned') return finished(FINE_BORED)
  const first = index === 0
  const before = first ? 'turned' : 'ground'
  return [
    ...(operation.process === 'grind' ? errors() : []),
    habit(`${before}Roughness`, 'roughness before', 'µm'),
    ...(first && chain.cased && part.hardening
      ? layerAndGrowth()
      : [habit(`${before}Layer`, 'damaged layer before', 'µm')]),
    first
      ? habit(chain.kind === 'face' ? 'faceTurningTolerance' : 'finishTurningTolerance', 'tolerance before', 'mm')
      : habit('boreGrindingTolerance', 'tolerance before', 'mm'),
  ]

  function errors(): readonly Basis[] {
    const distortion = distortionOf(part, shop, operations)
    const formRow = (figure: string, value: number, row: Measured | undefined): Basis =>
      row
        ? measured(figure, value, row)
        : { figure, value, unit: 'mm', from: 'handbook', source: distortion.usual.source }
    return [
      ...locatingFigures(part, shop, operation, chain.kind)
        .filter(({ value }) => value > 0)
        .map(({ figure, value, key, row }) =>
          row ? measured(figure, value, row) : { ...habit(key, figure, 'mm'), value },
        ),
      formRow('ovality', distortion.used.ovality, distortion.ovality),
      formRow('bow', (distortion.used.bow * part.length.nominal) / 100, distortion.bow),
    ]
  }

  function layerAndGrowth(): readonly Basis[] {
    const layer = part.hardening && compoundLayer(part.hardening.process)
    const row = measuredGrowthOf(part, shop)
    return [
      ...(layer
        ? [
            {
              figure: 'compound layer',
              value: layer.most / 1000,
              unit: 'mm',
              from: 'handbook',
              source: layer.source,
            } as const,
          ]
        : []),
      row?.growth
        ? measured('growth per side', row.growth.nominal, row)
        : {
            figure: 'growth per side',
            value: growth.nominal,
            unit: 'mm',
            from: 'handbook',
            source: layer
              ? 'memory/estimate: shares of the depth and of the compound layer'
              : 'common practice, no source: a quenched part grows or shrinks',
          },
    ]
  }
}

/** What a surface is left with that is made for honing or lapping. */
const finished = ({ roughness, tolerance, source }: typeof FINE_BORED | typeof FINE_GROUND): readonly Basis[] => [
  { figure: 'roughness before', value: roughness, unit: 'µm', from: 'handbook', source },
  { figure: 'tolerance before', value: tolerance, unit: 'mm', from: 'handbook', source },
]

/** What a bath leaves. */
const platedBasis = ({ roughness, tolerance, unevenness }: Plating): readonly Basis[] => {
  const from = { from: 'handbook', source: 'common practice, no source' } as const
  return [
    { figure: 'roughness as plated', value: roughness, unit: 'µm', ...from },
    { figure: 'layer held within, either way', value: tolerance, unit: 'mm', ...from },
    { figure: 'layer uneven by', value: unevenness, unit: 'mm', ...from },
  ]
}

const measuredGrowthOf = (part: Part, shop: Shop): Measured | undefined =>
  part.hardening && measuredFor(part, shop, routeProcessOf(part.hardening), 'growth')
