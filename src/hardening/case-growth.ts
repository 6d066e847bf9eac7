import type { Band } from '../band.ts'
import type { CompoundLayer } from '../handbook/compound-layer.ts'
import { QUENCH_CHANGE, quenchGrowth } from '../handbook/hardening-growth.ts'
import {
  CASE_STRESS,
  coreStress,
  coreStretch,
  diameterStretch,
  GROWTH_COEFFICIENTS,
  growthPerSide,
  STEEL,
} from '../handbook/nitriding-growth.ts'
import { fromHandbook, fromPart, type KnownSpread, known, worked } from '../known.ts'
import type { Part } from '../part/part.ts'
import { hardeningPurpose } from '../route/hard-tasks.ts'
import { measuredFor, measuredOrigin } from '../shop/measured.ts'
import type { Shop } from '../shop/shop.ts'
import { type Millimetre, millimetres } from '../units.ts'
import type { Notebook } from '../working.ts'
import { layerOf } from './case-cycle.ts'
import { boreOf, seatOf, treatedSides } from './case-surfaces.ts'

/** A depth that is ordered, with its upper limit; or one figure. */
export type CaseDepth = Millimetre | { readonly least: Millimetre; readonly most: Millimetre }
export type Growth = { readonly outside: KnownSpread; readonly bore: KnownSpread }

const NONE: KnownSpread = { least: 0, nominal: 0, most: 0, ...worked('no growth: not treated') }

export function growthIn({
  notebook,
  part,
  shop,
  depth,
  wall,
}: {
  readonly notebook: Notebook
  readonly part: Part
  readonly shop: Shop
  readonly depth: CaseDepth
  readonly wall: Millimetre
}): Growth {
  const { hardening } = part
  if (!hardening) return { outside: NONE, bore: NONE }
  const sides = treatedSides(part)
  const measured = measuredFor(
    shop,
    { process: hardeningPurpose(hardening.process), grade: part.material.grade },
    'growth',
  )
  if (measured) {
    const growth: KnownSpread = { ...measured.growth, ...measuredOrigin(measured) }
    notebook.note({
      about: 'growth',
      symbol: 'g',
      meaning: 'growth per side, as measured',
      value: growth.nominal,
      unit: 'mm',
      expression: `${growth.least} to ${growth.most}`,
      source: growth.source,
    })
    return { outside: sides.outside ? growth : NONE, bore: sides.bore ? growth : NONE }
  }
  const layer = layerOf(part, shop)
  return layer
    ? nitridingGrowth({
        notebook,
        part,
        depth: typeof depth === 'number' ? { least: depth, most: depth } : depth,
        layer,
        wall,
      })
    : quenchedGrowth(notebook, part)
}

function nitridingGrowth({
  notebook,
  part,
  depth,
  layer,
  wall,
}: {
  readonly notebook: Notebook
  readonly part: Part
  readonly depth: { readonly least: Millimetre; readonly most: Millimetre }
  readonly layer: CompoundLayer
  readonly wall: Millimetre
}): Growth {
  const sides = treatedSides(part)
  const { diffusion, compound } = GROWTH_COEFFICIENTS
  const about = { about: 'growth' }
  const middle = (depth.least + depth.most) / 2
  const C = known(millimetres(layer.usual), 'mm', fromHandbook(layer.source))
  const share = (value: number) => known(value, '', fromHandbook(growthPerSide.source))
  const N = (value: Millimetre) => known(value, 'mm', worked('depth ordered'))
  const free: KnownSpread = {
    ...worked(`${growthPerSide.symbol}, ${growthPerSide.meaning}`),
    least: notebook.use(
      growthPerSide,
      { k_d: share(diffusion.least), N: N(depth.least), k_c: share(compound.least), C },
      about,
    ),
    nominal: notebook.use(
      growthPerSide,
      { k_d: share(diffusion.usual), N: N(middle), k_c: share(compound.usual), C },
      about,
    ),
    most: notebook.use(
      growthPerSide,
      { k_d: share(diffusion.most), N: N(depth.most), k_c: share(compound.most), C },
      about,
    ),
  }
  const seat = seatOf(part)
  const bore = boreOf(part)
  const h_1 = sides.outside ? middle : 0
  const h_2 = sides.bore ? middle : 0
  // A case that takes the whole wall is refused by the wall limit; no stretch is reckoned for it.
  const stretches = seat && bore && wall >= 1.5 && h_1 + h_2 < 0.9 * wall && h_1 <= 0.7 && h_2 <= 0.7
  const epsilon = stretches
    ? notebook.use(
        coreStretch,
        {
          nu: STEEL.poisson,
          sigma_c: notebook.use(coreStress, { sigma: CASE_STRESS, h_1, h_2, t: wall }, about),
          E: STEEL.modulus,
        },
        about,
      )
    : 0
  const stretchOf = (D: Millimetre, surface: string) =>
    epsilon === 0 ? 0 : notebook.use(diameterStretch, { epsilon, D }, { about: `growth of ${surface}` }) / 2
  const moved = ({ least, nominal, most, ...origin }: KnownSpread, by: Millimetre): KnownSpread => ({
    ...origin,
    least: least + by,
    nominal: nominal + by,
    most: most + by,
  })
  return {
    outside: seat ? moved(sides.outside ? free : NONE, stretchOf(seat.size.nominal, seat.name)) : NONE,
    bore: bore ? moved(sides.bore ? free : NONE, -stretchOf(bore.size.nominal, bore.name)) : NONE,
  }
}

/** A quenched part changes as a whole: where the outside gets larger the bore does too. */
function quenchedGrowth(notebook: Notebook, part: Part): Growth {
  const process = part.hardening?.process
  if (process !== 'carburising' && process !== 'induction hardening' && process !== 'through hardening')
    return { outside: NONE, bore: NONE }
  const change = QUENCH_CHANGE[process]
  const about = { about: `growth, ${change.source}` }
  const share = (value: number) => known(value, '', fromHandbook(change.source))
  const at = ({ size, path }: Band): KnownSpread => {
    const D = known(size.nominal, 'mm', fromPart(path))
    return {
      ...worked(`${quenchGrowth.symbol}, ${quenchGrowth.meaning}`),
      least: notebook.use(quenchGrowth, { c: share(change.least), D }, about),
      nominal: notebook.use(quenchGrowth, { c: share(change.nominal), D }, about),
      most: notebook.use(quenchGrowth, { c: share(change.most), D }, about),
    }
  }
  const seat = seatOf(part)
  const bore = boreOf(part)
  const inside = bore ? at(bore) : NONE
  return {
    outside: seat ? at(seat) : NONE,
    bore: { ...inside, least: -inside.most, nominal: -inside.nominal, most: -inside.least },
  }
}
