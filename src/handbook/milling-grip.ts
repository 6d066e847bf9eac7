import { type Formula, formula, type Input } from '../formula.ts'
import type { CuttingFamily } from './cutting-grades.ts'

/**
 * What jaws must press with so that a part does not slip in them and does not tilt out of them. Source of the friction: the
 * table of one chuck maker, three editions alike, smooth jaws on a turned surface; soft jaws bored in place count as smooth.
 * By how much less other metals hold: the same table.
 */
export const JAW_FRICTION = {
  tangential: 0.1,
  axial: 0.13,
  source: 'table of a chuck maker, three editions: smooth jaws on turned work, tangential 0.10, axial 0.13',
} as const

export const FRICTION_SHARE: Readonly<Partial<Record<CuttingFamily, number>>> = {
  'grey iron': 0.8,
  aluminium: 0.97,
  'silicon aluminium': 0.97,
}

/** 1.5 on the cut and 1.5 on the setting, once, on the load: VDI 3106 as quoted in chuck manuals. */
export const GRIP_SAFETY = 2.25
/** What a works sets jaws to that says nothing: a manual chuck is not set by feel under about 2 kN. Common practice, no source. */
export const JAWS_SET = 6000
/**
 * Levers of the friction couple (k) and of the pressure that shifts along the grip (c), no ring to stop on: three jaws; a
 * collet, which presses all round. Derived.
 */
export const GRIP_LEVERS: Readonly<Record<'jaws' | 'collet', { readonly k: number; readonly c: number }>> = {
  jaws: { k: 0.25, c: Math.sqrt(3) / 9 },
  collet: { k: 1 / Math.PI, c: 2 / (3 * Math.PI) },
}

const S: Input<''> = { meaning: 'safety, on the cut and on the setting together', unit: '', from: 1, upTo: 5 }
const mu: Input<''> = { meaning: 'friction of the jaws, tangential', unit: '', over: 0, upTo: 1 }
const mu_a: Input<''> = { meaning: 'friction of the jaws, axial', unit: '', over: 0, upTo: 1 }
const d_g: Input<'mm'> = { meaning: 'diameter gripped', unit: 'mm', over: 0 }
const l_g: Input<'mm'> = { meaning: 'length gripped', unit: 'mm', from: 0 }

export const slipForce: Formula<{ S: ''; M: 'N m'; T: 'N'; mu: ''; mu_a: ''; d_g: 'mm' }, 'N'> = formula({
  symbol: 'F_slip',
  meaning: 'all jaws together, so that the part neither turns nor is pulled out',
  unit: 'N',
  expression: 'S * sqrt((2000 * M / (mu * d_g))^2 + (T / mu_a)^2)',
  inputs: {
    S,
    M: { meaning: "moment about the part's axis", unit: 'N m', from: 0 },
    T: { meaning: 'pull out of the jaws; 0 where a stop takes it', unit: 'N', from: 0 },
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
      c: { meaning: 'lever of the pressure along the grip', unit: '', over: 0, upTo: 1 },
      l_g,
      k: { meaning: 'lever of the friction couple', unit: '', over: 0, upTo: 1 },
      mu_a,
      d_g,
    },
    source: 'derived: rigid jaws, pressure linear along the grip',
    // Soft jaws 57.27, 960 and 384 N at 40 before 25 gripped.
    example: {
      given: { S: 2.25, P: 1033.95, h: 52.5, c: 0.19245, l_g: 25, k: 0.25, mu_a: 0.13, d_g: 57.27 },
      gives: 18_304,
      digits: 0,
    },
    value: ({ S, P, h, c, l_g, k, mu_a, d_g }) => (S * P * h) / (c * l_g + k * mu_a * d_g),
  })
