import type { Plan } from '../plan/plan.ts'

export type SizeLimits = { readonly lower: number; readonly upper: number }

/** One size that an operation leaves, and how much it moved. */
export type SizeChange = {
  readonly operation: string
  readonly size: string
  readonly was?: SizeLimits
  readonly is?: SizeLimits
  readonly places: number
  readonly written: 'hole' | 'shaft'
  /** By the smaller of both tolerances; thresholds are estimates. */
  readonly weight:
    | 'within a tenth of the tolerance'
    | 'set over'
    | 'set up anew: old pieces are not the new part'
    | 'new'
    | 'gone'
  /** Whether pieces made to the old limits serve. */
  readonly interchange?: 'old pieces serve' | 'those measured inside the new limits serve' | 'no old piece serves'
}

export type Sized = SizeLimits & {
  readonly operation: string
  readonly size: string
  readonly places: number
  readonly written: 'hole' | 'shaft'
}

/** Sizes of a plan by operation and what they are of. */
export const sizesOf = ({ operations }: Pick<Plan, 'operations'>): ReadonlyMap<string, Sized> =>
  new Map(
    operations.flatMap(({ name, sizes }) =>
      sizes.map(({ feature, measure, edge, lower, upper, places, written }) => {
        const size = (edge ? [feature, edge, 'edge', measure] : [...new Set([feature, measure])]).join(' ')
        return [`${name}: ${size}`, { operation: name, size, lower, upper, places, written }] as const
      }),
    ),
  )

const SAME = 1e-9

export function sizeChanges(was: Plan, is: Plan): readonly SizeChange[] {
  const [old, now] = [sizesOf(was), sizesOf(is)]
  return [...new Set([...now.keys(), ...old.keys()])].flatMap((key): readonly SizeChange[] => {
    const [before, after] = [old.get(key), now.get(key)]
    const one = after ?? before
    if (!one) return []
    const { operation, size, places, written } = one
    const common = { operation, size, places, written }
    if (!before) return [{ ...common, is: limits(one), weight: 'new' }]
    if (!after) return [{ ...common, was: limits(one), weight: 'gone' }]
    const moved = Math.max(Math.abs(after.lower - before.lower), Math.abs(after.upper - before.upper))
    if (moved <= SAME) return []
    const tolerance = Math.min(after.upper - after.lower, before.upper - before.lower)
    return [
      {
        ...common,
        was: limits(before),
        is: limits(after),
        weight: weightOf(moved, tolerance),
        interchange: interchangeOf(before, after),
      },
    ]
  })
}

const limits = ({ lower, upper }: SizeLimits): SizeLimits => ({ lower, upper })

function weightOf(moved: number, tolerance: number): SizeChange['weight'] {
  if (moved < 0.1 * tolerance) return 'within a tenth of the tolerance'
  return moved <= 0.5 * tolerance ? 'set over' : 'set up anew: old pieces are not the new part'
}

function interchangeOf(was: SizeLimits, is: SizeLimits): NonNullable<SizeChange['interchange']> {
  if (was.lower >= is.lower - SAME && was.upper <= is.upper + SAME) return 'old pieces serve'
  return was.upper < is.lower || was.lower > is.upper
    ? 'no old piece serves'
    : 'those measured inside the new limits serve'
}

export type TimingChange = {
  readonly port: string
  readonly what: 'opens' | 'closes'
  readonly was: number
  readonly is: number
  /** mm that the edge goes toward the head. */
  readonly higher: number
  /** Crank degrees that a careful milling varies by. */
  readonly making: number
  readonly withinMaking: boolean
}

/** mm either side that milling holds an edge within: common practice, no source. */
const MILLED_WITHIN = 0.05

export function timingChanges(was: Plan, is: Plan): readonly TimingChange[] {
  return is.ports.flatMap((port): readonly TimingChange[] => {
    const before = was.ports.find(({ name }) => name === port.name)
    if (before?.opens === undefined || port.opens === undefined || Math.abs(before.opens - port.opens) < SAME) return []
    // Degrees for a tenth of a millimetre, so half of it for the tolerance to one side.
    const making = ((port.dAnglePerTenth ?? 0) * MILLED_WITHIN) / 0.1
    const moved = Math.abs(port.opens - before.opens)
    return [
      {
        port: port.name,
        what: 'opens',
        was: before.opens,
        is: port.opens,
        higher: before.top - port.top,
        making,
        withinMaking: moved < making,
      },
    ]
  })
}
