import type { PlannedFeature } from '../features/feature-plan.ts'
import { inWords } from '../figures.ts'
import { GROOVING, type GroovingRow, plungeTime } from '../handbook/grooves.ts'
import { materialOf } from '../handbook/materials.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { TURNING_STARTS, turningSpeed } from '../handbook/turning-speeds.ts'
import { fromHandbook, told, worked } from '../known.ts'
import type { OperationSize } from '../operation-size.ts'
import type { MetrePerMinute, Millimetre, MillimetrePerRevolution, SpindleSpeed } from '../units.ts'
import { chooseTurningTool } from './choose-turning-tool.ts'
import { type CuttingTask, START_AT } from './cutting-task.ts'
import { spindleFor } from './spindle.ts'
import type { Step } from './step.ts'
import { AS_CUT, SETTLED } from './where-from.ts'

/** What is turned beside the bands, after the lands that it is cut into: undersides and undercuts, grooves, then the edges. */
export function turnFeatures(task: CuttingTask): readonly Step[] {
  const own = (task.features ?? []).filter(({ operation }) => operation === task.operation.number)
  return ORDER.flatMap(kind => own.filter(feature => feature.kind === kind)).flatMap(feature => {
    if (feature.kind === 'groove') return grooveSteps(task, feature)
    return contourSteps(task, feature)
  })
}

/** Lands stand already; a groove is cut before the edges of its lands are broken. */
const ORDER: readonly PlannedFeature['kind'][] = ['underside', 'undercut', 'groove', 'chamfer', 'lead']

/** Along its own line with the finishing tool, which has the smallest nose. */
function contourSteps(task: CuttingTask, feature: PlannedFeature): readonly Step[] {
  const { kind, name, side = 'outside', line = [], angle, end, corner, written } = feature
  const tool = side === 'outside' ? chooseTurningTool(task, 'smallest')?.name : barFor(task, feature)
  if (tool === undefined) return []
  const diameter = diameterAt(task, feature)
  const run = lengthOf(line) || faceOf(task, feature)
  const f = TURNING_STARTS.finish.feed
  const { n, speed, limitedBy } = spindleOf(task, name, diameter, 1)
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
    .filter(({ diameter }) => diameter < BAR_SHARE * diameterAt(task, feature))
    .toSorted((a, b) => a.noseRadius - b.noseRadius || b.diameter - a.diameter)
  return bars[0]?.name ?? 'boring bar, to get'
}

/** Of the bore, how thick a bar goes in with room for chips. Common practice, no source. */
const BAR_SHARE = 0.8

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

/** One plunge where the insert is as wide; else the middle first, then each flank from the top to the floor. */
function grooveSteps(task: CuttingTask, feature: PlannedFeature): readonly Step[] {
  const { name, deep = 0, side = 'outside', corner } = feature
  const width = task.sizes.find(size => size.feature === name && size.of === 'groove')
  if (!width) return []
  const diameter = diameterAt(task, feature)
  const row = insertFor(width, { deep, side, diameter })
  if (!row) {
    const reach = GROOVING.rows.findLast(({ insert }) => insert <= width.upper)
    task.report({
      code: 'cutting/no-groove-tool',
      severity: 'error',
      message: `${name}: no insert for a groove ${inWords(width.nominal)} mm wide goes ${inWords(deep)} mm deep${side === 'bore' ? ` in a bore of ${inWords(diameter)} mm` : ''}${reach ? `; one of ${reach.insert} mm goes ${reach.pecked}` : ''}`,
      hint: 'draw it wider or shallower',
      path: '/body/grooves',
    })
    return []
  }
  const once = row.insert >= width.lower - 1e-9
  const closer = width.upper - width.lower < GROOVING.plungeWidth
  const factor = FEED_FACTOR[materialOf(task.part.material.grade)?.group ?? ''] ?? 1
  const f: MillimetrePerRevolution = row.feed * factor
  const plunges = once ? 1 : Math.max(2, Math.ceil((width.nominal - row.insert) / (LAP * row.insert)) + 1)
  const { n, speed, limitedBy } = spindleOf(task, name, diameter, GROOVING.speedShare)
  const about = { operation: task.operation.number, about: name }
  const cutting = task.notebook.use(
    plungeTime,
    {
      ...told(AS_CUT, { t: deep + TURNING_STARTS.approach }),
      ...told(SETTLED, { f, n, i: plunges }),
      ...told(fromHandbook(GROOVING.source), { w: GROOVING.dwell }),
    },
    about,
  )
  const pecked = deep > row.depth
  const remarks = [
    START_AT,
    once
      ? 'one plunge, square to the axis'
      : `the middle first, then each flank from the top to the floor${closer ? ', flanks and floor last in one path' : ''}`,
    ...(pecked ? [`pecks of ${inWords(row.depth / 2)} mm, out to clear the chip`] : []),
    ...(corner === undefined ? [] : [`corner of the insert no larger than ${inWords(corner)}`]),
    'lands finished first; break both edges with the corner of the insert',
  ]
  return [
    {
      tool: `grooving tool ${row.insert}${side === 'bore' ? ', inside' : ''}`,
      action: `groove ${name}`,
      feature: name,
      cuttingSpeed: speed,
      spindleSpeed: n,
      feed: f,
      feedUnit: 'mm/rev',
      tableFeed: f * n,
      depth: deep,
      passes: plunges,
      time: cutting + SHOP_TIMES.rapid * plunges,
      ...(limitedBy ? { limitedBy } : {}),
      remarks,
    },
  ]
}

/** Against steel. */
const FEED_FACTOR: Readonly<Partial<Record<string, number>>> = {
  'grey iron': GROOVING.feedFactor.iron,
  'ductile iron': GROOVING.feedFactor.iron,
  'wrought aluminium': GROOVING.feedFactor.aluminium,
}

/** How far one plunge stands from the next, of the insert's width. Common practice, no source. */
const LAP = 0.8

/** As wide as the groove where one plunge holds its width; else the widest that leaves both flanks to finish. */
export function insertFor(
  width: Pick<OperationSize, 'lower' | 'upper'>,
  {
    deep,
    side,
    diameter,
  }: { readonly deep: Millimetre; readonly side: 'outside' | 'bore'; readonly diameter: Millimetre },
): GroovingRow | undefined {
  const able = GROOVING.rows.filter(
    row => deep <= row.pecked + 1e-9 && (side === 'outside' || diameter >= row.leastBore),
  )
  const once =
    width.upper - width.lower >= GROOVING.plungeWidth
      ? able.find(({ insert }) => insert >= width.lower - 1e-9 && insert <= width.upper + 1e-9)
      : undefined
  return once ?? able.findLast(({ insert }) => insert <= width.lower - GROOVING.narrower + 1e-9)
}

function spindleOf(
  task: CuttingTask,
  name: string,
  diameter: Millimetre,
  share: number,
): { readonly n: SpindleSpeed; readonly speed: MetrePerMinute; readonly limitedBy: string | undefined } {
  const { machine, material, notebook, operation } = task
  const wanted = share * turningSpeed(material.turning, TURNING_STARTS.finish.depth)
  const spindle = spindleFor({
    machine,
    ...told(fromHandbook(material.turning.source), { wanted }),
    ...told(worked('diameter that it is cut into'), { diameter }),
    notebook,
    about: { operation: operation.number, about: name },
  })
  return { n: spindle.spindleSpeed, speed: spindle.cuttingSpeed, limitedBy: spindle.limitedBy }
}
