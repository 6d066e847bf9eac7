import { chance, fixed, micrometre } from '../../figures.ts'
import type { Plan } from '../../plan/plan.ts'
import type { Column, Recorded } from '../../record/record-batch.ts'
import { DASH, type PaperFigures, pair } from './paper-figures.ts'

/** Where a batch stands, every characteristic against its limits, and what is open. */
export type ResultsView = {
  readonly unit: string
  readonly standing: readonly { readonly what: string; readonly value: string }[]
  readonly groups: readonly {
    readonly operation: string
    readonly rows: readonly {
      readonly number: string
      readonly name: string
      readonly unit: string
      readonly limits: string
      readonly pieces: string
      readonly least: string
      readonly most: string
      readonly inLimits: string
      readonly inDoubt: string
      readonly out: string
      readonly capable: string
    }[]
    readonly strips: readonly { readonly left: string; readonly right: string }[]
  }[]
  readonly open: readonly {
    readonly piece: string
    readonly name: string
    readonly read: string
    readonly verdict: string
    readonly chance: string
    readonly settle: string
  }[]
}

export const stripName = ({ characteristic, after }: Pick<Column, 'characteristic' | 'after'>): string =>
  `readings-${after}-${characteristic}`

export function resultsView(plan: Plan, recorded: Recorded, figures: PaperFigures): ResultsView {
  const { columns, judged } = recorded
  const operations = [...new Set(columns.map(({ after }) => after))]
  return {
    unit: figures.unit,
    standing: standingLines(recorded),
    groups: operations.map(number => {
      const here = columns.filter(({ after }) => after === number)
      const names = here.map(stripName)
      return {
        operation: `${number} ${plan.operations.find(one => one.number === number)?.name ?? ''}`,
        rows: here.map(column => row(column, figures)),
        strips: names.flatMap((left, index) => (index % 2 === 0 ? [{ left, right: names[index + 1] ?? '' }] : [])),
      }
    }),
    open: judged
      .filter(({ verdict }) => verdict !== 'in limits')
      .map(one => ({
        piece: one.serial,
        name: `${one.name}, after ${one.after}`,
        read: span(one, one.form, figures),
        verdict: one.received ?? one.verdict,
        chance: chance(one.chance),
        settle: one.settle[0] ?? '',
      })),
  }
}

/** A size one place finer than its gauge reads, since a mean of readings has it. */
function figureOf(
  { unit, places }: { readonly unit: string; readonly places: number },
  value: number,
  { length }: PaperFigures,
): string {
  return unit === 'mm' ? length(value, places) : fixed(value, unit === 'µm' ? 2 : places)
}

/** From the least to the most, one figure where they read alike. */
export function span(
  of: { readonly unit: string; readonly places: number },
  { least, most }: { readonly least: number; readonly most: number },
  figures: PaperFigures,
): string {
  const ends = [least, most].map(value => figureOf(of, value, figures))
  return ends[0] === ends[1] ? (ends[0] ?? '') : ends.join(' to ')
}

export function limitsOf(column: Pick<Column, 'lower' | 'upper' | 'unit' | 'places'>, figures: PaperFigures): string {
  const { lower, upper, unit, places } = column
  if (lower !== undefined && upper !== undefined)
    return unit === 'mm' ? figures.limits({ lower, upper }, 'hole', places) : pair(String(lower), String(upper))
  if (upper !== undefined) return `not over ${unit === 'mm' ? figures.notOver(upper, places) : upper}`
  if (lower !== undefined) return `not under ${unit === 'mm' ? figures.notUnder(lower, places) : lower}`
  return DASH
}

function row(column: Column, figures: PaperFigures): ResultsView['groups'][number]['rows'][number] {
  const { characteristic, name, unit, pieces, inLimits, inDoubt, out } = column
  return {
    number: String(characteristic),
    name,
    unit: unit === 'mm' ? figures.unit : unit,
    limits: limitsOf(column, figures),
    pieces: String(pieces.length),
    least: figureOf(column, Math.min(...pieces.map(({ least }) => least)), figures),
    most: figureOf(column, Math.max(...pieces.map(({ most }) => most)), figures),
    inLimits: String(inLimits),
    inDoubt: inDoubt === 0 ? '' : String(inDoubt),
    out: out === 0 ? '' : String(out),
    capable: ableText(column),
  }
}

/** Fewer than 25 pieces show the limit that is sure, not the index. */
export function ableText({ capability, trend, unit }: Pick<Column, 'capability' | 'trend' | 'unit'>): string {
  if (trend) {
    const slope = unit === 'mm' ? `${micrometre(trend.slope, 1)} µm` : fixed(trend.slope, 2)
    return `drifts ${slope} a piece: wear, warming or the order of the rack`
  }
  if (!capability) return ''
  return `Ppk at least ${fixed(capability.Ppk.from, 2)} (95 %)`
}

function standingLines({ standing, hardness }: Recorded): ResultsView['standing'] {
  const { wanted, started, extras, lost, out, doubtful, left, upTo, startMore } = standing
  const serials = (list: readonly { readonly serial: string }[]) => list.map(({ serial }) => serial).join(', ')
  const because = ({ serial, operation, why }: (typeof lost)[number]): string =>
    [serial, ...(operation === undefined ? [] : [`at ${operation}`]), ...(why === undefined ? [] : [why])].join(', ')
  return [
    { what: 'Started', value: `${started} for ${wanted} good ones, and ${extras} to set up and to cut` },
    ...(upTo === undefined ? [] : [{ what: 'Measured up to', value: `operation ${upTo}` }]),
    ...(lost.length > 0 ? [{ what: 'Lost', value: lost.map(because).join('; ') }] : []),
    ...(out.length > 0 ? [{ what: 'Out of limits', value: serials(out) }] : []),
    ...(doubtful.length > 0 ? [{ what: 'In doubt', value: serials(doubtful) }] : []),
    { what: 'Left', value: `${left}; that they give ${wanted}: ${chance(standing.chance)}` },
    ...(startMore === undefined ? [] : [{ what: 'Start now', value: `${startMore} more` }]),
    ...(hardness
      ? [
          {
            what: 'Hardness, coupon',
            value: `${hardness.readings} readings, the least ${fixed(hardness.least, 0)} HV`,
          },
        ]
      : []),
  ]
}
