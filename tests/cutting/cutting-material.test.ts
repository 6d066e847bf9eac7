import { describe, expect, it } from 'vitest'
import { cuttingMaterial } from '../../src/cutting/cutting-material.ts'
import { planCutting } from '../../src/cutting/plan-cutting.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { partOf, stateOf, tube } from './hand-made.ts'

const of = (grade: string, hardness?: number) =>
  cuttingMaterial(partOf({ material: { grade, written: grade, ...(hardness === undefined ? {} : { hardness }) } }))

describe('the rows that a material is cut by', () => {
  it('are chosen by hardness, converted by DIN 50150: 300 HV is 285 HB, material group 8', () => {
    const { material, findings } = of('42CrMo4', 300)
    expect(findings).toEqual([])
    expect(material?.HB).toBeCloseTo(285, 0)
    expect(material?.force.group).toBe(8)
    expect(material?.milling?.feed).toBe(0.004)
  })

  it('are another for the same steel annealed', () => {
    expect(of('42CrMo4', 210).material).toMatchObject({ force: { group: 6 }, milling: { feed: 0.005 } })
  })

  it('are slower for nitriding steels with aluminium', () => {
    const [plain, aluminium] = [of('31CrMoV9', 300).material, of('34CrAlNi7-10', 300).material]
    expect(aluminium?.turning.at[0]?.speed).toBeCloseTo(0.85 * (plain?.turning.at[0]?.speed ?? 0), 9)
  })

  it('need no hardness for iron, aluminium and bronze', () => {
    for (const grade of ['EN-GJL-250', 'EN-GJS-600-3', 'EN AW-6082', 'CuSn8']) {
      expect(of(grade).findings, grade).toEqual([])
      expect(of(grade).material, grade).toBeDefined()
    }
  })

  it('are asked for where a steel gives no hardness', () => {
    const { material, findings } = of('42CrMo4')
    expect(material).toBeUndefined()
    expect(findings[0]).toMatchObject({ code: 'cutting/hardness-missing', severity: 'error' })
  })

  it('are never guessed for a grade without data, nor for one too hard', () => {
    expect(of('Ni-Mo alloyed iron', 180).findings[0]).toMatchObject({ code: 'cutting/no-data', severity: 'error' })
    expect(of('42CrMo4', 450).findings[0]?.message).toContain('no cutting data for 42CrMo4 at 428 HB')
  })

  it('leave the plan without steps, not without an answer', () => {
    const part = partOf({ material: { grade: 'Ni-Mo alloyed iron', written: 'Ni-Mo alloyed iron' } })
    const plan = planCutting({
      part,
      shop: BUILT_IN_SHOP,
      states: [stateOf('rough-turn', tube(65, 40), tube(61, 46))],
      ports: [],
      start: 5,
    })
    expect(plan.steps.size).toBe(0)
    expect(plan.time.get(10)).toEqual({ setup: 0, each: 0, batch: 0 })
    expect(plan.findings.map(({ code }) => code)).toEqual(['cutting/no-data'])
  })
})
