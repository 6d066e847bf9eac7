import { inwardLimits, length, mass, minutes } from '../figures.ts'
import type { Plan } from '../plan/plan.ts'
import type { Options } from './options.ts'
import { ports } from './ports.ts'
import { heading } from './route.ts'
import { stock } from './stock.ts'
import { table } from './table.ts'
import type { View } from './view.ts'

export const plan: View = {
  data: whole => whole,
  text: (whole, options, colour) =>
    [
      heading(whole),
      materialLine(whole, options),
      sizeTable(whole, options),
      withoutHeading(stock.text(whole, options, colour)),
      whole.ports.length === 0 ? '' : withoutHeading(ports.text(whole, options, colour)),
    ].join('\n'),
}

const withoutHeading = (text: string): string => text.slice(text.indexOf('\n') + 2)

function materialLine({ material }: Plan, { units }: Options): string {
  const { grade, barDiameter, barSupply, blankLength, piecesPerBar, bars, barLength } = material
  return [
    `Buy ${bars} ${bars === 1 ? 'bar' : 'bars'} ${grade} Ø${length(barDiameter, units, 0)} × ${length(barLength, units, 0)} ${units}, ${barSupply}: ${mass(material.mass)} kg.`,
    `Cut blanks ${length(blankLength, units, 1)} ${units} long, ${piecesPerBar} from a bar.`,
    '',
  ].join('\n')
}

function sizeTable({ operations }: Plan, { units }: Options): string {
  return table(
    [
      { head: '', align: 'right' },
      { head: 'operation' },
      { head: 'each min', align: 'right' },
      { head: 'size to hold' },
      { head: `lower (${units})`, align: 'right' },
      { head: 'upper', align: 'right' },
    ],
    operations.flatMap(({ number, name, place, time, sizes }) => {
      const first = [String(number), name, place === 'house' ? minutes(time.each) : '']
      const rows = sizes.map(({ feature, measure, edge, lower, upper, places }) => [
        (edge ? [feature, edge, 'edge', measure] : [...new Set([feature, measure])]).join(' '),
        ...inwardLimits(lower, upper, places, units),
      ])
      return rows.length === 0 ? [first] : rows.map((row, index) => [...(index === 0 ? first : ['', '', '']), ...row])
    }),
  )
}
