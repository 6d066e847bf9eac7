import { chance, fixed, signed } from '../../figures.ts'
import type { Plan } from '../../plan/plan.ts'
import type { PairedBatch } from '../../record/pair-batch.ts'
import type { Left } from '../../record/pair-pistons.ts'
import type { PaperFigures } from './paper-figures.ts'

/** Pairs for whoever fits them, a tag for each and what is left. */
export type PairsView = {
  readonly unit: string
  readonly clearance: string
  readonly summary: string
  readonly hot: string
  readonly ringed: boolean
  readonly pairs: readonly {
    readonly bore: string
    readonly piston: string
    readonly clearance: string
    readonly off: string
    readonly chance: string
    readonly hot: string
    readonly ring: string
    readonly ringHot: string
  }[]
  readonly left: readonly string[]
  readonly tags: readonly { readonly across: readonly PairTag[] }[]
}

/** To tie to a pair in its box. */
export type PairTag = {
  readonly bore: string
  readonly piston: string
  readonly clearance: string
  readonly of: string
}

const TAGS_ACROSS = 3

export function pairsView({ part, batch }: Plan, paired: PairedBatch, figures: PaperFigures): PairsView {
  const { length, unit } = figures
  const { pairs, clearance, worst, expectedOutside, bores, pistons, temperatures } = paired
  const left = (what: string, other: string, list: readonly Left[]): readonly string[] =>
    list.map(
      ({ serial, size, partner }) =>
        `${what} ${serial} (${length(size, 4)}) has no partner: ${other} from ${length(partner.from, 4)} to ${length(partner.to, 4)} ${unit} would serve.`,
    )
  const of = `${part.number} rev ${part.revision}, batch ${batch.number}`
  const tags = pairs.map(({ bore, piston, clearance: C }) => ({
    bore,
    piston,
    clearance: `${length(C, 4)} ${unit}`,
    of,
  }))
  return {
    unit,
    clearance: `${figures.limits({ lower: clearance.least, upper: clearance.most }, 'hole', 3)} ${unit}, ${length(clearance.wanted, 3)} wanted`,
    summary: `${pairs.length} pairs, the worst ${length(worst, 4)} ${unit} off; ${fixed(expectedOutside, 2)} of them expected outside by what the gauges leave open.`,
    hot: pairs.some(({ hot }) => hot)
      ? `Hot: liner ${temperatures.liner} °C, piston ${temperatures.piston} °C, rings ${temperatures.ring} °C, each ${temperatures.within} K either way; assumed.`
      : '',
    ringed: pairs.some(({ ring }) => ring),
    pairs: pairs.map(pair => ({
      bore: pair.bore,
      piston: pair.piston,
      clearance: length(pair.clearance, 4),
      off: signed(length(pair.off, 4)),
      chance: chance(pair.chance),
      hot: pair.hot ? `${length(pair.hot.least, 3)} to ${length(pair.hot.most, 3)}` : '',
      ring: pair.ring ? length(pair.ring.gap, 3) : '',
      ringHot: pair.ring ? length(pair.ring.hot, 3) : '',
    })),
    left: [...left('Bore', 'a piston', bores), ...left('Piston', 'a bore', pistons)],
    tags: Array.from({ length: Math.ceil(tags.length / TAGS_ACROSS) }, (_, index) => ({
      across: tags.slice(index * TAGS_ACROSS, (index + 1) * TAGS_ACROSS),
    })),
  }
}
