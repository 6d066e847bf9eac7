import { fixed } from '../figures.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { DATUM_SIZES } from '../handbook/timing-datums.ts'
import { type EndMill, toolsOf } from '../shop/tool.ts'
import type { ClockingDatum } from './clocking-datum.ts'
import { type CuttingTask, START_AT_SMALL } from './cutting-task.ts'
import { drilledStep } from './drilled-step.ts'
import type { EndMillSetting } from './end-mill-setting.ts'
import { type Step, timeOnly } from './step.ts'

type SettingOf = (mill: EndMill) => EndMillSetting

/** The cuts that make a drawn datum, before anything is located by it. A key's window is a port, and is milled as one. */
export function makeDatum(task: CuttingTask, datum: ClockingDatum | undefined, settingOf: SettingOf): readonly Step[] {
  if (!datum?.drawn || !datum.place) return []
  return datum.kind === 'dowel hole' ? reamed(task, datum) : milled(task, datum, settingOf)
}

function where({ clamping, clock, on, place }: ClockingDatum): string {
  if (clamping === 'with the ports') return `at ${clock}, first of all, tilt 0`
  const end = place?.end === 'top' ? 'head' : 'lower'
  return `at ${clock}, in a clamping of its own before the ports: the ${end} end with ${on} out of the jaws`
}

/** A flat in lines side by side across it; a notch down its middle, then each flank. */
function milled(task: CuttingTask, datum: ClockingDatum, settingOf: SettingOf): readonly Step[] {
  const { kind, on, width = 0, depth = 0, place } = datum
  const across = kind === 'notch' ? DATUM_SIZES.notch - DATUM_SIZES.cutterUnder : Number.POSITIVE_INFINITY
  const mill = toolsOf(task.shop, 'end mill')
    .filter(({ diameter }) => diameter <= across + 1e-9)
    .toSorted((a, b) => b.diameter - a.diameter || a.reach - b.reach)[0]
  if (!mill || !place) return [timeOnly('end mill, to get', `mill the ${kind} on ${on}`, 0, [where(datum)])]
  const setting = settingOf(mill)
  const passes = Math.max(1, Math.ceil(depth / setting.mostDepth - 1e-6))
  const along = place.to - place.from
  const D = mill.diameter
  const lines = kind === 'flat' ? Math.max(1, Math.ceil(along / (LINE * D) - 1e-6)) : 3
  const one = (kind === 'flat' ? width : along) + D
  return [
    {
      tool: mill.name,
      action: `mill the ${kind} on ${on}`,
      feature: on,
      cuttingSpeed: setting.cuttingSpeed,
      spindleSpeed: setting.spindleSpeed,
      feed: setting.feedPerTooth,
      feedUnit: 'mm/tooth',
      tableFeed: setting.tableFeed,
      depth: depth / passes,
      passes,
      time: (passes * lines * one) / setting.tableFeed + SHOP_TIMES.rapid,
      remarks: [
        START_AT_SMALL,
        where(datum),
        'no program: by hand wheels or typed in, to the figures of the setting sheet',
        kind === 'flat'
          ? `${fixed(depth, 2)} deep, ${fixed(width, 1)} wide, over ${fixed(along, 1)} along the part`
          : `${fixed(depth, 2)} deep over ${fixed(along, 1)} along the part: down the middle, then both flanks to ${fixed(width, 0)} H9`,
      ],
    },
  ]
}

/** Of a cutter's diameter, how far its lines stand apart. Common practice, no source. */
const LINE = 0.7

function reamed(task: CuttingTask, datum: ClockingDatum): readonly Step[] {
  const { shop } = task
  const { on, depth = 0 } = datum
  const size = DATUM_SIZES['dowel hole']
  const drill = toolsOf(shop, 'drill')
    .filter(({ diameter }) => diameter <= size - DATUM_SIZES.drillUnder + 1e-9)
    .toSorted((a, b) => b.diameter - a.diameter)[0]
  const said = [where(datum), `${fixed(depth, 1)} deep along the axis, ${placed(datum)} from it, through a drill plate`]
  const ream = timeOnly(`reamer ${size} H7`, `ream the dowel hole in ${on}`, SHOP_TIMES.ream, [
    'by hand feed, oil; the pin of the fixture, 3 g6, goes in by hand and does not shake',
  ])
  if (!drill) return [timeOnly('drill, to get', `drill the dowel hole in ${on}`, 0, said), ream]
  return [
    drilledStep({
      task,
      drill,
      action: `drill the dowel hole in ${on}`,
      feature: on,
      length: depth,
      ends: 'blind',
      depth,
      remarks: [START_AT_SMALL, ...said],
    }),
    ream,
  ]
}

const placed = ({ place }: ClockingDatum): string => `${fixed(place?.radius ?? 0, 2)} mm`
