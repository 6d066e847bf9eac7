import { clockPosition } from '../clock-position.ts'
import type { PlannedFeature } from '../features/feature-plan.ts'
import { fixed, inWords } from '../figures.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { type Drill, toolsOf } from '../shop/tool.ts'
import type { Millimetre } from '../units.ts'
import { wallAt } from '../wall.ts'
import { type CuttingTask, type PlannedCuts, START_AT_SMALL } from './cutting-task.ts'
import { drilledStep } from './drilled-step.ts'
import { endMillSettings, type SettingOf } from './end-mill-settings.ts'
import { type Step, timeOnly } from './step.ts'

/** Holes and cut-outs of a part without ports, in a clamping of their own. */
export function millFeatures(task: CuttingTask): PlannedCuts {
  const settingOf = own(task).some(({ kind }) => kind === 'cut-out') ? endMillSettings(task)?.of : undefined
  return { steps: featureSteps(task, settingOf), each: SHOP_TIMES.index + loadAndIndex(task) }
}

const own = ({ features = [], operation }: CuttingTask): readonly PlannedFeature[] =>
  features.filter(({ operation: made, kind }) => made === operation.number && (kind === 'hole' || kind === 'cut-out'))

/** A turn of the head for each place. */
export const loadAndIndex = (task: CuttingTask): number =>
  own(task).reduce((sum, { at = [] }) => sum + at.length * SHOP_TIMES.index, 0)

/** What is drilled and milled at tilt 0: cut-outs, then holes. */
export function featureSteps(task: CuttingTask, settingOf: SettingOf | undefined): readonly Step[] {
  const features = own(task)
  return [
    ...features
      .filter(({ kind }) => kind === 'cut-out')
      .flatMap(feature => (settingOf ? cutOut(task, feature, settingOf) : [])),
    ...features.filter(({ kind }) => kind === 'hole').flatMap(feature => hole(task, feature)),
  ]
}

const hours = ({ at = [] }: PlannedFeature): string =>
  `at ${at.map(azimuth => clockPosition(azimuth)).join(', ')} o’clock, tilt 0`

const wallOf = ({ after }: CuttingTask, { middle }: PlannedFeature): Millimetre =>
  wallAt(after, middle?.depth ?? 0) ?? middle?.radius ?? 0

/** A hole as wide as a drill of the list is drilled; a closer or another one is drilled under size and reamed or bored. */
function hole(task: CuttingTask, feature: PlannedFeature): readonly Step[] {
  const { name, at = [], across, through } = feature
  const size = task.sizes.find(one => one.feature === name && one.of === 'hole')
  if (!size) return []
  const blind = through === 'groove floor'
  const length = blind ? PEG_DEEP : through === 'flange' ? (across?.height ?? 0) : wallOf(task, feature)
  const drills = toolsOf(task.shop, 'drill').filter(({ fluteLength }) => fluteLength >= length)
  const straight = drills.find(({ diameter }) => DRILLED <= size.upper - size.lower && fits(diameter, size))
  const under = drills
    .filter(({ diameter }) => diameter <= size.lower - UNDER)
    .toSorted((a, b) => b.diameter - a.diameter)[0]
  const flat = size.nominal > DIRECT ? ['mill a flat first: a drill over 6 mm runs off a round'] : []
  if (straight) return [drilled({ task, feature, drill: straight, length, remarks: [...flat, SLOWER] })]
  // A drill of the size itself is bought sooner than a reamer, where the tolerance allows one.
  if (size.upper - size.lower >= DRILLED) {
    const bought: Drill = {
      kind: 'drill',
      name: `drill ${fixed((size.lower + size.upper) / 2, 1)}, to get`,
      diameter: (size.lower + size.upper) / 2,
      fluteLength: length + size.nominal,
      reach: 2 * (length + size.nominal),
      shank: size.nominal,
      point: 140,
    }
    return [drilled({ task, feature, drill: bought, length, remarks: [...flat, SLOWER] })]
  }
  const ream = timeOnly(`reamer ${inWords(size.nominal)}`, `ream ${name}`, at.length * SHOP_TIMES.ream, [
    'by hand feed, oil',
  ])
  return under ? [drilled({ task, feature, drill: under, length, remarks: flat }), ream] : [ream]
}

/** Whole tolerance that a drill leaves; how much under a hole a drill goes before the reamer; a larger hole wants a flat. Common practice, no source. */
/** A peg stands so far in the floor of its groove. Common practice, no source. */
const PEG_DEEP: Millimetre = 4
const DRILLED: Millimetre = 0.05
const UNDER: Millimetre = 0.1
const DIRECT: Millimetre = 6

const SLOWER = 'half the feed at break-through'

const fits = (diameter: Millimetre, { lower, upper }: { readonly lower: number; readonly upper: number }): boolean =>
  diameter >= lower - 1e-9 && diameter <= upper - OVERSIZE
/** What a drill cuts over its own size. Common practice, no source. */
const OVERSIZE: Millimetre = 0.03

function drilled({
  task,
  feature,
  drill,
  length,
  remarks,
}: {
  readonly task: CuttingTask
  readonly feature: PlannedFeature
  readonly drill: Drill
  readonly length: Millimetre
  readonly remarks: readonly string[]
}): Step {
  const { name, at = [] } = feature
  return drilledStep({
    task,
    drill,
    action: `drill ${name}`,
    feature: name,
    length,
    ends: feature.through === 'groove floor' ? 'blind' : 'through',
    holes: at.length,
    depth: length,
    remarks: [START_AT_SMALL, hours(feature), 'spot first', ...remarks],
  })
}

/** Open at the end: down both sides and across its top, the middle falls out; in levels as deep as the wall and the cutter go. */
function cutOut(task: CuttingTask, feature: PlannedFeature, settingOf: SettingOf): readonly Step[] {
  const { name, at = [], across, corner = 0 } = feature
  const wall = wallOf(task, feature)
  const mill = toolsOf(task.shop, 'end mill')
    .filter(({ diameter, fluteLength }) => diameter <= 2 * corner + 1e-9 && fluteLength >= wall)
    .toSorted((a, b) => b.diameter - a.diameter || a.reach - b.reach)[0]
  if (!mill || !across) {
    return [
      timeOnly('end mill, to get', `mill ${name}`, 0, [`up to ${inWords(2 * corner)} mm, flutes ${inWords(wall)} mm`]),
    ]
  }
  const setting = settingOf(mill)
  const passes = Math.max(1, Math.ceil(wall / setting.mostDepth - 1e-6))
  const round = 2 * across.height + across.width
  return [
    {
      tool: mill.name,
      action: `mill ${name}`,
      feature: name,
      cuttingSpeed: setting.cuttingSpeed,
      spindleSpeed: setting.spindleSpeed,
      feed: setting.feedPerTooth,
      feedUnit: 'mm/tooth',
      tableFeed: setting.tableFeed,
      depth: wall / passes,
      passes,
      time: (at.length * (passes + 1) * (round + mill.diameter)) / setting.tableFeed + at.length * SHOP_TIMES.rapid,
      remarks: [
        START_AT_SMALL,
        hours(feature),
        'in from the end, round the outline and out; the last level once more for the walls; hold the piece that falls out',
      ],
    },
  ]
}
