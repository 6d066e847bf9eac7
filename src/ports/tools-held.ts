import type { Shop } from '../shop/shop.ts'
import type { EndMill } from '../shop/tool.ts'
import { toolNamed } from '../shop/tools-to-get.ts'
import type { Millimetre } from '../units.ts'
import type { ChosenCutter } from './choose-cutter.ts'
import type { Setting, Standing } from './closest-place.ts'
import { pointOf } from './drill-point.ts'
import { heldCutter } from './held-cutter.ts'
import type { PortWindow } from './port.ts'

export const standingOf = ({ diameter, shank, fluteLength }: EndMill): Standing => ({
  diameter,
  shank,
  flutes: fluteLength,
})

/** The larger cutter that may rough the window; nothing where there is none. */
export function roughingHeld(
  setting: Setting,
  { tools }: ChosenCutter,
  shop: Shop,
  {
    flutes,
    margin,
  }: { readonly flutes: (cutter: Millimetre, shank: Millimetre) => Millimetre; readonly margin: Millimetre },
): Pick<PortWindow, 'roughing'> {
  const tool = toolNamed(shop, 'end mill', tools.rougher)
  if (!tool) return {}
  const held = heldCutter(setting, standingOf(tool), tool.reach, margin)
  return { roughing: { flutes: flutes(tool.diameter, tool.shank), held } }
}

/** The drill of the entry hole, its point past the bore; nothing where the works has none. */
export function drillHeld(
  setting: Setting,
  { drill, tools }: ChosenCutter,
  shop: Shop,
  { x, y, margin }: { readonly x: Millimetre; readonly y: Millimetre; readonly margin: Millimetre },
): Pick<PortWindow, 'drillHeld'> {
  const tool = toolNamed(shop, 'drill', tools.drill)
  if (!tool) return {}
  const place = { ...setting, window: { x: [x, x], y: [y, y] } as const, tip: setting.tip - pointOf(drill) }
  return {
    drillHeld: heldCutter(place, { diameter: drill, shank: tool.shank, flutes: tool.fluteLength }, tool.reach, margin),
  }
}
