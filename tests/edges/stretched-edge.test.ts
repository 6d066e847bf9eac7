import { describe, expect, it } from 'vitest'
import { demoPlan } from '../sheets/demo-packet.ts'

// Source: derived, in one frame with its zero at mid length: metal at depth z moves by e (z - L / 2) in hardening. The depth
// that comes out is the chart's, which traces every cut and growth by itself and knows nothing of where the windows were put.
describe.each(['OX-098-21', 'OX-131-07'])('the timing edges of %s, which stretches in hardening', name => {
  const { ports, axial } = demoPlan(name)

  it('are milled where the stretch down to their own depth brings them to the drawing', () => {
    const stretch = axial?.stretch?.limits ?? { lower: 0, upper: 0 }
    expect((stretch.lower + stretch.upper) / 2).toBeGreaterThan(3e-5)
    expect(ports.length).toBeGreaterThan(1)
    // Seen from mid length alone, the exhaust of the one would come out 1.7 µm high, the inlet of the other 1.3 µm.
    for (const { top, edge } of ports) expect(Math.abs((edge?.nominal ?? 0) - top)).toBeLessThan(1e-3)
  })
})
