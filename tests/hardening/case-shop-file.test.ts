import { expect, it } from 'vitest'
import { planCase } from '../../src/hardening/plan-case.ts'
import { readShop } from '../../src/part/read-shop.ts'
import { expectDigits } from '../handbook/to-the-digits.ts'
import { hardenedBy } from './case-part.ts'

const read = (constant: string) =>
  readShop(
    [
      'shop: {name: Oxmere Pump Works}',
      `reached: [{grade: 42CrMo4, surface: 680 HV, core: 315 HV, depth-constant: ${constant}}]`,
      'measured: [{process: nitride, grade: 42CrMo4, pieces: 12, date: 2026-10-02, growth: {least: 0.008, nominal: 0.010, most: 0.012}}]',
      '',
    ].join('\n'),
    'shop.yaml',
  )

it('plans with what the shop file says of its hardener', () => {
  const { shop, findings } = read('0.06')
  expect(findings).toEqual([])
  if (!shop) throw new Error('no shop')
  const { case: planned } = planCase({
    part: hardenedBy({ temperature: 520 }),
    shop,
    removal: [{ surface: 'seat', least: 0.02, nominal: 0.06, most: 0.0975 }],
    wall: 4,
  })
  expect(planned).toMatchObject({ surfaceHardness: 680, coreHardness: 315 })
  expect(planned?.growth.outside).toMatchObject({ least: 0.008, nominal: 0.01, most: 0.012 })
  // Derived: (0.35 / 0.06)².
  expectDigits(planned?.time.nominal ?? 0, '34.03')
})

it.each(['0', '0.5', 'fast'])('refuses a depth constant of %s', constant => {
  expect(read(constant).findings.map(({ severity }) => severity)).toContain('error')
})
