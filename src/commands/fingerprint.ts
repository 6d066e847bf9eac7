import { createHash } from 'node:crypto'
import type { BatchRequest } from '../batch/batch.ts'
import type { Part } from '../part/part.ts'
import type { Shop } from '../shop/shop.ts'
import { PROGRAM, VERSION } from './version.ts'

/** All that paper rests on. */
export type Basis = {
  readonly part: Part
  readonly shop: Shop
  readonly batch: BatchRequest
  /** Of issue. */
  readonly date: string
}

/**
 * Ties paper to what it was made from. Of the data as read, not of the texts: a comment, the order of keys or the folder that a
 * file lies in changes nothing.
 */
export function fingerprintOf({ part, shop, batch, date }: Basis): string {
  const data = [withoutPlaces(part), withoutPlaces(shop), batch, date, PROGRAM, VERSION]
  return createHash('sha256').update(JSON.stringify(data, inOrder)).digest('hex').slice(0, 12)
}

/** Where a value stands in its file is not the value. */
function withoutPlaces<T extends { readonly places: unknown; readonly file: string }>(
  read: T,
): Omit<T, 'places' | 'file'> {
  const { places: _, file: __, ...data } = read
  return data
}

/** One way to write the same data: keys and members of a set in order, an infinite limit by its name. */
function inOrder(_: string, value: unknown): unknown {
  if (value instanceof Set || value instanceof Map) return [...value].toSorted()
  if (typeof value === 'number' && !Number.isFinite(value)) return String(value)
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value
  return Object.fromEntries(Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1)))
}
