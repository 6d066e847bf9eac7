import { type Formula, formula, type Input } from '../formula.ts'

/**
 * Forces of a cut after Kienzle: the work needed for each unit of chip section falls as the chip gets thicker.
 *
 * The source covers chips of 0.05 to 2.5 mm. Small cutters work below it, where the law is extrapolated and stands within
 * 1 % of a linear-edge model at 6 µm; under 2 µm an edge rubs rather than cuts, so the range stops there.
 */
const h: Input<'mm'> = { meaning: 'chip thickness', unit: 'mm', from: 0.002, upTo: 2.5 }
const f: Input<'mm/rev'> = { meaning: 'feed', unit: 'mm/rev', over: 0, upTo: 4 }
const kappa: Input<'deg'> = { meaning: 'cutting-edge (entering) angle', unit: 'deg', from: 30, upTo: 120 }
const ap: Input<'mm'> = { meaning: 'depth of cut', unit: 'mm', over: 0, upTo: 200 }
const vc: Input<'m/min'> = { meaning: 'cutting speed', unit: 'm/min', over: 0, upTo: 20_000 }
const Fc: Input<'N'> = { meaning: 'cutting force', unit: 'N', from: 0, upTo: 10_000_000 }

export const FORCE_FACTORS_SOURCE = 'memory: Tschätsch and Dubbel'

/** Factors on the specific force. */
export const FORCE_FACTORS = {
  worn: 1.3,
  externalTurning: 1,
  boringDrillingMilling: 1.2,
  parting: 1.3,
} as const

/** Radial against cutting force. Source: common practice, no source. */
export const PASSIVE_FORCE_SHARE = { roughing: 0.4, finishingBelowNoseRadius: 0.6 } as const

export const chipThickness: Formula<{ f: 'mm/rev'; kappa: 'deg' }, 'mm'> = formula({
  symbol: 'h',
  meaning: 'chip thickness',
  unit: 'mm',
  expression: 'f * sin(kappa * pi / 180)',
  inputs: { f, kappa },
  source: 'derived: geometry',
  example: { given: { f: 0.25, kappa: 95 }, gives: 0.249, digits: 4 },
  value: ({ f, kappa }) => f * Math.sin((kappa * Math.PI) / 180),
})

export const chipWidth: Formula<{ ap: 'mm'; kappa: 'deg' }, 'mm'> = formula({
  symbol: 'b',
  meaning: 'chip width',
  unit: 'mm',
  expression: 'ap / sin(kappa * pi / 180)',
  inputs: { ap, kappa },
  source: 'derived: geometry',
  example: { given: { ap: 2, kappa: 95 }, gives: 2.008 },
  value: ({ ap, kappa }) => ap / Math.sin((kappa * Math.PI) / 180),
})

export const specificCuttingForce: Formula<{ kc11: 'N/mm²'; mc: ''; h: 'mm'; K: '' }, 'N/mm²'> = formula({
  symbol: 'kc',
  meaning: 'specific cutting force',
  unit: 'N/mm²',
  expression: 'kc11 * h^(-mc) * K',
  inputs: {
    kc11: { meaning: 'specific cutting force of a chip of 1 mm by 1 mm', unit: 'N/mm²', from: 200, upTo: 6000 },
    mc: { meaning: 'exponent of chip thickness', unit: '', from: 0, upTo: 0.5 },
    h,
    K: { meaning: 'product of the factors for rake, wear and operation', unit: '', from: 0.5, upTo: 4 },
  },
  source: 'memory: Kienzle; range of chip thickness from the same, extended downward to 0.002 mm',
  example: { given: { kc11: 1775, mc: 0.24, h: 0.1, K: 1 }, gives: 3085 },
  value: ({ kc11, mc, h, K }) => kc11 * h ** -mc * K,
})

export const cuttingForce: Formula<{ kc: 'N/mm²'; b: 'mm'; h: 'mm' }, 'N'> = formula({
  symbol: 'Fc',
  meaning: 'cutting force',
  unit: 'N',
  expression: 'kc * b * h',
  inputs: {
    kc: { meaning: 'specific cutting force', unit: 'N/mm²', from: 200, upTo: 1_000_000 },
    b: { meaning: 'chip width', unit: 'mm', over: 0, upTo: 400 },
    h,
  },
  source: 'memory: Kienzle',
  example: { given: { kc: 1196, b: 1.5, h: 0.2 }, gives: 358.8 },
  value: ({ kc, b, h }) => kc * b * h,
})

export const cuttingPower: Formula<{ Fc: 'N'; vc: 'm/min' }, 'kW'> = formula({
  symbol: 'Pc',
  meaning: 'power at the cut',
  unit: 'kW',
  expression: 'Fc * vc / 60000',
  inputs: { Fc, vc },
  source: 'derived: force times speed',
  example: { given: { Fc: 1165, vc: 160 }, gives: 3.107 },
  value: ({ Fc, vc }) => (Fc * vc) / 60_000,
})
