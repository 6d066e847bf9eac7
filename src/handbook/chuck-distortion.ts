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

/** Bored soft jaws: length on the part, mm, and the arc that each covers, degrees. Common practice, no source. */
export const SOFT_JAWS = { count: 3, length: 20, arc: 60 } as const
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

/** Safety: 1.5 on the cutting force and 1.5 on the setting make 2.25 (VDI 3106, as quoted in chuck manuals). */
export const jawForce: Formula<{ S: ''; F_c: 'N'; d_c: 'mm'; d_g: 'mm'; F_f: 'N'; mu: ''; N: '' }, 'N'> = formula({
  symbol: 'F',
  meaning: 'force that each jaw needs to hold against the cut',
  unit: 'N',
  expression: 'S * sqrt((F_c * d_c / d_g)^2 + F_f^2) / (mu * N)',
  inputs: {
    S: { meaning: 'safety', unit: '', from: 1 },
    F_c: { meaning: 'cutting force', unit: 'N', from: 0 },
    d_c: { meaning: 'diameter cut', unit: 'mm', over: 0 },
    d_g: { meaning: 'diameter gripped', unit: 'mm', over: 0 },
    F_f: { meaning: 'feed force, 0 where a stop takes it', unit: 'N', from: 0 },
    mu: { meaning: 'friction of the jaws: 0.15 to 0.20 for bored soft jaws', unit: '', over: 0 },
    N,
  },
  source: 'derived: friction; overhung work needs a check against tilting besides',
  example: { given: { S: 2, F_c: 50, d_c: 50, d_g: 56, F_f: 0, mu: 0.15, N: 3 }, gives: 198.4 },
  value: ({ S, F_c, d_c, d_g, F_f, mu, N }) => (S * Math.hypot((F_c * d_c) / d_g, F_f)) / (mu * N),
})

/** Lightens the grip from outside: set the chuck that much harder at standstill. From inside it tightens. */
export const jawPull: Formula<{ m: 'kg'; r: 'mm'; n: 'rpm' }, 'N'> = formula({
  symbol: 'F_z',
  meaning: 'centrifugal force of one jaw',
  unit: 'N',
  expression: 'm * r / 1000 * (2 * pi * n / 60)^2',
  inputs: {
    m: { meaning: 'mass of one jaw', unit: 'kg', over: 0 },
    r: { meaning: 'radius of its centre of mass', unit: 'mm', over: 0 },
    n: { meaning: 'spindle speed', unit: 'rpm', from: 0 },
  },
  source: 'derived: mechanics; signs as in chuck manuals that quote VDI 3106',
  example: { given: { m: 0.5, r: 60, n: 2000 }, gives: 1316 },
  value: ({ m, r, n }) => ((m * r) / 1000) * ((2 * Math.PI * n) / 60) ** 2,
})

const F_z: Input<'N'> = { meaning: 'centrifugal force of one jaw', unit: 'N', from: 0 }

export const jawSetting: Formula<{ F: 'N'; S_sp: ''; F_z: 'N' }, 'N'> = formula({
  symbol: 'F_set',
  meaning: 'force to set each jaw to at standstill, gripping from outside',
  unit: 'N',
  expression: 'F + S_sp * F_z',
  inputs: { F, S_sp: { meaning: 'safety of the setting', unit: '', from: 1 }, F_z },
  source: 'VDI 3106 as quoted in chuck manuals: the loss at speed is added before the safety of the setting',
  example: { given: { F: 600, S_sp: 1.5, F_z: 446 }, gives: 1269 },
  value: ({ F, S_sp, F_z }) => F + S_sp * F_z,
})

export const gripAtSpeed: Formula<{ F_set: 'N'; F_z: 'N' }, 'N'> = formula({
  symbol: 'F_n',
  meaning: 'force that each jaw has left at speed',
  unit: 'N',
  expression: 'F_set - F_z',
  inputs: { F_set: { meaning: 'force of each jaw at standstill', unit: 'N', from: 0 }, F_z },
  source: 'derived: mechanics; signs as in chuck manuals that quote VDI 3106',
  example: { given: { F_set: 1269, F_z: 446 }, gives: 823 },
  value: ({ F_set, F_z }) => F_set - F_z,
})
