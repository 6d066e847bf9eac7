import { type KnownSpread, worked } from '../known.ts'
import type { Part } from '../part/part.ts'
import { recordName } from '../shop/measured.ts'
import type { Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'
import { layerOf } from './case-cycle.ts'
import type { Growth } from './growth.ts'
import { growthByRecord } from './measured-growth.ts'
import { nitridingGrowth } from './nitriding-growth.ts'
import { quenchedByRecord } from './quenched-by-record.ts'
import { quenchedGrowth } from './quenched-growth.ts'
import { growthRecord } from './records.ts'

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
  if (!part.hardening) return NO_CHANGE
  const range = typeof depth === 'number' ? { least: depth, most: depth } : depth
  const nitrided = layerOf(part, shop) !== undefined
  const { row, passedOver } = growthRecord(part, shop, range.least)
  const reckoned =
    (nitrided ? nitridingGrowth(notebook, { part, shop, depth: range }) : quenchedGrowth(notebook, part)) ?? NO_CHANGE
  for (const { row, why } of passedOver)
    notebook.note({
      about: 'growth',
      symbol: 'record',
      meaning: `passed over: ${why}`,
      value: 0,
      unit: '',
      expression: '',
      source: recordName(row),
    })
  if (!row) return reckoned
  const given = { notebook, part, row, reckoned, depth: range.least }
  return nitrided ? growthByRecord(given) : quenchedByRecord(given)
}
