import { type Placed, placesFor } from '../decimal-places.ts'
import type { Limits } from '../limits.ts'
import { isOver, type OperationSize } from '../operation-size.ts'
import { type PlaceKind, placeKind, type Written, writtenAs } from '../place.ts'
import type { PlatingPlan } from '../plating/plating-plan.ts'
import type { Operation } from '../route/operation.ts'
import type { AxialChart, ChartRow, DrawnLimits } from '../stock/part-chart.ts'
import type { Ladder } from '../stock/stock.ts'
import type { Characteristic } from './characteristic.ts'

/** The numbers of a size on the inspection plan, where it is measured. */
type Measured = {
  /** At the operation itself: the number that its drawing shows. */
  readonly characteristic?: number
  /** What decides about it: the check that takes the work back, else its own, else the next that measures it. */
  readonly judge?: number
}

/** A size with how every paper writes it, and what judges it. */
export type PlacedSize = OperationSize & Placed & Measured & { readonly kind: PlaceKind; readonly written: Written }
export type PlacedLadder = Omit<Ladder, 'states'> & { readonly states: readonly (Ladder['states'][number] & Placed)[] }

export type PlacedChart = Omit<AxialChart, 'resultants'> & {
  readonly resultants: readonly ChartRow<DrawnLimits & Placed>[]
}
export type PlacedPlating = Omit<PlatingPlan, 'before' | 'plated' | 'finished'> & {
  readonly before: Limits & Placed
  readonly plated: Limits & Placed
  readonly finished: Limits & Placed
}

type Made = Pick<Operation, 'number' | 'axialLocator' | 'checks'>
type Checked = { readonly operations: readonly Made[]; readonly characteristics: readonly Characteristic[] }

/** The sizes that an operation leaves, each written as the gauge reads that judges it. */
export function withPlaces({
  part,
  operation,
  sizes,
  checked,
}: {
  readonly part: Parameters<typeof placeKind>[0]
  readonly operation: Made
  readonly sizes: readonly OperationSize[]
  readonly checked: Checked
}): readonly PlacedSize[] {
  return sizes.map(size => {
    const kind = placeKind(part, size.feature)
    const { own, judge } = judgesOf({ made: operation.number, features: [size.feature], limits: size, checked })
    return {
      ...size,
      kind,
      // Ground from the face that locates it, a depth shrinks.
      written: size.of
        ? isOver(size.of)
          ? 'shaft'
          : 'hole'
        : operation.axialLocator && size.measure === 'depth'
          ? 'shaft'
          : size.item
            ? 'shaft'
            : writtenAs(kind, size.measure),
      places: judge?.places ?? placesFor(size),
      ...(own && { characteristic: own.number }),
      ...(judge && { judge: judge.number }),
    }
  })
}

/** The same for what every surface goes through; a face is judged by the length that it is ground to. */
export const withLadderPlaces = (ladders: readonly Ladder[], checked: Checked): readonly PlacedLadder[] =>
  ladders.map(ladder => {
    const features = ladder.kind === 'face' ? [ladder.surface, 'length'] : [ladder.surface]
    const states = ladder.states.map(state => {
      const { judge } = judgesOf({ made: state.operation, features, limits: state, checked })
      return { ...state, places: judge?.places ?? placesFor(state) }
    })
    return { ...ladder, states }
  })

/** The bore before plating, as plated and finished, written as the size of the operation that leaves it so. */
export function withPlatingPlaces(plating: PlatingPlan, checked: Checked): PlacedPlating {
  const { before, plated, finished, surface } = plating
  const placed = (limits: Limits): Limits & Placed => placedBy([surface], limits, checked)
  return { ...plating, before: placed(before), plated: placed(plated), finished: placed(finished) }
}

/** The drawing's lengths and depths, written as what measures them reads. */
export const withChartPlaces = (chart: AxialChart, checked: Checked): PlacedChart => ({
  ...chart,
  resultants: chart.resultants.map(({ drawn, ...row }) => ({
    ...row,
    ...(drawn && { drawn: { ...drawn, ...placedBy([drawn.feature], drawn, checked) } }),
  })),
})

function placedBy(features: readonly string[], limits: Limits, checked: Checked): Limits & Placed {
  const { judge } = judgesOf({ made: 0, features, limits, checked })
  return { ...limits, places: judge?.places ?? placesFor(limits) }
}

/** Where limits that an operation leaves are measured: same feature, same limits, then or later. */
function judgesOf({
  made,
  features,
  limits,
  checked: { operations, characteristics },
}: {
  readonly made: number
  readonly features: readonly string[]
  readonly limits: Limits
  readonly checked: Checked
}): { readonly own?: Characteristic; readonly judge?: Characteristic } {
  const measured = characteristics
    .filter(({ operation, feature, unit }) => operation >= made && unit === 'mm' && features.includes(feature))
    .filter(({ lower, upper }) => same(lower, limits.lower) && same(upper, limits.upper))
    .toSorted((a, b) => a.operation - b.operation)
  const back = operations.find(({ checks = [] }) =>
    checks.some(({ kind, of }) => kind === 'receipt' && of.includes(made)),
  )
  const own = measured.find(({ operation }) => operation === made)
  const judge = measured.find(({ operation }) => operation === back?.number) ?? measured[0]
  return { ...(own && { own }), ...(judge && { judge }) }
}

const same = (a: number | undefined, b: number): boolean => a !== undefined && Math.abs(a - b) < 1e-6
