import { type Formula, formula, type Input } from '../formula.ts'

/** A cutter that winds its way down into solid metal: where no drill can start, on a face too steep for it. */
const Dh: Input<'mm'> = { meaning: 'diameter of the hole', unit: 'mm', over: 0, upTo: 1000 }
const epsilon: Input<'deg'> = { meaning: 'ramp angle', unit: 'deg', over: 0, upTo: 10 }

/** Hole over cutter diameter. Source: common practice, no source: 1.3 to 1.9. */
export const HELIX_HOLE = { least: 1.3, most: 1.9 } as const

export const helixPath: Formula<{ a: 'mm'; epsilon: 'deg' }, 'mm'> = formula({
  symbol: 'l_h',
  meaning: "path of the cutter's centre down the helix",
  unit: 'mm',
  expression: 'a / sin(epsilon * pi / 180)',
  inputs: { a: { meaning: 'depth', unit: 'mm', from: 0, upTo: 1000 }, epsilon },
  source: 'derived: geometry',
  example: { given: { a: 3.3, epsilon: 2 }, gives: 94.56 },
  value: ({ a, epsilon }) => a / Math.sin((epsilon * Math.PI) / 180),
})

export const helixFeed: Formula<{ vf: 'mm/min'; Dh: 'mm'; D: 'mm' }, 'mm/min'> = formula({
  symbol: 'vf_c',
  meaning: "feed of the cutter's centre round a hole",
  unit: 'mm/min',
  expression: 'vf * (Dh - D) / Dh',
  inputs: {
    vf: { meaning: 'feed at the edge', unit: 'mm/min', over: 0, upTo: 1_000_000 },
    Dh,
    D: { meaning: 'diameter of the cutter', unit: 'mm', over: 0, upTo: 500 },
  },
  source: 'derived: geometry',
  example: { given: { vf: 240, Dh: 3, D: 2 }, gives: 80 },
  value: ({ vf, Dh, D }) => (vf * (Dh - D)) / Dh,
})
