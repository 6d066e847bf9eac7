import fc from 'fast-check'
import { it } from 'vitest'
import type { Asked } from '../liner.ts'
import { expectProved } from './compare.ts'
import { provePorts } from './prove-ports.ts'

/** Legal ports of a 48 mm bore: corners that a cutter on hand reaches. */
const ports: fc.Arbitrary<Asked> = fc
  .record({
    at: fc.integer({ min: -179, max: 180 }),
    top: fc.double({ min: 25, max: 50, noNaN: true }),
    height: fc.double({ min: 6, max: 16, noNaN: true }),
    width: fc.double({ min: 8, max: 22, noNaN: true }),
    up: fc.integer({ min: -15, max: 45 }),
    back: fc.integer({ min: -20, max: 30 }),
    share: fc.double({ min: 0.6, max: 1, noNaN: true }),
    cut: fc.constantFrom('level' as const, 'straight' as const),
    on: fc.constantFrom('bore' as const, 'cutter' as const),
  })
  .map(({ share, on, back, ...port }) => ({
    ...port,
    ...(port.at === 0 || port.at === 180 ? {} : { back }),
    corner: { on, radius: share * Math.min(3, 0.3 * port.height, 0.3 * port.width) },
  }))

it('leaves the window as drawn for random legal ports, either way round, slug kept', () => {
  const headFaces = fc.constantFrom('+X' as const, '-X' as const)
  const positiveRotary = fc.constantFrom('Y to Z' as const, 'Z to Y' as const)
  fc.assert(
    fc.property(ports, headFaces, positiveRotary, (port, faces, rotary) => {
      const found = provePorts([port], { headFaces: faces, positiveRotary: rotary }, 0.2, 'kept')
      // Ports that the plan refuses are not legal: others are drawn for them.
      fc.pre(found !== undefined)
      if (found) expectProved(found.proof, found.ports, 24)
    }),
    { numRuns: 200, endOnFailure: true },
  )
}, 240_000)
