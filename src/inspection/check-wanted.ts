import type { CasePlan } from '../hardening/case-plan.ts'
import type { QuenchPlan } from '../hardening/quench-plan.ts'
import type { Part } from '../part/part.ts'
import type { PlatingPlan } from '../plating/plating-plan.ts'
import { HARDENING_PROCESSES } from '../process.ts'
import type { Operation, PassCheck } from '../route/operation.ts'
import { hardeningWanted, type Ovality } from './case-wanted.ts'
import { crackTested } from './crack-wanted.ts'
import { beforePlatingWanted, platedWanted } from './plating-wanted.ts'
import { quenchedWanted } from './quenched-wanted.ts'
import { sizeWanted } from './size-wanted.ts'
import { latestSizes, type Made, type SizesByOperation } from './sizes-made.ts'
import { toLookAt, toReadOff, type Wanted, type Where } from './wanted.ts'

/** What is looked at as work leaves the shop, or comes back to it: lines of the operation that comes next. */
export function checkWanted({
  part,
  check,
  at: number,
  operations,
  sizes,
  casePlan,
  quench,
  ovality,
  plating,
}: {
  readonly part: Part
  readonly check: PassCheck
  /** The operation that has the lines. */
  readonly at: number
  readonly operations: readonly Operation[]
  readonly sizes: SizesByOperation
  readonly casePlan: CasePlan | undefined
  readonly quench: QuenchPlan | undefined
  readonly ovality: Ovality
  readonly plating: PlatingPlan | undefined
}): readonly Wanted[] {
  const sent = operations.filter(other => check.of.includes(other.number))
  const leaving = check.kind === 'despatch'
  const where: Where = { operation: number, stage: leaving ? 'before-sending' : 'on-return' }
  const counted = toLookAt({
    name: 'count, serials and heat number',
    feature: 'all pieces',
    weight: 'critical',
    where,
    remark: 'against the route card',
  })
  const wanted = (made: Made): Wanted => sizeWanted(part, operations, made, where)
  if (leaving) {
    const before = operations.filter(other => other.number < number)
    return [
      counted,
      ...beforeSending(latestSizes(before, sizes), sent, wanted, where),
      ...(plating && sent.some(plates) ? beforePlatingWanted(part, plating, where) : []),
    ]
  }
  return [
    counted,
    ...latestSizes(sent, sizes).map(wanted),
    ...(quench && sent.some(hardens)
      ? quenchedWanted(part, quench, { ovality, where })
      : onReturn({ part, sent, casePlan, quench, ovality, where })),
    ...(plating && sent.some(plates) ? platedWanted(plating, where) : []),
    ...(sent.some(({ process }) => process === 'crack-test') ? crackTested(where) : []),
  ]
}

const plates = ({ purpose }: Operation): boolean => purpose === 'plate'
const hardens = ({ process }: Operation): boolean => HARDENING_PROCESSES.has(process)

/** Before a furnace, what it will move; before other work, what that work is located by and cuts. */
function beforeSending(
  latest: readonly Made[],
  sent: readonly Operation[],
  wanted: (made: Made) => Wanted,
  where: Where,
): readonly Wanted[] {
  if (sent.some(hardens)) {
    const grows = latest.filter(({ size }) => !size.of && (size.measure === 'diameter' || size.measure === 'length'))
    const record = 'write it down: growth is what the same piece differs by on return'
    return [
      ...grows.map(wanted).map(one => ({ ...one, remark: one.remark ? `${one.remark}; ${record}` : record })),
      toLookAt({
        name: 'every edge broken, no burr',
        feature: 'edges',
        weight: 'critical',
        where,
        remark: 'an edge left sharp is brittle once hardened',
      }),
    ]
  }
  const concerned = new Set(sent.flatMap(({ surfaces, locatedBy }) => [...surfaces, ...locatedBy]))
  const record = 'write it down: the plating is what the same piece differs by on return'
  return latest
    .filter(({ size }) => concerned.has(size.feature))
    .map(wanted)
    .map(one => (sent.some(plates) ? { ...one, remark: one.remark ? `${one.remark}; ${record}` : record } : one))
}

/** What the work outside may have spoilt, and what its paper must say. */
function onReturn({
  part,
  sent,
  casePlan,
  quench,
  ovality,
  where,
}: {
  readonly part: Part
  readonly sent: readonly Operation[]
  readonly casePlan: CasePlan | undefined
  readonly quench: QuenchPlan | undefined
  readonly ovality: Ovality
  readonly where: Where
}): readonly Wanted[] {
  if (casePlan && sent.some(hardens)) return hardeningWanted(part, casePlan, { ovality, where })
  const relieved = casePlan?.order?.stressRelief ?? quench?.stressRelief.aim
  return [
    ...(relieved !== undefined && sent.some(({ purpose }) => purpose === 'stress-relieve')
      ? [
          toReadOff(
            'furnace chart',
            0,
            {
              name: 'stress-relieving temperature',
              unit: '°C',
              nominal: relieved,
              feature: 'all pieces',
              sampled: { sample: 1, plan: 'every load' },
            },
            where,
          ),
        ]
      : []),
    ...(sent.some(({ process }) => process === 'grind')
      ? [toLookAt({ name: 'no burn, crack or chatter mark', feature: 'ground surfaces', weight: 'critical', where })]
      : []),
  ]
}
