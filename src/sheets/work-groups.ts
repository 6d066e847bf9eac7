import type { Plan, PlannedOperation } from '../plan/plan.ts'

/** Operations that share a sheet of the floor, and at its foot those that only count, send, receive or are looked at. */
export type WorkGroup = {
  readonly kind: 'material' | 'machine' | 'bench' | 'ports'
  readonly operations: readonly PlannedOperation[]
  readonly slips: readonly PlannedOperation[]
}

type Open = { kind: WorkGroup['kind']; operations: PlannedOperation[]; slips: PlannedOperation[] }

/**
 * Sawing goes with the bar, all bench work on one card, each cutting operation on a sheet of its own. What is checked or sent
 * stands at the foot of the work that it follows; the final inspection is the inspector's alone.
 */
export function workGroups({ operations }: Pick<Plan, 'operations'>): readonly WorkGroup[] {
  const groups: Open[] = []
  let last: Open | undefined
  for (const operation of operations) {
    const kind = kindOf(operation)
    if (kind === 'slip') {
      if (operation.purpose !== 'final-inspection') last?.slips.push(operation)
      continue
    }
    const bench = kind === 'bench' ? groups.find(group => group.kind === 'bench') : undefined
    last = bench ?? { kind, operations: [], slips: [] }
    if (!bench) groups.push(last)
    last.operations.push(operation)
  }
  return groups
}

function kindOf({ purpose, process, place }: PlannedOperation): WorkGroup['kind'] | 'slip' {
  if (place === 'outside' || process === 'inspect') return 'slip'
  if (purpose === 'saw-blanks') return 'material'
  if (purpose === 'mill-ports') return 'ports'
  return process === 'mark' || process === 'deburr' ? 'bench' : 'machine'
}

/** Stages at which the inspector measures piece by piece; what the floor measures in process stands on its own sheets. */
const isMeasured = ({ stage, unit }: Plan['inspection']['characteristics'][number]): boolean =>
  stage !== 'in-process' && unit !== '-'

/** Columns of the inspector's matrices, as against what is read once a batch or looked at, which is a line. */
export const isColumn = (characteristic: Plan['inspection']['characteristics'][number]): boolean =>
  isMeasured(characteristic) && characteristic.sample > 1 && characteristic.readAt === undefined
