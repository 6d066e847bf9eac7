import { describe, expect, it } from 'vitest'
import { cutPath } from '../../src/ports/path/cut-path.ts'
import { rounded, windowOf } from '../cutting/hand-made.ts'

/** Tip depths at which the cutter goes along the wall, from the top down, of a window in a flat wall of 3 mm. */
function depthsIn(kind: 'finish' | 'spring', levels: number): readonly number[] {
  const window = windowOf({ outline: { ...windowOf().outline, cutterPlane: rounded(10, 8, 1.5) } })
  const along = new Map<number, number>()
  let last: { readonly x: number; readonly y: number; readonly z: number } | undefined
  const path = cutPath(window, { kind, cutter: 2, levels, downShare: 0.5, clearShare: 1, arc: 0.5 })
  path.follow(at => {
    const z = Number(at.z.toFixed(4))
    const isLevel = last !== undefined && Math.abs(at.z - last.z) < 1e-6
    if (last && isLevel) along.set(z, (along.get(z) ?? 0) + Math.hypot(at.x - last.x, at.y - last.y))
    last = at
  })
  // Once round with the centre of a cutter of 2: the straight sides between corners of 1.5, and corners of 0.5 for the centre.
  const round = 2 * (10 - 3 + (8 - 3)) + 2 * Math.PI * 0.5
  return [...along].filter(([, way]) => way > 0.95 * round).map(([z]) => z)
}

describe('a finishing cut in levels (geometry of a flat wall)', () => {
  it.each([1, 2, 3, 5])(
    'goes once round at each of %d depths, as far apart, and through the wall on the last',
    levels => {
      for (const kind of ['finish', 'spring'] as const) {
        const depths = depthsIn(kind, levels)
        expect(depths).toHaveLength(levels)
        // From the outside at 3 to 0.3 past the bore at 0 (common practice, no source), in equal levels.
        for (const [index, depth] of depths.entries()) expect(depth).toBeCloseTo(3 - (3.3 * (index + 1)) / levels, 3)
      }
    },
  )
})
