import { describe, expect, it } from 'vitest'
import { barBow, centringError } from '../../src/handbook/bar-allowance.ts'
import { barMass, blankLength, blankPitch, blanksFromBar, offcutLength } from '../../src/handbook/bar-cutting.ts'
import { BAR_FORMS, type BarForm, BRIGHT, CONTINUOUS_CAST, EXTRUDED, HOT_ROLLED } from '../../src/handbook/bar-stock.ts'
import { DENSITIES, densityOf } from '../../src/handbook/density.ts'
import { allowanceOfRevolution, spatialDeviation } from '../../src/handbook/machining-allowance.ts'
import { MATERIALS } from '../../src/handbook/material-rows.ts'
import { DELIVERED_HARDNESS } from '../../src/handbook/quenched-and-tempered.ts'
import { standardTolerance } from '../../src/handbook/standard-tolerance.ts'

describe('mass of bar', () => {
  // Published: mass table of round steel bar, kg/m at 7.85 g/cm³.
  it.each([
    [20, 2.466],
    [25, 3.853],
    [50, 15.41],
    [60, 22.2],
    [65, 26.05],
    [70, 30.21],
  ])('Ø%d has %d kg in a metre', (d, published) => {
    const places = String(published).split('.')[1]?.length ?? 0
    const found = barMass.value({ d, L: 1000, rho: 7.85 })
    expect(Math.abs(found - published)).toBeLessThanOrEqual(0.5 * 10 ** -Math.max(places, 2) + 1e-9)
  })

  it('of a blank, and of the ring that is left of it (derived: geometry)', () => {
    expect(barMass.value({ d: 65, L: 89.6, rho: 7.85 })).toBeCloseTo(2.334, 3)
    const ring = barMass.value({ d: 60, L: 85, rho: 7.85 }) - barMass.value({ d: 54, L: 85, rho: 7.85 })
    expect(ring).toBeCloseTo(0.3585, 4)
  })
})

describe('blanks from a 3 m bar (derived: geometry)', () => {
  it('gives 32 of 85 mm with 1.6 for facing and 3 for the saw, and leaves 130.8 mm', () => {
    const L_b = blankLength.value({ L: 85, a: 0.8, t: 0 })
    const p = blankPitch.value({ L_b, t: 0, k: 3 })
    expect(p).toBeCloseTo(89.6, 9)
    const n = blanksFromBar.value({ L: 3000, f: 2, r: 60, p })
    expect(n).toBe(32)
    expect(offcutLength.value({ L: 3000, f: 2, n, p })).toBeCloseTo(130.8, 9)
  })
})

describe('allowance of a bar for a sleeve, turned to 56.812 (derived: Kovan by hand)', () => {
  const rho_1 = barBow.value({ D_c: 1, L: 80 })
  const rho = spatialDeviation.value({ rho_1, rho_2: 250 })

  it('is 1.149 on diameter with the setting error of a machined surface', () => {
    expect(rho).toBeCloseTo(262.5, 1)
    const Z = allowanceOfRevolution.value({ Rz: 150, T: 150, rho, epsilon: 80 }) / 1000
    expect(Z).toBeCloseTo(1.149, 3)
    expect(56.812 + Z).toBeCloseTo(57.961, 3)
  })

  it('asks for 57.969 when centring counts the tolerance h11', () => {
    const rho_2 = centringError.value({ T_b: 1000 * standardTolerance(60, 11) })
    expect(rho_2).toBeCloseTo(254.5, 1)
    const worse = spatialDeviation.value({ rho_1, rho_2 })
    expect(56.812 + allowanceOfRevolution.value({ Rz: 150, T: 150, rho: worse, epsilon: 80 }) / 1000).toBeCloseTo(
      57.969,
      3,
    )
  })

  it('asks for 58.319 when the chuck grips a hot-rolled skin', () => {
    const Z = allowanceOfRevolution.value({ Rz: 150, T: 150, rho, epsilon: 370 }) / 1000
    expect(56.812 + Z).toBeCloseTo(58.319, 3)
  })
})

describe('lists of bar', () => {
  it.each([HOT_ROLLED, BRIGHT, CONTINUOUS_CAST, EXTRUDED])(
    '$name: sizes rise, tolerances never fall',
    (form: BarForm) => {
      for (const [index, size] of form.sizes.entries()) {
        const before = form.sizes[index - 1]
        if (!before) continue
        expect(size.diameter).toBeGreaterThan(before.diameter)
        expect(size.above + size.below).toBeGreaterThanOrEqual(before.above + before.below)
        expect(size.skin).toBeGreaterThanOrEqual(before.skin)
      }
    },
  )

  it('holds bright bar to h11: EN 10278 takes it from ISO 286', () => {
    for (const { diameter, above, below } of BRIGHT.sizes) {
      expect(above).toBe(0)
      expect(below).toBeCloseTo(standardTolerance(diameter, 11), 9)
    }
  })

  // Published: EN 10060 as reprinted by a rolling mill, normal tolerance.
  it.each([
    [16, 0.5],
    [25, 0.5],
    [26, 0.6],
    [35, 0.6],
    [50, 0.8],
    [52, 1],
    [80, 1],
    [85, 1.3],
    [100, 1.3],
    [120, 1.5],
    [130, 2],
  ])('rolls Ø%d to ±%d', (diameter, tolerance) => {
    const size = HOT_ROLLED.sizes.find(listed => listed.diameter === diameter)
    expect(size?.above).toBe(tolerance)
    expect(size?.below).toBe(tolerance)
  })

  it('names the forms of every material', () => {
    expect(Object.keys(BAR_FORMS).toSorted()).toEqual([...new Set(MATERIALS.map(({ group }) => group))].toSorted())
  })
})

describe('figures by grade', () => {
  it('has a density for every grade, and none for a name that is no grade', () => {
    expect(Object.keys(DENSITIES).toSorted()).toEqual(MATERIALS.map(({ grade }) => grade).toSorted())
    for (const { grade } of MATERIALS) expect(densityOf(grade)).toBeGreaterThan(2)
    expect(densityOf('4140')).toBe(7.84)
    expect(() => densityOf('unobtainium')).toThrow('no density for "unobtainium"')
  })

  it('delivers thicker bar softer', () => {
    for (const { rows } of Object.values(DELIVERED_HARDNESS)) {
      for (const [index, row] of rows.entries()) {
        const before = rows[index - 1]
        expect(row.least).toBeLessThan(row.most)
        if (!before) continue
        expect(row.over).toBe(before.upTo)
        expect(row.least).toBeLessThan(before.least)
        expect(row.most).toBeLessThan(before.most)
      }
    }
  })
})
