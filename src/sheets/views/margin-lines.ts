import { hours, micrometre } from '../../figures.ts'
import type { StockEntry } from '../../stock/stock.ts'
import type { PaperFigures } from './paper-figures.ts'

/** What each margin bears, and what asks for most, a sentence or two a surface and operation. */
export const marginLines = (entries: readonly StockEntry[], { length, unit }: PaperFigures): readonly string[] =>
  entries.flatMap(({ surface, operation, bears, eats, afterwards }) => {
    const named = `${surface}, operation ${operation}`
    const borne = [
      ...(bears?.runout === undefined ? [] : [`run-out up to ${length(bears.runout)}`]),
      ...(bears?.ovality === undefined ? [] : [`ovality up to ${length(bears.ovality)}`]),
      ...(bears?.bow === undefined ? [] : [`bow up to ${length(bears.bow)}`]),
      ...(bears?.growth === undefined ? [] : [`growth up to ${micrometre(bears.growth, 1)} µm a side more or less`]),
    ]
    const saved = eats && [
      `${length(eats.halved.stock)} ${unit} of stock`,
      ...(eats.halved.case === undefined ? [] : [`${length(eats.halved.case)} ${unit} of case`]),
      ...(eats.halved.hours === undefined ? [] : [`${hours(eats.halved.hours)} h in the furnace`]),
    ]
    return [
      ...(borne.length > 0 ? [`${named} bears, each alone: ${borne.join(', ')}.`] : []),
      ...(afterwards
        ? [
            `${named}, once operation ${afterwards.operation} grinds the other side: its radius moves ${micrometre(afterwards.middle, 1)} µm in the middle and ${micrometre(afterwards.ends, 1)} at the ends, ${micrometre(afterwards.taper.least, 1)} to ${micrometre(afterwards.taper.most, 1)} µm on diameter.`,
          ]
        : []),
      ...(eats && saved
        ? [
            `${named}: ${eats.input} asks for most, ${length(eats.stock)} ${unit} on diameter; half of it would save ${saved.join(', ')}.`,
          ]
        : []),
    ]
  })

/** What the chances stand on; or that there is none. */
export function chanceLines(entries: readonly StockEntry[]): readonly string[] {
  const reckoned = entries.filter(({ chance }) => chance !== undefined)
  const without = entries.filter(({ chance, spread }) => spread !== undefined && chance === undefined)
  const surfaces = [...new Set(without.map(({ surface }) => surface))].join(', ')
  return [
    ...(reckoned.length > 0
      ? [
          'Chances are without ends: sizes within their limits at three sigma, growth within its record in nineteen loads of twenty, run-out under its figure but for one piece in a hundred, ovality and bow together but for one in twenty.',
        ]
      : []),
    ...(without.length > 0 ? [`No chance is given of ${surfaces}: growth has not been measured.`] : []),
  ]
}
