import { type Formula, formula, type Input } from '../formula.ts'
import type { CuttingFamily } from './cutting-grades.ts'

/**
 * What jaws must press with so that a part does not slip in them and does not tilt out of them, in the lathe and on the rotary.
 * Forces are sums over all jaws. Safety 1.5 on the cut and 1.5 on the setting, once, on the load: VDI 3106 as quoted in chuck
 * manuals.
 */
export const HOLDING = {
  safety: 2.25,
  settingSafety: 1.5,
  jaws: 3,
  /** Passive and feed force over the cutting force. Common practice, no source. */
  passive: 0.4,
  /** Manual scroll chuck of 200, sum of all jaws, N. Source: memory, the middle of makers' lists, 35 to 45 kN. */
  capacity: 40_000,
  /** What a works sets jaws to that says nothing: a manual chuck is not set by feel under about 2 kN. Common practice, no source. */
  unsaid: 6000,
  /** Grip over the blank's length, and its ends, mm: roughing wants 0.3 of the overhang. Common practice, no source. */
  grip: { share: 0.3, least: 6, most: 30, clear: 2 },
  /** Overhang over the gripped diameter that wants a tail centre. Source: two chuck makers' manuals; 3 common practice. */
  overhang: 3,
} as const

/** Jaws that are bored to what they hold. */
export type BoredJaws = 'bored soft jaws' | 'pie jaws'

/** A jaw with its base jaw, kg, and how far its mass lies outside what it grips, mm. */
type Jaw = { readonly mass: number; readonly outward: number }

/**
 * A chuck of 200 has jaws of 0.9 to 1.2 kg at 65 to 80 mm; aluminium pie jaws have 0.5 to 0.7 at 50 to 60. The arc that one
 * bored jaw covers, degrees. Common practice, no source.
 */
export const JAWS: Readonly<Record<'hard jaws', Jaw> & Record<BoredJaws, Jaw & { readonly arc: number }>> = {
  'hard jaws': { mass: 0.9, outward: 30 },
  'bored soft jaws': { mass: 0.9, outward: 30, arc: 60 },
  'pie jaws': { mass: 0.6, outward: 26, arc: 100 },
}

/** Raw bar in fine grip teeth; turned work in bored soft jaws, which count as smooth. */
const FRICTION = {
  bar: { tangential: 0.25, axial: 0.3, on: 'fine grip teeth on raw bar, tangential 0.25, axial 0.30' },
  turned: { tangential: 0.1, axial: 0.13, on: 'smooth jaws on turned work, tangential 0.10, axial 0.13' },
} as const

/** What remains of it on other metals than steel: the same table, 0.92 of brass; of ductile iron as of grey, an estimate. */
const FRICTION_SHARE: Readonly<Partial<Record<CuttingFamily, number>>> = {
  'grey iron': 0.8,
  'ductile iron': 0.8,
  aluminium: 0.97,
  'silicon aluminium': 0.97,
  bronze: 0.92,
}

export type Friction = { readonly tangential: number; readonly axial: number; readonly source: string }

export function jawFriction(surface: keyof typeof FRICTION, family: CuttingFamily): Friction {
  const share = FRICTION_SHARE[family] ?? 1
  const { tangential, axial, on } = FRICTION[surface]
  return {
    tangential: share * tangential,
    axial: share * axial,
    source: `table of a chuck maker, three editions: ${on}`,
  }
}

/**
 * Levers of the friction couple (k) and of the pressure that shifts along the grip (c): three jaws, alone and against a ring of
 * 0.4 of the diameter; a collet, which presses all round. Derived; k by linear programme.
 */
export const GRIP_LEVERS: Readonly<
  Record<'jaws' | 'jaws and ring' | 'collet', { readonly k: number; readonly c: number }>
> = {
  jaws: { k: 0.25, c: Math.sqrt(3) / 9 },
  'jaws and ring': { k: 0.4, c: Math.sqrt(3) / 9 },
  collet: { k: 1 / Math.PI, c: 2 / (3 * Math.PI) },
}

const S: Input<''> = { meaning: 'safety, on the cut and on the setting together', unit: '', from: 1, upTo: 5 }
const mu: Input<''> = { meaning: 'friction of the jaws along the circumference', unit: '', over: 0, upTo: 1 }
const mu_a: Input<''> = { meaning: 'friction of the jaws along the axis', unit: '', over: 0, upTo: 1 }
const d_g: Input<'mm'> = { meaning: 'diameter gripped', unit: 'mm', over: 0 }

export const momentOfCut: Formula<{ F_c: 'N'; d_c: 'mm' }, 'N m'> = formula({
  symbol: 'M',
  meaning: "moment of a turning cut about the part's axis",
  unit: 'N m',
  expression: 'F_c * d_c / 2000',
  inputs: {
    F_c: { meaning: 'cutting force', unit: 'N', from: 0 },
    d_c: { meaning: 'diameter cut', unit: 'mm', over: 0 },
  },
  source: 'derived: force by its radius',
  example: { given: { F_c: 1245, d_c: 70 }, gives: 43.575 },
  value: ({ F_c, d_c }) => (F_c * d_c) / 2000,
})

export const slipForce: Formula<{ S: ''; M: 'N m'; T: 'N'; mu: ''; mu_a: ''; d_g: 'mm' }, 'N'> = formula({
  symbol: 'F_slip',
  meaning: 'all jaws together, so that the part neither turns nor is pulled out',
  unit: 'N',
  expression: 'S * sqrt((2000 * M / (mu * d_g))^2 + (T / mu_a)^2)',
  inputs: {
    S,
    M: { meaning: "moment about the part's axis", unit: 'N m', from: 0 },
    T: { meaning: 'pull out of the jaws, or thrust into them; 0 where a stop takes it', unit: 'N', from: 0 },
    mu,
    mu_a,
    d_g,
  },
  source: 'derived: friction, the worst of turn and pull together',
  // 123 N·m and 5800 N, no stop: 18 823 N a jaw of three.
  example: { given: { S: 2.25, M: 123, T: 5800, mu: 0.28, mu_a: 0.28, d_g: 62 }, gives: 56_469, digits: 0 },
  value: ({ S, M, T, mu, mu_a, d_g }) => S * Math.hypot((2000 * M) / (mu * d_g), T / mu_a),
})

export const tiltForce: Formula<{ S: ''; P: 'N'; h: 'mm'; c: ''; l_g: 'mm'; k: ''; mu_a: ''; d_g: 'mm' }, 'N'> =
  formula({
    symbol: 'F_tilt',
    meaning: 'all jaws together, so that the part does not tilt out of them',
    unit: 'N',
    expression: 'S * P * h / (c * l_g + k * mu_a * d_g)',
    inputs: {
      S,
      P: { meaning: 'force square to the axis', unit: 'N', from: 0 },
      h: { meaning: 'its arm, from the middle of the grip', unit: 'mm', from: 0 },
      c: { meaning: 'share of the grip length that the pressure may shift', unit: '', over: 0, upTo: 1 },
      l_g: { meaning: 'length gripped', unit: 'mm', from: 0 },
      k: { meaning: 'lever of friction over the diameter', unit: '', over: 0, upTo: 1 },
      mu_a,
      d_g,
    },
    source: 'derived: rigid jaws, linear pressure, half of the grip unloaded; lever by linear programme',
    // Soft jaws 57.27, 960 and 384 N at 40 before 25 gripped.
    example: {
      given: { S: 2.25, P: 1033.95, h: 52.5, c: 0.19245, l_g: 25, k: 0.25, mu_a: 0.13, d_g: 57.27 },
      gives: 18_304,
      digits: 0,
    },
    value: ({ S, P, h, c, l_g, k, mu_a, d_g }) => (S * P * h) / (c * l_g + k * mu_a * d_g),
  })
