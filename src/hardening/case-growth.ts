import { type KnownSpread, worked } from '../known.ts'
import type { Part } from '../part/part.ts'
import { hardeningPurpose } from '../route/hard-tasks.ts'
import { measuredFor, measuredOrigin } from '../shop/measured.ts'
import type { Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'
import { layerOf } from './case-cycle.ts'
import type { Growth } from './growth.ts'
import { nitridingGrowth } from './nitriding-growth.ts'
import { quenchedGrowth } from './quenched-growth.ts'

/** A depth that is ordered, with its upper limit; or one figure. */
export type CaseDepth = Millimetre | { readonly least: Millimetre; readonly most: Millimetre }

const NONE: KnownSpread = { least: 0, nominal: 0, most: 0, ...worked('no growth: not treated') }

const NO_CHANGE: Growth = {
  outside: NONE,
  bore: NONE,
  bands: [],
  face: NONE,
  along: { least: 0, nominal: 0, most: 0, ...worked('no stretch: not treated') },
  sections: [],
}

export function growthIn({
  notebook,
  part,
  shop,
  depth,
}: {
  readonly notebook: Notebook
  readonly part: Part
  readonly shop: Shop
  readonly depth: CaseDepth
}): Growth {
  const { hardening } = part
  if (!hardening) return NO_CHANGE
  const range = typeof depth === 'number' ? { least: depth, most: depth } : depth
  const reckoned = layerOf(part, shop)
    ? nitridingGrowth(notebook, { part, shop, depth: range })
    : quenchedGrowth(notebook, part)
  const growth = reckoned ?? NO_CHANGE
  const measured = measuredFor(
    shop,
    { process: hardeningPurpose(hardening.process), grade: part.material.grade },
    'growth',
  )
  return measured ? asMeasured(notebook, growth, { ...measured.growth, ...measuredOrigin(measured) }) : growth
}

/** One figure for every treated surface, as a row gives it that does not part them. */
function asMeasured(notebook: Notebook, growth: Growth, measured: KnownSpread): Growth {
  notebook.note({
    about: 'growth',
    symbol: 'g',
    meaning: 'growth per side, as measured',
    value: measured.nominal,
    unit: 'mm',
    expression: `${measured.least} to ${measured.most}`,
    source: measured.source,
  })
  const bands = growth.bands.map(band => ({ ...band, growth: measured }))
  return { ...NO_CHANGE, outside: measured, bore: measured, bands, face: measured }
}
