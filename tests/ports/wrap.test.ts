import { describe, expect, it } from 'vitest'
import { demo, planOf } from '../orders/planned-orders.ts'

describe('the paper wrapped round a liner to check its ports by', () => {
  it('hangs from the underside of a flange above the ports, which stands where the drawing puts it but for what is ground', () => {
    const { wrap } = planOf(demo('OX-098-21')).fixture ?? {}
    expect(wrap?.from).toBeCloseTo(4, 1)
    expect(wrap?.below).toBeGreaterThan(4)
  })

  it('hangs from the top face of a sleeve without one', () => {
    const { wrap } = planOf(demo('OX-131-07')).fixture ?? {}
    expect(wrap?.below).toBe(0)
  })
})
