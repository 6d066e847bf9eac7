/**
 * Digest of bytes, 20 bytes.
 *
 * Source: FIPS 180-4, 6.1 (SHA-1): good for names, not for secrets.
 */
export function sha1(bytes: Uint8Array): Uint8Array {
  const blocks = Math.ceil((bytes.length + 9) / 64)
  const padded = new Uint8Array(64 * blocks)
  padded.set(bytes)
  padded[bytes.length] = 0x80
  const view = new DataView(padded.buffer)
  view.setUint32(64 * blocks - 8, Math.floor((bytes.length * 8) / 2 ** 32))
  view.setUint32(64 * blocks - 4, (bytes.length * 8) >>> 0)
  let [h0, h1, h2, h3, h4] = [0x67452301, 0xefcdab89, 0x98badcfe, 0x10325476, 0xc3d2e1f0]
  for (let block = 0; block < blocks; block++) {
    const words = Array.from({ length: 16 }, (_, index) => view.getUint32(64 * block + 4 * index))
    for (let t = 16; t < 80; t++) {
      const mixed = (words[t - 3] ?? 0) ^ (words[t - 8] ?? 0) ^ (words[t - 14] ?? 0) ^ (words[t - 16] ?? 0)
      words.push(turned(mixed, 1))
    }
    let [a, b, c, d, e] = [h0, h1, h2, h3, h4]
    words.forEach((word, t) => {
      const [f, k] = roundOf(t, b, c, d)
      const next = (turned(a, 5) + f + e + k + word) >>> 0
      ;[a, b, c, d, e] = [next, a, turned(b, 30), c, d]
    })
    ;[h0, h1, h2, h3, h4] = [(h0 + a) >>> 0, (h1 + b) >>> 0, (h2 + c) >>> 0, (h3 + d) >>> 0, (h4 + e) >>> 0]
  }
  const digest = new DataView(new ArrayBuffer(20))
  ;[h0, h1, h2, h3, h4].forEach((word, index) => {
    digest.setUint32(4 * index, word)
  })
  return new Uint8Array(digest.buffer)
}

const turned = (word: number, by: number): number => ((word << by) | (word >>> (32 - by))) >>> 0

function roundOf(t: number, b: number, c: number, d: number): readonly [number, number] {
  if (t < 20) return [((b & c) | (~b & d)) >>> 0, 0x5a827999]
  if (t < 40) return [(b ^ c ^ d) >>> 0, 0x6ed9eba1]
  if (t < 60) return [((b & c) | (b & d) | (c & d)) >>> 0, 0x8f1bbcdc]
  return [(b ^ c ^ d) >>> 0, 0xca62c1d6]
}
