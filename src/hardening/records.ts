import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import type { Part } from '../part/part.ts'
import { hardeningPurpose } from '../route/hard-tasks.ts'
import { houseOrOutside } from '../route/house-or-outside.ts'
import { type Chosen, chooseMeasured, type MeasuredOn, recordName } from '../shop/measured.ts'
import type { Measured } from '../shop/record.ts'
import type { Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import { boreOf, seatOf } from './case-surfaces.ts'
import type { Growth } from './growth.ts'
import { scaleOf } from './measured-growth.ts'

/** A record of the works and whether the plan stands on it. */
export type RecordUse = {
  /** Process, date and pieces. */
  readonly record: string
  readonly used: boolean
  /** What it was used for, how it was carried over; or why it does not count. */
  readonly why: string
}

/** What a record of the hardening must have been measured on. The works' own list of firms says where the pieces go. */
export function hardenedOn(part: Part, shop: Shop, depth?: Millimetre): MeasuredOn | undefined {
  const { hardening, material } = part
  if (!hardening) return undefined
  const process = hardeningPurpose(hardening.process)
  const where = shop.set.has('/firms') ? houseOrOutside(shop, process) : undefined
  const [seat, bore] = [seatOf(part), boreOf(part)]
  return {
    process,
    hardening: hardening.process,
    grade: material.grade,
    ...(where?.place === 'outside' && { firm: where.workCentre }),
    ...(seat && bore && { wall: (seat.size.nominal - bore.size.nominal) / 2, diameter: seat.size.nominal }),
    ...(depth !== undefined && { depth }),
  }
}

type WithGrowth = Measured &
  ({ readonly growth: NonNullable<Measured['growth']> } | { readonly loads: NonNullable<Measured['loads']> })

/** The record that growth is taken from. Loads alone tell it too. */
export function growthRecord(part: Part, shop: Shop, depth: Millimetre): Chosen<Measured> {
  const on = hardenedOn(part, shop, depth)
  if (!on) return { passedOver: [] }
  const { measured } = shop
  const telling = measured.filter((row): row is WithGrowth => row.growth !== undefined || row.loads !== undefined)
  return chooseMeasured({ measured: telling }, on, 'process')
}

/** The records of the hardening: the one that growth is taken from, and those passed over, each with the reason. */
export function recordUses(part: Part, shop: Shop, depth: Millimetre): readonly RecordUse[] {
  const { row, passedOver } = growthRecord(part, shop, depth)
  return [
    ...(row ? [{ record: recordName(row), used: true, why: howUsed(part, row, depth) }] : []),
    ...passedOver.map(({ row, why }) => ({ record: recordName(row), used: false, why })),
  ]
}

function howUsed(part: Part, row: Measured, depth: Millimetre): string {
  const said = [row.depth, row.wall, row.diameter].filter(value => value !== undefined).length
  const scale = scaleOf(part, row, depth)
  if (row.growth !== undefined && 'least' in row.growth)
    return 'growth of every treated surface alike: the record does not part outside, bore and length'
  if (said === 0) return 'growth; it does not say on what wall, diameter and depth'
  return Math.abs(scale - 1) < 0.005
    ? 'growth, on the same wall and depth'
    : `growth; the movement of the wall carried over by mean radius, wall and depth, times ${fixed(scale, 2)}`
}

/** What the works should mend in its records, where the plan stands on them or would. */
export function recordFindings(
  shop: Shop,
  { part, growth, depth }: { readonly part: Part; readonly growth: Growth; readonly depth: Millimetre },
): readonly Finding[] {
  const { row, passedOver } = growthRecord(part, shop, depth)
  const at = (record: Measured) =>
    shop.places.get(`/measured/${shop.measured.indexOf(record)}`) ?? { file: shop.file, line: 1, column: 1 }
  const moves = Math.abs(growth.bands.find(({ side }) => side === 'outside')?.wallMoves.nominal ?? 0)
  const alike: readonly Finding[] =
    row?.growth !== undefined && 'least' in row.growth && moves > 0.001
      ? [
          {
            severity: 'warning',
            code: 'case/record-undivided',
            message: `the record of ${recordName(row)} has one growth for outside, bore and length; on this wall the outside grows some ${fixed(2000 * moves, 0)} µm a side more than the bore closes`,
            at: at(row),
            hint: 'measure both sides of the same pieces before and after: growth: {outside: {least: …, nominal: …, most: …}, bore: {…}}',
          },
        ]
      : []
  return [
    ...alike,
    ...passedOver
      .filter(({ row: other }) => row === undefined || other.date > row.date)
      .map(
        ({ row: other, why }): Finding => ({
          severity: 'note',
          code: 'case/record-passed-over',
          message: `the record of ${recordName(other)} is passed over: ${why}`,
          at: at(other),
          hint: row ? `growth is taken from ${recordName(row)}` : 'growth is taken from the handbook',
        }),
      ),
  ]
}
