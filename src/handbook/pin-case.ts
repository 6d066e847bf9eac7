import type { Millimetre } from '../units.ts'

/** Least case of a carburised piston pin by its wall, to 550 HV. `outside` is absent where the copy read has no cell. */
export type PinCase = {
  readonly from: Millimetre
  readonly upTo: Millimetre
  readonly outside?: Millimetre
  readonly inside: Millimetre
  readonly note?: string
}

/** Column alignment was lost in the copy for some cells: the standard itself decides. */
export const PIN_CASE_SOURCE = 'ISO 18669 as a pin maker reprints it'

export const PIN_CASES: readonly PinCase[] = [
  { from: 1.5, upTo: 2, inside: 0.1, note: 'outside only by code X, 0.4' },
  { from: 2, upTo: 3, outside: 0.3, inside: 0.1 },
  { from: 3, upTo: 5, outside: 0.4, inside: 0.2 },
  { from: 5, upTo: 15, outside: 0.6, inside: 0.4 },
  { from: 15, upTo: Number.POSITIVE_INFINITY, outside: 0.8, inside: 0.6 },
]

/** Of a nitrided pin: the same source. */
export const NITRIDED_PIN = { outside: 0.3, inside: 0.2 } as const

/** Rows meet at their upper ends: a wall of 3 mm is in the row up to 3, but 2 mm begins a row. */
export const pinCase = (wall: Millimetre): PinCase | undefined =>
  PIN_CASES.findLast(({ from }) => (from === 1.5 || from === 2 ? wall >= from : wall > from))
