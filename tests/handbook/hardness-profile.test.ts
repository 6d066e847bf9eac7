import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { depthToOrder } from '../../src/handbook/grinding-off-case.ts'
import {
  depthForHardness,
  hardnessAtDepth,
  profileScale,
  SHAPE,
  shareOfRise,
} from '../../src/handbook/hardness-profile.ts'
import {
  diffusionDistance,
  diffusionProfile,
  SIGMOID_MIDDLE,
  sigmoidProfile,
  sigmoidWidth,
} from './second-models/hardness-profile.ts'
import { expectDigits } from './to-the-digits.ts'

type Steel = { readonly H_s: number; readonly H_c: number }
const CR_MO: Steel = { H_s: 650, H_c: 320 }
const shareOf = ({ H_s, H_c }: Steel, H = H_c + 50): number => shareOfRise.value({ H, H_s, H_c })
const stretched = (steel: Steel, N: number, n: number, z: number): number =>
  hardnessAtDepth.value({ ...steel, z, n, w: profileScale.value({ N, p: shareOf(steel), n }) })
const diffusion = (steel: Steel, N: number, z: number): number =>
  diffusionProfile.value({ ...steel, x_0: diffusionDistance(shareOf(steel)), z, N })
const sigmoid = (steel: Steel, N: number, z: number): number =>
  sigmoidProfile.value({ ...steel, z, z_0: SIGMOID_MIDDLE * N, q: sigmoidWidth(N, shareOf(steel)) })

describe('profiles of a 42CrMo4 case, 650 over 320 HV, derived from the formulas apart from this code', () => {
  it('has the scales of the worked example', () => {
    expectDigits(profileScale.value({ N: 0.3, p: shareOf(CR_MO), n: 1 }), '0.1590')
    expectDigits(profileScale.value({ N: 0.3, p: shareOf(CR_MO), n: 2 }), '0.2184')
    expectDigits(profileScale.value({ N: 0.3, p: shareOf(CR_MO), n: 1.7 }), '0.2065')
    expectDigits(profileScale.value({ N: 0.5, p: shareOf(CR_MO), n: 1 }), '0.2650')
    expectDigits(profileScale.value({ N: 0.5, p: shareOf(CR_MO), n: 2 }), '0.3640')
    expectDigits(profileScale.value({ N: 0.5, p: shareOf(CR_MO), n: 1.7 }), '0.3441')
    expectDigits(diffusionDistance(shareOf(CR_MO)), '1.0141')
    expectDigits(sigmoidWidth(0.3, shareOf(CR_MO)), '0.06387')
  })

  it('has the hardness of the worked points', () => {
    expectDigits(stretched(CR_MO, 0.3, 1.7, 0.1), '566.5')
    expectDigits(stretched(CR_MO, 0.3, 1.7, 0.1375), '520.0')
    expectDigits(stretched(CR_MO, 0.5, 1.7, 0.1), '612.0')
    expectDigits(stretched(CR_MO, 0.3, 1, 0.1), '495.9')
    expectDigits(stretched(CR_MO, 0.3, 2, 0.1), '587.6')
    expectDigits(diffusion(CR_MO, 0.3, 0.1), '528.8')
    expectDigits(sigmoid(CR_MO, 0.3, 0.1), '596.1')
  })

  // Exponential, error function, Gauss, sigmoid, for 0.3 mm and then for 0.5 mm.
  const MODELS: readonly (readonly [number, string, string, string, string, string, string, string, string])[] = [
    [0, '650', '650', '650', '650', '650', '650', '650', '650'],
    [0.05, '561', '588', '633', '631', '593', '612', '644', '640'],
    [0.1, '496', '529', '588', '596', '546', '575', '626', '625'],
    [0.15, '448', '476', '526', '542', '507', '540', '598', '605'],
    [0.2, '414', '432', '463', '475', '475', '507', '564', '577'],
    [0.25, '388', '397', '409', '413', '448', '476', '526', '542'],
    [0.3, '370', '370', '370', '370', '426', '449', '487', '502'],
    [0.4, '347', '338', '332', '332', '393', '403', '419', '425'],
    [0.5, '334', '326', '322', '323', '370', '370', '370', '370'],
  ]
  it.each(MODELS)('at %d mm', (z, ...printed) => {
    const found = [0.3, 0.5].flatMap(N => [
      stretched(CR_MO, N, 1, z),
      diffusion(CR_MO, N, z),
      stretched(CR_MO, N, 2, z),
      sigmoid(CR_MO, N, z),
    ])
    found.forEach((value, index) => {
      expectDigits(value, printed[index] ?? '')
    })
  })

  // Low, expected, high and error function, where 0.2 mm on diameter is ground off with 0.0375 of run-out and distortion.
  const GROUND: readonly (readonly [number, number, string, string, string, string])[] = [
    [0.3, 0.0625, '542.7', '609.4', '624.0', '572.5'],
    [0.3, 0.1, '495.9', '566.5', '587.6', '528.8'],
    [0.3, 0.1375, '459.0', '520.0', '542.0', '488.6'],
    [0.5, 0.0625, '580.7', '632.3', '640.4', '603.0'],
    [0.5, 0.1, '546.3', '612.0', '626.0', '575.5'],
    [0.5, 0.1375, '516.4', '587.4', '606.1', '548.8'],
  ]
  it.each(GROUND)('%d mm case, %d mm off', (N, s, low, expected, high, error) => {
    expectDigits(stretched(CR_MO, N, SHAPE.low, s), low)
    expectDigits(stretched(CR_MO, N, SHAPE.expected, s), expected)
    expectDigits(stretched(CR_MO, N, SHAPE.high, s), high)
    expectDigits(diffusion(CR_MO, N, s), error)
  })
  it.each([
    [0.3, '498.7', '569.6', '590.4'],
    [0.4, '528.3', '598.1', '615.0'],
  ])('%d mm case, 0.0975 off', (N, low, expected, high) => {
    expectDigits(stretched(CR_MO, N, SHAPE.low, 0.0975), low)
    expectDigits(stretched(CR_MO, N, SHAPE.expected, 0.0975), expected)
    expectDigits(stretched(CR_MO, N, SHAPE.high, 0.0975), high)
  })
})

describe('other steels at the ground surface, low / expected / high (derived)', () => {
  const ROWS: readonly (readonly [string, Steel, number, readonly string[]])[] = [
    ['31CrMoV9', { H_s: 800, H_c: 340 }, 0.3, ['708/780/790', '658/754/772', '560/666/699', '492/572/604']],
    ['31CrMoV9', { H_s: 800, H_c: 340 }, 0.4, ['729/788/794', '689/771/784', '604/713/740', '540/643/677']],
    ['31CrMoV9', { H_s: 800, H_c: 340 }, 0.5, ['743/792/796', '708/780/790', '635/738/761', '576/685/717']],
    ['34CrAlNi7-10', { H_s: 950, H_c: 300 }, 0.3, ['803/918/934', '724/875/905', '576/737/789', '480/595/642']],
    ['34CrAlNi7-10', { H_s: 950, H_c: 300 }, 0.5, ['857/936/944', '803/918/934', '689/850/887', '601/767/816']],
    ['38MnVS6', { H_s: 520, H_c: 260 }, 0.3, ['480/512/516', '458/500/508', '410/462/476', '374/417/432']],
  ]
  it.each(ROWS)('%s', (_grade, steel, N, cells) => {
    const depths = [0.03, 0.05, 0.1, 0.15]
    cells.forEach((cell, index) => {
      const found = [SHAPE.low, SHAPE.expected, SHAPE.high].map(n => stretched(steel, N, n, depths[index] ?? 0))
      cell.split('/').forEach((printed, place) => {
        expectDigits(found[place] ?? 0, printed)
      })
    })
  })
})

describe('always', () => {
  const steel = fc
    .record({
      H_c: fc.double({ min: 200, max: 400, noNaN: true }),
      rise: fc.double({ min: 125, max: 700, noNaN: true }),
    })
    .map(({ H_c, rise }) => ({ H_s: H_c + rise, H_c }))
  const depth = fc.double({ min: 0.05, max: 1, noNaN: true })
  const shape = fc.double({ min: 0.8, max: 4, noNaN: true })
  const MODELS = {
    stretched: (of: Steel, N: number, z: number, n: number) => stretched(of, N, n, z),
    diffusion: (of: Steel, N: number, z: number) => diffusion(of, N, z),
    sigmoid: (of: Steel, N: number, z: number) => sigmoid(of, N, z),
  }

  it.each(Object.entries(MODELS))(
    '%s: surface hardness at the surface, core + 50 at the depth, never harder deeper',
    (_name, model) => {
      const holds = fc.property(steel, depth, shape, fc.double({ min: 0, max: 1, noNaN: true }), (of, N, n, share) => {
        expect(model(of, N, 0, n)).toBeCloseTo(of.H_s, 6)
        expect(model(of, N, N, n)).toBeCloseTo(of.H_c + 50, 6)
        const z = share * 2 * N
        expect(model(of, N, z + 0.01, n)).toBeLessThanOrEqual(model(of, N, z, n) + 1e-9)
      })
      fc.assert(holds)
    },
  )

  it('low is low above the hardness depth, and high above low beyond it turns round', () => {
    expect(stretched(CR_MO, 0.3, SHAPE.low, 0.2)).toBeLessThan(stretched(CR_MO, 0.3, SHAPE.high, 0.2))
    expect(stretched(CR_MO, 0.3, SHAPE.low, 0.4)).toBeGreaterThan(stretched(CR_MO, 0.3, SHAPE.high, 0.4))
  })

  it('a case ordered for a hardness has it where most is taken off', () => {
    const holds = fc.property(
      steel,
      fc.double({ min: 0.01, max: 0.3, noNaN: true }),
      fc.double({ min: 0.05, max: 0.95, noNaN: true }),
      (of, s, q) => {
        const N = depthForHardness.value({ s, p: shareOf(of), q, n: SHAPE.expected })
        expect(stretched(of, N, SHAPE.expected, s)).toBeCloseTo(of.H_c + q * (of.H_s - of.H_c), 6)
      },
    )
    fc.assert(holds)
  })

  it('orders the depth asked and what is taken off', () => {
    expectDigits(depthToOrder.value({ N_f: 0.2, s_max: 0.0975 }), '0.2975')
    expectDigits(depthToOrder.value({ N_f: 0.2, s_max: 0.1375 }), '0.3375')
  })
})
