import type { Origin } from '../known.ts'
import type { Process } from '../process.ts'
import type { Measured, Shop } from './shop.ts'

/** What the works measured for a process, on this grade before any grade. */
export function measuredFor<K extends keyof Measured>(
  shop: Pick<Shop, 'measured'>,
  { process, grade }: { readonly process: Process; readonly grade: string },
  key: K,
): (Measured & { readonly [k in K]-?: NonNullable<Measured[K]> }) | undefined {
  const has = (row: Measured): row is Measured & { readonly [k in K]-?: NonNullable<Measured[K]> } =>
    row[key] !== undefined
  const fits = shop.measured
    .filter(row => row.process === process && (row.grade === undefined || row.grade === grade))
    .filter(has)
  return fits.find(row => row.grade !== undefined) ?? fits[0]
}

export const measuredOrigin = ({ pieces, date, firm }: Measured): Origin => ({
  from: 'measured',
  source: `shop: measured on ${pieces} pieces, ${date}${firm ? `, ${firm}` : ''}`,
})
