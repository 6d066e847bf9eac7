import { asDrawn, inwardLimits, type Units } from '../figures.ts'
import type { Characteristic } from '../inspection/characteristic.ts'
import type { PlacedSize } from '../inspection/size-places.ts'
import { FEATURE_WORDS, type OperationSize } from '../operation-size.ts'
import type { PlannedOperation } from '../plan/plan.ts'
import type { LabelRow } from './label.ts'

/**
 * What one label of the drawing shows: a size of a surface, or all sizes of a port. Ports of the same sizes, as a
 * mirrored pair is, share a label with the inspection numbers of both.
 */
export type Shown = {
  readonly features: readonly string[]
  /** The one size of a surface; a port has several. */
  readonly size?: OperationSize
  readonly rows: readonly LabelRow[]
  /** Nothing but inspection numbers: what is checked here and not made here. */
  readonly onlyChecked?: boolean
}

/** What has one label for all its sizes: ports, grooves, holes. */
type Names = { readonly grouped: readonly string[] }

/** Everything of an operation that has a size. */
export function shownSizes(
  { number, sizes }: PlannedOperation,
  characteristics: readonly Characteristic[],
  { grouped: names }: Names,
  units: Units = 'mm',
): readonly Shown[] {
  const here = characteristics.filter(({ operation }) => operation === number)
  const grouped = new Set(names)
  const surfaces = sizes
    .filter(({ feature }) => !grouped.has(feature))
    .map(size => ({ features: [size.feature], size, rows: [rowOf([size], units)] }))
  const alike = new Map<string, string[]>()
  for (const port of grouped) {
    const own = sizes.filter(({ feature }) => feature === port)
    if (own.length > 0) alike.set(likeness(own), [...(alike.get(likeness(own)) ?? []), port])
  }
  const labelled = [...alike.values()].map(features => {
    const bySize = sizes
      .filter(({ feature }) => feature === features[0])
      .map((_, index) => features.flatMap(port => sizes.filter(({ feature }) => feature === port)[index] ?? []))
    const name = { lines: features, bold: true }
    return { features, rows: [name, ...bySize.map(group => rowOf(group, units))] }
  })
  return withChecks([...surfaces, ...labelled], here)
}

/** Inspection rows of the operation that no size stands for: roughness, form, all that a check measures. */
function withChecks(shown: readonly Shown[], here: readonly Characteristic[]): readonly Shown[] {
  const tied = new Set(shown.flatMap(({ rows }) => rows.flatMap(({ numbers = [] }) => numbers)))
  const rest = here.filter(({ number }) => !tied.has(number))
  const rowsFor = (features: readonly string[]): readonly LabelRow[] => {
    const numbers = rest.filter(({ feature }) => features.includes(feature)).map(({ number }) => number)
    const count = Math.ceil(numbers.length / A_ROW)
    return Array.from({ length: count }, (_, row) => ({
      numbers: numbers.slice(row * A_ROW, (row + 1) * A_ROW),
      lines: [],
    }))
  }
  const first = shown.map(
    ({ features }, index) => shown.findIndex(other => other.features[0] === features[0]) === index,
  )
  const named = new Set(shown.flatMap(({ features }) => features))
  const others = [...new Set(rest.map(({ feature }) => feature))].filter(feature => !named.has(feature))
  return [
    ...shown.map((one, index) => (first[index] ? { ...one, rows: [...one.rows, ...rowsFor(one.features)] } : one)),
    ...others.map(feature => ({ features: [feature], rows: rowsFor([feature]), onlyChecked: true })),
  ]
}

/** Circles in one row of a label. */
const A_ROW = 4

const likeness = (sizes: readonly OperationSize[]): string =>
  sizes
    .map(({ measure, edge, of = '', lower, upper }) => [measure, edge, of, lower.toFixed(4), upper.toFixed(4)].join())
    .join(' ')

function rowOf(group: readonly PlacedSize[], units: Units): LabelRow {
  const numbers = group.flatMap(({ characteristic }) => characteristic ?? []).toSorted((a, b) => a - b)
  const [size] = group
  if (!size) return { numbers, lines: [] }
  const limits = inwardLimits(size.lower, size.upper, size.places, units)
  const [first, second] = size.written === 'hole' ? limits : limits.toReversed()
  const sign = size.measure === 'diameter' ? 'Ø' : ''
  const part = size.of && (size.of === 'cut-out' ? size.measure : FEATURE_WORDS[size.of].replace(/ ?Ø$/, ''))
  const what =
    part ?? size.edge ?? size.item ?? (size.measure === 'diameter' || size.measure === 'length' ? '' : size.measure)
  const small = [
    ...(size.drawn === undefined ? [] : [`drawing ${asDrawn(size.drawn, units)}`]),
    ...(size.roughness === undefined ? [] : [`Ra ${size.roughness}${units === 'inch' ? ' µm' : ''}`]),
  ]
  return {
    numbers,
    lines: [`${what && `${what} `}${sign}${first} / ${second}`, ...(small.length > 0 ? [small.join(', ')] : [])],
  }
}

/** What has a label of its own words, with the inspection numbers that are about it. */
export function withNumbers(
  feature: string,
  rows: readonly LabelRow[],
  { number }: Pick<PlannedOperation, 'number'>,
  characteristics: readonly Characteristic[],
): readonly Shown[] {
  const numbers = characteristics
    .filter(one => one.operation === number && one.feature === feature)
    .map(one => one.number)
  return [{ features: [feature], rows: [...rows, ...(numbers.length > 0 ? [{ numbers, lines: [] }] : [])] }]
}
