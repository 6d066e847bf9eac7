import type { MetrePerMinute } from '../units.ts'
import type { CuttingFamily } from './cutting-grades.ts'

/**
 * Minutes that are not cutting, before a works has timed its own. Source: common practice, no source: tool change 0.03 to
 * 0.1, rapid and approach 0.02 to 0.05 a pass.
 */
export const SHOP_TIMES = {
  toolChange: 0.08,
  rapid: 0.03,
  /** Turn a part round: jaws cleaned, seated on the stop. */
  turnRound: 1.3,
  /** Chips cleared and the edge looked at, each chucking; once more after a drill over 25 mm. */
  clearChips: 0.5,
  /** Rotary, unclamp to clamp. */
  index: 0.05,
  /** Spindle stopped, the slug of a window taken out of the bore. */
  slugOut: 0.2,
  /** A hole reamed by hand feed, with the change of tool. */
  ream: 0.5,
  /** Dressing, spread over the pieces that one dressing serves. */
  dressing: 2,
  piecesADressing: 5,
  deburrWindow: 1,
  deburrEdge: 0.4,
  deburrWindowAgain: 0.7,
  wash: 1,
  mark: 1,
} as const

/** Bandsaw, cm² of section a minute, and its band speed, m/min. Source: common practice, no source. */
export const SAWING: Readonly<Record<CuttingFamily, { readonly rate: number; readonly speed: MetrePerMinute }>> = {
  'low-alloy steel': { rate: 20, speed: 45 },
  'aluminium-alloyed nitriding steel': { rate: 18, speed: 40 },
  'case-hardening steel': { rate: 25, speed: 55 },
  'bearing steel': { rate: 18, speed: 40 },
  'unalloyed steel': { rate: 30, speed: 60 },
  'free-cutting steel': { rate: 35, speed: 70 },
  'stainless steel': { rate: 18, speed: 40 },
  'grey iron': { rate: 30, speed: 45 },
  'ductile iron': { rate: 25, speed: 45 },
  aluminium: { rate: 120, speed: 150 },
  'silicon aluminium': { rate: 100, speed: 120 },
  bronze: { rate: 35, speed: 60 },
}
