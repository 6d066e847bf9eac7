import { describe, expect, it } from 'vitest'
import { demoPlan } from '../sheets/demo-packet.ts'

/** The demo liner: bore 48, flange 62 and seat 55, nitrided inside and outside. */
describe('the workings of a wall that its case stretches', () => {
  const { workings } = demoPlan()
  const of = (wall: string, symbol: string) =>
    workings.filter(({ about, symbol: one }) => about === `wall of ${wall}` && one === symbol).map(({ value }) => value)

  it('tell every wall once', () => {
    for (const wall of ['flange', 'seat'])
      for (const symbol of ['epsilon', 'w']) expect(of(wall, symbol)).toHaveLength(1)
  })
  it('stretch a wall the less the thicker it is: equilibrium of the same case in 7 and in 3.5 mm', () => {
    expect((of('seat', 'epsilon')[0] ?? 0) / (of('flange', 'epsilon')[0] ?? 1)).toBeCloseTo(7 / 3.5, 1)
  })
  it('move a wall by its stretch on its mean radius: a ring that grows in proportion', () => {
    expect((of('seat', 'w')[0] ?? 0) / (of('seat', 'epsilon')[0] ?? 1)).toBeCloseTo((55 + 48) / 4, 0)
    expect((of('flange', 'w')[0] ?? 0) / (of('flange', 'epsilon')[0] ?? 1)).toBeCloseTo((62 + 48) / 4, 0)
  })
})
