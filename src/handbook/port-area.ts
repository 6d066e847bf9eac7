import { type Formula, formula, type Input } from '../formula.ts'

/** Time-area of ports and the volumes it is measured by. */
const B: Input = { meaning: 'bore', unit: 'mm', over: 0 }
const S: Input = { meaning: 'stroke', unit: 'mm', over: 0 }
const N: Input = { meaning: 'crank speed', unit: 'rpm', over: 0 }

export const blowdownTimeAt: Formula<'dtheta' | 'N'> = formula({
  symbol: 't_bd',
  meaning: 'time of the blowdown',
  unit: 'ms',
  expression: '1000 * dtheta / (6 * N)',
  inputs: { dtheta: { meaning: 'crank angle from exhaust to transfer opening', unit: 'deg', over: 0 }, N },
  source: 'derived: 6 N degrees a second',
  example: { given: { dtheta: 15, N: 10000 }, gives: 0.25 },
  value: ({ dtheta, N }) => (1000 * dtheta) / (6 * N),
})

export const meanPistonSpeed: Formula<'S' | 'N'> = formula({
  symbol: 'c_m',
  meaning: 'mean piston speed',
  unit: 'm/s',
  expression: '2 * S * N / 60000',
  inputs: { S, N },
  source: 'derived: two strokes a turn; a student design appendix prints 22.62 for 52.2 mm at 13 000 rpm',
  example: { given: { S: 52.2, N: 13000 }, gives: 22.62 },
  value: ({ S, N }) => (2 * S * N) / 60_000,
})

export const sweptVolume: Formula<'B' | 'S'> = formula({
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
export const trappedVolume: Formula<'B' | 'x_E'> = formula({
  symbol: 'V_ts',
  meaning: 'swept volume trapped above the exhaust port',
  unit: 'mm³',
  expression: 'pi / 4 * B^2 * x_E',
  inputs: { B, x_E: { meaning: "travel to the exhaust's top edge", unit: 'mm', from: 0 } },
  source: 'derived: geometry; counted from exhaust closure by common practice',
  example: { given: { B: 24, x_E: 15.284 }, gives: 6914, digits: 0 },
  value: ({ B, x_E }) => (Math.PI / 4) * B ** 2 * x_E,
})

/** What the head may hold at most for a wanted ratio: the part file has no head, so the plan turns the question round. */
export const clearanceForRatio: Formula<'V_ts' | 'CR_t'> = formula({
  symbol: 'V_c',
  meaning: 'clearance volume that gives the trapped compression ratio',
  unit: 'mm³',
  expression: 'V_ts / (CR_t - 1)',
  inputs: {
    V_ts: { meaning: 'swept volume trapped above the exhaust port', unit: 'mm³', over: 0 },
    CR_t: { meaning: 'trapped compression ratio', unit: '', over: 1 },
  },
  source: 'derived: CR_t = (V_ts + V_c) / V_c; a published example has 126.5 cc and 23 cc at 6.5',
  example: { given: { V_ts: 126_500, CR_t: 6.5 }, gives: 23_000, digits: 0 },
  value: ({ V_ts, CR_t }) => V_ts / (CR_t - 1),
})

export const specificTimeArea: Formula<'AA' | 'N' | 'V_s'> = formula({
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
