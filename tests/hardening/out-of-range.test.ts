import { describe, expect, it } from 'vitest'
import { planCase } from '../../src/hardening/plan-case.ts'
import type { Part } from '../../src/part/part.ts'
import { SHOP, SLEEVE } from './case-part.ts'

const errorsOf = (part: Part) =>
  planCase({ part, shop: SHOP, removal: [], wall: 4 })
    .findings.filter(({ severity }) => severity === 'error')
    .map(({ code }) => code)
const withBar = (material: Partial<Part['material']>): Part => ({
  ...SLEEVE,
  material: { ...SLEEVE.material, ...material },
})

describe('what no case can be planned on is a finding', () => {
  it.each([100, 180, 290])('a bar tempered at %s °C is below nitriding: no stress relief lies between', temper => {
    expect(errorsOf(withBar({ temper }))).toContain('case/stress-relief-window')
  })

  // NHD ends at core + 50 HV: 660 + 50 is over the 650 that the grade reaches at its surface.
  it('a bar as hard as the case', () => {
    expect(errorsOf(withBar({ hardness: 660 }))).toEqual(['case/hardness-out-of-reach'])
  })

  it.each(['gas nitriding', 'carburising', 'induction hardening'] as const)(
    'any bar from 50 to 1500 HV, %s',
    process => {
      for (let hardness = 50; hardness <= 1500; hardness += 50) {
        for (const least of [60, 300, 700, 1400]) {
          const part: Part = {
            ...withBar({ hardness, grade: process === 'carburising' ? '16MnCr5' : '42CrMo4' }),
            hardening: { process, depth: { least: 0.4 }, hardness: { least }, masked: [], path: '/hardening' },
          }
          const { case: planned, findings } = planCase({ part, shop: SHOP, removal: [], wall: 4 })
          expect(planned !== undefined || findings.some(({ severity }) => severity === 'error')).toBe(true)
        }
      }
    },
  )
})
