import type { Millimetre } from '../units.ts'

/** Whole tolerance on the depth of an edge that a careful milling holds, from one seat and one touch of the top face. */
export const CLOSEST_MILLED: { readonly tolerance: Millimetre; readonly source: string } = {
  tolerance: 0.04,
  source: 'common practice, no source',
}

/** How far a height instrument with a probe may read an edge wrong: 3 to 6 µm in trained hands. */
export const EDGE_READING: { readonly most: Millimetre; readonly source: string } = {
  most: 0.006,
  source: 'common practice, no source: height measuring instrument with probe, 3 to 6 µm',
}
