import { describe, expect, it } from 'vitest'
import { barDeflection, barStiffness, ELASTIC_MODULUS } from '../../src/handbook/boring-bar.ts'
import { specificCuttingForce } from '../../src/handbook/kienzle.ts'
import { expectFigures } from './four-figures.ts'

const { steel, carbide, quillSteel } = ELASTIC_MODULUS
const micrometres = (F: number, E: number): number => 1000 * barDeflection.value({ F, L: 110, E, d: 32 })

describe('deflection of a boring bar', () => {
  it('gives the published 0.0757 mm (Isakov, Cutting Tool Engineering, July 2019)', () => {
    expectFigures(barDeflection.value({ F: 911.1, L: 101.6, E: 206_000, d: 25.4 }), 0.0757, 3)
    expectFigures(barDeflection.value({ F: 911.1, L: 101.6, E: 206_000, d: 25.4 }), 0.07568)
  })

  it('bends 3 µm finishing and 20 µm roughing a bore of 42CrMo4, overhang 110 of a 32 mm bar (derived: worked by hand)', () => {
    const kc = (f: number): number =>
      specificCuttingForce.value({ kc11: 1775, mc: 0.24, h: f * Math.sin((95 * Math.PI) / 180), K: 1 })
    expectFigures(kc(0.1), 3087)
    const finishing = kc(0.1) * 0.1 * 0.25 * 1.2 * 1.3
    expectFigures(finishing, 120.4)
    expectFigures(0.6 * finishing, 72.25)
    expectFigures(micrometres(0.6 * finishing, steel), 3.023)
    expectFigures(micrometres(0.6 * finishing, carbide), 1.074)
    const roughing = kc(0.2) * 0.2 * 1.5 * 1.2 * 1.3
    expectFigures(roughing, 1223)
    expectFigures(0.4 * roughing, 489.4)
    expectFigures(micrometres(0.4 * roughing, steel), 20.48)
  })
})

describe('stiffness of bars and quills (derived: beam theory, worked by hand)', () => {
  it.each([
    [
      steel,
      32,
      [
        [3, 35.95],
        [4, 15.17],
        [6, 4.494],
      ],
    ],
    [
      carbide,
      32,
      [
        [4, 42.71],
        [6, 12.65],
        [8, 5.338],
      ],
    ],
    [
      quillSteel,
      12,
      [
        [3, 13.74],
        [4, 5.798],
        [6, 1.718],
      ],
    ],
    [
      quillSteel,
      16,
      [
        [3, 18.33],
        [4, 7.731],
        [6, 2.291],
      ],
    ],
    [
      quillSteel,
      20,
      [
        [3, 22.91],
        [4, 9.664],
        [6, 2.863],
      ],
    ],
    [
      quillSteel,
      25,
      [
        [3, 28.63],
        [4, 12.08],
        [6, 3.579],
      ],
    ],
  ] as const)('E %d, diameter %d', (E, d, rows) => {
    for (const [slenderness, k] of rows) expectFigures(barStiffness.value({ L: slenderness * d, E, d }), k)
  })

  it('is the reciprocal of the deflection under one newton', () => {
    const bar = { L: 77, E: steel, d: 19 }
    expect(barStiffness.value(bar) * 1000 * barDeflection.value({ F: 1, ...bar })).toBeCloseTo(1, 12)
  })
})
