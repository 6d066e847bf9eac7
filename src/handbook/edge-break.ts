import { type Formula, formula } from '../formula.ts'
import type { Millimetre } from '../units.ts'

type Break = { readonly least: Millimetre; readonly most: Millimetre; readonly source: string }

/** How far edges are broken: an edge left sharp hardens through and chips. */
export const EDGE_BREAK: { readonly beforeHardening: Break; readonly timing: Break; readonly afterHoning: Break } = {
  beforeHardening: { least: 0.3, most: 0.5, source: 'common practice, no source' },
  // A timing edge before hardening: under this it hardens through.
  timing: { least: 0.1, most: 0.15, source: 'common practice, no source' },
  afterHoning: { least: 0.05, most: 0.1, source: 'common practice, no source' },
}

/**
 * A break at 45° to the bore, measured along the bore from the sharp corner. What comes off the bore side brings its end
 * down by as much; the corner of an inclined wall comes down too.
 */
export const breakLeft: Formula<{ b: 'mm'; s: 'mm'; k: '' }, 'mm'> = formula({
  symbol: 'b_left',
  meaning: 'break left along the bore when its side has been taken down',
  unit: 'mm',
  expression: 'max(0, b - s * (1 - k))',
  inputs: {
    b: { meaning: 'break along the bore before', unit: 'mm', from: 0, upTo: 20 },
    s: { meaning: 'taken off the bore side', unit: 'mm', from: -5, upTo: 5 },
    k: { meaning: 'how far the corner moves down for each mm taken off the bore side', unit: '', from: -20, upTo: 20 },
  },
  source: 'derived: a line at 45° to the bore falls by what the bore side rises',
  example: { given: { b: 0.3, s: 0.07, k: 0 }, gives: 0.23 },
  value: ({ b, s, k }) => Math.max(0, b - s * (1 - k)),
})

/** Plated on: the layer stands on the chamfer as on the bore, and the bore is honed back to what is left of it. */
export const breakPlated: Formula<{ b: 'mm'; p: 'mm'; t: 'mm' }, 'mm'> = formula({
  symbol: 'b_left',
  meaning: 'chamfer left along the bore when it has been plated over and honed',
  unit: 'mm',
  expression: 'max(0, b + t - sqrt(2) * p)',
  inputs: {
    b: { meaning: 'chamfer along the bore before plating', unit: 'mm', from: 0, upTo: 20 },
    p: { meaning: 'layer as plated, a side', unit: 'mm', from: 0, upTo: 5 },
    t: { meaning: 'layer left in the bore, a side', unit: 'mm', from: 0, upTo: 5 },
  },
  source: 'derived: a line at 45° to the bore moved square to itself by the layer; an even layer',
  example: { given: { b: 0.3, p: 0.08, t: 0.05 }, gives: 0.237 },
  value: ({ b, p, t }) => Math.max(0, b + t - Math.SQRT2 * p),
})
