import { describe, expect, it } from 'vitest'
import { cuttingMaterial } from '../../src/cutting/cutting-material.ts'
import { drillThrustBand } from '../../src/cutting/drill-thrust-band.ts'
import { expectFigures } from '../handbook/four-figures.ts'
import { annealed, partOf } from './hand-made.ts'

const of = (part: ReturnType<typeof annealed>) => {
  const { material } = cuttingMaterial(part)
  if (!material) throw new Error('no material')
  return material
}

describe('thrust of a 2 mm drill at 0.04 mm, about 200 HB', () => {
  it('lies between Kienzle sharp and the handbook worn (Machinery’s Handbook, 31st ed., pp. 1152-1153: 175.7 N sharp)', () => {
    const { least, most } = drillThrustBand(of(annealed()), 2, 0.04, 126)
    expectFigures(least, 126 / 1.3)
    expectFigures(most, 1.3 * 175.7)
  })

  it('is between two hardnesses in proportion: 24 000 at 200, 31 000 at 300, so 29 950 at 285 HB', () => {
    const part = partOf({ material: { grade: '42CrMo4', written: '42CrMo4', hardness: 300 } })
    const ratio = drillThrustBand(of(part), 2, 0.04, 1).most / drillThrustBand(of(annealed()), 2, 0.04, 1).most
    expect(Math.abs(ratio - 29_950 / 24_000)).toBeLessThan(0.001)
  })

  it('knows only Kienzle outside steel', () => {
    const iron = of(partOf({ material: { grade: 'EN-GJL-250', written: 'EN-GJL-250' } }))
    expect(drillThrustBand(iron, 2, 0.04, 130)).toEqual({ least: 100, most: 130 })
  })
})
