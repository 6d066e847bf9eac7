import { describe, expect, it } from 'vitest'
import type { OutsideOrder, Quantity } from '../../src/orders/order.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { demo, NO_GRINDERS, planOf } from './planned-orders.ts'

const plan = planOf(demo('OX-098-21'), NO_GRINDERS)
const orderWith = ({ orders }: Plan, text: RegExp): OutsideOrder | undefined =>
  orders.find(({ points }) => points.some(point => point.text.some(line => text.test(line))))
const all = (order: OutsideOrder | undefined): readonly Quantity[] =>
  (order?.points ?? []).flatMap(({ quantities }) => quantities)

describe('a bore that is ground and then honed (common practice, no source)', () => {
  const grind = plan.operations.find(({ purpose }) => purpose === 'grind-bore')
  const hone = plan.stock.find(({ surface, operation }) => surface === 'bore' && operation !== grind?.number)

  it('gives the hone its own spare: roughness and layer of grinding, half of the roundness, and 2 µm a side over', () => {
    // Rz 3 and a layer of 4 µm (memory: Kosilova & Meshcheryakov, vol. 1); the radius varies by half of 2 µm.
    expect(hone?.perSide.needed).toBeCloseTo(0.007, 12)
    expect(hone?.form).toBeCloseTo(0.001, 12)
    expect(hone?.margin.cleanUp).toBeGreaterThanOrEqual(0.002 - 1e-9)
  })

  it('measures at the grind what the hone rests on, and asks the grinder for it', () => {
    const wanted = plan.inspection.characteristics.filter(({ operation }) => operation === grind?.number)
    expect(wanted.find(({ name }) => name === 'bore roundness')?.upper).toBe(0.002)
    expect(wanted.find(({ name }) => name === 'bore roughness Rz')?.upper).toBe(3)
    const order = orderWith(plan, /No jaw over/)
    for (const label of ['bore roundness', 'bore roughness Rz'])
      expect(order?.finish.map(one => one.label)).toContain(label)
  })

  it('limits the jaws to what leaves lobes of 2 µm in that wall (thin ring, Fourier series of three jaws of 60°)', () => {
    const order = orderWith(plan, /No jaw over/)
    const most = all(order).find(({ label }) => label === 'force of each jaw')?.most ?? 0
    const shape = grind?.shape
    const D = shape?.outside.find(({ name }) => name === 'seat')?.diameter ?? 0
    const d = shape?.bore[0]?.diameter ?? 0
    const [R, t] = [(D + d) / 4, (D - d) / 2]
    // Three even loads F bend a ring in the harmonics n = 3, 6, 9: each 3 F R³ / (π E I (n² - 1)²), less what a wide jaw evens out.
    const harmonics = Array.from({ length: 200 }, (_, m) => 3 * (m + 1))
    const b = 20 + 0.43 * R
    const I = (b * t ** 3) / 12
    const amplitude = (n: number) => (3 * R ** 3) / (Math.PI * 210_000 * I * (n ** 2 - 1) ** 2)
    const wide = (n: number) => Math.sin((n * Math.PI) / 6) / ((n * Math.PI) / 6)
    // Peak to valley: what the odd multiples of three differ by between a jaw and midway.
    const lobes = harmonics.reduce((sum, n) => sum + (n % 2 === 1 ? 2 * amplitude(n) * wide(n) : 0), 0)
    expect(most).toBeGreaterThan((0.95 * 0.002) / lobes - 10)
    expect(most).toBeLessThan((1.05 * 0.002) / lobes)
  })
})
