import type { Millimetre } from '../../src/units.ts'

/** Allowance on diameter for grinding outside after finish turning, for a range of diameters. */
export type OutsideAllowance = {
  readonly over: Millimetre
  readonly upTo: Millimetre
  /** One single final grind, hardened or not. */
  readonly single: Millimetre
  /** After hardening in two cuts. */
  readonly rough: Millimetre
  readonly finish: Millimetre
}

/** Source: OST 1.41512-86, as reprinted in a Kazan textbook of manufacturing engineering, Table P8. */
export const OUTSIDE_GRINDING_ALLOWANCE: readonly OutsideAllowance[] = [
  { over: 3, upTo: 6, single: 0.2, rough: 0.15, finish: 0.05 },
  { over: 6, upTo: 10, single: 0.3, rough: 0.2, finish: 0.1 },
  { over: 10, upTo: 18, single: 0.3, rough: 0.2, finish: 0.1 },
  { over: 18, upTo: 30, single: 0.3, rough: 0.2, finish: 0.1 },
  { over: 30, upTo: 50, single: 0.4, rough: 0.3, finish: 0.1 },
  { over: 50, upTo: 80, single: 0.5, rough: 0.3, finish: 0.2 },
  { over: 80, upTo: 120, single: 0.5, rough: 0.3, finish: 0.2 },
  { over: 120, upTo: 180, single: 0.8, rough: 0.5, finish: 0.3 },
]

/** By diameter and length, on diameter: `soft` for parts that stay soft, `hardened` for quenched ones. */
export type AllowanceByLength = {
  readonly over: Millimetre
  readonly upTo: Millimetre
  readonly lengths: readonly {
    readonly upTo: Millimetre
    readonly soft: Millimetre
    readonly hardened: Millimetre
  }[]
}

/** Uncertain by 0.1. Source: memory: Soviet-school allowance tables. */
export const OUTSIDE_ALLOWANCE_BY_LENGTH: readonly AllowanceByLength[] = [
  row(0, 18, [100, 0.2, 0.3], [250, 0.2, 0.3], [500, 0.3, 0.4]),
  row(18, 30, [100, 0.3, 0.3], [250, 0.3, 0.4], [500, 0.3, 0.4]),
  row(30, 50, [100, 0.3, 0.4], [250, 0.3, 0.4], [500, 0.4, 0.5]),
  row(50, 80, [100, 0.3, 0.4], [250, 0.4, 0.5], [500, 0.4, 0.5]),
]

/** Internal grinding. Uncertain by 0.1. Source: memory: Soviet-school allowance tables. */
export const BORE_ALLOWANCE_BY_LENGTH: readonly AllowanceByLength[] = [
  row(10, 18, [50, 0.2, 0.3], [100, 0.2, 0.3]),
  row(18, 30, [50, 0.2, 0.3], [100, 0.3, 0.3], [200, 0.3, 0.4]),
  row(30, 50, [50, 0.3, 0.4], [100, 0.3, 0.4], [200, 0.3, 0.4]),
  row(50, 80, [50, 0.4, 0.4], [100, 0.4, 0.5], [200, 0.4, 0.5]),
]

/** Honing, on diameter; nitrided steel at the low end. Source: common practice, no source. */
export const HONING_ALLOWANCE: Readonly<
  Record<'afterFineBoring' | 'afterGrinding', { readonly least: Millimetre; readonly most: Millimetre }>
> = {
  afterFineBoring: { least: 0.03, most: 0.08 },
  afterGrinding: { least: 0.015, most: 0.04 },
}

type Cell = readonly [upTo: Millimetre, soft: Millimetre, hardened: Millimetre]

function row(over: Millimetre, upTo: Millimetre, ...cells: readonly Cell[]): AllowanceByLength {
  return { over, upTo, lengths: cells.map(([upTo, soft, hardened]) => ({ upTo, soft, hardened })) }
}
