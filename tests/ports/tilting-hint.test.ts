import { expect, it } from 'vitest'
import { planPorts } from '../../src/ports/plan-ports.ts'
import { linerOf, milledAt, shopWith } from './liner.ts'

it('says by which tenth of a millimetre the longest tool must stand out less, so that it clears fully up', () => {
  const fixture = {
    chuck: { diameter: 60, length: 40 },
    rotary: { diameter: 90, length: 110 },
    plate: { from: -160, to: 70, width: 110, top: 0, thickness: 20 },
    head: { diameter: 130, spindleLength: 110, fullyUp: 250 },
  }
  const ports = [
    { at: 0, top: 40 },
    { at: 180, up: 50, top: 42, corner: { on: 'cutter', radius: 1.5 } },
  ] as const
  const planned = planPorts(linerOf(ports), shopWith(fixture), milledAt(47.8, 55.2))
  const { tip = 0, fullyUp = 0 } = planned.fixture?.tilting ?? {}
  const [hint] = planned.findings.flatMap(({ code, hint }) => (code === 'ports/tilting-clearance' ? [hint] : []))
  const less = Number(/([\d.]+) mm less/.exec(hint ?? '')?.[1])
  expect(fullyUp + less).toBeGreaterThanOrEqual(tip - 1e-9)
  expect(fullyUp + less).toBeLessThan(tip + 0.1)
})
