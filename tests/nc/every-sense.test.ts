import { expect, it } from 'vitest'
import type { NcRead } from '../ports/proof/nc-reader.ts'
import { readNc } from '../ports/proof/nc-reader.ts'
import { intoPart } from '../ports/proof/solids.ts'
import { programsFor } from './hand-planned.ts'

type Box = { readonly least: readonly number[]; readonly most: readonly number[]; readonly fed: number }

/** Of every window: where the tip that finishes it goes, in the part, and how far. */
function inPart(reads: readonly NcRead[]): ReadonlyMap<string, Box> {
  const boxes = new Map<string, Box>()
  for (const read of reads) {
    for (const { about, rapid, rotary, from, to } of read.moves) {
      // What roughing starts at is of no account: the wall is left by the cuts that finish it.
      if (rapid || !/^(finish|spring)$/.test(about.at(-1) ?? '')) continue
      const window = about.findLast(words => / at -?[\d.]+$/.test(words)) ?? ''
      const name = `${window}, ${read.head.get('tool')}`
      const m = intoPart(read, rotary)
      const place = [0, 1, 2].map(
        row => (m[row] ?? 0) * to.x + (m[4 + row] ?? 0) * to.y + (m[8 + row] ?? 0) * to.z + (m[12 + row] ?? 0),
      )
      const known = boxes.get(name) ?? { least: place, most: place, fed: 0 }
      boxes.set(name, {
        least: known.least.map((value, i) => Math.min(value, place[i] ?? 0)),
        most: known.most.map((value, i) => Math.max(value, place[i] ?? 0)),
        fed: known.fed + Math.hypot(to.x - from.x, to.y - from.y, to.z - from.z),
      })
    }
  }
  return boxes
}

const SENSES = (['+X', '-X'] as const).flatMap(headFaces =>
  (['Y to Z', 'Z to Y'] as const).flatMap(positiveRotary =>
    (['Z to X', 'X to Z'] as const).map(positiveTilt => ({ headFaces, positiveRotary, positiveTilt })),
  ),
)

// The solids themselves are compared by `npm run test:proof`.
it('head either way, rotary either way, tilt axis either way: the cutters go through the same places of the part', () => {
  const [first, ...others] = SENSES.map(senses => inPart(programsFor(senses).map(({ text }) => readNc(text))))
  expect(first?.size).toBe(7)
  for (const boxes of others) {
    expect([...boxes.keys()].toSorted()).toEqual([...(first?.keys() ?? [])].toSorted())
    for (const [name, { least, most, fed }] of boxes) {
      const same = first?.get(name)
      // Words have three places, of millimetres and of degrees.
      for (const [i, value] of least.entries())
        expect(Math.abs(value - (same?.least[i] ?? Number.NaN)), name).toBeLessThan(0.01)
      for (const [i, value] of most.entries())
        expect(Math.abs(value - (same?.most[i] ?? Number.NaN)), name).toBeLessThan(0.01)
      expect(fed / (same?.fed ?? Number.NaN), name).toBeCloseTo(1, 2)
    }
  }
})
