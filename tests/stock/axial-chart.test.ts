import { describe, expect, it } from 'vitest'
import { axialChart, type ChartLine } from '../../src/stock/axial-chart.ts'

const line = (
  symbol: string,
  operation: number,
  from: string,
  to: string,
  nominal: number,
  half: number,
  direction: 'down' | 'up' = 'down',
): ChartLine => ({
  kind: 'cut',
  symbol,
  operation,
  from,
  to,
  direction,
  limits: { nominal, lower: nominal - half, upper: nominal + half },
})

/**
 * Derived: a tolerance chart worked by hand for a flanged sleeve. A top of flange, B flange seat, C bottom, P a port's top
 * edge. Drawing: A to B 5.00 ±0.02, A to C 80.00 ±0.05, A to P 30.00 ±0.05.
 */
describe('axial chart of a flanged sleeve', () => {
  const chart = axialChart([
    line('W1', 10, 'A', 'B', 5.2, 0.03),
    line('W2', 20, 'A', 'C', 80.1, 0.03),
    line('X', 30, 'A', 'P', 30.1, 0.03),
    line('W3', 50, 'A', 'B', 5.1, 0.01),
    line('W4', 60, 'B', 'A', 5, 0.01, 'up'),
  ])

  it.each([
    ['stock on B', 'W1 - W3', 0.1, 0.04, 0.032],
    ['stock on A', 'W3 - W4', 0.1, 0.02, 0.014],
  ])('%s is %s', (name, expression, nominal, worst, rss) => {
    const found = chart.stocks.find(stock => stock.name === name)
    expect(found?.expression).toBe(expression)
    expect(found?.nominal).toBeCloseTo(nominal, 9)
    expect(found?.worstCase).toBeCloseTo(worst, 9)
    expect(found?.rootSumSquare).toBeCloseTo(rss, 3)
  })

  it.each([
    ['A', 'C', 'W2 - W3 + W4', 80, 0.05, 0.033],
    ['A', 'P', 'X - W3 + W4', 30, 0.05, 0.033],
    ['B', 'P', 'X - W3', 25, 0.04, 0.032],
    ['A', 'B', 'W4', 5, 0.01, 0.01],
  ])('%s to %s comes out of the chart', (from, to, expression, nominal, worst, rss) => {
    const found = chart.distance(from, to, 'distance')
    const sorted = (text: string) => text.replaceAll('- ', '-').replaceAll('+ ', '').split(' ').toSorted()
    expect(sorted(found.expression)).toEqual(sorted(expression))
    expect(found.nominal).toBeCloseTo(nominal, 9)
    expect(found.worstCase).toBeCloseTo(worst, 9)
    expect(found.rootSumSquare).toBeCloseTo(rss, 3)
  })

  it('puts a port that is milled at the drawing 30.00 at 29.90 once the face is ground', () => {
    const early = axialChart([
      line('W1', 10, 'A', 'B', 5.2, 0.03),
      line('X', 30, 'A', 'P', 30, 0.03),
      line('W3', 50, 'A', 'B', 5.1, 0.01),
      line('W4', 60, 'B', 'A', 5, 0.01, 'up'),
    ])
    expect(early.distance('A', 'P', 'port').nominal).toBeCloseTo(29.9, 9)
  })

  it('lets growth cancel between two faces that look the same way', () => {
    const grown = axialChart([
      line('W1', 10, 'A', 'B', 5, 0.03),
      line('W2', 10, 'A', 'C', 80, 0.03),
      {
        kind: 'growth',
        symbol: 'g',
        operation: 40,
        up: ['A'],
        down: ['B', 'C'],
        limits: { nominal: 0.01, lower: 0.005, upper: 0.015 },
      },
    ])
    expect(grown.distance('B', 'C', 'seat').worstCase).toBeCloseTo(0.06, 9)
    expect(grown.distance('A', 'C', 'length').nominal).toBeCloseTo(80.02, 9)
    expect(grown.distance('A', 'C', 'length').worstCase).toBeCloseTo(0.03 + 2 * 0.005, 9)
  })

  it('refuses to locate from a face that has not been cut', () => {
    expect(() => axialChart([line('W1', 10, 'A', 'B', 5, 0.1), line('W2', 20, 'C', 'B', 5, 0.1)])).toThrow('"C"')
  })
})
