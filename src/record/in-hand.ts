import { BOW, type HardnessResult, type Reading } from '../part/results.ts'
import { HARDENING_PROCESSES } from '../process.ts'
import type { StockEntry } from '../stock/stock.ts'
import type { Millimetre } from '../units.ts'
import { characteristicOf, type IssuedPlan } from './characteristic-of.ts'
import type { Judged } from './judge-results.ts'
import { grindingOrder, type InHand, type PieceWindow, pieceWindow, takenAt } from './piece-window.ts'

/** A piece on the grinder's list, for one surface. */
export type Turn = {
  readonly serial: string
  readonly inHand: InHand
  readonly window: PieceWindow
  /** What comes off a side, made to the middle of its window. */
  readonly takes?: { readonly least: Millimetre; readonly most: Millimetre }
  /** Bow as planned, where nobody measured it; fewer directions than show an oval. */
  readonly assumed: readonly string[]
}

export type GrindingList = {
  readonly surface: string
  readonly operation: number
  readonly lower: Millimetre
  readonly upper: Millimetre
  readonly eccentricity: Millimetre
  /** Certified, or the least ordered where nobody says. */
  readonly case?: { readonly certified: Millimetre; readonly wanted: Millimetre; readonly by: 'certificate' | 'order' }
  /** In the order to grind them. */
  readonly turns: readonly Turn[]
  /** The one that bears most error in setting up. */
  readonly setUpPiece?: string
  readonly lost: readonly Turn[]
}

/** The operation that hardens the batch. */
export const hardeningOf = ({ operations }: Pick<IssuedPlan, 'operations'>): number | undefined =>
  operations.find(({ process }) => HARDENING_PROCESSES.has(process))?.number

/** For every surface that is still to be finished: what each piece that came back can be ground to, in the order to grind them. */
export function grindingLists({
  plan,
  judged,
  readings,
  hardness,
}: {
  readonly plan: IssuedPlan
  readonly judged: readonly Judged[]
  readonly readings: readonly Reading[]
  readonly hardness: HardnessResult | undefined
}): readonly GrindingList[] {
  const hardened = hardeningOf(plan)
  if (hardened === undefined) return []
  return firstFinishes(plan, hardened).flatMap((entry): readonly GrindingList[] => {
    // What was measured since, or is past that operation, is no longer waiting to be finished.
    const since = new Set(
      judged
        .filter(({ feature, after }) => after >= entry.operation || (feature === entry.surface && after > hardened))
        .map(({ serial }) => serial),
    )
    const after = judged.filter(
      ({ serial, feature, after, sizes }) =>
        feature === entry.surface && after === hardened && sizes.length > 0 && !since.has(serial),
    )
    const operation = plan.operations.find(({ number }) => number === entry.operation)
    const size = operation?.sizes.find(({ feature }) => feature === entry.surface)
    const characteristic = characteristicOf(plan, { of: entry.surface, after: entry.operation })
    if (!size || !characteristic || after.length === 0 || entry.kind === 'face') return []
    const { kind } = entry
    const guard =
      characteristic.accept.lower === undefined ? 0 : characteristic.accept.lower - (characteristic.lower ?? 0)
    const later = plan.stock
      .filter(({ surface, operation }) => surface === entry.surface && operation > entry.operation)
      .reduce((sum, { perSide }) => sum + perSide.most, 0)
    const asked = plan.case?.asked
    const spare =
      plan.case && asked !== undefined
        ? {
            certified: hardness?.depth ?? plan.case.ordered.least,
            wanted: asked + later,
            by: hardness?.depth === undefined ? ('order' as const) : ('certificate' as const),
          }
        : undefined
    const turns = after.map(({ serial, form, uncertainty, sizes }): Turn => {
      const bow = bowOf(readings, serial)
      const inHand: InHand = {
        kind,
        least: form.least - uncertainty,
        most: form.most + uncertainty,
        bow: bow ?? bowPlanned(entry),
        eccentricity: entry.eccentricity,
        toRemove: entry.perSide.needed,
        ...(spare && { case: spare }),
        lower: size.lower,
        upper: size.upper,
        guard,
      }
      const window = pieceWindow(inHand)
      const { from, to } = window
      return {
        serial,
        inHand,
        window,
        ...(from !== undefined && to !== undefined && { takes: takenAt(inHand, (from + to) / 2) }),
        assumed: [
          ...(bow === undefined ? ['bow as planned'] : []),
          ...(form.lowerBound && sizes.length > 1 ? ['too few directions to see an oval'] : []),
          ...(sizes.length === 1 ? ['measured at one place only'] : []),
        ],
      }
    })
    const order = grindingOrder(turns)
    // To set up with: the one that bears most error.
    const [setUp] = order
      .filter(({ window }) => window.verdict === 'grind as planned')
      .toSorted((one, other) => other.window.bears.most - one.window.bears.most)
    return [
      {
        surface: entry.surface,
        operation: entry.operation,
        lower: size.lower,
        upper: size.upper,
        eccentricity: entry.eccentricity,
        ...(spare && { case: spare }),
        turns: order,
        ...(setUp && { setUpPiece: setUp.serial }),
        lost: turns.filter(turn => !order.includes(turn)),
      },
    ]
  })
}

const firstFinishes = ({ stock }: IssuedPlan, hardened: number): readonly StockEntry[] =>
  stock.filter(
    entry =>
      entry.operation > hardened &&
      !stock.some(
        ({ surface, operation }) => surface === entry.surface && operation > hardened && operation < entry.operation,
      ),
  )

const bowOf = (readings: readonly Reading[], serial: string): Millimetre | undefined =>
  readings.findLast(reading => reading.of === BOW && reading.serial === serial)?.value

/** The stock of a surface rests on it. */
const bowPlanned = ({ basis }: StockEntry): Millimetre =>
  Number(basis?.find(({ figure }) => figure === 'bow')?.value ?? 0)
