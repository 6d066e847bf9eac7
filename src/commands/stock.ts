import { fixed, hardness, hours, inwardLimits, length, micrometre } from '../figures.ts'
import type { StockSide } from '../plan/plan.ts'
import { caseQuenchRows, quenchRows } from '../sheets/views/quench-rows.ts'
import type { StockEntry, Verdict } from '../stock/stock.ts'
import type { Options } from './options.ts'
import { heading } from './route.ts'
import { stockOdds } from './stock-odds.ts'
import { table } from './table.ts'
import type { View } from './view.ts'

export const stock: View<StockSide> = {
  data: ({ part, batch, stock, case: caseOrdered, plating, ladders, findings }) => ({
    part,
    batch,
    stock,
    case: caseOrdered,
    plating,
    ladders,
    findings,
  }),
  text: (plan, options, colour) =>
    [
      heading(plan),
      stockTable(plan, options, colour),
      caseLines(plan, options),
      platingLines(plan, options),
      plainWords(plan, options),
      stockOdds(plan, options),
    ].join('\n'),
}

function stockTable({ stock, operations, plating }: StockSide, { units }: Options, colour: boolean): string {
  const nameOf = (number: number): string => operations.find(operation => operation.number === number)?.name ?? ''
  return table(
    [
      { head: 'surface' },
      { head: 'operation' },
      { head: `stock least (${units}, diameter)`, align: 'right' },
      { head: 'nominal', align: 'right' },
      { head: 'most', align: 'right' },
      { head: 'per side least', align: 'right' },
      { head: 'most', align: 'right' },
      { head: 'needed', align: 'right' },
      { head: 'spare to clean up', align: 'right' },
      { head: plating ? 'spare case or plating' : 'spare case', align: 'right' },
      { head: 'verdict' },
    ],
    stock.map(({ surface, kind, operation, onDiameter, perSide, margin, verdict }) => [
      surface,
      `${operation} ${nameOf(operation)}`,
      ...(kind === 'face'
        ? ['', '', '']
        : [onDiameter.least, onDiameter.nominal, onDiameter.most].map(value => length(value, units))),
      length(perSide.least, units),
      length(perSide.most, units),
      length(perSide.needed, units),
      signed(margin.cleanUp, units),
      under(margin) === undefined ? '' : signed(under(margin) ?? 0, units),
      inColour(verdict, colour),
    ]),
  )
}

const COLOUR: Readonly<Record<Verdict, string>> = { ok: '32', marginal: '33', thin: '33', deep: '33', impossible: '31' }

/** Good in green, bad in red: the word says it all without. */
export const inColour = (verdict: Verdict, colour: boolean): string =>
  colour ? `\u001b[${COLOUR[verdict]}m${verdict}\u001b[0m` : verdict

/** What must be left of the case, or of the plating. */
const under = (margin: StockEntry['margin']): number | undefined => margin.case ?? margin.plating

/** A margin of nothing is not short: the last bits of a difference do not tell. */
const ROUNDING = 1e-9

const signed = (value: number, units: Options['units']): string =>
  `${value < -ROUNDING ? '' : '+'}${length(value, units)}`

function caseLines({ case: ordered, quench }: StockSide, { units }: Options): string {
  if (quench) {
    const rows = quenchRows(quench, { length: value => length(value, units), unit: units })
    return `${rows.map(({ what, value }) => `${what}: ${value}.\n`).join('')}`
  }
  if (!ordered) return 'No hardening.\n'
  const mm = (value: number): string => length(value, units, 2)
  const { process, definition, left, asked, growth, records, time, stages, surfaceHardness, coreHardness, testLoad } =
    ordered
  const { quenched } = ordered
  return [
    `Order ${process}: depth ${mm(ordered.ordered.least)} to ${mm(ordered.ordered.most)} ${units} as hardened (${definition}).`,
    ...(ordered.decidedBy === undefined ? [] : [`Decided by ${ordered.decidedBy}.`]),
    ...(quenched ? caseQuenchRows(quenched, { length: value => length(value, units), unit: units }) : []).map(
      ({ what, value }) => `${what}: ${value}.`,
    ),
    `Left after finishing at the worst place: ${length(left.least, units)} ${units}; asked for: ${length(asked, units)} ${units}.`,
    `Growth per side: outside ${growthText(growth.outside)} µm, bore ${growthText(growth.bore)} µm (least / expected / most).`,
    ...records.map(({ record, used, why }) => `Record of ${record}: ${used ? 'used for' : 'passed over,'} ${why}.`),
    ...(time.nominal > 0
      ? [
          `About ${hours(time.nominal)} h at ${stages.map(({ temperature }) => `${fixed(temperature, 0)} °C`).join(', then ')} (${hours(time.least)} to ${hours(time.most)} h): the hardener decides.`,
        ]
      : []),
    `Surface ${hardness(surfaceHardness)} HV as hardened, core ${hardness(coreHardness)} HV; test the finished surface with ${testLoad} at most.`,
    '',
  ].join('\n')
}

/** Places of every length here: no gauge is chosen yet, and the stock is reckoned to the micrometre. */
const MICROMETRE = 3

/** Nothing for a part that is not plated. */
function platingLines({ plating }: StockSide, { units }: Options): string {
  if (!plating) return ''
  const mm = (value: number): string => `${length(value, units)} ${units}`
  const { process, surface, aim, before, plated, layer, left, asked, bake, relieved } = plating
  const limits = ({ lower, upper }: { lower: number; upper: number }) =>
    `${inwardLimits(lower, upper, MICROMETRE, units).join(' / ')} ${units}`
  return [
    `Plate ${surface} with ${process}: ${limits(before)} before, ${limits(plated)} as plated.`,
    `Layer per side: ${length(layer.least, units)} to ${mm(layer.most)} as plated; ${length(left.least, units)} to ${mm(left.most)} left after honing at the worst places, aimed at ${mm(aim)}.`,
    `Asked for after honing: ${mm(asked.least)}${asked.most === undefined ? ' or more' : ` to ${mm(asked.most)}`}.`,
    bake.hours > 0
      ? `${relieved ? 'Stress relieve before; bake' : 'Bake'} ${fixed(bake.hours, 0)} h or more after at ${fixed(bake.least, 0)} to ${fixed(bake.most, 0)} °C, begun within ${fixed(bake.startWithin, 0)} h.`
      : 'No bake is needed.',
    '',
  ].join('\n')
}

const growthText = ({ least, nominal, most }: { least: number; nominal: number; most: number }): string =>
  [least, nominal, most].map(value => micrometre(value, 1)).join(' / ')

/** The two margins in words, one line a surface and operation. */
function plainWords({ stock }: StockSide, { units }: Options): string {
  const say = ({ surface, operation, margin, hardnessAtFinish, hardnessBand }: StockEntry): string => {
    const cleanUp =
      margin.cleanUp < -ROUNDING
        ? `does not clean up at the worst place: short by ${length(-margin.cleanUp, units)} ${units} each side`
        : `cleans up everywhere with ${length(margin.cleanUp, units)} ${units} each side to spare`
    const depth =
      margin.case === undefined
        ? ''
        : margin.case < 0
          ? `; the case is too thin at the deepest place by ${length(-margin.case, units)} ${units}`
          : `; ${length(margin.case, units)} ${units} of case to spare at the deepest place`
    const layer =
      margin.plating === undefined
        ? ''
        : margin.plating < 0
          ? `; too little plating is left by ${length(-margin.plating, units)} ${units}`
          : `; ${length(margin.plating, units)} ${units} of plating to spare at the thinnest place`
    const hard =
      hardnessAtFinish === undefined || !hardnessBand
        ? ''
        : `, about ${hardness(hardnessAtFinish)} HV there (${hardness(hardnessBand.low)} to ${hardness(hardnessBand.high)})`
    return `${surface}, operation ${operation}: ${cleanUp}${depth}${layer}${hard}.`
  }
  return stock.map(entry => `${say(entry)}\n`).join('')
}
