import type { Finding } from '../finding.ts'
import { acceptanceFrom, acceptanceTo, gaugeRatio } from '../handbook/gauge-decision.ts'
import { type Part, placeOf } from '../part/part.ts'
import type { PlannedPort } from '../ports/port.ts'
import { HARDENING_PROCESSES, type Operation } from '../route/operation.ts'
import type { Shop } from '../shop/shop.ts'
import type { CasePlan, OperationSize } from '../stock/stock.ts'
import { type Notebook, openNotebook, type Working } from '../working.ts'
import type { Characteristic } from './characteristic.ts'
import { type Chosen, chooseGauge, placesRead } from './choose-gauge.ts'
import { sampleOf } from './sample-size.ts'
import {
  edgesWanted,
  finishedCase,
  finishedPorts,
  formWanted,
  hardeningWanted,
  sizeWanted,
  type Wanted,
} from './wanted.ts'

export type InspectionPlan = {
  readonly characteristics: readonly Characteristic[]
  readonly findings: readonly Finding[]
  readonly workings: readonly Working[]
}

type Sizes = ReadonlyMap<number, readonly OperationSize[]>

/** What to measure at every operation, with which gauge on hand, to which limits, and on how many of `quantity` pieces. */
export function planInspection(
  part: Part,
  shop: Shop,
  operations: readonly Operation[],
  sizes: Sizes,
  ports: readonly PlannedPort[],
  casePlan: CasePlan | undefined,
  quantity: number,
): InspectionPlan {
  const notebook = openNotebook()
  const wanted = operations.flatMap(operation => wantedAt(part, shop, operation, operations, sizes, ports, casePlan))
  const found = wanted.map(one => ({ one, chosen: chooseGauge(shop.gauges, { ...one, nominal: readingOf(one) }) }))
  const characteristics = found.map(({ one, chosen }, index) => {
    if (chosen) work(notebook, one, chosen)
    return characteristic(one, chosen, index + 1, quantity)
  })
  const findings = found.flatMap(({ one, chosen }) => (chosen || one.certificate ? [] : [noGauge(part, shop, one)]))
  return { characteristics, findings, workings: notebook.workings }
}

/** What a gauge must reach and read: a size itself, or the zone that is judged. */
const readingOf = ({ kind, nominal, lower, upper }: Wanted): number =>
  kind === 'form' ? (nominal ?? 50) : (nominal ?? upper ?? lower ?? 0)

function wantedAt(
  part: Part,
  shop: Shop,
  operation: Operation,
  operations: readonly Operation[],
  sizes: Sizes,
  ports: readonly PlannedPort[],
  casePlan: CasePlan | undefined,
): readonly Wanted[] {
  const { number, purpose, process } = operation
  const own = (sizes.get(number) ?? []).filter(({ feature }) => feature !== 'outside')
  if (purpose === 'final-inspection') {
    const where = { operation: number, stage: 'final' as const }
    return [
      ...own.map(size => sizeWanted(part, size, where)),
      ...[...part.outside, ...part.bore].flatMap(band => formWanted(band.name, band, where)),
      ...formWanted('top', part.top, where),
      ...formWanted('bottom', part.bottom, where),
      ...finishedPorts(ports, shop.habits.portEdgeTolerance, where),
      ...(casePlan ? finishedCase(part, casePlan, where) : []),
    ]
  }
  if (process === 'inspect') return checked(part, operation, operations, sizes, casePlan)
  if (process === 'deburr') return [edgesWanted(operation)]
  // What a furnace does to the sizes is measured when the work is back, at the check that guards it.
  if (HARDENING_PROCESSES.has(process)) return []
  const where = { operation: number, stage: 'in-process' as const }
  return own.map(size => sizeWanted(part, size, where))
}

/** A check that lets work go out looks at the sizes it has then; one that takes it back, at those it should have come back with. */
function checked(
  part: Part,
  operation: Operation,
  operations: readonly Operation[],
  sizes: Sizes,
  casePlan: CasePlan | undefined,
): readonly Wanted[] {
  const { number, guards = [] } = operation
  const sent = operations.filter(({ purpose }) => guards.includes(purpose))
  const first = sent[0]
  if (!first) return []
  const leaving = number < first.number
  const where = { operation: number, stage: leaving ? ('before-sending' as const) : ('on-return' as const) }
  const before = operations.filter(other => other.number < number)
  const seen = leaving ? latestSizes(before, sizes) : sent.flatMap(({ number: at }) => sizes.get(at) ?? [])
  const back = !leaving && casePlan && sent.some(({ process }) => HARDENING_PROCESSES.has(process))
  return [...seen.map(size => sizeWanted(part, size, where)), ...(back ? hardeningWanted(part, casePlan, where) : [])]
}

/** The size that each feature has by then: the last operation that made it. The blank's are no longer there once it is turned. */
function latestSizes(operations: readonly Operation[], sizes: Sizes): readonly OperationSize[] {
  const latest = new Map<string, OperationSize>()
  for (const { number } of operations) {
    for (const size of sizes.get(number) ?? []) {
      if (size.feature !== 'outside') latest.set([size.feature, size.measure, size.edge].join(), size)
    }
  }
  return [...latest.values()]
}

function characteristic(one: Wanted, chosen: Chosen | undefined, number: number, quantity: number): Characteristic {
  const { name, nominal, lower, upper, unit, operation, stage, feature, weight, remark, certificate } = one
  return {
    number,
    name,
    ...(nominal !== undefined && { nominal }),
    ...(lower !== undefined && { lower }),
    ...(upper !== undefined && { upper }),
    unit,
    gauge: certificate?.name ?? chosen?.gauge.name ?? 'none on hand',
    uncertainty: chosen?.uncertainty ?? 0,
    accept: chosen?.accept ?? { ...(lower !== undefined && { lower }), ...(upper !== undefined && { upper }) },
    places: certificate?.places ?? (chosen ? placesRead(chosen.gauge) : 3),
    operation,
    stage,
    feature,
    critical: weight === 'critical',
    ...(feature === 'coupon' ? { sample: 1, plan: 'one coupon a load' } : sampleOf(quantity, weight)),
    ...(remark !== undefined && { remark }),
  }
}

function work(notebook: Notebook, { name, operation, lower, upper, unit }: Wanted, chosen: Chosen): void {
  if (unit !== 'mm' || chosen.ratio === undefined || lower === undefined || upper === undefined) return
  const about = { operation, about: `${name}, ${chosen.gauge.name}` }
  notebook.use(gaugeRatio, { T: upper - lower, U: chosen.uncertainty }, about)
  if (!chosen.guarded) return
  notebook.use(acceptanceFrom, { lower, g: chosen.uncertainty }, about)
  notebook.use(acceptanceTo, { upper, g: chosen.uncertainty }, about)
}

function noGauge(part: Part, shop: Shop, { name, kind, operation, lower, upper, unit }: Wanted): Finding {
  const width = lower !== undefined && upper !== undefined ? upper - lower : upper
  const tolerance = width === undefined ? '' : `, tolerance ${Number(width.toPrecision(3))} ${unit}`
  return {
    severity: 'warning',
    code: 'inspection/no-gauge',
    message: `operation ${operation}, ${name}: no ${kind} gauge of ${shop.name} can judge it${tolerance}`,
    at: placeOf(part, ''),
    hint: 'add a finer gauge to the shop file, or have it measured outside',
  }
}
