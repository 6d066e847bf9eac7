import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readPart } from '../../src/part/read-part.ts'
import { readShop } from '../../src/part/read-shop.ts'
import { makePlan } from '../../src/plan/make-plan.ts'

const text = (path: string): string => readFileSync(new URL(`../../parts/${path}`, import.meta.url), 'utf8')
const { shop } = readShop(text('shop.yaml'), 'shop.yaml')
const issue = { date: '2026-11-30', fingerprint: '0bd5bebc6b1e', program: 'linerwright 0.1.0' }

const read = (exhaust: string) => readPart(text('OX-098-21.yaml').replace('opens: 106 ±0.25', exhaust), 'part.yaml')
function exhaustOf(exhaust: string) {
  const { part } = read(exhaust)
  if (!part || !shop) throw new Error('does not read')
  const { plan } = makePlan({ part, shop, batch: { number: 'test', quantity: 10 }, issue })
  const port = plan?.ports[0]
  if (!port?.edge) throw new Error('has no exhaust')
  return { ...port, edge: port.edge }
}

describe('limits of a timing edge that do not lie evenly about their nominal', () => {
  it('are planned to their middle, as any size is: 38.3 +0.2/0 to 38.4, and the chain closes', () => {
    const { top, edge, windows } = exhaustOf('top: 38.3 +0.2/0')
    expect(top).toBe(38.4)
    expect(edge.allowed).toMatchObject({ nominal: 38.3, lower: 38.3, upper: 38.5 })
    expect(Math.abs(edge.nominal - 38.4)).toBeLessThan(0.005)
    expect(edge.outside.even).toBe(0)
    expect(windows[0]?.edges.finished.highest).toBeCloseTo(38.4, 6)
  })

  it.each([
    ['106 +0.5/0', 106.25, 0.5],
    ['106 +0.5 -0.25', 106.125, 0.75],
    ['106 deg -0.5/-0.1', 105.7, 0.4],
    ['106 ±0.25', 106, 0.5],
  ])('in crank degrees are read as on a drawing: %s opens at %d', (written, opens, wide) => {
    const found = read(`opens: ${written}`).part?.ports[0]
    expect(found?.opens).toBe(opens)
    const { lower = 0, upper = 0 } = found?.drawn?.opens ?? {}
    expect(upper - lower).toBeCloseTo(wide, 9)
    expect((upper + lower) / 2).toBeCloseTo(opens, 9)
  })

  it('are told of where they are none', () => {
    expect(read('opens: 106 +0.5/x').findings.map(({ code }) => code)).toContain('input/wrong-unit')
    expect(read('opens: 106 +9/0').findings.map(({ code }) => code)).toContain('input/out-of-range')
  })
})
