import fc from 'fast-check'
import { expect, it } from 'vitest'
import { LINER_TEXT, partFrom, sleeveText } from '../route/part-text.ts'
import { planned } from './planned.ts'

it.each(['{bore: 0.80}', '{outside: 0.90}', '{bore: 3}'])(
  'says in hundredths what stock would not eat the case: %s',
  stock => {
    const deep = planned(partFrom(`${LINER_TEXT}stock: ${stock}\n`)).findings.filter(
      ({ code }) => code === 'stock/deep',
    )
    expect(deep).not.toEqual([])
    // A stock on diameter is written as a drawing writes sizes, and nobody leaves less than none.
    for (const { hint } of deep) expect(hint).toMatch(/^leave \d+\.\d\d mm or less/)
  },
)

it('raises no stock past the middle of its two margins, however deep the case is asked', () => {
  const depths = fc.integer({ min: 15, max: 40 }).map(hundredths => (hundredths / 100).toFixed(2))
  let raised = 0
  fc.assert(
    fc.property(depths, fc.integer({ min: 5, max: 12 }), (depth, wall) => {
      const text = sleeveText({ outside: '60 g6', bore: `${60 - 2 * wall} H6` })
      const plan = planned(partFrom(text.replace(/depth: min [\d.]+/, `depth: min ${depth}`)))
      for (const { kind, margin, verdict } of plan.entries) {
        if (kind === 'face' || margin.case === undefined || verdict !== 'ok' || margin.cleanUp <= 0.006) continue
        raised += 1
        expect(margin.cleanUp).toBeLessThan(margin.case + 1e-6)
      }
    }),
    { numRuns: 40 },
  )
  expect(raised).toBeGreaterThan(0)
})
