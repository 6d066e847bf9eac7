import { inWords } from '../figures.ts'
import { GROOVING, type GroovingRow, plungeTime } from '../handbook/grooves.ts'
import { materialOf } from '../handbook/materials.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { TURNING_STARTS } from '../handbook/turning-speeds.ts'
import { fromHandbook, told } from '../known.ts'
import type { Millimetre, MillimetrePerRevolution } from '../units.ts'
import { type CuttingTask, START_AT } from './cutting-task.ts'
import { featureSpindle } from './feature-spindle.ts'
import type { Step } from './step.ts'
import { AS_CUT, SETTLED } from './where-from.ts'

type Width = { readonly lower: Millimetre; readonly upper: Millimetre }
type Place = {
  /** Below the surface as it is turned, radial. */
  readonly deep: Millimetre
  readonly side: 'outside' | 'bore'
  /** Of that surface. */
  readonly diameter: Millimetre
}

/** Against steel. */
const FEED_FACTOR: Readonly<Partial<Record<string, number>>> = {
  'grey iron': GROOVING.feedFactor.iron,
  'ductile iron': GROOVING.feedFactor.iron,
  'wrought aluminium': GROOVING.feedFactor.aluminium,
}

/** How far one plunge stands from the next, of the insert's width. Common practice, no source. */
const LAP = 0.8

/** One plunge where the insert is as wide; else the middle first, then each flank from the top to the floor. */
export function plunge(
  task: CuttingTask,
  {
    name,
    width,
    place,
    corner,
    path,
  }: {
    readonly name: string
    readonly width: Width
    readonly place: Place
    readonly corner?: Millimetre | undefined
    readonly path: string
  },
): readonly Step[] {
  const { deep, side, diameter } = place
  const row = insertFor(width, place)
  const middle = (width.lower + width.upper) / 2
  if (!row) {
    const reach = GROOVING.rows.findLast(({ insert }) => insert <= width.upper)
    task.report({
      code: 'cutting/no-groove-tool',
      severity: 'error',
      message: `${name}: no insert for a groove ${inWords(middle)} mm wide goes ${inWords(deep)} mm deep${side === 'bore' ? ` in a bore of ${inWords(diameter)} mm` : ''}${reach ? `; one of ${reach.insert} mm goes ${reach.pecked}` : ''}`,
      hint: 'draw it wider or shallower',
      path,
    })
    return []
  }
  const once = row.insert >= width.lower - 1e-9
  const closer = width.upper - width.lower < GROOVING.plungeWidth
  const f: MillimetrePerRevolution = row.feed * (FEED_FACTOR[materialOf(task.part.material.grade)?.group ?? ''] ?? 1)
  const plunges = once ? 1 : Math.max(2, Math.ceil((middle - row.insert) / (LAP * row.insert)) + 1)
  const { n, speed, limitedBy } = featureSpindle(task, name, diameter, GROOVING.speedShare)
  const cutting = task.notebook.use(
    plungeTime,
    {
      ...told(AS_CUT, { t: deep + TURNING_STARTS.approach }),
      ...told(SETTLED, { f, n, i: plunges }),
      ...told(fromHandbook(GROOVING.source), { w: GROOVING.dwell }),
    },
    { operation: task.operation.number, about: name },
  )
  const remarks = [
    START_AT,
    once
      ? 'one plunge, square to the axis'
      : `the middle first, then each flank from the top to the floor${closer ? ', flanks and floor last in one path' : ''}`,
    ...(deep > row.depth ? [`pecks of ${inWords(row.depth / 2)} mm, out to clear the chip`] : []),
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

/** As wide as the groove where one plunge holds its width; else the widest that leaves both flanks to finish. */
export function insertFor(width: Width, { deep, side, diameter }: Place): GroovingRow | undefined {
  const able = GROOVING.rows.filter(
    row => deep <= row.pecked + 1e-9 && (side === 'outside' || diameter >= row.leastBore),
  )
  const once =
    width.upper - width.lower >= GROOVING.plungeWidth
      ? able.find(({ insert }) => insert >= width.lower - 1e-9 && insert <= width.upper + 1e-9)
      : undefined
  return once ?? able.findLast(({ insert }) => insert <= width.lower - GROOVING.narrower + 1e-9)
}
