import type { Finding } from '../finding.ts'
import { acceptanceFrom, acceptanceTo, gaugeRatio } from '../handbook/gauge-decision.ts'
import { EXPANSION_SOURCE, warmReading } from '../handbook/thermal-expansion.ts'
import { fromHandbook, told, worked } from '../known.ts'
import type { Part } from '../part/part.ts'
import { placeKind, writtenAs } from '../place.ts'
import { chooseGauge, placesRead } from '../shop/choose-gauge.ts'
import { GAUGES_TO_GET } from '../shop/gauges-to-get.ts'
import { onHand } from '../shop/origin.ts'
import type { Shop } from '../shop/shop.ts'
import type { Minute } from '../units.ts'
import { type Notebook, openNotebook, type Working } from '../working.ts'
import type { Characteristic } from './characteristic.ts'
import { type Found, gaugeFindings, roughnessFindings } from './inspection-findings.ts'
import { measuringTimes } from './measuring-time.ts'
import { withReadBefore } from './read-before.ts'
import { sampleOf, workSamples } from './sample-size.ts'
import { warmGiven } from './size-wanted.ts'
import type { Wanted } from './wanted.ts'
import { type Planned, wantedAt } from './wanted-at.ts'

export type InspectionPlan = {
  readonly characteristics: readonly Characteristic[]
  /** Of measuring, a piece, by operation. */
  readonly minutes: ReadonlyMap<number, Minute>
  readonly findings: readonly Finding[]
  readonly workings: readonly Working[]
}

/** What to measure at every operation, with which gauge on hand, to which limits, and on how many of `pieces` pieces. */
export function planInspection({
  pieces,
  ...planned
}: Planned & {
  /** Started. */
  readonly pieces: number
}): InspectionPlan {
  const { part, shop, operations } = planned
  const found = operations
    .flatMap(operation => wantedAt(planned, operation))
    .map((one): Found => ({ one, chosen: gaugeFor(shop, one) }))
  const characteristics = withReadBefore(
    found.map((one, index) => characteristic(part, one, index + 1, pieces)),
    operations,
  )
  return {
    characteristics,
    minutes: measuringTimes(found, characteristics, operations, pieces),
    findings: [...gaugeFindings(part, shop, found), ...roughnessFindings(part, operations)],
    workings: workingsOf(planned, found, pieces),
  }
}

/** The plainest on hand that is good enough; where none is, one that can be got. */
function gaugeFor(shop: Shop, one: Wanted): Found['chosen'] {
  if (one.certificate) return undefined
  const asked = { ...one, nominal: one.nominal ?? one.upper ?? one.lower ?? 0 }
  return chooseGauge(shop.gauges, asked) ?? chooseGauge(GAUGES_TO_GET, asked)
}

function characteristic(part: Part, { one, chosen }: Found, number: number, pieces: number): Characteristic {
  const { name, nominal, lower, upper, unit, operation, stage, feature, weight, sampled, remark, certificate } = one
  const limits = { ...(lower !== undefined && { lower }), ...(upper !== undefined && { upper }) }
  return {
    number,
    name,
    ...(nominal !== undefined && { nominal }),
    ...limits,
    unit,
    gauge: certificate?.name ?? chosen?.gauge.name ?? 'none on hand',
    uncertainty: chosen?.uncertainty ?? 0,
    accept: chosen?.accept ?? limits,
    places: certificate?.places ?? (chosen ? placesRead(chosen.gauge) : 3),
    operation,
    stage,
    feature,
    ...(unit === 'mm' && { written: one.written ?? writtenAs(placeKind(part, feature)) }),
    critical: weight === 'critical',
    ...(sampled ?? sampleOf(pieces, weight)),
    ...(remark !== undefined && { remark }),
  }
}

function workingsOf(
  { part, shop }: { readonly part: Part; readonly shop: Shop },
  found: readonly Found[],
  pieces: number,
): readonly Working[] {
  const notebook = openNotebook()
  for (const one of found) workGauge(notebook, shop, one)
  for (const { one } of found) {
    const given = one.stage === 'final' && one.warm !== undefined ? warmGiven(part, one.warm) : undefined
    if (!given) continue
    const { alpha, D, dT } = given
    const warm = {
      ...told(fromHandbook(EXPANSION_SOURCE), { alpha }),
      ...told(worked('nominal of the size'), { D }),
      ...told(fromHandbook('easily missed after grinding: common practice, no source'), { dT }),
    }
    notebook.use(warmReading, warm, { operation: one.operation, about: one.name })
  }
  workSamples(notebook, pieces, new Set(found.flatMap(({ one }) => (one.sampled ? [] : [one.weight]))))
  return notebook.workings
}

function workGauge(notebook: Notebook, shop: Shop, { one, chosen }: Found): void {
  const { name, operation, lower, upper, unit } = one
  if (unit !== 'mm' || chosen?.ratio === undefined || upper === undefined) return
  const about = { operation, about: `${name}, ${chosen.gauge.name}` }
  const gauge = onHand(shop, 'gauges', chosen.gauge.name)
  const limits = worked(`limits of ${name}, operation ${operation}`)
  const width = { ...told(limits, { T: upper - (lower ?? 0) }), ...told(gauge, { U: chosen.uncertainty }) }
  notebook.use(gaugeRatio, width, about)
  if (!chosen.guarded) return
  const g = told(gauge, { g: chosen.uncertainty })
  if (lower !== undefined) notebook.use(acceptanceFrom, { ...told(limits, { lower }), ...g }, about)
  notebook.use(acceptanceTo, { ...told(limits, { upper }), ...g }, about)
}
