import { expect, it } from 'vitest'
import { PORT_LIMITS } from '../../src/handbook/port-limits.ts'
import { EXHAUST_WIDTH, TRAPPED_RATIO } from '../../src/handbook/time-area-targets.ts'

it('judges by the range that is shown beside the figure', () => {
  // Memory: Jennings, Blair; petrol: a trapped ratio outside 5.5 to 9 is warned of.
  expect([TRAPPED_RATIO.from, TRAPPED_RATIO.to]).toEqual([5.5, 9])
  expect(PORT_LIMITS['trapped-ratio']?.['least']?.value).toBe(TRAPPED_RATIO.from)
  expect(PORT_LIMITS['trapped-ratio']?.['most']?.value).toBe(TRAPPED_RATIO.to)
  // Jennings, 1973: 62 % of the bore is a safe width to start from, 70 % the extreme.
  expect([EXHAUST_WIDTH.to, PORT_LIMITS['exhaust-width']?.['extreme']?.value]).toEqual([0.62, 0.7])
  expect(PORT_LIMITS['exhaust-width']?.['most']?.value).toBe(EXHAUST_WIDTH.to)
})

it('says of every threshold what it is and where it comes from', () => {
  for (const [rule, limits] of Object.entries(PORT_LIMITS))
    for (const [threshold, { meaning, source }] of Object.entries(limits)) {
      expect(meaning.length, `${rule}.${threshold}`).toBeGreaterThan(10)
      expect(source, `${rule}.${threshold}`).toMatch(/common practice, no source|memory: |derived: |published|Jennings/)
    }
})
