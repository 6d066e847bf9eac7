import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { type FinishingProcess, MIRROR_BORE, ROUGHNESS_LEFT } from '../handbook/roughness-measurement.ts'
import { type Part, placeOf } from '../part/part.ts'
import { placeKind } from '../place.ts'
import type { Process } from '../process.ts'
import type { Operation } from '../route/operation.ts'
import { type Chosen, shareLeft } from '../shop/choose-gauge.ts'
import type { Shop } from '../shop/shop.ts'
import { micrometres } from '../units.ts'
import { surfacesOf } from './form-wanted.ts'
import type { Wanted } from './wanted.ts'
import { finisherOf } from './wanted-at.ts'

/** Guard bands that leave less than this share of the tolerance cost good parts: common practice, no source. */
const COSTLY = 0.5

export type Found = { readonly one: Wanted; readonly chosen: Chosen | undefined }

/** No gauge, or one that leaves little to accept; each size once, at the first operation that needs it. */
export function gaugeFindings(part: Part, shop: Shop, found: readonly Found[]): readonly Finding[] {
  const key = ({ name, lower, upper }: Wanted) => [name, lower, upper].join()
  const byKey = new Map(found.toReversed().map(one => [key(one.one), one]))
  const first = found.filter(one => byKey.get(key(one.one)) === one)
  return [
    ...found.flatMap(({ one, chosen }) => (chosen || one.certificate ? [] : [noGauge(part, shop, one)])),
    ...gaugesToGet(part, shop, found),
    ...first.flatMap(({ one, chosen }) => (chosen ? narrow(part, one, chosen) : [])),
  ]
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

/** One line for each gauge that is not here, with the sizes that want it. */
function gaugesToGet(part: Part, { gauges }: Pick<Shop, 'gauges'>, found: readonly Found[]): readonly Finding[] {
  const own = new Set(gauges.map(({ name }) => name))
  const wanted = new Map<string, readonly string[]>()
  for (const { one, chosen } of found) {
    if (!chosen || own.has(chosen.gauge.name)) continue
    wanted.set(chosen.gauge.name, [...(wanted.get(chosen.gauge.name) ?? []), one.name])
  }
  return [...wanted].map(([gauge, names]) => ({
    severity: 'warning',
    code: 'inspection/to-get',
    message: `to get: ${gauge}, for ${[...new Set(names)].join('; ')}`,
    at: placeOf(part, ''),
    hint: 'planned as if it were here: list the one that you get under `gauges:` in the shop file, or have it measured outside',
  }))
}

function narrow(part: Part, one: Wanted, chosen: Chosen): readonly Finding[] {
  const { name, operation } = one
  const { gauge, uncertainty } = chosen
  const left = shareLeft(one, chosen)
  if (left >= COSTLY) return []
  return [
    {
      severity: 'note',
      code: 'inspection/narrow-acceptance',
      message:
        `operation ${operation}, ${name}: ${gauge.name}, uncertain by ${fixed(micrometres(uncertainty), 1)} µm, leaves ` +
        `${fixed(100 * left, 0)} % of the tolerance to accept`,
      at: placeOf(part, ''),
      hint: 'a finer gauge accepts good parts that this one cannot prove',
    },
  ]
}

const isFinishing = (process: Process | undefined): process is FinishingProcess =>
  process !== undefined && Object.hasOwn(ROUGHNESS_LEFT, process)

/** A roughness that the last cut does not leave, and a bore too smooth to hold oil. */
export function roughnessFindings(part: Part, operations: readonly Operation[]): readonly Finding[] {
  return surfacesOf(part).flatMap(({ feature, surface }) => {
    const process = finisherOf(feature, operations)?.process
    const Ra = surface.roughness
    if (Ra === undefined || !isFinishing(process)) return []
    const at = placeOf(part, 'path' in surface && typeof surface.path === 'string' ? surface.path : '')
    const { least, source } = ROUGHNESS_LEFT[process]
    const inBore = placeKind(part, feature) === 'bore'
    return [
      ...(Ra < least
        ? [
            {
              severity: 'warning' as const,
              code: 'inspection/roughness-out-of-reach' as const,
              message: `${feature}: Ra ${Ra} µm is asked; to ${process} leaves ${least} µm at its best (${source})`,
              at,
              hint: 'ask for what the last cut leaves, or for a finer process after it',
            },
          ]
        : []),
      ...(inBore && part.kind === 'liner' && Ra < MIRROR_BORE
        ? [
            {
              severity: 'note' as const,
              code: 'inspection/mirror-bore' as const,
              message: `${feature}: Ra ${Ra} µm holds little oil; liners are planned at ${MIRROR_BORE} to 0.6 µm (common practice)`,
              at,
              hint: 'ask for a plateau: Rpk and Rvk beside Ra',
            },
          ]
        : []),
    ]
  })
}
