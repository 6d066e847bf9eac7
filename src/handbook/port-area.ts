import { type Formula, formula, type Input } from '../formula.ts'

/** Time-area of ports and the volumes it is measured by. */
const B: Input<'mm'> = { meaning: 'bore', unit: 'mm', over: 0 }
const S: Input<'mm'> = { meaning: 'stroke', unit: 'mm', over: 0 }
const N: Input<'rpm'> = { meaning: 'crank speed', unit: 'rpm', over: 0 }

export const blowdownTimeAt: Formula<{ dtheta: 'deg'; N: 'rpm' }, 'ms'> = formula({
  symbol: 't_bd',
  meaning: 'time of the blowdown',
  unit: 'ms',
  expression: '1000 * dtheta / (6 * N)',
  inputs: { dtheta: { meaning: 'crank angle from exhaust to transfer opening', unit: 'deg', over: 0 }, N },
  source: 'derived: 6 N degrees a second',
  example: { given: { dtheta: 15, N: 10000 }, gives: 0.25 },
  value: ({ dtheta, N }) => (1000 * dtheta) / (6 * N),
})

export const meanPistonSpeed: Formula<{ S: 'mm'; N: 'rpm' }, 'm/s'> = formula({
  symbol: 'c_m',
  meaning: 'mean piston speed',
  unit: 'm/s',
  expression: '2 * S * N / 60000',
  inputs: { S, N },
  source: 'derived: two strokes a turn; a student design appendix prints 22.62 for 52.2 mm at 13 000 rpm',
  example: { given: { S: 52.2, N: 13000 }, gives: 22.62 },
  value: ({ S, N }) => (2 * S * N) / 60_000,
})

export const sweptVolume: Formula<{ B: 'mm'; S: 'mm' }, 'mm³'> = formula({
  symbol: 'V_s',
  meaning: 'swept volume',
  unit: 'mm³',
  expression: 'pi / 4 * B^2 * S',
  inputs: { B, S },
  source: 'derived: geometry',
  example: { given: { B: 24, S: 22 }, gives: 9952.6 },
  value: ({ B, S }) => (Math.PI / 4) * B ** 2 * S,
})

/** The part of the stroke above the exhaust's top edge, which is what is left to compress. */
export const trappedVolume: Formula<{ B: 'mm'; x_E: 'mm' }, 'mm³'> = formula({
  symbol: 'V_ts',
  meaning: 'swept volume trapped above the exhaust port',
  unit: 'mm³',
  expression: 'pi / 4 * B^2 * x_E',
  inputs: { B, x_E: { meaning: "travel to the exhaust's top edge", unit: 'mm', from: 0 } },
  source: 'derived: geometry; counted from exhaust closure by common practice',
  example: { given: { B: 24, x_E: 15.284 }, gives: 6914, digits: 0 },
  value: ({ B, x_E }) => (Math.PI / 4) * B ** 2 * x_E,
})

const V_c: Input<'mm³'> = { meaning: 'volume above the crown at top dead centre', unit: 'mm³', over: 0 }

/** Counted from exhaust closing, which is when compression begins. */
export const trappedRatio: Formula<{ V_ts: 'mm³'; V_c: 'mm³' }, ''> = formula({
  symbol: 'CR_t',
  meaning: 'trapped compression ratio',
  unit: '',
  expression: '(V_ts + V_c) / V_c',
  inputs: { V_ts: { meaning: 'swept volume trapped above the exhaust port', unit: 'mm³', over: 0 }, V_c },
  source: 'derived: geometry; a published example has 126.5 cc and 23 cc at 6.5',
  example: { given: { V_ts: 126_500, V_c: 23_000 }, gives: 6.5 },
  value: ({ V_ts, V_c }) => (V_ts + V_c) / V_c,
})

export const geometricRatio: Formula<{ V_s: 'mm³'; V_c: 'mm³' }, ''> = formula({
  symbol: 'CR_g',
  meaning: 'geometric compression ratio',
  unit: '',
  expression: '(V_s + V_c) / V_c',
  inputs: { V_s: { meaning: 'swept volume', unit: 'mm³', over: 0 }, V_c },
  source: 'derived: geometry; a published example has 173.718 cc and 23 cc at 8.5',
  example: { given: { V_s: 173_718, V_c: 23_000 }, gives: 8.553 },
  value: ({ V_s, V_c }) => (V_s + V_c) / V_c,
})

/** By the rule of thumb that the published targets go with: one area for the whole time that the port is open. */
export const meanAreaTimeArea: Formula<{ A: 'mm²'; dtheta: 'deg'; N: 'rpm'; V_s: 'mm³' }, 's/m'> = formula({
  symbol: 'STA_m',
  meaning: 'specific time-area by the mean area',
  unit: 's/m',
  expression: '1000 * A * dtheta / (6 * N * V_s)',
  inputs: {
    A: { meaning: 'area open half-way from opening to full opening', unit: 'mm²', from: 0 },
    dtheta: { meaning: 'crank angle for which the port is open', unit: 'deg', over: 0 },
    N,
    V_s: { meaning: 'swept volume', unit: 'mm³', over: 0 },
  },
  source: "Jennings, Two-Stroke Tuner's Handbook, 1973, as quoted: mean area by time by swept volume",
  example: { given: { A: 68.382, dtheta: 150, N: 10_000, V_s: 9952.6 }, gives: 0.01718, digits: 5 },
  value: ({ A, dtheta, N, V_s }) => (1000 * A * dtheta) / (6 * N * V_s),
})

export const specificTimeArea: Formula<{ AA: 'mm²·deg'; N: 'rpm'; V_s: 'mm³' }, 's/m'> = formula({
  symbol: 'STA',
  meaning: 'specific time-area',
  unit: 's/m',
  expression: '1000 * AA / (6 * N * V_s)',
  inputs: {
    AA: { meaning: 'angle-area, both strokes', unit: 'mm²·deg', from: 0 },
    N,
    V_s: { meaning: 'swept volume', unit: 'mm³', over: 0 },
  },
  source: 'derived: the integral of area over time by swept volume; memory: Blair 1996, ch. 6',
  example: { given: { AA: 9042.4, N: 10000, V_s: 9952.6 }, gives: 0.015142, digits: 6 },
  value: ({ AA, N, V_s }) => (1000 * AA) / (6 * N * V_s),
})
