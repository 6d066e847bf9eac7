import { describe, expect, it } from 'vitest'
import { breakLeft } from '../../src/handbook/edge-break.ts'
import { readPart } from '../../src/part/read-part.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import type { Plan } from '../../src/plan/plan.ts'
import type { PlannedPort } from '../../src/ports/port.ts'
import { LINER_TEXT, partFrom } from '../route/part-text.ts'
import { OWN_BORE_SHOP } from '../shop/own-bore-shop.ts'

const ISSUE = { date: '2026-11-25', fingerprint: '0123456789ab', program: 'test' }

const planOf = (text: string) => {
  const part = partFrom(text)
  const { plan, findings } = makePlan({ part, shop: OWN_BORE_SHOP, batch: { number: '1', quantity: 10 }, issue: ISSUE })
  if (!plan) throw new Error(findings.map(({ message }) => message).join('\n'))
  return plan
}

const edgeOf = ({ ports }: { readonly ports: readonly PlannedPort[] }, index = 0) => {
  const edge = ports[index]?.edge
  if (!edge) throw new Error('no edge')
  return edge
}

/**
 * Chance that a sum of even spreads, each ±half, lies within ±limit. Source: textbook: the volume of a cube cut by a plane,
 * by inclusion and exclusion over its corners.
 */
function withinEven(halves: readonly number[], limit: number, off: number): number {
  const n = halves.length
  const below = (x: number): number => {
    let sum = 0
    for (let corner = 0; corner < 2 ** n; corner++) {
      const at = halves.reduce((total, half, i) => total + ((corner >> i) & 1 ? half : -half), 0)
      const sign = halves.reduce((s, _, i) => ((corner >> i) & 1 ? -s : s), 1)
      sum += sign * Math.max(0, x - at) ** n
    }
    const factorial = halves.reduce((product, _, i) => product * (i + 1), 1)
    return sum / (factorial * halves.reduce((product, half) => product * 2 * half, 1))
  }
  return below(limit - off) - below(-limit - off)
}

/** By hand: the 4 mm of the flange stretch by their own wall, the rest by the skirt's. */
function stretched({ case: order }: Plan, depth: number): number {
  const [flange, skirt] = order?.growth.sections ?? []
  if (flange?.to !== 4 || !skirt) throw new Error('no flange')
  return 4 * flange.share + (depth - 4) * skirt.share
}

describe('the timing edge of a liner whose top face is ground after nitriding', () => {
  const plan = planOf(LINER_TEXT)
  const edge = edgeOf(plan)
  const by = (symbol: string) => edge.members.find(member => member.symbol === symbol)?.half ?? Number.NaN

  it('comes out as every combination of its members at their limits has it', () => {
    // Traced by hand in one frame: top face at 0 as turned, edge at X, bottom at W; the length between stretches,
    // and bottom and edge both move down by what their own metal grows.
    const stretch = plan.axial?.stretch?.limits ?? { lower: 0, upper: 0 }
    const free = plan.axial?.growth?.limits ?? { lower: 0, upper: 0 }
    const cuts = (symbol: string) => {
      const limits = plan.axial?.dimensions.find(dimension => dimension.symbol === symbol)?.limits
      if (!limits) throw new Error(symbol)
      return [limits.lower, limits.upper]
    }
    const all = cuts('X1').flatMap(X =>
      cuts('W1').flatMap(W =>
        cuts('W3').flatMap(ground =>
          [free.lower, free.upper].flatMap(F =>
            [stretch.lower, stretch.upper].map(e => {
              const bottom = W + F + e * 92
              return X + F + e * stretched(plan, X) - (bottom - ground)
            }),
          ),
        ),
      ),
    )
    expect((Math.max(...all) - Math.min(...all)) / 2).toBeCloseTo(edge.worstCase, 4)
    expect((Math.max(...all) + Math.min(...all)) / 2).toBeCloseTo(edge.nominal, 3)
    expect(edge.nominal).toBeCloseTo(plan.ports[0]?.top ?? 0, 2)
    // The sums of the chart are counted with depths to the micrometre, as they are printed; a stretch takes a hundred-thousandth of that.
    expect(edge.members.reduce((sum, { half }) => sum + half, 0)).toBeCloseTo(edge.worstCase, 7)
    expect(Math.hypot(...edge.members.map(({ half }) => half))).toBeCloseTo(edge.rootSumSquare, 7)
    expect([by('X1'), by('W1'), by('W3')].map(half => Number(half.toFixed(6)))).toEqual([0.05, 0.03, 0.01])
  })

  it('is reported where the works asks ±0.050 of it, with the share outside and every cure weighed', () => {
    const open = plan.findings.find(({ code }) => code === 'stock/chain-open')
    expect(open?.message).toContain('exhaust: the top edge comes out at')
    expect(open?.message).toContain('the works allows 38.219 to 38.319 mm')
    expect(open?.at.line).toBe(13)
    expect(edge.cure).toBe('wider limits')
    expect(edge.weighed.map(({ cure, serves }) => [cure, serves])).toEqual([
      ['closer milling', false],
      ['top face ground to the edge', false],
      ['wider limits', true],
    ])
  })

  it('falls outside as often as sums of even and of bell-shaped spreads do', () => {
    const off = Math.abs(edge.nominal - edge.allowed.nominal)
    const halves = edge.members.map(({ half }) => half).filter(half => half > 0)
    expect(off).toBeLessThan(0.005)
    expect(edge.outside.even).toBeCloseTo(1 - withinEven(halves, 0.05, off), 3)
    expect(edge.outside.even).toBeGreaterThan(0.1)
    // Three even spreads of a third each make the bell.
    const thirds = halves.flatMap(half => [half / 3, half / 3, half / 3])
    expect(edge.outside.bellShaped).toBeCloseTo(1 - withinEven(thirds, 0.05, off), 3)
  })
})

describe('an edge that the drawing gives its own limits', () => {
  it('is milled as close as closes the chain, and judged by the drawing to the end', () => {
    const plan = planOf(LINER_TEXT.replace('opens: 106', 'opens: 106 ±0.2'))
    const edge = edgeOf(plan)
    expect(edge.cure).toBe('closer milling')
    expect(edge.allowed.from).toBe('drawing')
    expect(edge.milledTo).toBeLessThan(0.1)
    expect(edge.nominal + edge.worstCase).toBeLessThanOrEqual(edge.allowed.upper + 1e-9)
    expect(edge.nominal - edge.worstCase).toBeGreaterThanOrEqual(edge.allowed.lower - 1e-9)
    const milled = plan.operations
      .find(({ purpose }) => purpose === 'mill-ports')
      ?.sizes.find(({ measure }) => measure === 'depth')
    expect((milled?.upper ?? 0) - (milled?.lower ?? 0)).toBeCloseTo(edge.milledTo, 9)
    const final = plan.inspection.characteristics.find(({ name }) => name === 'exhaust 1 top edge, finished')
    expect([final?.lower, final?.upper]).toEqual(
      [edge.allowed.lower, edge.allowed.upper].map(x => expect.closeTo(x, 6)),
    )
    expect(plan.findings.filter(({ code }) => code === 'stock/chain-open')).toEqual([])
  })

  it('has its limits in crank degrees turned into depths by the crank: derived, half a degree is some 0.21 mm here', () => {
    // Slider-crank by hand: stroke 54, rod 100, crown 0.4 below the top face.
    const depth = (degree: number) => {
      const t = (degree * Math.PI) / 180
      return 0.4 + 27 + 100 - 27 * Math.cos(t) - Math.sqrt(100 ** 2 - (27 * Math.sin(t)) ** 2)
    }
    const { allowed } = edgeOf(planOf(LINER_TEXT.replace('opens: 106', 'opens: 106 ±0.25°')))
    expect(allowed.lower).toBeCloseTo(depth(105.75), 6)
    expect(allowed.upper).toBeCloseTo(depth(106.25), 6)
  })

  it('keeps what is written beside a depth', () => {
    const { allowed } = edgeOf(planOf(LINER_TEXT.replace('opens: 106', 'top: 38.3 +0.2/-0.1')))
    expect(allowed).toEqual({ nominal: 38.3, lower: 38.2, upper: 38.5, from: 'drawing' })
  })

  it.each([
    ['106 ±', 'no unit of angle'],
    ['106 ±0', 'tolerance of opens must be over 0'],
    ['106 ±0.25 mm', 'opens is an angle'],
    ['190 ±0.25', 'opens must be'],
  ])('is refused where it cannot be read: %s', (written, message) => {
    const { findings } = readPart(LINER_TEXT.replace('opens: 106', `opens: ${written}`), 'test.yaml')
    expect(findings.map(found => found.message).join('\n')).toContain(message)
  })
})

describe('a liner whose length the drawing leaves free', () => {
  const plan = planOf(LINER_TEXT.replace('length: 92 ±0.05', 'length: 92 ±0.2'))
  const edge = edgeOf(plan)
  const off = edge.takeOff

  it('has its top face ground to the measured exhaust edge, which then keeps ±0.050', () => {
    expect(edge.cure).toBe('top face ground to the edge')
    // Grinding to ±0.010 and reading to ±0.006 alone are left.
    expect(edge.worstCase).toBeCloseTo(0.016, 4)
    expect(edge.outside).toEqual({ bellShaped: 0, even: 0 })
    expect(plan.findings.filter(({ code }) => code === 'stock/chain-open')).toEqual([])
  })

  it('says what comes off each piece, from the range of the edge as it can be measured', () => {
    const g = plan.axial?.growth?.limits ?? { lower: 0, upper: 0 }
    const e = plan.axial?.stretch?.limits ?? { lower: 0, upper: 0 }
    const milled = plan.axial?.dimensions.find(({ symbol }) => symbol === 'X1')?.limits
    if (!off || !milled) throw new Error('no take-off')
    const most = milled.upper + e.upper * stretched(plan, milled.upper) + 2 * g.upper - off.target + 0.016
    const least = milled.lower + e.lower * stretched(plan, milled.lower) + 2 * g.lower - off.target - 0.016
    expect(off.most).toBeCloseTo(most, 4)
    expect(off.least).toBeCloseTo(least, 4)
    const grinding = plan.operations.find(({ number }) => number === off.operation)
    const remarks = grinding?.steps.flatMap(({ remarks }) => remarks).join('\n') ?? ''
    expect(remarks).toContain(`less ${off.target.toFixed(3)}`)
    expect(remarks).toContain(`${off.least.toFixed(3)} to ${off.most.toFixed(3)}`)
  })

  it('lets the dimension that the face was ground to follow, within the drawing', () => {
    const ground = plan.operations.find(({ number }) => number === off?.operation)
    const size = ground?.sizes.find(({ feature, measure }) => feature === 'flange' && measure === 'depth')
    // No longer the ±0.010 of a face ground to size: turned flange and milled edge are in it.
    expect((size?.upper ?? 0) - (size?.lower ?? 0)).toBeGreaterThan(0.1)
    expect(size?.lower).toBeGreaterThanOrEqual(3.9)
    expect(size?.upper).toBeLessThanOrEqual(4.1)
    for (const { drawn, nominal, worstCase } of plan.axial?.resultants ?? []) {
      if (!drawn) continue
      expect(nominal + worstCase).toBeLessThanOrEqual(drawn.upper + 1e-9)
      expect(nominal - worstCase).toBeGreaterThanOrEqual(drawn.lower - 1e-9)
    }
  })

  it('tells the final inspection how the edge is held', () => {
    const final = plan.inspection.characteristics.find(({ name }) => name === 'exhaust 1 top edge, finished')
    expect(final?.remark).toContain(`held by the take-off at operation ${off?.operation}`)
  })
})

describe('the break of a timing edge', () => {
  /** Crank degrees at which the crown of the demo engine, 54 by 100, passes a depth: bisection, no formula of the planner. */
  const passes = (depth: number): number => {
    let [low, high] = [0, 180]
    while (high - low > 1e-10) {
      const middle = (low + high) / 2
      const t = (middle * Math.PI) / 180
      const at = 0.4 + 127 - 27 * Math.cos(t) - Math.sqrt(100 ** 2 - (27 * Math.sin(t)) ** 2)
      if (at < depth) low = middle
      else high = middle
    }
    return low
  }

  it('of 0.3 at 45° leaves 0.23 when 0.07 comes off the side, 0.55° of exhaust timing', () => {
    expect(breakLeft.value({ b: 0.3, s: 0.07, k: 0 })).toBeCloseTo(0.23, 9)
    const { top } = planOf(LINER_TEXT).ports[0] ?? { top: 0 }
    expect(passes(top) - passes(top - 0.23)).toBeCloseTo(0.55, 2)
  })

  // By coordinates: the wall rises at 45° outward, its corner goes down by what comes off; the end of the break does too.
  it('does not change where the wall falls as steeply as the break', () => {
    expect(breakLeft.value({ b: 0.3, s: 0.07, k: 1 })).toBeCloseTo(0.3, 9)
  })

  it('is limited on the timing edge, taken down by grinding, and told in degrees at the bench and at the check', () => {
    const plan = planOf(LINER_TEXT)
    const { edgeBreak } = edgeOf(plan)
    if (!edgeBreak?.sooner) throw new Error('no break')
    const { broken, left, sooner, taken } = edgeBreak
    expect(broken.most).toBeLessThan(0.3)
    expect(left.most).toBeCloseTo(Math.max(0.1, broken.most - taken.least), 9)
    const top = plan.ports[0]?.top ?? 0
    expect(sooner.most).toBeCloseTo(passes(top) - passes(top - left.most), 6)
    expect(sooner.most).toBeLessThan(0.55)
    const figure = `${broken.least.toFixed(2)} to ${broken.most.toFixed(2)}`
    const bench = plan.operations.find(({ purpose }) => purpose === 'deburr-soft')
    expect(bench?.steps.flatMap(({ remarks }) => remarks).join('\n')).toContain(`top edge of exhaust: ${figure}`)
    const again = plan.operations.find(({ purpose }) => purpose === 'deburr-ports')
    expect(again?.steps.flatMap(({ remarks }) => remarks).join('\n')).toContain(`${sooner.most.toFixed(2)}° sooner`)
    const looked = plan.inspection.characteristics.filter(({ name }) => name.startsWith('exhaust timing edge broken'))
    expect(looked.map(({ operation }) => operation)).toEqual([bench?.number, again?.number])
    expect(looked[0]?.name).toContain(figure)
  })
})
