import type { Millimetre } from '../units.ts'

/** A row of a table that runs over a size up to and including another. */
export type NominalRange = { readonly over: Millimetre; readonly upTo: Millimetre }

/** The row that a size belongs to: a size on the boundary belongs to the lower row. Nothing outside the table. */
export const rowFor = <R extends NominalRange>(rows: readonly R[], size: Millimetre): R | undefined =>
  rows.find(({ over, upTo }) => size > over && size <= upTo)
