import { type Formula, formula, type Input } from '../formula.ts'

/**
 * Jaws of a lathe chuck against the cut. Sums over all jaws. Friction: three editions of a chuck maker's table, tangential and
 * axial; safety 1.5 on the cut and 1.5 on the setting: VDI 3106 as quoted in chuck manuals.
 */
export const HOLDING = {
  safety: 2.25,
  settingSafety: 1.5,
  jaws: 3,
  /** Raw bar in fine grip teeth; turned work in bored soft jaws, which count as smooth. */
  friction: { bar: { tangential: 0.25, axial: 0.3 }, turned: { tangential: 0.1, axial: 0.13 } },
  /** What remains of it on other metals than steel. */
  metal: { iron: 0.8, aluminium: 0.97, bronze: 0.92 },
  /** Passive and feed force over the cutting force. Common practice, no source. */
  passive: 0.4,
  /** Lever of friction over the gripped diameter: jaws alone, and jaws against a ring of 0.4 of it. Derived: linear programme. */
  lever: { jaws: 0.25, ring: 0.4 },
  /** Share of grip length that the pressure may shift, three jaws. Derived: sqrt(3) / 9. */
  shift: 0.19245,
  /** Manual scroll chuck of 200, sum of all jaws, N. Source: memory, the middle of makers' lists, 35 to 45 kN. */
  capacity: 40_000,
  /** A jaw with its base jaw, kg, and how far its mass lies outside what it grips. Common practice, no source. */
  jawMass: 0.9,
  outward: 30,
  /** Grip over the blank's length, and its ends, mm: roughing wants 0.3 of the overhang. Common practice, no source. */
  grip: { share: 0.3, least: 6, most: 30, clear: 2 },
  /** Overhang over the gripped diameter that wants a tail centre. Source: two chuck makers' manuals; 3 common practice. */
  overhang: 3,
} as const

const S: Input<''> = { meaning: 'safety', unit: '', from: 1 }
const mu: Input<''> = { meaning: 'friction of the jaws along the circumference', unit: '', over: 0 }
const mu_a: Input<''> = { meaning: 'friction of the jaws along the axis', unit: '', over: 0 }
const d_g: Input<'mm'> = { meaning: 'diameter gripped', unit: 'mm', over: 0 }

export const slipOfTurning: Formula<{ S: ''; F_c: 'N'; d_c: 'mm'; mu: ''; d_g: 'mm'; F_f: 'N'; mu_a: '' }, 'N'> =
  formula({
    symbol: 'F_slip',
    meaning: 'force of all jaws together that keeps the work from turning or sliding in them, turning',
    unit: 'N',
    expression: 'S * sqrt((F_c * d_c / (mu * d_g))^2 + (F_f / mu_a)^2)',
    inputs: {
      S,
      F_c: { meaning: 'cutting force', unit: 'N', from: 0 },
      d_c: { meaning: 'diameter cut', unit: 'mm', over: 0 },
      mu,
      d_g,
      F_f: { meaning: 'feed force, 0 where a stop takes it', unit: 'N', from: 0 },
      mu_a,
    },
    source: 'derived: friction, both ways at once',
    example: { given: { S: 2.25, F_c: 1245, d_c: 70, mu: 0.25, d_g: 70, F_f: 0, mu_a: 0.3 }, gives: 11_205, digits: 0 },
    value: ({ S, F_c, d_c, mu, d_g, F_f, mu_a }) => S * Math.hypot((F_c * d_c) / (mu * d_g), F_f / mu_a),
  })

export const slipOfDrilling: Formula<{ S: ''; M: 'N m'; mu: ''; d_g: 'mm'; T: 'N'; mu_a: '' }, 'N'> = formula({
  symbol: 'F_drill',
  meaning: 'force of all jaws together that keeps the work from turning or sliding in them, drilling',
  unit: 'N',
  expression: 'S * sqrt((2000 * M / (mu * d_g))^2 + (T / mu_a)^2)',
  inputs: {
    S,
    M: { meaning: 'torque of the drill', unit: 'N m', from: 0 },
    mu,
    d_g,
    T: { meaning: 'thrust of the drill, 0 where a stop takes it', unit: 'N', from: 0 },
    mu_a,
  },
  source: 'derived: friction, both ways at once',
  example: { given: { S: 2.25, M: 123, mu: 0.28, d_g: 62, T: 5800, mu_a: 0.28 }, gives: 56_469, digits: 0 },
  value: ({ S, M, mu, d_g, T, mu_a }) => S * Math.hypot((2000 * M) / (mu * d_g), T / mu_a),
})

export const tiltOfTurning: Formula<{ S: ''; P: 'N'; a: 'mm'; l_g: 'mm'; c: ''; k: ''; mu_a: ''; d_g: 'mm' }, 'N'> =
  formula({
    symbol: 'F_tilt',
    meaning: 'force of all jaws together that keeps overhung work from tilting in them',
    unit: 'N',
    expression: 'S * P * (a + l_g / 2) / (c * l_g + k * mu_a * d_g)',
    inputs: {
      S,
      P: { meaning: 'force across the axis', unit: 'N', from: 0 },
      a: { meaning: 'from the jaws to the tool', unit: 'mm', from: 0 },
      l_g: { meaning: 'length gripped', unit: 'mm', over: 0 },
      c: { meaning: 'share of the grip length that the pressure may shift', unit: '', over: 0 },
      k: { meaning: 'lever of friction over the diameter: 0.25 for jaws alone, 0.4 against a ring', unit: '', over: 0 },
      mu_a,
      d_g,
    },
    source: 'derived: rigid jaws, linear pressure, half of the grip unloaded; lever by linear programme',
    example: {
      given: { S: 2.25, P: 1033.95, a: 95, l_g: 20, c: 0.19245, k: 0.25, mu_a: 0.3, d_g: 70 },
      gives: 26_846,
      digits: 0,
    },
    value: ({ S, P, a, l_g, c, k, mu_a, d_g }) => (S * P * (a + l_g / 2)) / (c * l_g + k * mu_a * d_g),
  })

export const forceOfJaws: Formula<{ F_req: 'N'; S_sp: ''; F_z: 'N' }, 'N'> = formula({
  symbol: 'F_0',
  meaning: 'force of all jaws together to set at standstill, gripping from outside',
  unit: 'N',
  expression: 'S_sp * (F_req + F_z)',
  inputs: {
    F_req: { meaning: 'force needed at speed, without the safety of the setting', unit: 'N', from: 0 },
    S_sp: { meaning: 'safety of the setting', unit: '', from: 1 },
    F_z: { meaning: 'centrifugal force of all jaws', unit: 'N', from: 0 },
  },
  source: 'VDI 3106 as quoted in chuck manuals',
  example: { given: { F_req: 4500, S_sp: 1.5, F_z: 27_018 }, gives: 47_277, digits: 0 },
  value: ({ F_req, S_sp, F_z }) => S_sp * (F_req + F_z),
})
