import type { Millimetre } from '../units.ts'

type Break = { readonly least: Millimetre; readonly most: Millimetre; readonly source: string }

/** How far edges are broken: an edge left sharp hardens through and chips. */
export const EDGE_BREAK: { readonly beforeHardening: Break; readonly afterHoning: Break } = {
  beforeHardening: { least: 0.3, most: 0.5, source: 'common practice, no source' },
  afterHoning: { least: 0.05, most: 0.1, source: 'common practice, no source' },
}
