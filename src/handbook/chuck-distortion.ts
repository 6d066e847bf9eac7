import { type Formula, formula, type Input } from '../formula.ts'
import { CUTTING_FAMILY, type CuttingFamily } from './cutting-grades.ts'

/**
 * A thin ring in N jaws that press evenly. Bored round while it is held, it springs back lobed: large at the jaws, small
 * between them; turned on an expanding mandrel, the signs are the other way about. Holds from R/t of about 5; with shear
 * and hoop stiffness a ring of R/t 9 moves 3.6 % more. A two-point gauge sees a tenth of three lobes: only a three-point
 * gauge or a roundness instrument shows them.
 */
const RING =
  'derived: thin ring without extension, as in handbooks of ring formulas; a published study met it within 6 %'

const F: Input<'N'> = { meaning: 'force of one jaw', unit: 'N', from: 0 }
const R: Input<'mm'> = { meaning: 'mean radius of the wall', unit: 'mm', over: 0 }
const t: Input<'mm'> = { meaning: 'wall, after the cut', unit: 'mm', over: 0 }
const b: Input<'mm'> = { meaning: 'length that carries the load', unit: 'mm', over: 0 }
const E: Input<'N/mm²'> = { meaning: 'elastic modulus: 210000 for steel', unit: 'N/mm²', over: 0 }
const N: Input<''> = { meaning: 'jaws, evenly spaced', unit: '', from: 2, upTo: 12, whole: true }

export const inwardAtJaw: Formula<{ F: 'N'; R: 'mm'; t: 'mm'; b: 'mm'; E: 'N/mm²'; N: '' }, 'mm'> = formula({
  symbol: 'delta_L',
  meaning: 'inward movement of the wall at a jaw',
  unit: 'mm',
  expression: '12 * F * R^3 / (4 * E * b * t^3) * (pi / N / sin(pi / N)^2 + cot(pi / N) - 2 * N / pi)',
  inputs: { F, R, t, b, E, N },
  source: RING,
  example: { given: { F: 1000, R: 26.5, t: 3, b: 80, E: 210_000, N: 3 }, gives: 0.007847 },
  value: ({ F, R, t, b, E, N }) => {
    const θ = Math.PI / N
    return ((12 * F * R ** 3) / (4 * E * b * t ** 3)) * (θ / Math.sin(θ) ** 2 + 1 / Math.tan(θ) - 2 / θ)
  },
})

export const outwardBetweenJaws: Formula<{ F: 'N'; R: 'mm'; t: 'mm'; b: 'mm'; E: 'N/mm²'; N: '' }, 'mm'> = formula({
  symbol: 'delta_M',
  meaning: 'outward movement of the wall midway between jaws',
  unit: 'mm',
  expression:
    '12 * F * R^3 / (4 * E * b * t^3) * (2 * N / pi - 1 / sin(pi / N) - pi / N * cos(pi / N) / sin(pi / N)^2)',
  inputs: { F, R, t, b, E, N },
  source: RING,
  example: { given: { F: 1000, R: 26.5, t: 3, b: 80, E: 210_000, N: 3 }, gives: 0.007019 },
  value: ({ F, R, t, b, E, N }) => {
    const θ = Math.PI / N
    const shape = 2 / θ - 1 / Math.sin(θ) - (θ * Math.cos(θ)) / Math.sin(θ) ** 2
    return ((12 * F * R ** 3) / (4 * E * b * t ** 3)) * shape
  },
})

export const lobing: Formula<{ delta_L: 'mm'; delta_M: 'mm'; k: '' }, 'mm'> = formula({
  symbol: 'Delta',
  meaning: 'lobes that are left after release, radial, peak to valley',
  unit: 'mm',
  expression: 'k * (delta_L + delta_M)',
  inputs: {
    delta_L: { meaning: 'inward movement at a jaw', unit: 'mm', from: 0 },
    delta_M: { meaning: 'outward movement midway', unit: 'mm', from: 0 },
    k: { meaning: 'share that wide jaws leave of it: 1 for narrow ones', unit: '', from: 0, upTo: 1 },
  },
  source: RING,
  example: { given: { delta_L: 0.007847, delta_M: 0.007019, k: 1 }, gives: 0.014866 },
  value: ({ delta_L, delta_M, k }) => k * (delta_L + delta_M),
})

/** Of a long liner the jaws load little more than what they grip. For a grip at one end; midway it is stiffer. */
export const loadedLength: Formula<{ l_j: 'mm'; R: 'mm'; L: 'mm' }, 'mm'> = formula({
  symbol: 'b_eff',
  meaning: 'length that carries the load of jaws at one end',
  unit: 'mm',
  expression: 'min(l_j + 0.43 * R, L)',
  inputs: {
    l_j: { meaning: 'length of the jaws on the part', unit: 'mm', over: 0 },
    R,
    L: { ...b, meaning: 'length' },
  },
  source: 'derived: fitted to 16 thin-shell solutions, R 15 to 32, jaws 12 to 30, wall 3, length 80 mm',
  example: { given: { l_j: 20, R: 26.5, L: 80 }, gives: 31.4, digits: 1 },
  value: ({ l_j, R, L }) => Math.min(l_j + 0.43 * R, L),
})

/** For a jaw bored to the radius of the part. Three jaws of 120° would leave nothing. */
export const arcFactor: Formula<{ arc: 'deg' }, ''> = formula({
  symbol: 'k',
  meaning: 'share of the lobes that three wide jaws leave',
  unit: '',
  expression:
    'sum(map(0:19, f(m) = sin(3 * (2 * m + 1) * arc * pi / 360) / (3 * (2 * m + 1) * arc * pi / 360) / (9 * (2 * m + 1)^2 - 1)^2)) / sum(map(0:19, g(m) = 1 / (9 * (2 * m + 1)^2 - 1)^2))',
  inputs: { arc: { meaning: 'arc that one jaw covers', unit: 'deg', over: 0, under: 120 } },
  source: 'derived: Fourier series of the ring under even pressure over each arc',
  example: { given: { arc: 60 }, gives: 0.627 },
  value: ({ arc }) => {
    const β = (arc * Math.PI) / 360
    const odd = Array.from({ length: 20 }, (_, m) => 2 * m + 1)
    const weight = (m: number) => 1 / (9 * m ** 2 - 1) ** 2
    const wide = odd.reduce((sum, m) => sum + (weight(m) * Math.sin(3 * m * β)) / (3 * m * β), 0)
    return wide / odd.reduce((sum, m) => sum + weight(m), 0)
  },
})

const STIFFNESS: Readonly<Partial<Record<CuttingFamily, number>>> = {
  'grey iron': 110_000,
  'ductile iron': 170_000,
  aluminium: 70_000,
  'silicon aluminium': 75_000,
  bronze: 110_000,
}

/** N/mm². Steel: data sheets; aluminium: data sheets; iron and bronze: memory. */
export const elasticModulusOf = (grade: string): { readonly E: number; readonly source: string } => {
  const family = CUTTING_FAMILY[grade]
  const other = family && STIFFNESS[family]
  return { E: other ?? 210_000, source: other === undefined || family === 'aluminium' ? 'data sheets' : 'memory' }
}

/** The ring formulas hold from this ratio of mean radius to wall. */
export const THIN_RING = 5

export const forceForLobes: Formula<{ Delta: 'mm'; delta_1: 'mm' }, 'N'> = formula({
  symbol: 'F_most',
  meaning: 'force of each jaw that leaves no more than these lobes',
  unit: 'N',
  expression: 'Delta / delta_1',
  inputs: {
    Delta: { meaning: 'lobes allowed, radial, peak to valley', unit: 'mm', over: 0 },
    delta_1: { meaning: 'lobes that 1 N a jaw leaves', unit: 'mm', over: 0 },
  },
  source: 'derived: lobes go with the force',
  // 1000 N leave 0.014866 mm.
  example: { given: { Delta: 0.002, delta_1: 0.000014866 }, gives: 135, digits: 0 },
  value: ({ Delta, delta_1 }) => Delta / delta_1,
})
