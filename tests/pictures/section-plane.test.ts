import { describe, expect, it } from 'vitest'
import { partView } from '../../src/pictures/part-view.ts'
import { wallPieces } from '../../src/pictures/profile.ts'
import { gapsAt, outsideSeen, seenRuns, tellingView, viewAt } from '../../src/pictures/section-plane.ts'
import { SAMPLE_PLAN } from './sample-plan.ts'

const { ports } = SAMPLE_PLAN
const shape = SAMPLE_PLAN.operations.at(-1)?.shape
if (!shape) throw new Error('the sample has operations')

describe('the half-section', () => {
  it('is seen from where right-hand axes put the eye: down the bore to the right, its azimuth up', () => {
    // Right is -z, up is u(s): their cross product, the way to the eye, is u(s - 90).
    for (const section of [0, 40, 90, 180, -130]) {
      const s = (section * Math.PI) / 180
      const right = [0, 0, -1] as const
      const up = [Math.cos(s), Math.sin(s), 0] as const
      const eye = [right[1] * up[2] - right[2] * up[1], right[2] * up[0] - right[0] * up[2]] as const
      const { seenFrom } = viewAt(section)
      expect(Math.cos((seenFrom * Math.PI) / 180)).toBeCloseTo(eye[0], 12)
      expect(Math.sin((seenFrom * Math.PI) / 180)).toBeCloseTo(eye[1], 12)
    }
  })

  it('cuts the liner where the windows show most: through the boost, at 180°', () => {
    expect(tellingView(ports)).toEqual({ section: 180, seenFrom: 90 })
  })

  it('shows the boost rising into the bore: its gap lies higher in the bore than outside, by the wall over tan 50°', () => {
    const [gap] = gapsAt(ports, ({ outline }) => outline.finished, 180)
    expect(gap?.port).toBe('boost')
    expect(gap?.inner[0]).toBeCloseTo(46.42, 6)
    expect((gap?.outer[0] ?? 0) - (gap?.inner[0] ?? 0)).toBeCloseTo((27.6 - 24) * Math.tan((50 * Math.PI) / 180), 6)
  })

  it('finds no gap where the bridge stands', () => {
    expect(gapsAt(ports, ({ outline }) => outline.finished, 0)).toEqual([])
  })

  it('loses the area of its gaps and no more', () => {
    const gaps = gapsAt(ports, ({ outline }) => outline.finished, 180)
    const areaOf = (points: readonly { depth: number; radius: number }[]): number =>
      Math.abs(
        points.reduce((sum, a, index) => {
          const b = points[(index + 1) % points.length] ?? a
          return sum + a.depth * b.radius - b.depth * a.radius
        }, 0),
      ) / 2
    const sum = (pieces: ReturnType<typeof wallPieces>): number => pieces.reduce((all, piece) => all + areaOf(piece), 0)
    const wall = 54.98 / 2 - 48.008 / 2
    const gap = gaps[0]
    if (!gap) throw new Error('the boost is cut')
    const open = ((gap.inner[1] - gap.inner[0] + gap.outer[1] - gap.outer[0]) / 2) * wall
    expect(sum(wallPieces(shape, [])) - sum(wallPieces(shape, gaps))).toBeCloseTo(open, 6)
  })
})

describe('what is seen of a window from outside', () => {
  const view = viewAt(180)
  const outline = (azimuth: number): { azimuth: number; depth: number }[] =>
    [-20, 20, 20, -20].map((off, index) => ({ azimuth: azimuth + off, depth: index < 2 ? 40 : 50 }))

  it('is all of it in the quadrant toward the eye, half of it on the edge, none beyond', () => {
    expect(outsideSeen(view)).toBe(45)
    expect(seenRuns(outline(45), 45)[0]).toHaveLength(5)
    const cut = seenRuns(outline(90), 45).flat()
    expect(Math.max(...cut.map(({ azimuth }) => azimuth))).toBeCloseTo(90, 9)
    expect(Math.min(...cut.map(({ azimuth }) => azimuth))).toBeCloseTo(70, 9)
    expect(seenRuns(outline(180), 45)).toEqual([])
  })

  it('stands where parallel light puts it: radius × cosine from the centre line', () => {
    const part = partView({
      shape,
      allPorts: ports,
      view,
      finished: true,
      placement: { left: 100, axis: 200, scale: 1 },
    })
    const { x, y } = part.seen({ azimuth: 60, depth: 30 }, 27.5)
    expect(x).toBeCloseTo(100 + (30 * 72) / 25.4, 9)
    expect(y).toBeCloseTo(200 + (27.5 * Math.cos(Math.PI / 3) * 72) / 25.4, 9)
  })
})
