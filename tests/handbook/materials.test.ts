import { describe, expect, it } from 'vitest'
import { BAR_FORMS } from '../../src/handbook/bar-stock.ts'
import { CUTTING_FAMILY } from '../../src/handbook/cutting-grades.ts'
import { MATERIALS } from '../../src/handbook/material-rows.ts'
import { isNearName, MATERIAL_NAMES, materialOf } from '../../src/handbook/materials.ts'

describe('grades and their other names', () => {
  // Steel numbers by EN 10027-2; the American names are near equivalents, memory: SAE J404 and ASTM A29.
  it.each([
    ['1.7225', '42CrMo4'],
    ['4140', '42CrMo4'],
    ['1.8519', '31CrMoV9'],
    ['1.8550', '34CrAlNi7-10'],
    ['1.8507', '34CrAlMo5-10'],
    ['1.7131', '16MnCr5'],
    ['1045', 'C45'],
    ['52100', '100Cr6'],
    ['GG25', 'EN-GJL-250'],
    ['en aw 2618a', 'EN AW-2618A'],
    ['42CrMo4+QT', '42CrMo4'],
    // Memory: JIS G 4053, GOST 4543, BS 970, NF A 35-552, GB/T 3077; SUJ2 JIS G 4805; 12L14 ASTM A29.
    ['SCM 440', '42CrMo4'],
    ['38ХМ', '42CrMo4'],
    ['EN24', '34CrNiMo6'],
    ['40CAD6-12', '41CrAlMo7-10'],
    ['SACM645', '41CrAlMo7-10'],
    ['ШХ15', '100Cr6'],
    ['AISI 420', 'X20Cr13'],
    ['W.-Nr. 1.4034', 'X46Cr13'],
    ['12L14', '11SMnPb37'],
    ['АК4-1', 'EN AW-2618A'],
    ['LM13', 'AlSi12CuNiMg'],
    ['Rg7', 'CuSn7Zn4Pb7-C'],
  ])('%s is %s', (written, grade) => {
    expect(materialOf(written)?.grade).toBe(grade)
  })

  it('nothing near is taken for a grade', () => {
    for (const written of ['42CrMo5', '414', '41400', '', '+QT', 'steel']) expect(materialOf(written)).toBeUndefined()
  })

  it('a grade that is only near another is planned as it, and is told apart from its other names', () => {
    // 30CrMoV9 has more molybdenum than 31CrMoV9: memory, DIN 17211.
    expect(materialOf('30CrMoV9')?.grade).toBe('31CrMoV9')
    expect(isNearName('30CrMoV9')).toBe(true)
    expect(isNearName('1.8519')).toBe(false)
    expect(isNearName('unobtainium')).toBe(false)
  })

  it('every grade has cutting data, a density and a bar to buy', () => {
    for (const { grade, group } of MATERIALS) {
      expect(CUTTING_FAMILY[grade], grade).toBeDefined()
      expect(BAR_FORMS[group].length, grade).toBeGreaterThan(0)
    }
  })

  it('no name means two grades', () => {
    for (const { grade, aliases } of MATERIALS) {
      for (const name of [grade, ...aliases]) expect(materialOf(name)?.grade, name).toBe(grade)
    }
    expect(new Set(MATERIAL_NAMES).size).toBe(MATERIAL_NAMES.length)
  })
})
