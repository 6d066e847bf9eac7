import { sha1 } from './sha-1.ts'

/** Of names that are URLs or URNs (RFC 9562, 6.6). */
const URLS = '6ba7b811-9dad-11d1-80b4-00c04fd430c8'

/**
 * The same name in the same space gives the same number, everywhere and always.
 *
 * Source: RFC 9562, 5.5, UUID version 5.
 */
export function uuid5(name: string, space: string): string {
  const of = [...space.replaceAll('-', '').matchAll(/../g)].map(([byte]) => Number.parseInt(byte, 16))
  const digest = sha1(new Uint8Array([...of, ...new TextEncoder().encode(name)])).slice(0, 16)
  digest[6] = ((digest[6] ?? 0) & 0x0f) | 0x50
  digest[8] = ((digest[8] ?? 0) & 0x3f) | 0x80
  const hex = [...digest].map(byte => byte.toString(16).padStart(2, '0')).join('')
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5')
}

/** The space of our own. */
export const OUR_SPACE: string = uuid5('urn:linerwright:calendar', URLS)
