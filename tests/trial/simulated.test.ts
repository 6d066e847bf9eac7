import { describe, expect, it } from 'vitest'
import type { LinerLetter, Trial, TrialRun } from '../../src/part/trial.ts'
import { judgeTrial } from '../../src/trial/judge-trial.ts'

const at = { file: 'drawn', line: 1, column: 1 }

/** Normal numbers that are the same every time: Marsaglia's polar method on a multiplicative generator. */
function normals(seed: number): () => number {
  let state = seed
  const uniform = () => {
    state = (state * 48_271) % 2_147_483_647
    return state / 2_147_483_647
  }
  return () => {
    for (;;) {
      const [u, v] = [2 * uniform() - 1, 2 * uniform() - 1]
      const s = u * u + v * v
      if (s > 0 && s < 1) return u * Math.sqrt((-2 * Math.log(s)) / s)
    }
  }
}

/** A trial on a brake arm: power of A about 2.3 kW, B more by `difference` N of 20, a drift, fittings and readings that scatter. */
function drawn(order: string, difference: number, next: () => number): Trial {
  const runs = [...order].flatMap((letter, index): readonly TrialRun[] => {
    const liner: LinerLetter = letter === 'B' ? 'B' : 'A'
    const fitted = 20 - 0.03 * index + (liner === 'B' ? difference : 0) + 0.06 * next()
    return [0, 1].map(run => ({
      number: 2 * index + run + 1,
      fitting: index + 1,
      liner,
      block: '1',
      speed: 4000,
      force: fitted + 0.05 * next(),
      at,
    }))
  })
  return {
    file: 'drawn',
    engine: 'drawn',
    worthwhile: 0.01,
    verdict: 'power',
    settle: 1,
    load: { kind: 'brake arm', arm: 250 },
    liners: (['A', 'B'] as const).map(letter => ({ letter, part: 'X', at })),
    every: 60,
    budget: [],
    runs,
    at,
  }
}

function share(order: string, difference: number, says: (low: number, high: number) => boolean): number {
  const next = normals(20_260)
  let count = 0
  for (let i = 0; i < 2000; i++) {
    const [b] = judgeTrial(drawn(order, difference, next)).result?.main.differences ?? []
    // N back from kW: 250 mm at 4000 rpm.
    const newton = (2 * Math.PI * (4000 / 60) * 250) / 1e6
    const [middle, half] = [(b?.difference ?? 0) / newton, (b?.half ?? 0) / newton]
    if (says(middle - half, middle + half)) count += 1
  }
  return count / 2000
}

describe('2,000 drawn trials with a drift', () => {
  it('have the true difference in the 95 % interval 93 to 97 % of the time', () => {
    const covered = share('ABBABAAB', 0.3, (low, high) => low <= 0.3 && 0.3 <= high)
    expect(covered).toBeGreaterThan(0.93)
    expect(covered).toBeLessThan(0.97)
  })
  it('show a difference where there is none at most 6 % of the time', () => {
    expect(share('ABBA', 0, (low, high) => low > 0 || high < 0)).toBeLessThanOrEqual(0.06)
  })
})

it('permutes exactly as many labels as there are', () => {
  const [b] = judgeTrial(drawn('ABBA', 5, normals(7))).result?.main.differences ?? []
  // Two of six labels show as much: the true one and its mirror.
  expect(b?.power?.permutation).toEqual({ labels: 6, byDifference: 2 / 6, byT: 2 / 6 })
})
