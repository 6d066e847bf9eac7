import { describe, expect, it } from 'vitest'
import { allowanceOfRevolution, spatialDeviation } from '../../src/handbook/machining-allowance.ts'
import { standardTolerance } from '../../src/handbook/standard-tolerance.ts'
import { CHUCK_SETTING } from '../../src/handbook/surface-before.ts'

/** Derived: worked by hand with Kovan's formulas (memory: Kosilova & Meshcheryakov, vol. 1). */
describe('least allowance of a nitrided liner, ground outside on an expanding mandrel', () => {
  const rho = spatialDeviation.value({ rho_1: 30, rho_2: 25 })

  it('is 120.6 µm when the compound layer is kept', () => {
    expect(rho.toFixed(2)).toBe('39.05')
    expect(allowanceOfRevolution.value({ Rz: 20, T: 0, rho, epsilon: 10 }).toFixed(1)).toBe('120.6')
  })

  it('is 150.6 µm when a layer of 15 µm is removed', () => {
    expect(allowanceOfRevolution.value({ Rz: 20, T: 15, rho, epsilon: 10 }).toFixed(1)).toBe('150.6')
  })

  it('grows with the diameter', () => {
    // ρ = sqrt((0.5·D + 5)² + 20²), ε 10, Rz 20, T 10; nominal adds half of IT9 and IT6, the largest the whole of both.
    const scan = [
      [25, 26.6, 116.8, 149.3, 181.8],
      [40, 32.0, 127.1, 166.1, 205.1],
      [50, 36.1, 134.8, 173.8, 212.8],
      [60, 40.3, 143.1, 189.6, 236.1],
    ] as const
    for (const [D, rho, least, nominal, most] of scan) {
      const deviation = spatialDeviation.value({ rho_1: 0.5 * D + 5, rho_2: 20 })
      expect(deviation.toFixed(1)).toBe(rho.toFixed(1))
      const Z = allowanceOfRevolution.value({ Rz: 20, T: 10, rho: deviation, epsilon: 10 })
      expect(Z.toFixed(1)).toBe(least.toFixed(1))
      const grade = (number: 6 | 9) => standardTolerance(D, number) ?? Number.NaN
      const [delta_1, delta_2] = [grade(9), grade(6)]
      expect((Z + 1000 * (delta_1 + delta_2)).toFixed(1)).toBe(most.toFixed(1))
      expect((Z + (1000 * (delta_1 + delta_2)) / 2).toFixed(1)).toBe(nominal.toFixed(1))
    }
  })
})

describe('bar for a sleeve, worked backward: derived with the same formulas', () => {
  it('is semi-finish turned 0.332 over its finished size from a bar 1.149 larger again', () => {
    const bar = spatialDeviation.value({ rho_1: 80, rho_2: 250 })
    expect(bar.toFixed(1)).toBe('262.5')
    const left = 0.06 * bar
    const finish = allowanceOfRevolution.value({ Rz: 63, T: 60, rho: left, epsilon: 40 }) / 1000
    expect(finish.toFixed(3)).toBe('0.332')
    const rough = allowanceOfRevolution.value({ Rz: 150, T: 150, rho: bar, epsilon: 80 }) / 1000
    expect(rough.toFixed(3)).toBe('1.149')
  })
})

describe('table of chuck setting', () => {
  it('meet without gap or overlap and never decrease', () => {
    for (const [index, row] of CHUCK_SETTING.slice(1).entries()) {
      const before = CHUCK_SETTING[index]
      expect(row.over).toBe(before?.upTo)
      expect(row.finishMachined).toBeGreaterThan(before?.finishMachined ?? Infinity)
      expect(row.machined).toBe(2 * row.finishMachined)
      expect(row.hotRolled).toBeGreaterThan(row.machined)
    }
  })
})
