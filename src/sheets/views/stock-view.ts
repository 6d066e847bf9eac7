import { fixed, hardness, hours } from '../../figures.ts'
import { writtenAs } from '../../place.ts'
import type { Plan } from '../../plan/plan.ts'
import type { StockEntry } from '../../stock/stock.ts'
import { chanceLines, marginLines } from './margin-lines.ts'
import {
  type BasisRow,
  basisRows,
  firstArticleLines,
  type LengthRow,
  lengthRows,
  nearlyAllHead,
  type OddsRow,
  oddsRows,
} from './odds-rows.ts'
import { DASH, type PaperFigures } from './paper-figures.ts'
import { leftHead, platingRows, under } from './plating-rows.ts'
import { caseQuenchRows, quenchRows } from './quench-rows.ts'

export type StockView = {
  readonly unit: string
  readonly entries: readonly {
    readonly surface: string
    readonly operation: string
    readonly least: string
    readonly nominal: string
    readonly most: string
    readonly sideLeast: string
    readonly needed: string
    readonly sideMost: string
    readonly cleanUp: string
    /** Of the case or the plating that must be left, what is to spare. */
    readonly left: string
    /** Expected where most comes off, and the band of the models. */
    readonly hardness: string
    readonly verdict: string
  }[]
  /** As a table where no picture shows them. */
  readonly ladders: readonly {
    readonly surface: string
    readonly states: readonly {
      readonly operation: string
      readonly name: string
      readonly limits: string
    }[]
  }[]
  readonly leftHead: string
  readonly hardened: boolean
  readonly orderHead: string
  readonly plating: readonly { readonly what: string; readonly value: string }[]
  readonly order: readonly { readonly what: string; readonly value: string }[]
  readonly pictures: readonly string[]
  readonly odds: readonly OddsRow[]
  readonly nearlyAllHead: string
  readonly basis: readonly BasisRow[]
  readonly firstArticle: readonly string[]
  readonly lengths: readonly LengthRow[]
}

const VERDICT: { readonly [verdict in StockEntry['verdict']]: string } = {
  ok: 'cleans up, case left',
  marginal: 'no more than can be told',
  thin: 'too little: will not clean up',
  deep: 'too much: case gone',
  impossible: 'no figure serves',
}

function verdictOf(margin: StockEntry['margin'], verdict: StockEntry['verdict']): string {
  if (margin.plating !== undefined && verdict === 'ok') return 'cleans up, plating left'
  if (margin.plating !== undefined && verdict === 'deep') return 'too little plating left'
  return margin.case === undefined && verdict === 'ok' ? 'cleans up' : VERDICT[verdict]
}

/** On diameter, mm. */
const LITTLE = 0.02

export function stockView(plan: Plan, figures: PaperFigures, pictures: Iterable<string>): StockView {
  const { length, unit } = figures
  const drawn = [...pictures].filter(name => /^(ladder|hardness)(-|$)/.test(name))
  return {
    unit,
    entries: plan.stock.map(
      ({ surface, operation, onDiameter, perSide, margin, hardnessAtFinish, hardnessBand, verdict }) => {
        // A lap takes micrometres.
        const fine = (value: number) => length(value, onDiameter.most < LITTLE ? 4 : 3)
        return {
          surface,
          operation: String(operation),
          least: fine(onDiameter.least),
          nominal: fine(onDiameter.nominal),
          most: fine(onDiameter.most),
          sideLeast: fine(perSide.least),
          needed: fine(perSide.needed),
          sideMost: fine(perSide.most),
          cleanUp: fine(margin.cleanUp),
          left: under(margin, length),
          hardness:
            hardnessAtFinish === undefined || !hardnessBand
              ? DASH
              : `${hardness(hardnessAtFinish)} (${hardness(hardnessBand.low)} to ${hardness(hardnessBand.high)})`,
          verdict: verdictOf(margin, verdict),
        }
      },
    ),
    leftHead: leftHead(plan.stock),
    ladders: (drawn.includes('ladder') ? [] : plan.ladders).map(({ surface, kind, states }) => ({
      surface: kind === 'face' ? surface : `${surface} Ø`,
      states: states.map(state => {
        return {
          operation: String(state.operation),
          name: state.name,
          limits: figures.limits(state, writtenAs(kind), state.places),
        }
      }),
    })),
    hardened: plan.case !== undefined || plan.quench !== undefined,
    orderHead: plan.quench ? 'Hardening to order' : 'Case to order',
    order: plan.quench ? quenchRows(plan.quench, figures) : caseOrder(plan, figures),
    plating: plan.plating ? platingRows(plan.plating, figures) : [],
    pictures: drawn,
    odds: oddsRows(plan.stock, figures),
    nearlyAllHead: nearlyAllHead(plan.stock),
    basis: basisRows(plan.stock, figures),
    firstArticle: [
      ...chanceLines(plan.stock),
      ...marginLines(plan.stock, figures),
      ...firstArticleLines(plan.stock, figures),
    ],
    lengths: lengthRows(plan, figures),
  }
}

/** What the hardener is asked for and what it does, a line each. */
function caseOrder(
  { case: ordered }: Plan,
  { length, unit }: PaperFigures,
): readonly { what: string; value: string }[] {
  if (!ordered) return []
  const { growth, records, time, compoundLayer, quenched } = ordered
  const range = ({ least, nominal, most }: { least: number; nominal: number; most: number }) =>
    `${length(nominal)} (${length(least)} to ${length(most)}) ${unit} a side`
  return [
    {
      what: 'Process',
      value: `${ordered.process}, ${ordered.stages.map(({ temperature }) => `${fixed(temperature, 0)} °C`).join(', then ')}`,
    },
    {
      what: 'Depth to order',
      value: `${length(ordered.ordered.least, 2)} to ${length(ordered.ordered.most, 2)} ${unit}, ${ordered.definition}`,
    },
    {
      what: 'Deepest that may be ordered',
      value: `${length(ordered.limit.least, 2)} ${unit}, least: ${ordered.limit.because}`,
    },
    { what: 'Depth asked for after finishing', value: `not under ${length(ordered.asked, 2)} ${unit}` },
    {
      what: 'Depth left at the worst place',
      value: `${length(ordered.left.least)} to ${length(ordered.left.most)} ${unit}`,
    },
    {
      what: 'Surface hardness expected',
      value: `${hardness(ordered.surfaceHardness)} HV, core ${hardness(ordered.coreHardness)} HV`,
    },
    ...(quenched ? caseQuenchRows(quenched, { length, unit }) : []),
    { what: 'Outside grows', value: range(growth.outside) },
    { what: 'Bore closes', value: range(growth.bore) },
    ...records.map(({ record, used, why }) => ({
      what: used ? 'Measured before' : 'Passed over',
      value: `${record}: ${why}`,
    })),
    ...(compoundLayer.most > 0
      ? [
          {
            what: 'Compound layer',
            value: `${length(compoundLayer.nominal)}, not over ${length(compoundLayer.most)} ${unit}`,
          },
        ]
      : []),
    ...(time.nominal > 0
      ? [
          {
            what: 'Time at temperature, estimate',
            value: `${hours(time.nominal)} h (${hours(time.least)} to ${hours(time.most)} h)`,
          },
        ]
      : []),
    { what: 'Test load', value: ordered.testLoad },
  ]
}
