import { describe, expect, it } from 'vitest'
import { MILLING_ROWS, slotDepthOf } from '../../src/handbook/milling-speeds.ts'
import { cutPath } from '../../src/ports/path/cut-path.ts'
import type { CutShape } from '../../src/ports/path/tool-path.ts'
import { rounded, windowOf } from '../cutting/hand-made.ts'

const CELL = 0.2
/** The floor of the cut in cells of two tenths, as a flat-ended cutter leaves it that is set down every tenth of a millimetre. */
class Floor {
  private readonly floor = new Map<string, number>()
  private readonly cutter: number
  constructor(cutter: number) {
    this.cutter = cutter
  }
  /** Sets the cutter down, and says how thick the thickest of what it took away there was. */
  cut(x: number, y: number, z: number): number {
    const r = this.cutter / 2
    let most = 0
    for (let i = Math.ceil((x - r) / CELL); i <= Math.floor((x + r) / CELL); i++)
      for (let j = Math.ceil((y - r) / CELL); j <= Math.floor((y + r) / CELL); j++) {
        if (Math.hypot(i * CELL - x, j * CELL - y) > r) continue
        const key = `${i} ${j}`
        const was = this.floor.get(key) ?? 3
        most = Math.max(most, was - z)
        if (z < was) this.floor.set(key, z)
      }
    return most
  }
}

function followed(shape: CutShape, cutterPlane: ReturnType<typeof rounded>) {
  const window = windowOf({ outline: { ...windowOf().outline, cutterPlane } })
  const path = cutPath(window, shape)
  const floor = new Floor(shape.cutter)
  const found = { thickest: 0, inAir: 0, length: 0, uncut: 0 }
  let last = { ...path.entry, z: path.from }
  path.follow((to, _, clear) => {
    const way = Math.hypot(to.x - last.x, to.y - last.y, to.z - last.z)
    const parts = Math.max(1, Math.ceil(way / 0.1))
    for (let part = 1; part <= parts; part++) {
      const at = (from: number, there: number) => from + ((there - from) * part) / parts
      const took = floor.cut(at(last.x, to.x), at(last.y, to.y), at(last.z, to.z))
      if (clear) found.inAir = Math.max(found.inAir, took)
      else found.thickest = Math.max(found.thickest, took)
    }
    found.length += way
    last = to
  })
  return found
}

describe('a slot that is ramped down level by level, stamped out cell by cell in a flat wall of 3', () => {
  const shape = (levels: number, slug: 'kept' | 'cut away', cutter: number) =>
    ({
      kind: 'rough',
      cutter,
      wallStock: 0.1,
      slug,
      levels,
      throughLevels: 1,
      downShare: 0.25,
      clearShare: 2,
      down: { angle: 2, share: 0.5 },
    }) as const

  it.each([
    // The ramp ends long before the slot comes round.
    ['kept', 11, 2, rounded(12, 9, 1.5)],
    ['cut away', 11, 2, rounded(8, 5, 1.5)],
    // It goes round more than once for a level.
    ['kept', 3, 2, rounded(10, 8, 1.5)],
    ['cut away', 4, 3, rounded(11, 7, 2)],
  ] as const)('with its slug %s, in %d levels, takes no more than a level anywhere, and nothing in air', (...asked) => {
    const [slug, levels, cutter, plane] = asked
    const { thickest, inAir } = followed(shape(levels, slug, cutter), plane)
    expect(thickest).toBeLessThan(3.3 / levels + 1e-6)
    expect(inAir).toBeLessThan(1e-6)
  })

  it('goes round once for each level and once more, beside its ramps', () => {
    const { length } = followed(shape(11, 'kept', 2), rounded(12, 9, 1.5))
    // Centre of a cutter of 2 with 0.1 left: straight sides between corners of 1.5, and 0.4 round them.
    const round = 2 * (12 - 3 + (9 - 3)) + 2 * Math.PI * 0.4
    expect(length).toBeLessThan(11.7 * round)
  })
})

describe('depth in a slot over diameter (common practice, no source)', () => {
  it.each([
    // Annealed: to 0.5; small or slender 0.10 to 0.20. Tempered: to 0.3; 0.05 to 0.10, and 0.075 to begin with at 2 mm.
    [200, 6, 13, 0.5],
    [200, 4, 18, 0.2],
    [200, 2, 6, 0.1],
    [300, 3, 8, 0.3],
    [300, 4, 18, 0.1],
    [300, 2, 6, 0.075],
  ])('at %d HB a cutter of %d with %d below its shank goes %d', (HB, D, flutes, share) => {
    const row = MILLING_ROWS.find(({ family, over, upTo }) => family === 'low-alloy steel' && HB > over && HB <= upTo)
    if (!row) throw new Error('no row')
    expect(slotDepthOf(row.slotDepth, D, flutes)).toBe(share)
  })
})
