import type { Origin } from '../known.ts'
import { HARDENED_BY, type HardeningProcess, isHardeningProcess, type Process } from '../process.ts'
import type { Millimetre } from '../units.ts'
import type { Measured } from './record.ts'
import type { Shop } from './shop.ts'

/** What a record must have been measured on to count. */
export type MeasuredOn = {
  readonly process: Process
  /** In the words of the part file, where it is a hardening. */
  readonly hardening?: HardeningProcess
  readonly grade: string
  /** Of the shop's firms the one that does it. */
  readonly firm?: string
  readonly wall?: Millimetre
  readonly diameter?: Millimetre
  /** Least depth ordered. */
  readonly depth?: Millimetre
  /** Where what was measured goes with the length. */
  readonly length?: Millimetre
}

/** The record that counts, and those that could have been meant, each with why it does not. */
export type Chosen<R> = {
  readonly row?: R
  readonly passedOver: readonly { readonly row: Measured; readonly why: string }[]
}

type With<K extends keyof Measured> = Measured & { readonly [k in K]-?: NonNullable<Measured[K]> }

/**
 * The record of a process that counts: on the grade before any grade, by the firm that the pieces go to, on a wall and a depth
 * like the part's, and of those the newest; of one day the last written. What a record does not say is not held against it.
 */
export function chooseMeasured<K extends keyof Measured>(
  shop: Pick<Shop, 'measured'>,
  on: MeasuredOn,
  key: K,
): Chosen<With<K>> {
  const has = (row: Measured): row is With<K> => row[key] !== undefined
  const rows = shop.measured.filter(row => sameWork(row, on)).filter(has)
  const judged = rows.map((row, order) => ({ row, order, why: whyNot(row, on) }))
  const [best, ...rest] = judged
    .filter(({ why }) => why === undefined)
    .toSorted(
      (a, b) =>
        Number(b.row.grade !== undefined) - Number(a.row.grade !== undefined) ||
        b.row.date.localeCompare(a.row.date) ||
        b.order - a.order,
    )
  const outdone = rest.map(({ row }) => ({
    row,
    why:
      row.grade === undefined && best?.row.grade !== undefined
        ? `on no grade in particular; there is one on ${best.row.grade}`
        : `there is a newer one, of ${best?.row.date}`,
  }))
  const unlike = judged.flatMap(({ row, why }) => (why === undefined ? [] : [{ row, why }]))
  return { ...(best && { row: best.row }), passedOver: [...outdone, ...unlike] }
}

/** A record counts for a part whose depth, and wall for its diameter, are within this share of its own. Estimate. */
const LIKE_ENOUGH = 0.2

/** What goes with the length is carried over to a part of so many times the length, or of that share of it. Estimate. */
const TIMES_THE_LENGTH = 3

/** The words of the route, or the part's own. */
const sameWork = ({ process }: Measured, on: MeasuredOn): boolean =>
  process === on.process ||
  (on.hardening !== undefined && isHardeningProcess(process) && HARDENED_BY[process] === on.process)

function whyNot(row: Measured, on: MeasuredOn): string | undefined {
  const { process, grade, firm } = row
  if (on.hardening && process !== on.hardening && process !== on.process) return `on ${process}, not ${on.hardening}`
  if (on.hardening === 'nitrocarburising' && process === 'nitride')
    return 'says nitride: nitrocarburising must be named, it is not gas nitriding'
  if (grade !== undefined && grade !== on.grade) return `on ${grade}, not ${on.grade}`
  if (firm !== undefined && on.firm !== undefined && firm !== on.firm) return `by ${firm}; the pieces go to ${on.firm}`
  if (row.depth !== undefined && on.depth !== undefined && !like(row.depth, on.depth))
    return `at a depth of ${row.depth} mm; ${Number(on.depth.toFixed(3))} mm is ordered, and a fifth either way is like it`
  const [own, its] = [share(on), share(row)]
  if (own !== undefined && its !== undefined && !like(its, own))
    return `on a wall of ${row.wall} mm at Ø${row.diameter}; the part has ${on.wall} mm at Ø${on.diameter}, and a fifth either way is like it`
  if (row.length !== undefined && on.length !== undefined && !comparable(row.length, on.length))
    return `on a length of ${row.length} mm; the part has ${on.length} mm, and no bow is carried over to more than ${TIMES_THE_LENGTH} times the length or less than a third`
  return undefined
}

const share = ({ wall, diameter }: Pick<MeasuredOn, 'wall' | 'diameter'>): number | undefined =>
  wall === undefined || diameter === undefined ? undefined : wall / diameter

const like = (one: number, other: number): boolean => Math.abs(one / other - 1) <= LIKE_ENOUGH + 1e-9

const comparable = (one: Millimetre, other: Millimetre): boolean =>
  Math.max(one / other, other / one) <= TIMES_THE_LENGTH + 1e-9

/** What the works measured for a process, where nothing but grade and firm can differ. */
export const measuredFor = <K extends keyof Measured>(
  shop: Pick<Shop, 'measured'>,
  on: MeasuredOn,
  key: K,
): With<K> | undefined => chooseMeasured(shop, on, key).row

export const measuredOrigin = ({ pieces, date, firm }: Measured): Origin => ({
  from: 'measured',
  source: `shop: measured on ${pieces} pieces, ${date}${firm ? `, ${firm}` : ''}`,
})

/** `gas nitriding, 2026-06-12, 18 pieces`. */
export const recordName = ({ process, date, pieces }: Measured): string => `${process}, ${date}, ${pieces} pieces`
