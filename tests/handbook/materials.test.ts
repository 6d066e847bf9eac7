import { describe, expect, it } from 'vitest'
import { MATERIAL_NAMES, MATERIALS, materialOf } from '../../src/handbook/materials.ts'

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
  ])('%s is %s', (written, grade) => {
    expect(materialOf(written)?.grade).toBe(grade)
  })

  it('nothing near is taken for a grade', () => {
    for (const written of ['42CrMo', '42CrMo5', '414', '41400', '', '+QT', 'steel'])
      expect(materialOf(written)).toBeUndefined()
  })

  it('no name means two grades', () => {
    for (const { grade, aliases } of MATERIALS) {
      for (const name of [grade, ...aliases]) expect(materialOf(name)?.grade, name).toBe(grade)
    }
    expect(new Set(MATERIAL_NAMES).size).toBe(MATERIAL_NAMES.length)
  })
})
