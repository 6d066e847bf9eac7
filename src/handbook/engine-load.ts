import { type Formula, formula, type Input } from '../formula.ts'

/** What loads an engine on trial, and what is read of it. */
const n: Input<'rpm'> = { meaning: 'speed', unit: 'rpm', over: 0 }

export const waterPower: Formula<{ Q: 'l/s'; H: 'm'; eta: '' }, 'kW'> = formula({
  symbol: 'P',
  meaning: 'power that a pump takes, water',
  unit: 'kW',
  expression: '9.80665 * Q * H / (1000 * eta)',
  inputs: {
    Q: { meaning: 'flow', unit: 'l/s', over: 0 },
    H: { meaning: 'head', unit: 'm', over: 0 },
    eta: { meaning: 'efficiency of the pump', unit: '', over: 0, upTo: 1 },
  },
  source: 'hydraulics textbook: ρ g Q H / η',
  example: { given: { Q: 8.5, H: 32, eta: 0.62 }, gives: 4.302 },
  value: ({ Q, H, eta }) => (9.80665 * Q * H) / (1000 * eta),
})

export const armPower: Formula<{ F: 'N'; F_0: 'N'; L: 'mm'; n: 'rpm' }, 'kW'> = formula({
  symbol: 'P',
  meaning: 'power on a brake with a reaction arm',
  unit: 'kW',
  expression: '2 * pi * n / 60 * (F - F_0) * L / 1000000',
  inputs: {
    F: { meaning: 'force at the end of the arm', unit: 'N', over: 0 },
    F_0: { meaning: 'the same with the engine still', unit: 'N' },
    L: { meaning: 'length of the arm, to the line of force', unit: 'mm', over: 0 },
    n,
  },
  source: 'mechanics textbook: torque by angular speed',
  example: { given: { F: 21.4, F_0: 0, L: 250, n: 4180 }, gives: 2.3418 },
  value: ({ F, F_0, L, n }) => (((2 * Math.PI * n) / 60) * (F - F_0) * L) / 1e6,
})

export const fuelFlow: Formula<{ V: 'cm³'; t: 's'; rho: 'g/cm³' }, 'kg/h'> = formula({
  symbol: 'm',
  meaning: 'fuel burnt in an hour',
  unit: 'kg/h',
  expression: '3.6 * rho * V / t',
  inputs: {
    V: { meaning: 'volume between the marks', unit: 'cm³', over: 0 },
    t: { meaning: 'time between the marks', unit: 's', over: 0 },
    rho: { meaning: 'density of the fuel', unit: 'g/cm³', over: 0 },
  },
  source: 'derived: mass by time',
  example: { given: { V: 25, t: 52.4, rho: 0.742 }, gives: 1.2744 },
  value: ({ V, t, rho }) => (3.6 * rho * V) / t,
})

export const specificFuel: Formula<{ m: 'kg/h'; P: 'kW' }, 'g/kWh'> = formula({
  symbol: 'b',
  meaning: 'fuel burnt for the work done',
  unit: 'g/kWh',
  expression: '1000 * m / P',
  inputs: {
    m: { meaning: 'fuel burnt in an hour', unit: 'kg/h', over: 0 },
    P: { meaning: 'power', unit: 'kW', over: 0 },
  },
  source: 'derived: fuel by power',
  example: { given: { m: 1.2744, P: 2.342 }, gives: 544.2, digits: 1 },
  value: ({ m, P }) => (1000 * m) / P,
})

export const tipMach: Formula<{ D: 'mm'; n: 'rpm'; t: '°C' }, ''> = formula({
  symbol: 'Ma',
  meaning: 'speed of the tip of a propeller by that of sound',
  unit: '',
  expression: 'pi * D / 1000 * n / 60 / (20.047 * sqrt(t + 273.15))',
  inputs: {
    D: { meaning: 'diameter', unit: 'mm', over: 0 },
    n,
    t: { meaning: 'temperature of the air', unit: '°C', from: -30, upTo: 60 },
  },
  source: 'gas dynamics textbook: speed of sound in dry air 20.047 √T m/s',
  example: { given: { D: 254, n: 11_000, t: 15 }, gives: 0.43 },
  value: ({ D, n, t }) => (((Math.PI * D) / 1000) * n) / 60 / (20.047 * Math.sqrt(t + 273.15)),
})

/** Three readings at equal times of what comes to rest by the same share in every one of them. */
const reading = (meaning: string): Input<'°C'> => ({ meaning, unit: '°C', from: -50, upTo: 1000 })

export const steadyEnd: Formula<{ T_1: '°C'; T_2: '°C'; T_3: '°C' }, '°C'> = formula({
  symbol: 'T_∞',
  meaning: 'temperature that three readings go to',
  unit: '°C',
  expression: '(T_1 * T_3 - T_2^2) / (T_1 + T_3 - 2 * T_2)',
  inputs: { T_1: reading('first reading'), T_2: reading('second'), T_3: reading('third') },
  source: 'derived: a first-order rise, three readings at equal times',
  example: { given: { T_1: 128, T_2: 139, T_3: 144.5 }, gives: 150, digits: 1 },
  value: ({ T_1, T_2, T_3 }) => (T_1 * T_3 - T_2 ** 2) / (T_1 + T_3 - 2 * T_2),
})

export const steadyTime: Formula<{ dt: 's'; r: '' }, 's'> = formula({
  symbol: 'τ',
  meaning: 'time in which what is left falls to 37 %',
  unit: 's',
  expression: '-dt / log(r)',
  inputs: {
    dt: { meaning: 'time between readings', unit: 's', over: 0 },
    r: { meaning: 'second step by the first', unit: '', over: 0, under: 1 },
  },
  source: 'derived: a first-order rise, three readings at equal times',
  example: { given: { dt: 60, r: 0.5 }, gives: 86.6 },
  value: ({ dt, r }) => -dt / Math.log(r),
})
