import { type Formula, formula, type Input } from '../formula.ts'

/** Kinematics of honing. The cross-hatch angle is the included one, opening about the circumference. */
const d: Input<'mm'> = { meaning: 'bore diameter', unit: 'mm', over: 0, upTo: 1000 }
const vt: Input<'m/min'> = { meaning: 'peripheral speed', unit: 'm/min', over: 0, upTo: 10_000 }
const va: Input<'m/min'> = { meaning: 'mean axial speed', unit: 'm/min', over: 0, upTo: 10_000 }
const S: Input<'mm'> = { meaning: 'stroke', unit: 'mm', over: 0, upTo: 10_000 }
const alpha: Input<'deg'> = { meaning: 'cross-hatch angle, included', unit: 'deg', over: 0, under: 180 }
const l_s: Input<'mm'> = { meaning: 'stone length', unit: 'mm', over: 0, upTo: 10_000 }

export const axialSpeed: Formula<{ vt: 'm/min'; alpha: 'deg' }, 'm/min'> = formula({
  symbol: 'va',
  meaning: 'mean axial speed for the cross-hatch angle',
  unit: 'm/min',
  expression: 'vt * tan(alpha * pi / 360)',
  inputs: { vt, alpha },
  source: 'derived: geometry',
  example: { given: { vt: 30, alpha: 45 }, gives: 12.43 },
  value: ({ vt, alpha }) => vt * Math.tan((alpha * Math.PI) / 360),
})

export const crossHatchAngle: Formula<{ va: 'm/min'; vt: 'm/min' }, 'deg'> = formula({
  symbol: 'alpha',
  meaning: 'cross-hatch angle, included, opening about the circumference',
  unit: 'deg',
  expression: '2 * atan(va / vt) * 180 / pi',
  inputs: { va, vt },
  source: 'derived: geometry',
  example: { given: { va: 7.6, vt: 33.93 }, gives: 25.25 },
  value: ({ va, vt }) => (2 * Math.atan(va / vt) * 180) / Math.PI,
})

/** Double strokes, there and back: counting strokes gives twice as many. */
export const doubleStrokes: Formula<{ va: 'm/min'; S: 'mm' }, '1/min'> = formula({
  symbol: 'n_s',
  meaning: 'double strokes',
  unit: '1/min',
  expression: '1000 * va / (2 * S)',
  inputs: { va, S },
  source: 'derived: kinematics, mean speed',
  example: { given: { va: 12.43, S: 63.33 }, gives: 98.14, digits: 2 },
  value: ({ va, S }) => (1000 * va) / (2 * S),
})

export const honingSpeed: Formula<{ vt: 'm/min'; va: 'm/min' }, 'm/min'> = formula({
  symbol: 'vr',
  meaning: 'speed of the stone along its groove',
  unit: 'm/min',
  expression: 'sqrt(vt^2 + va^2)',
  inputs: { vt, va },
  source: 'derived: geometry',
  example: { given: { vt: 30, va: 12.43 }, gives: 32.47 },
  value: ({ vt, va }) => Math.sqrt(vt ** 2 + va ** 2),
})

export const honingStroke: Formula<{ L: 'mm'; ov: 'mm'; l_s: 'mm' }, 'mm'> = formula({
  symbol: 'S',
  meaning: 'stroke of the hone',
  unit: 'mm',
  expression: 'L + 2 * ov - l_s',
  inputs: {
    L: { meaning: 'bore length', unit: 'mm', over: 0, upTo: 10_000 },
    ov: {
      meaning: 'overrun of the stone beyond each end, a quarter to a third of it',
      unit: 'mm',
      from: 0,
      upTo: 10_000,
    },
    l_s,
  },
  source: 'derived: geometry; overrun: common practice, no source',
  example: { given: { L: 80, ov: 50 / 3, l_s: 50 }, gives: 63.33 },
  value: ({ L, ov, l_s }) => L + 2 * ov - l_s,
})

export const honedVolume: Formula<{ d: 'mm'; L: 'mm'; z: 'mm' }, 'mm³'> = formula({
  symbol: 'V',
  meaning: 'metal honed away',
  unit: 'mm³',
  expression: 'pi * d * L * z / 2',
  inputs: {
    d,
    L: { meaning: 'bore length', unit: 'mm', over: 0, upTo: 10_000 },
    z: { meaning: 'stock on diameter', unit: 'mm', from: 0, upTo: 100 },
  },
  source: 'derived: geometry',
  example: { given: { d: 54, L: 80, z: 0.03 }, gives: 203.6 },
  value: ({ d, L, z }) => (Math.PI * d * L * z) / 2,
})

export const honingTime: Formula<{ z: 'mm'; rate: 'µm/min' }, 'min'> = formula({
  symbol: 't',
  meaning: 'honing time',
  unit: 'min',
  expression: '1000 * z / rate',
  inputs: {
    z: { meaning: 'stock on diameter', unit: 'mm', from: 0, upTo: 100 },
    rate: { meaning: 'removal on diameter', unit: 'µm/min', over: 0, upTo: 200 },
  },
  source: 'derived: kinematics',
  example: { given: { z: 0.03, rate: 15 }, gives: 2 },
  value: ({ z, rate }) => (1000 * z) / rate,
})

/** Of the circumference at the height of the ports. */
export const landShare: Formula<{ w: 'mm'; d: 'mm' }, ''> = formula({
  symbol: 'lambda',
  meaning: 'share of land round the ports',
  unit: '',
  expression: '1 - w / (pi * d)',
  inputs: { w: { meaning: 'width of all ports together', unit: 'mm', from: 0, upTo: 100_000 }, d },
  source: 'derived: geometry',
  example: { given: { w: 62, d: 54 }, gives: 0.6345 },
  value: ({ w, d }) => 1 - w / (Math.PI * d),
})

/** For a stone longer than the belt of ports. Removal there is faster by its reciprocal, for equal pressure. */
export const landUnderStone: Formula<{ lambda: ''; h_p: 'mm'; l_s: 'mm' }, ''> = formula({
  symbol: 'lambda_m',
  meaning: 'share of land under a stone that spans the ports',
  unit: '',
  expression: '1 - (1 - lambda) * h_p / l_s',
  inputs: {
    lambda: { meaning: 'share of land round the ports', unit: '', over: 0, upTo: 1 },
    h_p: { meaning: 'height of the belt of ports', unit: 'mm', from: 0, upTo: 10_000 },
    l_s,
  },
  source: 'derived: linear model, removal after pressure',
  example: { given: { lambda: 0.6345, h_p: 22, l_s: 50 }, gives: 0.8392 },
  value: ({ lambda, h_p, l_s }) => 1 - ((1 - lambda) * h_p) / l_s,
})
