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
import type { Spread } from '../limits.ts'
import { type Limits, middleOf, shifted, toleranceOf } from '../limits.ts'
import type { Part, PartPlating } from '../part/part.ts'
import type { Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'

/** A plated bore worked backward from the drawing: honed, as plated, before plating. Layers are per side. */
export type PlatingSizes = {
  readonly asked: PartPlating
  readonly row: Plating
  readonly band: Band
  /** Of the finished layer. */
  readonly aim: Millimetre
  readonly honeStock: Millimetre
  readonly before: Limits
  readonly plated: Limits
  readonly finished: Limits
  /** As plated, and as left by the hone: at the worst places. */
  readonly layer: Spread
  readonly left: Spread
  /** Of the hone after plating: what must go, and how far out of true the layer is. */
  readonly needed: Millimetre
  readonly form: Millimetre
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
  const T_end = toleranceOf(finished)
  const T_pre = Math.min(T_end, gradeAt(finished.nominal))
  const u = row.unevenness
  const f = notebook.use(formError, { o: DISTORTION.ground.ovality, b: DISTORTION.ground.bow }, about)
  const aim =
    asked.thickness.aim ??
    upTo(notebook.use(thicknessToAim, { t_asked: asked.thickness.least, T_pre, T_end, u, f }, about), STEP)

  const needed = notebook.use(layerToRemove, { Rz: row.roughness, T: 0 }, about)
  const T_plated = 4 * row.tolerance
  const S_least = notebook.use(leastStock, { e: 0, f: u, r: needed }, about)
  const S = notebook.use(nominalStock, { S_least, T_before: T_plated, T_after: T_end, g: 0, g_least: 0 }, about)
  const chosen = Math.max(2 * row.honeStock.usual, upTo(S, shop.habits.stockStep))
  const honeStock = (part.stock.hone ?? chosen) / 2

  const d_pre = notebook.use(boreBeforePlating, { d: finished.nominal, t: aim }, about)
  const d_plated = notebook.use(boreAsPlated, { d_pre, t: aim, s: honeStock }, about)
  const before = widened(shifted(finished, d_pre - finished.nominal), T_pre)
  const plated = widened(shifted(finished, d_plated - finished.nominal), T_plated)
  const layerTo = (now: Limits, nominal: Millimetre): Spread => ({
    least: notebook.use(layerLeast, { d_pre: before.lower, d: now.upper, u, f }, about),
    nominal,
    most: notebook.use(layerMost, { d_pre: before.upper, d: now.lower, u, f }, about),
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
    layer: layerTo(plated, aim + honeStock),
    left: layerTo(finished, aim),
    needed,
    form: u,
  }
}

/** A thickness that the planner chooses comes in these steps. */
const STEP = 0.005

const upTo = (value: Millimetre, step: Millimetre): Millimetre =>
  Number((Math.ceil(value / step - 1e-6) * step).toFixed(6))

const gradeAt = (nominal: Millimetre): Millimetre =>
  nominal > 250 ? Number.POSITIVE_INFINITY : standardTolerance(nominal, HONED_GRADE)

/** The same nominal and middle, another width. */
const widened = (size: Limits, width: Millimetre): Limits => ({
  nominal: size.nominal,
  lower: middleOf(size) - width / 2,
  upper: middleOf(size) + width / 2,
})
