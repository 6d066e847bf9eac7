import type { BatchRequest } from '../batch/batch.ts'
import { withMeasuring } from '../cutting/operation-time.ts'
import { planCutting } from '../cutting/plan-cutting.ts'
import { portsAsCut } from '../cutting/ports-as-cut.ts'
import { timingBreak } from '../edges/edge-break.ts'
import { planEdges } from '../edges/plan-edges.ts'
import { planFeatures } from '../features/plan-features.ts'
import { planFit } from '../features/plan-fit.ts'
import { byPlace, type Finding } from '../finding.ts'
import { planInspection } from '../inspection/plan-inspection.ts'
import { withChartPlaces, withLadderPlaces, withPlaces, withPlatingPlaces } from '../inspection/size-places.ts'
import { planKit } from '../kit/plan-kit.ts'
import type { OperationSize } from '../operation-size.ts'
import { planOrders } from '../orders/plan-orders.ts'
import type { Part } from '../part/part.ts'
import { checkDrills } from '../ports/checks/run-checks.ts'
import { planPorts } from '../ports/plan-ports.ts'
import { firmOf } from '../route/house-or-outside.ts'
import type { Operation, Purpose } from '../route/operation.ts'
import type { Shape } from '../shape.ts'
import { BUILT_IN_SHOP } from '../shop/built-in-shop.ts'
import type { Shop } from '../shop/shop.ts'
import { ovalityBorne } from '../stock/ovality-borne.ts'
import { withBatchChances } from '../stock/with-chances.ts'
import { beginPlan } from './begin-plan.ts'
import { datesAndPrices } from './dates-and-prices.ts'
import type { Plan, PlannedOperation } from './plan.ts'

/** What a plan is made of: all of it given, so that the same input makes the same plan. */
export type PlanRequest = {
  readonly part: Part
  readonly shop: Shop
  /** How many good pieces, under which batch number. */
  readonly batch: BatchRequest
  readonly issue: Issue
  /** Which of the orders that the rules allow; left out, the one that the trade goes by. */
  readonly order?: readonly Purpose[]
}

/** What the plan is issued under. Given, since the planner has no clock and reads no file. */
export type Issue = {
  /** YYYY-MM-DD. */
  readonly date: string
  readonly fingerprint: string
  /** Name and version of the program. */
  readonly program: string
}

/** A part that cannot be put in order has findings and no plan; a plan that cannot work is still shown, with its errors. */
export type Planned = { readonly plan?: Plan; readonly findings: readonly Finding[] }

/** Assembles the Plan from every room, in the order that each needs the ones before. Computes nothing itself. */
export function makePlan({ part, shop: given, batch: request, issue, order }: PlanRequest): Planned {
  const begun = beginPlan(part, given, request, order)
  if (!begun.rooms) return { findings: begun.findings }
  const { route, stock, batch, shop } = begun.rooms
  const { operations } = route

  const ports = stock.asMilled
    ? planPorts(part, shop, stock.asMilled)
    : { ports: [], sizes: [], finished: [], findings: [], workings: [] }
  const features = planFeatures({
    part,
    operations,
    entries: stock.entries,
    shapes: stock.shapes,
    growth: stock.case?.growth ?? stock.quench?.growth,
  })
  const fitted = planFit(part)
  const edges = planEdges({ part, shop, operations, ports: ports.ports, stock })

  const sizes = new Map<number, readonly OperationSize[]>(
    operations.map(operation => [
      operation.number,
      edges.sizesOf(operation.number, [
        ...(operation.purpose === 'saw-blanks' ? batch.sawn.sizes : (stock.sizes.get(operation.number) ?? [])),
        ...(operation.purpose === 'mill-ports' ? ports.sizes : []),
        ...(operation.purpose === 'final-inspection' ? ports.finished : []),
        ...(features.sizes.get(operation.number) ?? []),
      ]),
    ]),
  )
  const shapes = shapesInTurn(operations, stock.shapes, batch.sawn.shape)
  const states = operations.map((operation, index) => ({
    operation,
    sizes: sizes.get(operation.number) ?? [],
    before: shapes[index - 1] ?? batch.sawn.shape,
    after: shapes[index] ?? batch.sawn.shape,
    ...(operation.purpose === 'turn' && { roughed: stock.roughed }),
  }))
  const grip = 'fixture' in ports ? ports.fixture?.grip : undefined
  const cutting = planCutting({
    part,
    shop,
    states,
    ports: edges.ports,
    features: features.features,
    start: batch.batch.start,
    grip,
  })
  const ovality = ovalityBorne(stock.entries)
  const asCut = portsAsCut(edges.ports, cutting)
  const inspection = planInspection({
    part,
    shop,
    operations,
    sizes,
    ports: edges.ports,
    features: features.features,
    casePlan: stock.case,
    quench: stock.quench,
    ovality,
    pieces: batch.batch.start,
    plating: stock.plating,
    datum: cutting.clocking?.datum,
  })

  const checked = { operations, characteristics: inspection.characteristics }
  const planned = states.map(
    ({ operation, sizes, after }): PlannedOperation => ({
      ...operation,
      sizes: withPlaces({ part, operation, sizes, checked }),
      ...(operation.purpose === 'mill-ports' && 'chuckings' in ports && { chuckings: ports.chuckings }),
      ...chuckingsOf(cutting, operation),
      steps: cutting.steps.get(operation.number) ?? [],
      time: withMeasuring(
        cutting.time.get(operation.number) ?? { setup: 0, each: 0, batch: 0 },
        inspection.minutes.get(operation.number) ?? 0,
        batch.batch.start,
      ),
      shape: after,
      firms: firmOf(shop, operation).map(({ name, leadTime }) => ({ name, leadTime })),
    }),
  )
  const { number, title, revision, kind } = part
  const ladders = withLadderPlaces(stock.ladders, checked)
  const entries = withBatchChances(stock.entries, batch.batch.start)
  const timing = timingBreak(edges.ports)
  const orders = planOrders({
    part: { number, title, revision },
    batch: batch.batch,
    works: { ...(shop.name !== BUILT_IN_SHOP.name && { name: shop.name }), ...shop.contact },
    firms: shop.firms,
    grade: batch.material.grade,
    operations: planned,
    ladders,
    stock: entries,
    ovality,
    ...(stock.case && { case: stock.case }),
    ...(stock.quench && { quench: stock.quench }),
    ...(stock.plating && { plating: stock.plating }),
    ported: part.ports.length > 0,
    ...(timing && { timingBreak: timing }),
    characteristics: inspection.characteristics,
  })
  const priced = datesAndPrices({
    shop,
    request,
    operations: planned,
    orders: orders.orders,
    batch: batch.batch,
    material: batch.material,
  })
  const rooms = [route, stock, features, fitted, ports, edges, batch, cutting, inspection]
  const findings = byPlace([...rooms.flatMap(room => room.findings), ...checkDrills(part, shop, asCut)])
  return {
    findings,
    plan: {
      part: { number, title, revision, kind },
      shop: {
        name: shop.name,
        ...(ports.ports.length > 0 && { fixture: shop.fixture, ...(shop.ncWords && { ncWords: shop.ncWords }) }),
      },
      batch: batch.batch,
      operations: planned,
      stock: entries,
      ladders,
      axial: withChartPlaces(edges.axial, checked),
      ...(stock.case && { case: stock.case }),
      ...(stock.quench && { quench: stock.quench }),
      ...(stock.plating && { plating: withPlatingPlaces(stock.plating, checked) }),
      ports: asCut,
      features: features.features,
      ...(fitted.fit && { fit: fitted.fit }),
      setUps: cutting.setUps,
      ...(cutting.clocking && { clocking: cutting.clocking }),
      ...(cutting.millingGrip && { millingGrip: cutting.millingGrip }),
      ...('fixture' in ports && ports.fixture && { fixture: ports.fixture }),
      ...('gasExchange' in ports && ports.gasExchange && { gasExchange: ports.gasExchange }),
      inspection: { characteristics: inspection.characteristics },
      kit: planKit({ shop, operations: planned, characteristics: inspection.characteristics }),
      material: batch.material,
      ...priced,
      findings,
      workings: [...rooms, orders, priced].flatMap(room => ('workings' in room ? room.workings : [])),
      ...issue,
    },
  }
}

const chuckingsOf = ({ chuckings }: ReturnType<typeof planCutting>, { number }: Operation) => {
  const held = chuckings.get(number)
  return held ? { chuckings: held } : {}
}

/** The part after every operation: an operation that changes no size leaves it as it came. */
function shapesInTurn(
  operations: readonly Operation[],
  after: ReadonlyMap<number, Shape>,
  sawn: Shape,
): readonly Shape[] {
  let present = sawn
  return operations.map(({ number }) => {
    present = after.get(number) ?? present
    return present
  })
}
