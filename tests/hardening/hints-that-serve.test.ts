import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Finding } from '../../src/finding.ts'
import type { CaseFigures } from '../../src/hardening/case-figures.ts'
import { leastSurface } from '../../src/hardening/hard-enough.ts'
import { planCase } from '../../src/hardening/plan-case.ts'
import { known, worked } from '../../src/known.ts'
import type { Part } from '../../src/part/part.ts'
import { openNotebook } from '../../src/working.ts'
import { hardenedBy, SHOP, SLEEVE } from './case-part.ts'

const planned = (part: Part) =>
  planCase({ part, shop: SHOP, removal: [{ surface: 'seat', least: 0, nominal: 0.03, most: 0.06 }], wall: 4 })
const of = (part: Part, code: string): Finding | undefined => planned(part).findings.find(each => each.code === code)
const barOf = (part: Part, material: Partial<Part['material']>): Part => ({
  ...part,
  material: { ...part.material, ...material },
})

describe('a temper too near the cycle', () => {
  const part = barOf(hardenedBy({ temperature: 520 }), { temper: 545 })
  const told = of(part, 'case/temper-margin')
  const [, cooler, hotter] = /nitride at (\d+) °C or less, or buy bar tempered at (\d+) °C/.exec(told?.hint ?? '') ?? []

  it('is told with a cycle 30 K under it and a temper 30 K over the cycle, as usual', () => {
    expect([cooler, hotter]).toEqual(['515', '550'])
  })
  it('is let pass where either hint is followed', () => {
    const followed = [barOf(hardenedBy({ temperature: Number(cooler) }), { temper: 545 }), barOf(part, { temper: 550 })]
    for (const each of followed) expect(of(each, 'case/temper-margin')).toBeUndefined()
  })
})

it('orders no temper of a microalloyed steel, which is cooled from the forge and not tempered', () => {
  const forged = barOf(hardenedBy({ hardness: { least: 400 } }), { grade: '38MnVS6', hardness: 260, temper: 620 })
  expect(planned(forged).case?.order).toMatchObject({ barHardness: 260 })
  expect(planned(forged).case?.order).not.toHaveProperty('temper')
  expect(planned(SLEEVE).case?.order).toMatchObject({ temper: 620, barHardness: 320 })
})

describe('where a depth of hardness would not end between core and surface', () => {
  const by = (process: 'induction hardening' | 'gas nitriding', hardness: number, bar: number) =>
    of(barOf(hardenedBy({ process, depth: { least: 1 }, hardness: { least: hardness } }), { hardness: bar }), CODE)
  const CODE = 'case/hardness-out-of-reach'

  // SHD ends at 0.80 of the least surface hardness asked (ISO 18203): 440 HV of 550, 720 of 900.
  it('more hardness mends an SHD that ends in a core as hard, less one that ends over the surface', () => {
    expect(by('induction hardening', 550, 440)).toMatchObject({
      at: { line: 9, column: 37 },
      hint: 'ask for more hardness, or start from softer bar',
    })
    expect(by('induction hardening', 900, 300)).toMatchObject({
      at: { line: 9, column: 37 },
      hint: 'ask for less hardness',
    })
  })
  it('a softer bar mends an NHD, which ends 50 HV over the core', () => {
    const told = by('gas nitriding', 500, 660)
    expect(told?.hint).toContain('softer bar')
    expect(told?.at.line).toBe(2)
  })
})

describe('the surface hardness ordered, so that enough is left', () => {
  const origin = worked('example')
  const figuresOf = (term: 'NHD' | 'SHD', usual: number): CaseFigures => ({
    term,
    surface: { least: usual, usual, most: usual, ...origin },
    core: known(300, 'HV', origin),
    limit: 350,
    tempered: true,
  })
  const asked = fc.record({
    hardness: fc.integer({ min: 360, max: 600 }),
    N: fc.double({ min: 0.2, max: 0.6, noNaN: true }),
    share: fc.double({ min: 0, max: 0.5, noNaN: true }),
  })
  const ordered = (term: 'NHD' | 'SHD', usual: number, { hardness, N, share }: Readonly<Record<string, number>>) =>
    leastSurface({
      notebook: openNotebook(),
      figures: figuresOf(term, usual),
      hardness: hardness ?? 0,
      s: (N ?? 0) * (share ?? 0),
      N: N ?? 0,
    })

  // Derived: the stretched exponential of shape 1.7 through 350 HV (core 300 + 50) at the depth, turned round.
  const neededFor = ({ hardness, share }: { readonly hardness: number; readonly share: number }): number =>
    300 + 50 * ((hardness - 300) / 50) ** (1 / (1 - share ** 1.7))

  it('is the next ten at or over what a nitrided profile needs', () => {
    fc.assert(
      fc.property(asked, given => {
        const least = ordered('NHD', 1e9, given)
        expect(least % 10).toBeCloseTo(0, 6)
        expect(least).toBeGreaterThanOrEqual(neededFor(given) - 1e-4)
        expect(least).toBeLessThan(neededFor(given) + 10)
      }),
    )
  })
  it('is no more than the steel usually reaches, where that serves', () => {
    expect(neededFor({ hardness: 470, share: 0.2 })).toBeLessThan(495)
    expect(ordered('NHD', 495, { hardness: 470, N: 0.4, share: 0.2 })).toBeLessThanOrEqual(495)
  })
  // A plateau holds 0.97 of the rise to its end: 300 + 250 / 0.97 = 557.7.
  it('is 560 HV for 550 left on a plateau over a core of 300', () => {
    expect(ordered('SHD', 700, { hardness: 550, N: 1, share: 0.2 })).toBe(560)
  })
  it('is the hardness asked where nothing can be worked: no harder than the core, or the whole case off', () => {
    expect(ordered('NHD', 700, { hardness: 300, N: 0.4, share: 0.2 })).toBe(300)
    expect(ordered('NHD', 700, { hardness: 451, N: 0.4, share: 1 })).toBe(451)
  })
})

it('names the bore under a wall where the part has two, and not where it has one', () => {
  const bore = SLEEVE.bore[0]
  if (!bore) throw new Error('a sleeve has a bore')
  const to = { nominal: 40, lower: 39.9, upper: 40.1, written: '40' }
  const stepped: Part = {
    ...SLEEVE,
    bore: [
      { ...bore, to },
      { ...bore, name: 'counterbore', from: 40 },
    ],
  }
  const walls = (part: Part) =>
    planned(part).workings.filter(({ symbol, about }) => symbol === 'w' && about?.startsWith('wall'))
  expect(walls(SLEEVE).map(({ about }) => about)).toEqual(['wall of flange', 'wall of seat'])
  expect(walls(stepped).map(({ about }) => about)).toEqual([
    'wall of flange over bore',
    'wall of seat over bore',
    'wall of seat over counterbore',
  ])
})
