import type { Band } from '../band.ts'
import { DISTORTION } from '../handbook/distortion.ts'
import {
  boreAsPlated,
  boreBeforePlating,
  layerLeast,
  layerMost,
  type Plating,
  platingOf,
  thicknessToAim,
} from '../handbook/plating.ts'
import { standardTolerance } from '../handbook/standard-tolerance.ts'
import { formError, layerToRemove } from '../handbook/stock-at-worst-place.ts'
import { leastStock, nominalStock } from '../handbook/stock-chain.ts'
import { type Figure, fromHandbook, fromPart, type Known, known, named, none, told, worked } from '../known.ts'
import { type Limits, middleOf, type Spread, shifted, toleranceOf } from '../limits.ts'
import type { Part, PartPlating } from '../part/part.ts'
import { habit } from '../shop/habit.ts'
import type { Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import { type Notebook, reckoned, SCRATCH } from '../working.ts'

/** A plated bore worked backward from the drawing: honed, as plated, before plating. Layers are per side. */
export type PlatingSizes = {
  readonly asked: PartPlating
  readonly row: Plating
  readonly band: Band
  /** Of the finished layer. */
  readonly aim: Known<'mm'>
  readonly honeStock: Known<'mm'>
  readonly before: Limits
  readonly plated: Limits
  readonly finished: Limits
  /** Widths of those three. */
  readonly beforeTolerance: Known<'mm'>
  readonly platedTolerance: Known<'mm'>
  readonly finishedTolerance: Known<'mm'>
  /** As plated, and as left by the hone: at the worst places. */
  readonly layer: Spread
  readonly left: Spread
  /** Of the hone after plating: what must go, and how far out of true the layer is. */
  readonly needed: Known<'mm'>
  readonly form: Known<'mm'>
  /** What the hone after plating rests on. */
  readonly rests: readonly Figure[]
}

/** A hone holds this grade before plating, whatever the finished bore is given. Source: memory: Kosilova & Meshcheryakov, vol. 1. */
const HONED_GRADE = 6

/** Nothing where the part has no plated bore. The bore before plating takes the drawing's tolerance, or a hone's where that is closer. */
export function platingSizes(notebook: Notebook, part: Part, shop: Shop): PlatingSizes | undefined {
  const asked = part.plating
  const row = asked && platingOf(asked.process)
  const band = part.bore.find(({ name }) => name === asked?.surface)
  if (!asked || !row || !band) return undefined
  const about = { about: `${band.name}, ${asked.process}` }
  const finished = { nominal: band.size.nominal, lower: band.size.lower, upper: band.size.upper }
  const T_end = known(toleranceOf(finished), 'mm', fromPart(band.path))
  const T_pre = closest(T_end, gradeAt(finished.nominal))
  // Written per side for the bath, so that the width on diameter is four times it.
  const held = known(row.tolerance, 'mm', BATH)
  const T_plated = known(4 * row.tolerance, 'mm', BATH)
  const u = known(row.unevenness, 'mm', BATH)
  const Rz = known(row.roughness, 'µm', BATH)
  const ground = (value: Millimetre) => known(value, 'mm', fromHandbook(DISTORTION.ground.source))
  const f = reckoned(
    notebook,
    formError,
    { o: ground(DISTORTION.ground.ovality), b: ground(DISTORTION.ground.bow) },
    about,
  )
  const t_asked = known(asked.thickness.least, 'mm', fromPart('/plating/thickness'))
  const deepEnough = (book: Notebook): Known<'mm'> => {
    const { value, ...reason } = reckoned(book, thicknessToAim, { t_asked, T_pre, T_end, u, f }, about)
    return { ...reason, value: upTo(value, STEP) }
  }
  const { aim: drawn, most } = asked.thickness
  // A bare thickness is a wish with a least: where sizes and bath would leave less, the aim goes deeper. Two limits are a tolerance.
  const asDrawn = drawn !== undefined && (most !== undefined || drawn >= deepEnough(SCRATCH).value - 1e-9)
  const aim = asDrawn ? known(drawn, 'mm', fromPart('/plating/thickness')) : deepEnough(notebook)

  const needed = reckoned(notebook, layerToRemove, { Rz, T: NO_LAYER }, about)
  const nothing = none('the hone follows the bore')
  const S_least = reckoned(notebook, leastStock, { e: nothing, f: u, r: needed }, about)
  const grows = none('a plated bore grows no more')
  const S = reckoned(
    notebook,
    nominalStock,
    { S_least, T_before: T_plated, T_after: T_end, g: grows, g_least: grows },
    about,
  )
  const step = habit(shop, 'stockStep', 'mm')
  const usual = known(2 * row.honeStock.usual, 'mm', BATH)
  const cleansUp = known(upTo(S.value, step.value), 'mm', S)
  const onDiameter =
    part.stock.hone === undefined
      ? cleansUp.value > usual.value
        ? cleansUp
        : usual
      : known(part.stock.hone, 'mm', fromPart('/stock/hone'))
  const honeStock = known(onDiameter.value / 2, 'mm', onDiameter)

  const d = known(finished.nominal, 'mm', fromPart(band.path))
  const d_pre = reckoned(notebook, boreBeforePlating, { d, t: aim }, about)
  const d_plated = reckoned(notebook, boreAsPlated, { d_pre, t: aim, s: honeStock }, about)
  const before = widened(shifted(finished, d_pre.value - d.value), T_pre.value)
  const plated = widened(shifted(finished, d_plated.value - d.value), T_plated.value)
  const LIMITS = worked('limits of the sizes before plating and now')
  const layerTo = (now: Limits, nominal: Millimetre): Spread => ({
    least: notebook.use(layerLeast, { ...told(LIMITS, { d_pre: before.lower, d: now.upper }), u, f }, about),
    nominal,
    most: notebook.use(layerMost, { ...told(LIMITS, { d_pre: before.upper, d: now.lower }), u, f }, about),
  })
  return {
    asked,
    row,
    band,
    aim,
    honeStock,
    before,
    plated,
    finished,
    beforeTolerance: T_pre,
    platedTolerance: T_plated,
    finishedTolerance: T_end,
    layer: layerTo(plated, aim.value + honeStock.value),
    left: layerTo(finished, aim.value),
    needed,
    form: u,
    rests: [
      named('roughness as plated', Rz),
      named('layer held within, either way', held),
      named('layer uneven by', u),
    ],
  }
}

/** A thickness that the planner chooses comes in these steps. */
const STEP = 0.005

const upTo = (value: Millimetre, step: Millimetre): Millimetre =>
  Number((Math.ceil(value / step - 1e-6) * step).toFixed(6))

const BATH = fromHandbook('common practice, no source')
const NO_LAYER = known(0, 'µm', worked('a bath damages nothing'))

/** What a hone holds, where the standard has the size. */
const gradeAt = (nominal: Millimetre): Known<'mm'> | undefined =>
  nominal > 250
    ? undefined
    : known(standardTolerance(nominal, HONED_GRADE), 'mm', fromHandbook(`ISO 286-1, IT${HONED_GRADE}`))

const closest = (asked: Known<'mm'>, held: Known<'mm'> | undefined): Known<'mm'> =>
  held && held.value < asked.value ? held : asked

/** The same nominal and middle, another width. */
const widened = (size: Limits, width: Millimetre): Limits => ({
  nominal: size.nominal,
  lower: middleOf(size) - width / 2,
  upper: middleOf(size) + width / 2,
})
