import { GAUGING_TIMES, READING } from '../handbook/gauging-times.ts'
import type { Operation } from '../route/operation.ts'
import type { GaugeKind } from '../shop/shop.ts'
import type { Minute } from '../units.ts'
import type { Characteristic } from './characteristic.ts'
import type { Found } from './inspection-findings.ts'

const READINGS: Readonly<Record<GaugeKind, { readonly each: Minute; readonly final?: Minute }>> = READING

/**
 * Minutes a piece, by operation, that measuring takes beside the cutting: each reading by its gauge and by how many of the
 * pieces are read, the figure written down, and at a lathe or a grinder every diameter brought in. What was read before is
 * read no more; what is read of work that leaves or comes back belongs to no machine and is not counted.
 */
export function measuringTimes(
  found: readonly Found[],
  characteristics: readonly Characteristic[],
  operations: readonly Operation[],
  pieces: number,
): ReadonlyMap<number, Minute> {
  const minutes = new Map<number, Minute>()
  const cuts = new Set(
    operations.flatMap(({ number, process }) => (process === 'turn' || process === 'grind' ? [number] : [])),
  )
  for (const [index, { one, chosen }] of found.entries()) {
    const { sample = 0, readAt } = characteristics[index] ?? {}
    const counted = one.stage === 'in-process' || one.stage === 'final'
    if (!chosen || !counted || readAt !== undefined || one.certificate) continue
    const { kind } = chosen.gauge
    const isDiameter = kind === 'outside' || kind === 'bore'
    const sizing = isDiameter && cuts.has(one.operation) && one.upper !== undefined ? sizingOf(one) : 0
    const each = readingOf(chosen.gauge, one.stage === 'final') + GAUGING_TIMES.record + sizing
    minutes.set(one.operation, (minutes.get(one.operation) ?? 0) + (each * Math.min(sample, pieces)) / pieces)
  }
  return minutes
}

function readingOf({ kind, resolution }: NonNullable<Found['chosen']>['gauge'], final: boolean): Minute {
  const { coarse, turned } = GAUGING_TIMES
  if (kind === 'form' && resolution < turned.resolution) return turned.each
  const { each, final: atLast = each } = READINGS[kind]
  if (final) return atLast
  const byHand = kind === 'outside' || kind === 'bore' || kind === 'length' || kind === 'depth'
  return byHand && resolution >= coarse.resolution ? coarse.each : each
}

const sizingOf = ({ lower = 0, upper = 0 }: { readonly lower?: number; readonly upper?: number }): Minute => {
  const { closeTo, close, wide } = GAUGING_TIMES.sizing
  return upper - lower <= closeTo + 1e-9 ? close : wide
}
