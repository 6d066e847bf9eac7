import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readPart } from '../../src/part/read-part.ts'
import { readShop } from '../../src/part/read-shop.ts'
import { makePlan, type Planned } from '../../src/plan/make-plan.ts'
import type { Shop } from '../../src/shop/shop.ts'

const textOf = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8')
const ISSUE = { date: '2026-11-25', fingerprint: '0bd5bebc6b1e', program: 'linerwright' }
const CUTTING = new Set(['saw', 'turn', 'drill', 'mill', 'grind', 'hone', 'lap'])
const QUANTITY = 40

function planned(change: (shop: Shop) => Shop = shop => shop): Planned {
  const { part } = readPart(textOf('parts/OX-098-21.yaml'), 'OX-098-21.yaml')
  const { shop } = readShop(textOf('parts/shop.yaml'), 'shop.yaml')
  if (!part || !shop) throw new Error('the demo does not read')
  return makePlan({ part, shop: change(shop), batch: { number: '24-117', quantity: QUANTITY }, issue: ISSUE })
}

const { plan, findings } = planned()
if (!plan) throw new Error('the demo does not plan')
const { characteristics } = plan.inspection

describe('what is measured of the liner', () => {
  const cut = plan.operations.filter(({ process, place }) => place === 'house' && CUTTING.has(process))
  // The outside of a sawn blank is the bar's own, as bought: no operation here cuts it.
  const sizes = cut.flatMap(({ number, sizes }) =>
    sizes.filter(({ feature }) => feature !== 'outside').map(size => ({ number, ...size })),
  )

  it('is every size that the works cuts, at the operation that cuts it', () => {
    expect(new Set(cut.map(({ process }) => process)).size).toBeGreaterThan(3)
    expect(sizes.length).toBeGreaterThan(10)
    for (const { number: operation, feature, nominal, lower, upper } of sizes) {
      expect(characteristics).toContainEqual(expect.objectContaining({ operation, feature, nominal, lower, upper }))
    }
  })

  it('is nothing twice: as many in-process sizes of those operations as they have', () => {
    const at = new Set(cut.map(({ number }) => number))
    // Form and roughness have one limit, and what is read off a paper none; what the setting decides has no size.
    const measured = characteristics.filter(
      ({ operation, stage, lower, upper, plan }) =>
        stage === 'in-process' &&
        at.has(operation) &&
        lower !== undefined &&
        upper !== undefined &&
        !plan.startsWith('first piece'),
    )
    expect(measured).toHaveLength(sizes.length)
  })

  it('is numbered from 1 up', () => {
    expect(characteristics.map(({ number }) => number)).toEqual(characteristics.map((_, index) => index + 1))
  })
})

describe('how round a hardened surface comes back', () => {
  const ovals = characteristics.filter(({ name }) => name.endsWith('out of round, as returned'))

  it('is measured against what its stock bears, four times over, by two points', () => {
    expect(ovals.map(({ feature }) => feature)).toEqual(['flange', 'seat', 'bore'])
    for (const { feature, upper = Number.NaN, uncertainty, gauge } of ovals) {
      const borne = plan.stock
        .find(({ surface }) => surface === feature)
        ?.basis?.find(({ figure }) => figure === 'ovality')
      if (borne) expect(upper).toBe(borne.value)
      expect(uncertainty).toBeLessThanOrEqual(upper / 8)
      expect(gauge).not.toMatch(/three-point|dial/)
    }
  })
})

describe('what is accepted', () => {
  it('lies inside the limits, and leaves room', () => {
    for (const { name, lower, upper, accept } of characteristics) {
      if (lower !== undefined) expect(accept.lower, name).toBeGreaterThanOrEqual(lower)
      if (upper !== undefined) expect(accept.upper, name).toBeLessThanOrEqual(upper)
      if (accept.lower !== undefined && accept.upper !== undefined) {
        expect(accept.upper, name).toBeGreaterThan(accept.lower)
      }
    }
  })

  // ASME B89.7.3.1-2001 and ISO 14253-1: the limits themselves where T >= 8 U, else the whole U inside them.
  it('is drawn in by the whole uncertainty, or by nothing where an eighth of the tolerance covers it', () => {
    for (const { name, lower, upper, accept, uncertainty, gauge } of characteristics) {
      if (lower === undefined || upper === undefined || gauge === 'none on hand') continue
      const guard = upper - lower >= 8 * uncertainty - 1e-9 ? 0 : uncertainty
      expect(accept.lower, name).toBeCloseTo(lower + guard, 9)
      expect(accept.upper, name).toBeCloseTo(upper - guard, 9)
    }
  })
})

describe('critical, and so measured on every piece', () => {
  const close = new Set(plan.operations.filter(({ process }) => /grind|hone/.test(process)).map(({ number }) => number))
  const bore = characteristics.filter(
    ({ name, stage, operation }) =>
      name === 'bore diameter' && (stage === 'final' || (stage === 'in-process' && close.has(operation))),
  )
  const tops = characteristics.filter(({ name }) => /top edge/.test(name))

  it.each([
    ['bore', bore],
    ['port top edge', tops],
  ])('%s', (_, those) => {
    expect(those.length).toBeGreaterThan(1)
    for (const { name, critical, sample } of those) {
      expect({ name, critical, sample }).toEqual({ name, critical: true, sample: plan.batch.start })
    }
  })

  it('not the lengths, of which a sample does', () => {
    const [length] = characteristics.filter(({ feature }) => feature === 'length')
    expect(length).toMatchObject({ critical: false })
    expect(length?.sample).toBeLessThan(plan.batch.start)
  })
})

describe('a works without a gauge', () => {
  it('is told of everything but what a paper certifies', () => {
    const without = planned(shop => ({ ...shop, gauges: [] }))
    const told = without.findings.filter(({ code }) => code === 'inspection/no-gauge')
    const all = without.plan?.inspection.characteristics ?? []
    const certified = all.filter(({ gauge }) => gauge !== 'none on hand')
    expect(told).toHaveLength(all.length - certified.length)
    // Each gauge that is sold is named once, with all that it is for.
    const toGet = without.findings.filter(({ code }) => code === 'inspection/to-get').map(({ message }) => message)
    const papers = new Set(['bar certificate', 'furnace chart', "hardener's traverse", 'crack-test report'])
    const bought = new Set(certified.map(({ gauge }) => gauge).filter(gauge => !papers.has(gauge)))
    expect(bought.size).toBeGreaterThan(4)
    expect(toGet).toHaveLength(bought.size)
    for (const gauge of bought) expect(toGet.some(message => message.startsWith(`to get: ${gauge}, for `))).toBe(true)
  })

  it('is not told so where it has all that it needs', () => {
    const unmeasured = characteristics.filter(({ gauge }) => gauge === 'none on hand')
    expect(findings.filter(({ code }) => code === 'inspection/no-gauge')).toHaveLength(unmeasured.length)
  })
})
