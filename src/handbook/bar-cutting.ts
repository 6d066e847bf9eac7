import { type Formula, formula } from '../formula.ts'

/** What is sawn off a bar: blanks at a pitch, from a trimmed end to the stub that the vice or chuck keeps. */
export const blankLength: Formula<{ L: 'mm'; a: 'mm'; t: 'mm' }, 'mm'> = formula({
  symbol: 'L_b',
  meaning: 'length to set at the saw',
  unit: 'mm',
  expression: 'L + 2 * a + t / 2',
  inputs: {
    L: { meaning: 'longest length that rough turning leaves', unit: 'mm', over: 0 },
    a: { meaning: 'facing allowance of one end', unit: 'mm', from: 0 },
    t: { meaning: 'tolerance of the sawn length', unit: 'mm', from: 0 },
  },
  source: 'derived: geometry; the shortest blank still has both facing allowances',
  example: { given: { L: 85, a: 0.8, t: 0 }, gives: 86.6 },
  value: ({ L, a, t }) => L + 2 * a + t / 2,
})

export const blankPitch: Formula<{ L_b: 'mm'; t: 'mm'; k: 'mm' }, 'mm'> = formula({
  symbol: 'p',
  meaning: 'pitch of the blanks along the bar, at the longest',
  unit: 'mm',
  expression: 'L_b + t / 2 + k',
  inputs: {
    L_b: { meaning: 'length to set at the saw', unit: 'mm', over: 0 },
    t: { meaning: 'tolerance of the sawn length', unit: 'mm', from: 0 },
    k: { meaning: 'kerf', unit: 'mm', from: 0 },
  },
  source: 'derived: geometry',
  example: { given: { L_b: 86.6, t: 0, k: 3 }, gives: 89.6 },
  value: ({ L_b, t, k }) => L_b + t / 2 + k,
})

export const blanksFromBar: Formula<{ L: 'mm'; f: 'mm'; r: 'mm'; p: 'mm' }, 'pieces'> = formula({
  symbol: 'n',
  meaning: 'blanks from one bar',
  unit: 'pieces',
  expression: 'floor((L - f - r) / p)',
  inputs: {
    L: { meaning: 'length of the bar', unit: 'mm', over: 0 },
    f: { meaning: 'trimmed off the end of the bar first', unit: 'mm', from: 0 },
    r: { meaning: 'stub that stays in the vice', unit: 'mm', from: 0 },
    p: { meaning: 'pitch of the blanks', unit: 'mm', over: 0 },
  },
  source: 'derived: geometry',
  example: { given: { L: 3000, f: 2, r: 60, p: 89.6 }, gives: 32 },
  value: ({ L, f, r, p }) => Math.floor((L - f - r) / p),
})

export const offcutLength: Formula<{ L: 'mm'; f: 'mm'; n: 'pieces'; p: 'mm' }, 'mm'> = formula({
  symbol: 'o',
  meaning: 'left of a bar, stub and all',
  unit: 'mm',
  expression: 'L - f - n * p',
  inputs: {
    L: { meaning: 'length of the bar', unit: 'mm', over: 0 },
    f: { meaning: 'trimmed off the end of the bar first', unit: 'mm', from: 0 },
    n: { meaning: 'blanks cut from it', unit: 'pieces', from: 0, whole: true },
    p: { meaning: 'pitch of the blanks', unit: 'mm', over: 0 },
  },
  source: 'derived: geometry',
  example: { given: { L: 3000, f: 2, n: 32, p: 89.6 }, gives: 130.8 },
  value: ({ L, f, n, p }) => L - f - n * p,
})

export const barMass: Formula<{ d: 'mm'; L: 'mm'; rho: 'g/cm³' }, 'kg'> = formula({
  symbol: 'm',
  meaning: 'mass of a round bar',
  unit: 'kg',
  expression: 'pi / 4 * d^2 * L * rho * 1e-6',
  inputs: {
    d: { meaning: 'diameter', unit: 'mm', over: 0 },
    L: { meaning: 'length', unit: 'mm', over: 0 },
    rho: { meaning: 'density', unit: 'g/cm³', over: 0 },
  },
  source: 'derived: geometry',
  example: { given: { d: 65, L: 3000, rho: 7.85 }, gives: 78.15 },
  value: ({ d, L, rho }) => (Math.PI / 4) * d ** 2 * L * rho * 1e-6,
})
