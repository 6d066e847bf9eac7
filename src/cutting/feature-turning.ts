import type { PlannedFeature } from '../features/feature-plan.ts'
import { inWords } from '../figures.ts'
import { LARGEST_BAR_IN_BORE } from '../handbook/boring-bar.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { TURNING_STARTS } from '../handbook/turning-speeds.ts'
import type { Millimetre } from '../units.ts'
import { chooseTurningTool } from './choose-turning-tool.ts'
import { type CuttingTask, START_AT } from './cutting-task.ts'
import { featureSpindle } from './feature-spindle.ts'
import { plunge } from './groove-cutting.ts'
import { relieveSkirt } from './piston-cuts.ts'
import type { Step } from './step.ts'

/** What is turned beside the bands, after the lands that it is cut into: undersides and undercuts, grooves, then the edges. */
export function turnFeatures(task: CuttingTask): readonly Step[] {
  const own = (task.features ?? []).filter(({ operation }) => operation === task.operation.number)
  return ORDER.flatMap(kind => own.filter(feature => feature.kind === kind)).flatMap(feature => {
    if (feature.kind === 'groove') return grooveSteps(task, feature)
    if (feature.kind === 'oval') return relieveSkirt(feature)
    return contourSteps(task, feature)
  })
}

/** Lands stand already; a groove is cut before the edges of its lands are broken. */
const ORDER: readonly PlannedFeature['kind'][] = ['dome', 'underside', 'undercut', 'oval', 'groove', 'chamfer', 'lead']

/** Along its own line with the finishing tool, which has the smallest nose. */
function contourSteps(task: CuttingTask, feature: PlannedFeature): readonly Step[] {
  const { kind, name, sphere, side = 'outside', line = [], angle, end, corner, written } = feature
  const tool = side === 'outside' ? chooseTurningTool(task, 'smallest')?.name : barFor(task, feature)
  if (tool === undefined) return []
  const diameter = diameterAt(task, feature)
  const run = lengthOf(line) || faceOf(task, feature)
  const f = TURNING_STARTS.finish.feed
  const { n, speed, limitedBy } = featureSpindle(task, name, diameter, 1)
  const remarks = [
    START_AT,
    ...(end
      ? [
          `${inWords(angle ?? 45)}° to the surface, ${side === 'bore' ? 'large' : 'small'} end Ø${end.cut.toFixed(2)} now, Ø${end.finished.toFixed(2)} finished`,
        ]
      : []),
    ...(kind === 'undercut'
      ? [
          `${written}: in along the shoulder, out at 15°; corner ${inWords(corner ?? 0)}, tool with a clearance for the face`,
        ]
      : []),
    ...(sphere === undefined
      ? []
      : [`sphere of radius ${sphere.toFixed(2)}, from the rim to the centre; hold it against a template`]),
    ...(kind === 'underside' ? [`from the corner outward, in the chucking that turns the band below it`] : []),
  ]
  return [
    {
      tool,
      action: kind === 'underside' ? `face ${name}` : `turn ${name}`,
      feature: name,
      cuttingSpeed: speed,
      spindleSpeed: n,
      feed: f,
      feedUnit: 'mm/rev',
      tableFeed: f * n,
      depth: depthOf(task, feature),
      passes: 1,
      time: (run + 2 * TURNING_STARTS.approach) / (f * n) + SHOP_TIMES.rapid,
      ...(limitedBy ? { limitedBy } : {}),
      remarks,
    },
  ]
}

/** The thickest bar that goes in, with the smallest nose: an edge is cut near the mouth. */
function barFor(task: CuttingTask, feature: PlannedFeature): string {
  const bars = task.shop.tools
    .filter(tool => tool.kind === 'boring bar')
    .filter(({ diameter }) => diameter <= LARGEST_BAR_IN_BORE * diameterAt(task, feature) + 1e-9)
    .toSorted((a, b) => a.noseRadius - b.noseRadius || b.diameter - a.diameter)
  return bars[0]?.name ?? 'boring bar, to get'
}

const lengthOf = (line: NonNullable<PlannedFeature['line']>): Millimetre =>
  line.slice(1).reduce((sum, { depth, radius }, index) => {
    const before = line[index]
    return before ? sum + Math.hypot(depth - before.depth, radius - before.radius) : sum
  }, 0)

/** The face of a shoulder: half of what the diameters differ by. */
function faceOf({ after }: CuttingTask, { band }: PlannedFeature): Millimetre {
  const index = after.outside.findIndex(({ name }) => name === band)
  const [over, below] = [after.outside[index], after.outside[index + 1]]
  return over && below ? Math.max(0, (over.diameter - below.diameter) / 2) : 0
}

const bandOf = ({ after }: CuttingTask, { band, side = 'outside' }: PlannedFeature) =>
  after[side].find(({ name }) => name === band)

const diameterAt = (task: CuttingTask, feature: PlannedFeature): Millimetre => bandOf(task, feature)?.diameter ?? 1

/** What the tool takes, radial; off a face a light cut. */
function depthOf(task: CuttingTask, feature: PlannedFeature): Millimetre {
  const { deep, end, kind } = feature
  if (deep !== undefined) return deep
  if (kind === 'underside') return TURNING_STARTS.finish.depth
  return end ? Math.abs(diameterAt(task, feature) - end.cut) / 2 : 0
}

function grooveSteps(task: CuttingTask, feature: PlannedFeature): readonly Step[] {
  const { name, deep = 0, side = 'outside', corner } = feature
  const width = task.sizes.find(size => size.feature === name && size.of === 'groove')
  const place = { deep, side, diameter: diameterAt(task, feature) }
  return width ? plunge(task, { name, width, place, corner, path: '/body/grooves' }) : []
}
