import { describe, expect, it } from 'vitest'
import { hardnessAtDepth, profileScale, shareOfRise } from '../../src/handbook/hardness-profile.ts'
import { depthFromTraverse, SHAPE_ACCEPTED, shapeFromReading } from '../../src/handbook/hardness-profile-fit.ts'
import { expectDigits } from './to-the-digits.ts'

type Steel = { readonly H_s: number; readonly H_c: number }
const shareOf = ({ H_s, H_c }: Steel, H = H_c + 50): number => shareOfRise.value({ H, H_s, H_c })

describe('fits from a certificate (derived)', () => {
  it('finds shape and scale from 600 HV at 0.10 with 650 over 300 HV and 0.42 mm, and predicts the rest', () => {
    const steel = { H_s: 650, H_c: 300 }
    const p = shareOf(steel)
    const n = shapeFromReading.value({ p, q: shareOf(steel, 600), N: 0.42, z_1: 0.1 })
    const w = profileScale.value({ N: 0.42, p, n })
    expectDigits(n, '1.7668')
    expectDigits(w, '0.2881')
    const at = (z: number) => hardnessAtDepth.value({ ...steel, z, w, n })
    for (const [z, printed] of [
      [0.05, '634.5'],
      [0.2, '507.1'],
      [0.3, '419.6'],
      [0.42, '350.0'],
    ] as const)
      expectDigits(at(z), printed)
  })

  it('finds shape and scale from 560 HV at 0.15 with 680 over 330 HV and 0.35 mm', () => {
    const steel = { H_s: 680, H_c: 330 }
    const p = shareOf(steel)
    const n = shapeFromReading.value({ p, q: shareOf(steel, 560), N: 0.35, z_1: 0.15 })
    const w = profileScale.value({ N: 0.35, p, n })
    expectDigits(n, '1.810')
    expectDigits(w, '0.2423')
    expectDigits(hardnessAtDepth.value({ ...steel, z: 0.1, w, n }), '616.1')
    expectDigits(hardnessAtDepth.value({ ...steel, z: 0.2, w, n }), '502.6')
    expect(n).toBeGreaterThan(SHAPE_ACCEPTED.least)
    expect(n).toBeLessThan(SHAPE_ACCEPTED.most)
  })

  it('is within 5 HV of a curve for gas-nitrided 4140 (memory: handbook curves) when fitted at one reading', () => {
    const steel = { H_s: 650, H_c: 300 }
    const w = profileScale.value({ N: 0.42, p: shareOf(steel), n: 1.77 })
    for (const [z, remembered] of [
      [0.05, 635],
      [0.1, 600],
      [0.2, 510],
      [0.3, 420],
      [0.4, 360],
    ] as const) {
      expect(Math.abs(hardnessAtDepth.value({ ...steel, z, w, n: 1.77 }) - remembered)).toBeLessThan(5)
    }
  })

  const TRAVERSE = [
    [0.1, 585],
    [0.15, 520],
    [0.2, 455],
    [0.25, 405],
    [0.3, 375],
    [0.35, 350],
    [0.4, 335],
  ].map(([depth = 0, hardness = 0]) => ({ depth, hardness }))
  it('reads 0.3300 mm from a traverse with a core of 310 HV', () => {
    expectDigits(depthFromTraverse(TRAVERSE, 360) ?? 0, '0.3300')
  })
  it('finds no depth in a traverse that never reaches the limit, or starts under it', () => {
    expect(depthFromTraverse(TRAVERSE, 300)).toBeUndefined()
    expect(depthFromTraverse(TRAVERSE, 600)).toBeUndefined()
  })
})
