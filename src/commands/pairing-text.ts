import { chance, fixed, length } from '../figures.ts'
import type { PairedBatch } from '../record/pair-batch.ts'
import type { Left } from '../record/pair-pistons.ts'
import type { Options } from './options.ts'
import { table } from './table.ts'

const right = (head: string) => ({ head, align: 'right' as const })

/** Pairs, what is left and what would use it, for the terminal. */
export function pairingText(pairing: PairedBatch, { units }: Pick<Options, 'units'>): string {
  const mm = (value: number, places = 4) => length(value, units, places)
  const { pairs, clearance, worst, expectedOutside, bores, pistons, temperatures } = pairing
  const isHot = pairs.some(({ hot }) => hot)
  const hasRing = pairs.some(({ ring }) => ring)
  const rows = pairs.map(({ bore, piston, clearance: C, off, chance: inside, hot, ring }) => [
    bore,
    piston,
    mm(C),
    `${off < 0 ? '-' : '+'}${mm(Math.abs(off))}`,
    chance(inside),
    ...(isHot ? [hot ? `${mm(hot.least, 3)} to ${mm(hot.most, 3)}` : ''] : []),
    ...(hasRing ? [ring ? `${mm(ring.gap, 3)}, hot ${mm(ring.hot, 3)}` : ''] : []),
  ])
  const left = (what: string, other: string, list: readonly Left[]) =>
    list.map(
      ({ serial, size, partner }) =>
        `${what} ${serial} (${mm(size)}) has no partner: ${other} from ${mm(partner.from)} to ${mm(partner.to)} would serve\n`,
    )
  const head = `\nPairs, clearance ${mm(clearance.least, 3)} to ${mm(clearance.most, 3)}, ${mm(clearance.wanted, 3)} wanted: ${pairs.length}, the worst ${mm(worst)} off; ${fixed(expectedOutside, 2)} of them expected outside by what the gauges leave open\n`
  const under = isHot
    ? `hot: liner ${temperatures.liner} °C, piston ${temperatures.piston} °C, each ${temperatures.within} K either way; assumed\n`
    : ''
  return [
    head,
    table(
      [
        right('bore'),
        right('piston'),
        right(`clearance (${units})`),
        right('off'),
        right('chance that it lies within'),
        ...(isHot ? [right('hot')] : []),
        ...(hasRing ? [right('ring gap')] : []),
      ],
      rows,
    ),
    under,
    ...left('bore', 'a piston', bores),
    ...left('piston', 'a bore', pistons),
    'Void after honing again, after swapping, or where a number is missing.\n',
  ].join('')
}
