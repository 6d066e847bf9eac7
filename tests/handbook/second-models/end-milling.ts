import { type Formula, formula } from '../../../src/formula.ts'

/** For ae under half the diameter; within 2 % up to a tenth of it. */
export const meanChipShareNearly: Formula<{ r: '' }, ''> = formula({
  symbol: 'hm/fz',
  meaning: 'mean chip thickness over feed per tooth, common approximation',
  unit: '',
  expression: 'sqrt(r)',
  inputs: { r: { meaning: 'radial engagement over cutter diameter, ae/D', unit: '', over: 0, upTo: 0.5 } },
  source: 'Kennametal/Stellram milling technical pages 87 and A288',
  example: { given: { r: 0.1 }, gives: 0.3162 },
  value: ({ r }) => Math.sqrt(r),
})

/** Level edges and parallel sides; a mapped contour gives its own length. */
export const windowPath: Formula<{ W: 'mm'; H: 'mm'; R: 'mm'; D: 'mm' }, 'mm'> = formula({
  symbol: 'U',
  meaning: "path of the cutter's centre round a rectangular window",
  unit: 'mm',
  expression: '2 * (W - 2 * R) + 2 * (H - 2 * R) + 2 * pi * (R - D / 2)',
  inputs: {
    W: { meaning: 'width of the window', unit: 'mm', over: 0, upTo: 200 },
    H: { meaning: 'height of the window', unit: 'mm', over: 0, upTo: 200 },
    R: { meaning: 'corner radius', unit: 'mm', from: 0, upTo: 500 },
    D: { meaning: 'diameter of the cutter', unit: 'mm', over: 0, upTo: 500 },
  },
  source: 'derived: geometry',
  example: { given: { W: 10, H: 8, R: 1.5, D: 2 }, gives: 27.14 },
  value: ({ W, H, R, D }) => 2 * (W - 2 * R) + 2 * (H - 2 * R) + 2 * Math.PI * (R - D / 2),
})

/**
 * What a maker prints for solid carbide: speed, and feed per tooth over diameter, least and most with the value to start at.
 * Source: ISCAR solid-carbide end-mill user guide 2022, p. 92; that speed rises with hardness is as printed.
 */
export const END_MILL_GUIDE_ROWS = [
  { work: 'low-alloy steel, annealed, 200 HB', speed: [160, 240], feed: [0.003, 0.004, 0.008] },
  { work: 'low-alloy steel, tempered, 275 HB', speed: [120, 200], feed: [0.003, 0.004, 0.008] },
  { work: 'low-alloy steel, tempered, 300 HB', speed: [130, 200], feed: [0.003, 0.004, 0.008] },
  { work: 'low-alloy steel, tempered, 350 HB', speed: [140, 200], feed: [0.003, 0.004, 0.008] },
  { work: 'grey iron', speed: [150, 275], feed: [0.005, 0.006, 0.01] },
  { work: 'ductile iron, pearlitic', speed: [90, 150], feed: [0.004, 0.004, 0.009] },
] as const

/** By radial engagement; the feed's are the inverse of the thinning of the chip. Source: Dormer Pramet milling 2021-22, pp. 114-115. */
export const SHOULDER_FACTORS = [
  { engagement: 0.05, speed: 1.48, feed: 2.29 },
  { engagement: 0.1, speed: 1.35, feed: 1.67 },
  { engagement: 0.15, speed: 1.27, feed: 1.4 },
  { engagement: 0.2, speed: 1.22, feed: 1.25 },
  { engagement: 0.25, speed: 1.19, feed: 1.15 },
  { engagement: 0.3, speed: 1.16, feed: 1.09 },
  { engagement: 0.4, speed: 1.11, feed: 1.02 },
  { engagement: 0.5, speed: 1, feed: 1 },
] as const
