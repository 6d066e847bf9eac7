import { type Formula, formula, type Input } from '../formula.ts'

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

const F_z: Input<'N'> = { meaning: 'centrifugal force of all jaws', unit: 'N', from: 0 }

export const forceOfJaws: Formula<{ F_req: 'N'; S_sp: ''; F_z: 'N' }, 'N'> = formula({
  symbol: 'F_0',
  meaning: 'force of all jaws together to set at standstill, gripping from outside',
  unit: 'N',
  expression: 'S_sp * (F_req + F_z)',
  inputs: {
    F_req: { meaning: 'force needed at speed, without the safety of the setting', unit: 'N', from: 0 },
    S_sp: { meaning: 'safety of the setting', unit: '', from: 1 },
    F_z,
  },
  source: 'VDI 3106 as quoted in chuck manuals',
  example: { given: { F_req: 4500, S_sp: 1.5, F_z: 27_018 }, gives: 47_277, digits: 0 },
  value: ({ F_req, S_sp, F_z }) => S_sp * (F_req + F_z),
})

export const gripAtSpeed: Formula<{ F_0: 'N'; F_z: 'N'; N: '' }, 'N'> = formula({
  symbol: 'F_n',
  meaning: 'force that each jaw has left at speed',
  unit: 'N',
  expression: '(F_0 - F_z) / N',
  inputs: {
    F_0: { meaning: 'force of all jaws together at standstill', unit: 'N', from: 0 },
    F_z,
    N: { meaning: 'jaws', unit: '', from: 2, upTo: 12, whole: true },
  },
  source: 'derived: mechanics; signs as in chuck manuals that quote VDI 3106',
  example: { given: { F_0: 47_277, F_z: 27_018, N: 3 }, gives: 6753, digits: 0 },
  value: ({ F_0, F_z, N }) => (F_0 - F_z) / N,
})
