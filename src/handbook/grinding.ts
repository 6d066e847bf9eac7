import { type Formula, formula, type Input } from '../formula.ts'

/** Cylindrical grinding, outside and in a bore: kinematics, passes, contact. Infeeds `ae` are radial. */
const vs: Input<'m/s'> = { meaning: 'wheel speed', unit: 'm/s', over: 0, upTo: 1000 }
const vw: Input<'m/min'> = { meaning: 'work speed', unit: 'm/min', over: 0, upTo: 200 }
const ds: Input<'mm'> = { meaning: 'diameter of the wheel', unit: 'mm', over: 0, upTo: 10_000 }
const dw: Input<'mm'> = { meaning: 'diameter of the work', unit: 'mm', over: 0, upTo: 1000 }
const nw: Input<'rpm'> = { meaning: 'work speed in revolutions', unit: 'rpm', over: 0, upTo: 1e9 }
const ae: Input<'mm'> = { meaning: 'infeed, radial', unit: 'mm', over: 0, upTo: 0.5 }
const b: Input<'mm'> = { meaning: 'width of the wheel', unit: 'mm', over: 0, upTo: 1000 }
const z: Input<'mm'> = { meaning: 'stock on diameter', unit: 'mm', from: 0, upTo: 100 }

/** Wheels wear: work out the speed anew for the diameter that is mounted, and never pass the wheel's own mark. */
export const wheelSpindleSpeed: Formula<{ vs: 'm/s'; ds: 'mm' }, 'rpm'> = formula({
  symbol: 'ns',
  meaning: 'spindle speed of the wheel',
  unit: 'rpm',
  expression: '60000 * vs / (pi * ds)',
  inputs: { vs, ds },
  source: 'derived: kinematics',
  example: { given: { vs: 30, ds: 350 }, gives: 1637 },
  value: ({ vs, ds }) => (60_000 * vs) / (Math.PI * ds),
})

export const traverseFeed: Formula<{ s: ''; b: 'mm'; nw: 'rpm' }, 'mm/min'> = formula({
  symbol: 'vfa',
  meaning: 'traverse of the table',
  unit: 'mm/min',
  expression: 's * b * nw',
  inputs: { s: { meaning: 'traverse for each turn of the work, in wheel widths', unit: '', over: 0, upTo: 1 }, b, nw },
  source: 'derived: kinematics',
  example: { given: { s: 0.25, b: 40, nw: 106.1 }, gives: 1061 },
  value: ({ s, b, nw }) => s * b * nw,
})

export const specificRemovalRate: Formula<{ ae: 'mm'; vw: 'm/min' }, 'mm³/(mm s)'> = formula({
  symbol: 'Q_w',
  meaning: 'metal removed by each mm of wheel width',
  unit: 'mm³/(mm s)',
  expression: 'ae * vw * 1000 / 60',
  inputs: { ae, vw },
  source: 'derived: kinematics',
  example: { given: { ae: 0.01, vw: 20 }, gives: 3.333 },
  value: ({ ae, vw }) => (ae * vw * 1000) / 60,
})

export const equivalentChip: Formula<{ ae: 'mm'; vw: 'm/min'; vs: 'm/s' }, 'µm'> = formula({
  symbol: 'h_eq',
  meaning: 'equivalent chip thickness',
  unit: 'µm',
  expression: 'ae * vw / 60 / vs * 1000',
  inputs: { ae, vw, vs },
  source: 'derived: kinematics',
  example: { given: { ae: 0.01, vw: 20, vs: 30 }, gives: 0.1111 },
  value: ({ ae, vw, vs }) => ((ae * vw) / 60 / vs) * 1000,
})

export const equivalentDiameterOutside: Formula<{ ds: 'mm'; dw: 'mm' }, 'mm'> = formula({
  symbol: 'de',
  meaning: 'equivalent diameter, outside grinding',
  unit: 'mm',
  expression: 'ds * dw / (dw + ds)',
  inputs: { ds, dw },
  source: 'derived: geometry',
  example: { given: { ds: 350, dw: 60 }, gives: 51.22 },
  value: ({ ds, dw }) => (ds * dw) / (dw + ds),
})

export const equivalentDiameterInside: Formula<{ dw: 'mm'; q: '' }, 'mm'> = formula({
  symbol: 'de',
  meaning: 'equivalent diameter, bore grinding',
  unit: 'mm',
  expression: 'q * dw / (1 - q)',
  inputs: { dw, q: { meaning: 'wheel over bore diameter', unit: '', over: 0, upTo: 0.95 } },
  source: 'derived: geometry',
  example: { given: { dw: 54, q: 40 / 54 }, gives: 154.3 },
  value: ({ dw, q }) => (q * dw) / (1 - q),
})

export const grindingStroke: Formula<{ L: 'mm'; ov: 'mm'; b: 'mm' }, 'mm'> = formula({
  symbol: 'L_s',
  meaning: 'stroke of the table',
  unit: 'mm',
  expression: 'L + 2 * ov - b',
  inputs: {
    L: { meaning: 'length ground', unit: 'mm', over: 0, upTo: 10_000 },
    ov: { meaning: 'overrun of the wheel beyond each end, a third of its width', unit: 'mm', from: 0, upTo: 1000 },
    b,
  },
  source: 'derived: geometry; overrun: common practice, no source',
  example: { given: { L: 80, ov: 40 / 3, b: 40 }, gives: 66.67 },
  value: ({ L, ov, b }) => L + 2 * ov - b,
})

export const grindingPasses: Formula<{ z: 'mm'; ae: 'mm' }, ''> = formula({
  symbol: 'N',
  meaning: 'passes, the infeed radial and the stock on diameter',
  unit: '',
  expression: 'ceil(z / (2 * ae) - 10^-9)',
  inputs: { z, ae },
  source: 'derived: geometry',
  example: { given: { z: 0.08, ae: 0.01 }, gives: 4 },
  value: ({ z, ae }) => Math.ceil(z / (2 * ae) - 10 ** -9),
})

export const traverseTime: Formula<{ N: ''; L_s: 'mm'; vfa: 'mm/min' }, 'min'> = formula({
  symbol: 't',
  meaning: 'time of the passes',
  unit: 'min',
  expression: 'N * L_s / vfa',
  inputs: {
    N: { meaning: 'passes', unit: '', from: 0, upTo: 1_000_000, whole: true },
    L_s: { meaning: 'stroke of the table', unit: 'mm', from: 0, upTo: 10_000 },
    vfa: { meaning: 'traverse of the table', unit: 'mm/min', over: 0, upTo: 1e9 },
  },
  source: 'derived: kinematics',
  example: { given: { N: 4, L_s: 66.67, vfa: 1061 }, gives: 0.2513 },
  value: ({ N, L_s, vfa }) => (N * L_s) / vfa,
})

export const plungeTime: Formula<{ zr: 'mm'; zf: 'mm'; fr: 'mm'; ff: 'mm'; N: ''; nw: 'rpm' }, 'min'> = formula({
  symbol: 't',
  meaning: 'time of a plunge: rough, finish, spark out',
  unit: 'min',
  expression: '(zr / fr + zf / ff + N) / nw',
  inputs: {
    zr: { meaning: 'stock to rough, in the direction of feed', unit: 'mm', from: 0, upTo: 100 },
    zf: { meaning: 'stock to finish', unit: 'mm', from: 0, upTo: 1 },
    fr: { meaning: 'roughing infeed for each turn of the work', unit: 'mm', over: 0, upTo: 0.1 },
    ff: { meaning: 'finishing infeed for each turn of the work', unit: 'mm', over: 0, upTo: 0.1 },
    N: { meaning: 'turns to spark out', unit: '', from: 0, upTo: 200 },
    nw,
  },
  source: 'derived: kinematics',
  example: { given: { zr: 0.04, zf: 0.01, fr: 0.003, ff: 0.00064, N: 10, nw: 106.1 }, gives: 0.3672 },
  value: ({ zr, zf, fr, ff, N, nw }) => (zr / fr + zf / ff + N) / nw,
})

/** Share of the spring in quill and work that is still there after sparking out: linear model. */
export const sparkOutRest: Formula<{ kc: 'N/µm'; ks: 'N/µm'; N: '' }, ''> = formula({
  symbol: 'x_N',
  meaning: 'deflection left after spark-out passes, as a share',
  unit: '',
  expression: '(kc / (kc + ks))^N',
  inputs: {
    kc: { meaning: 'cutting stiffness, normal force over infeed', unit: 'N/µm', over: 0, upTo: 1_000_000 },
    ks: { meaning: 'stiffness of quill and work', unit: 'N/µm', over: 0, upTo: 1_000_000 },
    N: { meaning: 'spark-out passes', unit: '', from: 0, upTo: 20 },
  },
  source: 'derived: linear model',
  example: { given: { kc: 7.812, ks: 6.787, N: 4 }, gives: 0.082, digits: 4 },
  value: ({ kc, ks, N }) => (kc / (kc + ks)) ** N,
})

export const grindingForce: Formula<{ ae: 'mm'; vw: 'm/min'; s: ''; b: 'mm'; u: 'J/mm³'; vs: 'm/s' }, 'N'> = formula({
  symbol: 'Ft',
  meaning: 'tangential force, traversing',
  unit: 'N',
  expression: 'u * ae * vw * 1000 / 60 * s * b / vs',
  inputs: {
    ae,
    vw,
    s: { meaning: 'traverse for each turn of the work, in wheel widths', unit: '', over: 0, upTo: 1 },
    b,
    u: { meaning: 'specific energy, 15 to 60', unit: 'J/mm³', over: 0, upTo: 200 },
    vs,
  },
  source: 'derived: power over speed; specific energy: grinding lecture slides (about 50), memory',
  example: { given: { ae: 0.005, vw: 20, s: 0.25, b: 25, u: 45, vs: 30 }, gives: 15.625 },
  value: ({ ae, vw, s, b, u, vs }) => (u * ((ae * vw * 1000) / 60) * s * b) / vs,
})

/** Normal over tangential force. Source: memory: 2 to 3. */
export const NORMAL_FORCE_SHARE = 2.5
