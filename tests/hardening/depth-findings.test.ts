import { describe, expect, it } from 'vitest'
import type { Finding } from '../../src/finding.ts'
import { planCase } from '../../src/hardening/plan-case.ts'
import type { Part } from '../../src/part/part.ts'
import type { Habits, Shop } from '../../src/shop/shop.ts'
import { hardenedBy, SHOP, SLEEVE } from './case-part.ts'

const of = (material: Partial<Part['material']>, part: Part = SLEEVE): Part => ({
  ...part,
  material: { ...part.material, ...material },
})
const withHabits = (habits: Partial<Habits>): Shop => ({ ...SHOP, habits: { ...SHOP.habits, ...habits } })
const found = (part: Part, code: string, most = 0.06, wall = 4, shop = SHOP): Finding | undefined =>
  planCase({ part, shop, removal: [{ surface: 'seat', least: 0, nominal: most / 2, most }], wall }).findings.find(
    finding => finding.code === code,
  )
const severity = (...given: Parameters<typeof found>): string | undefined => found(...given)?.severity

describe('depth and hardness', () => {
  it('warns over a third of the case, and not at a third', () => {
    // 0.30 is ordered for both.
    expect(severity(hardenedBy({ depth: { least: 0.15 } }), 'case/depth-share', 0.12)).toBe('warning')
    expect(severity(SLEEVE, 'case/depth-share', 0.099)).toBeUndefined()
  })
  it('asks no depth and no hardness of a face: nothing slides there', () => {
    const face = { surface: 'top', least: 0, nominal: 0.15, most: 0.25, face: true as const }
    const { case: planned, findings } = planCase({ part: SLEEVE, shop: SHOP, removal: [face], wall: 4 })
    expect(planned?.ordered.least).toBe(0.2)
    expect(planned?.left.least).toBe(0.2)
    // The bore is not finished after, and that alone is said.
    expect(findings.map(({ code }) => code)).toEqual(['case/layer-kept'])
    const both = [face, { surface: 'seat', least: 0, nominal: 0.06, most: 0.0975 }]
    expect(planCase({ part: SLEEVE, shop: SHOP, removal: both, wall: 4 }).case?.ordered.least).toBe(0.3)
  })
  it('warns where model and grade together may fall under the hardness asked', () => {
    const message = (part: Part) => found(part, 'case/hardness-after', 0.0975)
    expect(message(SLEEVE)?.severity).toBe('warning')
    // Every charge of 42CrMo4 has 550 HV; 580 and more are needed for 520 HV, so that some charges fall short.
    expect(message(SLEEVE)?.hint).toContain('coupon')
    expect(message(hardenedBy({ hardness: { least: 520 } }))?.hint).toMatch(
      /asks for \d+ HV or more as hardened, and 42CrMo4 gives 550 to 720 HV/,
    )
    // Low model: 320 + 230 (50 / 230)^(0.0975 / 0.30), through the least that the grade gives.
    const low = 320 + 230 * (50 / 230) ** (0.0975 / 0.3)
    expect(message(hardenedBy({ hardness: { least: Math.floor(low) } }))).toBeUndefined()
    expect(message(hardenedBy({ hardness: { least: Math.ceil(low) + 1 } }))).toBeDefined()
  })
  it('refuses a case that no process makes', () => {
    expect(severity(SLEEVE, 'case/too-deep', 0.9)).toBe('error')
    expect(
      planCase({ part: SLEEVE, shop: SHOP, removal: [{ surface: 'seat', least: 0, nominal: 0.4, most: 0.9 }], wall: 4 })
        .case,
    ).toBeUndefined()
  })
  it('notes a depth that is not asked, and plans 0.15', () => {
    const { depth: _unasked, ...hardening } = SLEEVE.hardening ?? {}
    const part = { ...SLEEVE, hardening } as Part
    expect(severity(part, 'case/depth-not-asked')).toBe('note')
    expect(planCase({ part, shop: SHOP, removal: [], wall: 4 }).case?.asked).toBe(0.15)
  })
  // Estimate: 0.10 to 0.25 mm left; a nitrocarburised surface runs on its layer.
  it('plans 0.10 of a thin process, and says to use its layer as it comes where grinding asks too much of it', () => {
    const { depth: _unasked, ...hardening } = hardenedBy({ process: 'nitrocarburising' }).hardening ?? {}
    const part = { ...SLEEVE, hardening } as Part
    expect(planCase({ part, shop: SHOP, removal: [], wall: 4 }).case?.asked).toBe(0.1)
    expect(found(part, 'case/deeper-than-usual', 0.2)?.hint).toContain('use its layer as it comes')
    expect(found(SLEEVE, 'case/deeper-than-usual', 0.35, 8)?.hint ?? '').not.toContain('as it comes')
  })
  it('does not carburise to a depth that nobody asks', () => {
    const { depth: _unasked, ...hardening } = hardenedBy({ process: 'carburising' }).hardening ?? {}
    const part = of({ grade: '16MnCr5' }, { ...SLEEVE, hardening } as Part)
    expect(severity(part, 'case/depth-not-asked')).toBe('error')
  })
  // Hardness profile, stretched exponential with n 1.7: H = Hc + dH exp(-(z/w)^n), w = N / ln(dH / 50)^(1/n). Source: derived.
  it('says what hardness the usual depth leaves, where hardness asks for more', () => {
    const w = 0.4 / Math.log(330 / 50) ** (1 / 1.7)
    const left = 320 + 330 * Math.exp(-((0.12 / w) ** 1.7))
    const hard = hardenedBy({ hardness: { least: Math.ceil(left) + 20 } })
    expect(found(hard, 'case/deeper-than-usual', 0.12, 8)?.hint).toContain(
      `0.40 to 0.60 mm, within the usual, leaves about ${left.toFixed(0)} HV there`,
    )
    const deep = hardenedBy({ hardness: { least: 400 }, depth: { least: 0.4 } })
    expect(found(deep, 'case/deeper-than-usual', 0.12, 8)?.hint).not.toContain('HV there')
  })
  it('says once when the order is deeper or longer than usual, with the limits and what decided it', () => {
    const deep = hardenedBy({ depth: { least: 0.35 } })
    const own = planCase({
      part: deep,
      shop: SHOP,
      removal: [{ surface: 'seat', least: 0, nominal: 0.05, most: 0.1 }],
      wall: 4,
    }).findings
    const [finding, ...more] = own.filter(({ code }) => /deeper|long|share/.test(code))
    expect(more).toEqual([])
    expect(finding).toMatchObject({ code: 'case/deeper-than-usual', severity: 'warning' })
    for (const words of [
      '0.45 to 0.65 mm',
      '0.1 to 0.6 mm usual for 42CrMo4',
      '0.35 mm to be left',
      '0.100 mm a side off seat',
    ])
      expect(finding?.message).toContain(words)
    expect(severity(SLEEVE, 'case/deeper-than-usual', 0.1)).toBeUndefined()
    expect(severity(SLEEVE, 'case/long-cycle', 0.1, 4, withHabits({ nitridingTimeLimit: 40 }))).toBe('warning')
  })
  it('refuses what even with its least figure is deeper than usual, unless the works knows its hardener', () => {
    const deep = hardenedBy({ depth: { least: 0.55 } })
    expect(severity(deep, 'case/deeper-than-usual', 0.1, 8)).toBe('error')
    const reached = { ...SHOP, reached: [{ grade: '42CrMo4', surface: 650, core: 320 }] }
    expect(severity(deep, 'case/deeper-than-usual', 0.1, 8, reached)).toBe('warning')
  })
  it('says when a salt bath would have to run past its 4 h or its 0.2 mm', () => {
    expect(severity(hardenedBy({ process: 'salt-bath nitriding' }), 'case/deeper-than-usual')).toBe('error')
    const thin = hardenedBy({ process: 'salt-bath nitriding', depth: { least: 0.05 }, hardness: { least: 400 } })
    expect(severity(thin, 'case/deeper-than-usual', 0)).toBeUndefined()
    expect(severity(thin, 'case/long-cycle', 0)).toBeUndefined()
  })
})
