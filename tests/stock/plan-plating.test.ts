import { describe, expect, it } from 'vitest'
import type { Part } from '../../src/part/part.ts'
import { type PlatingRequest, phosphateFindings, planPlating } from '../../src/stock/plan-plating.ts'
import { expectDigits } from '../handbook/to-the-digits.ts'
import { SLEEVE } from './case-part.ts'

const { hardening: _none, ...soft } = SLEEVE
const bored: Part = soft
const ported: Part = {
  ...soft,
  ports: [
    {
      name: 'exhaust',
      role: 'exhaust',
      at: 0,
      top: 20,
      height: 10,
      width: 20,
      corner: { on: 'bore', radius: 2 },
      up: 0,
      back: 0,
      cut: 'level',
      path: '/ports/0',
    },
  ],
}
const bore: PlatingRequest = {
  surface: 'bore',
  kind: 'bore',
  coating: 'nickel silicon carbide',
  finished: { nominal: 60, lower: 60, upper: 60.013 },
  path: '/body/bore',
}
const codes = (part: Part, request: PlatingRequest): readonly string[] =>
  planPlating(part, request).findings.map(({ code, severity }) => `${severity} ${code}`)

describe('sizes of a plated bore (derived: geometry)', () => {
  it('nickel silicon carbide: 60.150 before, 59.950 as plated, 0.050 on diameter to hone', () => {
    const { plating } = planPlating(bored, bore)
    expectDigits(plating.beforePlating.nominal, '60.150')
    expectDigits(plating.asPlated.nominal, '59.950')
    expectDigits(bore.finished.nominal - plating.asPlated.nominal, '0.050')
    expect(plating.stockBeforePlating).toBeLessThan(0)
  })
  it('hard chrome: 60.160 before, 59.940 as plated', () => {
    const { plating } = planPlating(bored, { ...bore, coating: 'hard chrome' })
    expectDigits(plating.beforePlating.nominal, '60.160')
    expectDigits(plating.asPlated.nominal, '59.940')
  })
  it('keeps the tolerance of the finished bore, since plating copies what it finds', () => {
    const { beforePlating, asPlated } = planPlating(bored, bore).plating
    expectDigits(beforePlating.upper - beforePlating.lower, '0.013')
    expectDigits(asPlated.upper - asPlated.lower, '0.013')
  })
  it('turns the signs round for an outside', () => {
    const { plating } = planPlating(bored, { ...bore, kind: 'outside', surface: 'seat' })
    expectDigits(plating.beforePlating.nominal, '59.850')
    expectDigits(plating.asPlated.nominal, '60.050')
  })
  it('shows its working', () => {
    for (const { source } of planPlating(bored, bore).workings) expect(source).not.toBe('')
    expect(planPlating(bored, bore).workings.map(({ symbol }) => symbol)).toEqual(['d_pre', 'd_plated', 't_bake'])
  })
})

describe("bake (ASTM B850-98(2009), a plater's copy)", () => {
  it.each([
    [320, undefined, 8],
    [290, undefined, 0],
    [320, 650, 22],
  ])('core %d, case %s: %d h', (hardness, caseHardness, hours) => {
    const part = { ...bored, material: { ...bored.material, hardness } }
    const request = caseHardness === undefined ? bore : { ...bore, caseHardness }
    expect(planPlating(part, request).plating.bake.hours).toBe(hours)
    expect(codes(part, request).includes('note plating/bake')).toBe(hours > 0)
  })
  it('cannot be told without a hardness', () => {
    const { hardness: _unknown, ...material } = bored.material
    expect(codes({ ...bored, material }, bore)).toContain('error plating/bake-unknown')
  })
  it('would soften a carburised case: a warning', () => {
    const part: Part = {
      ...bored,
      material: { grade: '16MnCr5', written: '16MnCr5' },
      hardening: { process: 'carburising', masked: [], path: '/hardening' },
    }
    expect(codes(part, { ...bore, caseHardness: 700 })).toContain('warning plating/bake')
  })
})

describe('what to look out for', () => {
  it('port edges that are not broken before plating', () => {
    expect(codes(ported, bore)).toContain('warning plating/port-edges')
    expect(codes(ported, { ...bore, portChamfer: 0.5 })).not.toContain('warning plating/port-edges')
    expect(codes(bored, bore)).not.toContain('warning plating/port-edges')
  })
  it('a thickness outside the usual', () => {
    expect(codes(bored, { ...bore, thickness: 0.095 })).toContain('warning plating/thickness')
    expect(codes(bored, { ...bore, thickness: 0.089 })).not.toContain('warning plating/thickness')
  })
  it('plating over a case', () => {
    expect(codes(bored, { ...bore, caseHardness: 650 })).toContain('warning plating/on-case')
    expect(codes(bored, bore)).not.toContain('warning plating/on-case')
  })
  it('aluminium that takes chrome badly, and free-cutting steel', () => {
    const of = (grade: string): Part => ({ ...bored, material: { ...bored.material, grade } })
    expect(codes(of('EN AW-6082'), { ...bore, coating: 'hard chrome' })).toContain('warning plating/material')
    expect(codes(of('EN AW-6082'), bore)).not.toContain('warning plating/material')
    expect(codes(of('11SMn30'), bore)).toContain('warning plating/material')
  })
  it('phosphate on chromium steel (Nevosad et al., J. Mater. Eng. Perform. 30 (2021) 8057: over 1 %)', () => {
    const of = (grade: string): Part => ({ ...bored, material: { ...bored.material, grade } })
    expect(phosphateFindings(of('31CrMoV9'), '/body/bore')).toHaveLength(1)
    expect(phosphateFindings(of('42CrMo4'), '/body/bore')[0]?.message).toContain('border')
    expect(phosphateFindings(of('C45'), '/body/bore')).toEqual([])
  })
})
