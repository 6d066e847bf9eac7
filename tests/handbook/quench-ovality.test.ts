import { describe, it } from 'vitest'
import { QUENCHED_RING, quenchOvality } from '../../src/handbook/quench-ovality.ts'
import { expectDigits } from './to-the-digits.ts'

describe('ovality of a quenched ring (estimate; worked apart)', () => {
  it.each([
    [30, 3, '0.060', '0.020', '0.020'],
    [40, 5, '0.064', '0.020', '0.020'],
    [60, 4, '0.180', '0.030', '0.025'],
    [60, 3, '0.240', '0.040', '0.033'],
    [100, 5, '0.400', '0.067', '0.056'],
  ])('Ø%d with a wall of %d: %s free in oil, %s in a press, %s on a plug', (D, t, free, press, plug) => {
    expectDigits(quenchOvality.value({ k: QUENCHED_RING.free, D, t }), free)
    expectDigits(quenchOvality.value({ k: QUENCHED_RING.press, D, t }), press)
    expectDigits(quenchOvality.value({ k: QUENCHED_RING.plug, D, t }), plug)
  })
})
