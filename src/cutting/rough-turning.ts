import { barDeflection } from '../handbook/boring-bar.ts'
import { FORCE_FACTORS, PASSIVE_FORCE_SHARE } from '../handbook/kienzle.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { TURNING_STARTS } from '../handbook/turning-speeds.ts'
import { told, worked } from '../known.ts'
import { drilledBore } from '../route/drilled-bore.ts'
import { isNarrowRecess } from '../route/running-band.ts'
import { type Micrometre, type Millimetre, micrometres, type Newton } from '../units.ts'
import { chooseBoringBar, type StandingBar } from './choose-boring-bar.ts'
import { chooseTurningTool } from './choose-turning-tool.ts'
import type { CuttingTask, PlannedCuts } from './cutting-task.ts'
import { type DrilledHole, drillForBoring, drillThrough } from './drill-through.ts'
import { type Step, timeOnly } from './step.ts'
import { type BandCut, boreCuts, type FaceCut, faceCuts, outsideCuts } from './turned-cuts.ts'
import { settlePass } from './turned-pass.ts'
import { facingStep, turningStep } from './turning-step.ts'

const { rough, mostFeedOverNose } = TURNING_STARTS

/** Faces the first end, drills and bores, turns the outside, then turns round and faces the other end. */
export function roughTurn(task: CuttingTask): PlannedCuts {
  const { before, after } = task
  const [top, bottom] = ['top', 'bottom'].map(end => faceCuts(before, after).filter(({ feature }) => feature === end))
  // A narrow recess goes along with the band beside it, and is cut once, later.
  const roughed = ({ feature }: BandCut): boolean => !isNarrowRecess(task.part, feature)
  const solid = before.bore.length === 0 && after.bore.length > 0
  const drilled = solid ? drill(task, before.bottom - after.top) : undefined
  const bored =
    (solid && !drilled) || drilledBore(task.part) ? [] : boreCuts(before, after, drilled?.diameter ?? 0).filter(roughed)
  const opened = (face: FaceCut): FaceCut => ({ ...face, bore: Math.max(face.bore, drilled?.diameter ?? 0) })
  return {
    steps: [
      ...(top ?? []).flatMap(face => roughFace(task, face)),
      ...(drilled ? [drilled.step] : []),
      ...bored.flatMap(cut => roughBore(task, cut)),
      ...outsideCuts(before, after)
        .filter(roughed)
        .flatMap(cut => roughOutside(task, cut)),
      ...(bottom ?? []).map(opened).flatMap(face => roughFace(task, face)),
      ...(task.part.kind === 'pin' ? [centres(task)] : []),
    ],
  }
}

/** A pin is turned, and ground unless it goes through the wheels, between what is cut here at both ends. */
const centres = ({ after }: CuttingTask): Step =>
  after.bore.length > 0
    ? timeOnly('60° countersink', 'chamfer the bore at both ends for the centres', 2 * SHOP_TIMES.deburrEdge, [
        'no deeper than the drawing lets a chamfer be',
      ])
    : timeOnly('centre drill', 'centre both ends', 2 * SHOP_TIMES.deburrEdge)

/** To the drawing where the bore stays as drilled, else to bore it. */
function drill(task: CuttingTask, length: Millimetre): DrilledHole | undefined {
  const { after, part, sizes } = task
  const hole = drilledBore(part)
  const size = hole && sizes.find(({ feature, measure }) => feature === hole.name && measure === 'diameter')
  if (size) return drillThrough(task, { least: size.lower, most: size.upper }, length)
  return drillForBoring(task, Math.min(...after.bore.map(({ diameter }) => diameter)), length)
}

function roughFace(task: CuttingTask, face: FaceCut): readonly Step[] {
  const tool = chooseTurningTool(task, 'largest')
  if (!tool) return []
  const pass = settlePass(task, {
    feature: face.feature,
    diameter: face.outside,
    stock: face.stock,
    mostDepth: rough.face.depth,
    feed: Math.min(rough.face.feed, mostFeedOverNose * tool.noseRadius),
    operationFactor: FORCE_FACTORS.externalTurning,
  })
  return [facingStep(task, { tool: tool.name, action: `face ${face.feature}`, feature: face.feature }, pass, face)]
}

function roughOutside(task: CuttingTask, cut: BandCut): readonly Step[] {
  const tool = chooseTurningTool(task, 'largest')
  if (!tool) return []
  const pass = settlePass(task, {
    feature: cut.feature,
    diameter: cut.from,
    stock: (cut.from - cut.to) / 2,
    mostDepth: rough.outside.depth,
    feed: Math.min(rough.outside.feed, mostFeedOverNose * tool.noseRadius),
    operationFactor: FORCE_FACTORS.externalTurning,
  })
  const named = { tool: tool.name, action: `rough ${cut.feature}`, feature: cut.feature }
  return [turningStep(task, named, pass, cut.length)]
}

function roughBore(task: CuttingTask, cut: BandCut): readonly Step[] {
  const bar = chooseBoringBar(task, cut.from, reachInto(task, cut), 'largest')
  if (!bar) return []
  const pass = settlePass(task, {
    feature: cut.feature,
    diameter: cut.to,
    stock: (cut.to - cut.from) / 2,
    mostDepth: rough.bore.depth,
    feed: Math.min(rough.bore.feed, mostFeedOverNose * bar.noseRadius),
    operationFactor: FORCE_FACTORS.boringDrillingMilling,
  })
  const step = turningStep(
    task,
    { tool: bar.name, action: `rough ${cut.feature}`, feature: cut.feature },
    pass,
    cut.length,
  )
  return [{ ...step, deflection: bend(task, cut, bar, PASSIVE_FORCE_SHARE.roughing * pass.force) }]
}

/** A band is bored from the face that is nearer to its far end. */
export const reachInto = ({ after }: CuttingTask, { top, bottom }: BandCut): Millimetre =>
  Math.min(bottom - after.top, after.bottom - top)

/** How far the bar gives way, radially: twice as much on the diameter. */
export const bend = (task: CuttingTask, { feature }: BandCut, bar: StandingBar, force: Newton): Micrometre =>
  micrometres(
    task.notebook.use(
      barDeflection,
      {
        ...told(worked('share of the cutting force that pushes the bar off'), { F: force }),
        ...told(worked('boring bar on hand, sticking out as far as the bore asks'), {
          L: bar.overhang,
          E: bar.elasticModulus,
          d: bar.diameter,
        }),
      },
      { operation: task.operation.number, about: feature },
    ),
  )
