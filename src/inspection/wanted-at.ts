import type { ClockingDatum } from '../cutting/clocking-datum.ts'
import type { PlannedFeature } from '../features/feature-plan.ts'
import type { CasePlan } from '../hardening/case-plan.ts'
import type { QuenchPlan } from '../hardening/quench-plan.ts'
import type { Part } from '../part/part.ts'
import type { PlatingPlan } from '../plating/plating-plan.ts'
import type { PlannedPort } from '../ports/port.ts'
import { HARDENING_PROCESSES } from '../process.ts'
import type { Operation } from '../route/operation.ts'
import type { Shop } from '../shop/shop.ts'
import { finishedCase, type Ovality } from './case-wanted.ts'
import { checkWanted } from './check-wanted.ts'
import { crackTested } from './crack-wanted.ts'
import { datumMade } from './datum-wanted.ts'
import { featuresWanted } from './feature-wanted.ts'
import { formWanted, groundForHoning, surfacesOf } from './form-wanted.ts'
import { finishedPlating } from './plating-wanted.ts'
import { brokenEdges, finishedPorts, milledPorts } from './ports-wanted.ts'
import { receiptWanted } from './receipt-wanted.ts'
import { sizeWanted } from './size-wanted.ts'
import { type SizesByOperation, sizesMade } from './sizes-made.ts'
import { toLookAt, type Wanted, type Where } from './wanted.ts'

export type Planned = {
  readonly part: Part
  readonly shop: Shop
  readonly operations: readonly Operation[]
  readonly sizes: SizesByOperation
  readonly ports: readonly PlannedPort[]
  readonly casePlan: CasePlan | undefined
  readonly quench?: QuenchPlan | undefined
  readonly ovality: Ovality
  readonly plating: PlatingPlan | undefined
  readonly features?: readonly PlannedFeature[]
  /** What brings azimuth 0 back. */
  readonly datum: ClockingDatum | undefined
}

/** Everything to measure at one operation. */
export function wantedAt(planned: Planned, operation: Operation): readonly Wanted[] {
  const { part, operations, sizes, casePlan, quench, ovality, plating } = planned
  const passing = (operation.checks ?? []).flatMap(check =>
    checkWanted({ part, check, at: operation.number, operations, sizes, casePlan, quench, ovality, plating }),
  )
  // From one firm straight to the next, the pieces are counted once.
  const once = passing.filter(
    (one, index) => one.unit !== '-' || passing.findIndex(({ name }) => name === one.name) === index,
  )
  return [...once, ...ownWanted(planned, operation)]
}

/** What the operation itself makes or judges. */
function ownWanted(planned: Planned, operation: Operation): readonly Wanted[] {
  const { part, shop, operations, sizes, ports, features = [], datum } = planned
  const { number, purpose, process } = operation
  if (purpose === 'final-inspection') return finalWanted(planned, operation)
  const where: Where = { operation: number, stage: 'in-process' }
  if (process === 'deburr')
    return [
      toLookAt({ name: 'every edge broken, no burr', feature: 'edges', weight: 'minor', where }),
      ...brokenEdges(ports, purpose === 'deburr-ports' ? 'left' : 'broken', where),
    ]
  if (process === 'crack-test') return operation.place === 'house' ? crackTested(where) : []
  // What a furnace or a bath does to the sizes is measured when the work is back.
  if (HARDENING_PROCESSES.has(process) || process === 'plate') return []
  return [
    ...(purpose === 'saw-blanks' ? receiptWanted(part, where) : []),
    ...sizesMade(operation, sizes).map(made => sizeWanted(part, operations, made, where)),
    ...featuresWanted(
      features.filter(feature => feature.operation === number),
      where,
    ),
    ...(purpose === 'mill-ports' ? [...datumMade(datum, where), ...milledPorts(ports, datum, where)] : []),
    ...surfacesOf(part)
      .filter(({ feature }) => finisherOf(feature, operations)?.number === number)
      .flatMap(surface => formWanted(surface, process, 'major', where)),
    ...surfacesOf(part)
      .filter(({ feature }) => process === 'grind' && honedAfter(feature, operation, operations))
      .flatMap(surface => groundForHoning(surface, shop.habits.groundRoughness, where)),
  ]
}

/** What is ground here is honed later, so that the hone's stock rests on how it is left. */
const honedAfter = (feature: string, { number, surfaces }: Operation, operations: readonly Operation[]): boolean =>
  surfaces.includes(feature) &&
  operations.some(
    ({ process, number: later, surfaces: honed }) => process === 'hone' && later > number && honed.includes(feature),
  )

/** The last operation that cuts a surface. */
export const finisherOf = (feature: string, operations: readonly Operation[]): Operation | undefined =>
  operations.findLast(({ surfaces, process }) => surfaces.includes(feature) && CUTTING.has(process))

const CUTTING: ReadonlySet<Operation['process']> = new Set(['turn', 'drill', 'grind', 'hone', 'lap'])

function finalWanted(
  { part, operations, sizes, ports, features = [], casePlan, plating, datum }: Planned,
  operation: Operation,
): readonly Wanted[] {
  const where: Where = { operation: operation.number, stage: 'final' }
  return [
    ...sizesMade(operation, sizes).map(made => sizeWanted(part, operations, made, where)),
    ...surfacesOf(part).flatMap(surface =>
      formWanted(surface, finisherOf(surface.feature, operations)?.process, 'critical', where),
    ),
    ...featuresWanted(features, where),
    ...finishedPorts(ports, datum, where),
    ...(casePlan ? finishedCase(part, casePlan, where) : []),
    ...(plating ? finishedPlating(plating, where) : []),
    toLookAt({ name: 'serial legible, clean, oiled', feature: 'all surfaces', weight: 'minor', where }),
  ]
}
