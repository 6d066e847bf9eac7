import { MILLING_STARTS } from '../handbook/milling-speeds.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { mostLeft, slugOf } from '../ports/path/floors.ts'
import type { PortWindow } from '../ports/port.ts'
import type { EndMill } from '../shop/tool.ts'
import { type Millimetre, type Minute, millimetres } from '../units.ts'
import type { CuttingTask } from './cutting-task.ts'
import { bendFor, type EndMillSetting } from './end-mill-setting.ts'
import { rougherFor } from './port-tools.ts'

/** A larger cutter roughs where that saves more than bringing it in and turning to the window once more. */
export function roughingOf(
  task: CuttingTask,
  window: PortWindow,
  setting: EndMillSetting,
  settingOf: (mill: EndMill) => EndMillSetting,
): { readonly roughing: EndMillSetting; readonly left: Millimetre } {
  const alone = { roughing: setting, left: setting.wallStock }
  const rougher = rougherFor(task, window)
  if (!rougher) return alone
  const roughing = leaving(settingOf(rougher), setting.wallStock)
  const again = SHOP_TIMES.toolChange + SHOP_TIMES.index
  if (aboutTime(window, roughing) + again >= aboutTime(window, setting)) return alone
  return { roughing, left: mostLeft(window, rougher.diameter, roughing.wallStock) }
}

/** The finishing cutter finds no more than it wants, unless the roughing one bends by more than half of that. */
function leaving(roughing: EndMillSetting, wanted: Millimetre): EndMillSetting {
  const { mill, mostDepth, unitForce } = roughing
  const bend = millimetres(bendFor(mill, mostDepth * unitForce))
  const wallStock = Math.min(roughing.wallStock, Math.max(wanted, bend / MILLING_STARTS.bendOfWallStock))
  return { ...roughing, wallStock }
}

/** Roughing steps sideways by half the cutter where no slug is kept: see the floors of its path. */
const STEP_OVER = 0.5

/**
 * Minutes that roughing takes, near enough to choose by before its path is laid: round the slug, or over the whole window,
 * in levels as deep as the cutter stands.
 */
function aboutTime(window: PortWindow, { mill, wallStock, mostDepth, tableFeed }: EndMillSetting): Minute {
  const D = mill.diameter
  const kept = slugOf(window, D, wallStock) === 'kept'
  const round = kept ? window.pathLength : areaOf(window) / (STEP_OVER * D)
  return (round * Math.ceil(window.plunge.wall / mostDepth)) / tableFeed
}

function areaOf({ outline: { cutterPlane } }: PortWindow): number {
  const twice = cutterPlane.reduce((sum, from, i) => {
    const to = cutterPlane[(i + 1) % cutterPlane.length] ?? from
    return sum + from.x * to.y - to.x * from.y
  }, 0)
  return Math.abs(twice) / 2
}
