import { densityOf } from '../handbook/density.ts'
import { HARDENING_PROCESSES } from '../process.ts'
import { openNotebook, type Working } from '../working.ts'
import { arriving } from './arriving.ts'
import { crackTestOrder } from './crack-test-order.ts'
import type { Drafted } from './drafted.ts'
import { finishingOrder } from './finishing-order.ts'
import { hardeningOrder } from './hardening-order.ts'
import { headOf } from './identity.ts'
import { massOf } from './mass.ts'
import type { OutsideOrder } from './order.ts'
import type { OrderedOperation, OrderSource, Visit } from './order-source.ts'
import { platingOrder } from './plating-order.ts'
import { quenchOrder } from './quench-order.ts'
import { reliefOrder } from './relief-order.ts'
import type { Draft } from './say.ts'
import { visitsOf } from './visits.ts'

export type OrdersPlan = { readonly orders: readonly OutsideOrder[]; readonly workings: readonly Working[] }

/** Everything that goes to a firm with the pieces, decided once: one order a visit, whatever is done there. */
export function planOrders(source: OrderSource): OrdersPlan {
  const notebook = openNotebook()
  const orders = visitsOf(source).map((operations, index) => orderOf({ source, operations, notebook }, index + 1))
  return { orders, workings: notebook.workings }
}

function orderOf(visit: Visit, number: number): OutsideOrder {
  const { source, operations } = visit
  const [first] = operations
  if (!first) throw new RangeError('a visit has at least one operation, got none')
  const drafted = kindsOf(operations).map(([write, done]) => write({ ...visit, operations: done }))
  const [before] = source.operations.filter(operation => operation.number < first.number).slice(-1)
  const named = drafted.every(({ named }) => named !== undefined)
    ? drafted.flatMap(({ named = [] }) => named)
    : undefined
  const each = massOf(before?.shape ?? first.shape, densityOf(source.grade))
  const { part, batch } = source
  return {
    number,
    reference: `${part.number}/${batch.number}/${number}`,
    title: operations
      .map(({ name }, index) => (index === 0 ? name : name.charAt(0).toLowerCase() + name.slice(1)))
      .join(', '),
    firm: first.workCentre,
    operations: operations.map(operation => operation.number),
    ...headOf(source, first),
    mass: { each, all: each * batch.start },
    arrives: arriving(source, first.number, named),
    finish: drafted.flatMap(({ finish }) => finish),
    points: pointsOnce(drafted.flatMap(({ points }) => points)).map((point, index) => ({
      number: index + 1,
      ...point,
    })),
    returns: onceFirst(drafted.flatMap(({ returns }) => returns)).map((row, index) => ({
      number: index + 1,
      ...row,
      // A set-up piece and a coupon are not judged.
      readings: Math.min(row.readings, batch.numbered),
    })),
    cautions: [...new Set(drafted.flatMap(({ cautions }) => cautions))],
    counts: source.firms.find(({ name }) => name === first.workCentre)?.counts ?? 'working days',
    // The pieces come back when the longest is done.
    leadTime: Math.max(0, ...operations.flatMap(({ firms }) => firms.map(({ leadTime }) => leadTime))),
  }
}

/** What is read once, of load or coupon, stands before what is read of every piece. */
const onceFirst = (rows: Drafted['returns']): Drafted['returns'] => [
  ...rows.filter(({ of }) => of !== 'piece'),
  ...rows.filter(({ of }) => of === 'piece'),
]

type Writer = (visit: Visit) => Drafted

const hardenedAsPlanned: Writer = visit => {
  const { quench } = visit.source
  return quench ? quenchOrder(visit, quench) : hardeningOrder(visit)
}

const writerOf = ({ process, purpose }: OrderedOperation): Writer => {
  if (HARDENING_PROCESSES.has(process)) return hardenedAsPlanned
  if (purpose === 'crack-test') return crackTestOrder
  if (purpose === 'plate' || purpose === 'relieve-for-plating' || purpose === 'bake-after-plating') return platingOrder
  return purpose === 'stress-relieve' ? reliefOrder : finishingOrder
}

/** The operations of a visit by the kind of order that they are written in, in turn. */
function kindsOf(operations: readonly OrderedOperation[]): readonly (readonly [Writer, readonly OrderedOperation[]])[] {
  const writers = [...new Set(operations.map(writerOf))]
  return writers.map(write => [write, operations.filter(operation => writerOf(operation) === write)] as const)
}

/** Where one firm does work of two kinds in a visit, what both orders say is said once. */
function pointsOnce(points: readonly Draft[]): readonly Draft[] {
  const said = new Set<string>()
  return points.flatMap(({ title, text, quantities }) => {
    const key = JSON.stringify([title, text, quantities])
    if (said.has(key)) return []
    said.add(key)
    return [{ title, text, quantities }]
  })
}
