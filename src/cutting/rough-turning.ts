import { barDeflection } from '../handbook/boring-bar.ts'
import { HOLDING } from '../handbook/holding.ts'
import { FORCE_FACTORS, PASSIVE_FORCE_SHARE } from '../handbook/kienzle.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { TURNING_STARTS } from '../handbook/turning-speeds.ts'
import { told, worked } from '../known.ts'
import { drilledBore } from '../route/drilled-bore.ts'
import { isNarrowRecess } from '../route/running-band.ts'
import type { Shape } from '../shape.ts'
import { type Micrometre, type Millimetre, micrometres, type Newton } from '../units.ts'
import { chooseBoringBar, type StandingBar } from './choose-boring-bar.ts'
import { chooseTurningTool } from './choose-turning-tool.ts'
import { type Held, inChuckings } from './chuckings.ts'
import type { CuttingTask, PlannedCuts } from './cutting-task.ts'
import { type DrilledHole, drillForBoring, drillThrough } from './drill-through.ts'
import { deepestHeld, type Loaded } from './jaw-grip.ts'
import { type Step, timeOnly } from './step.ts'
import { type BandCut, boreCuts, type FaceCut, faceCuts, outsideCuts } from './turned-cuts.ts'
import { settlePass } from './turned-pass.ts'
import { facingStep, turningStep } from './turning-step.ts'

const { rough, mostFeedOverNose } = TURNING_STARTS

/**
 * Twice in the chuck: the top end out of the raw blank, faced, drilled, bored and turned as far as the jaws let it; then turned
 * round on what is turned, for the bottom face and the stretch that the jaws had covered.
 */
export const roughTurn = (task: CuttingTask): PlannedCuts => inChuckings(roughHeld(task))

export function roughHeld(task: CuttingTask): readonly [Held, Held] {
  const { before, after, part } = task
  const { grip, reach } = rawGrip(before)
  const bar = before.outside.at(-1)
  const barDiameter = bar?.diameter ?? 0
  const [top, bottom] = ['top', 'bottom'].map(end => faceCuts(before, after).filter(({ feature }) => feature === end))
  const roughed = ({ feature }: BandCut): boolean => !isNarrowRecess(part, feature)
  const solid = before.bore.length === 0 && after.bore.length > 0
  const drilled = solid ? drill(task, before.bottom - after.top) : undefined
  const bored =
    (solid && !drilled) || drilledBore(part) ? [] : boreCuts(before, after, drilled?.diameter ?? 0).filter(roughed)
  const opened = (face: FaceCut): FaceCut => ({ ...face, bore: Math.max(face.bore, drilled?.diameter ?? 0) })
  const [upper, lower] = partedAt(reach, outsideCuts(before, after).filter(roughed))
  const free = (step: Step, top: Millimetre, diameter: Millimetre): Loaded => ({ step, out: reach - top, diameter })
  const first = deepestHeld(
    task,
    { diameter: barDiameter, length: grip, surface: 'bar', jaws: 'hard jaws' },
    (trial, share) => [
      ...(top ?? []).flatMap(face => roughFace(trial, face, share)).map(step => free(step, before.top, barDiameter)),
      ...(drilled ? [free(drilled.step, before.top, drilled.diameter)] : []),
      ...bored.flatMap(cut => roughBore(trial, cut).map(step => free(step, cut.top, cut.to))),
      ...upper.flatMap(cut => roughOutside(trial, cut, { share }).map(step => free(step, cut.top, cut.from))),
    ],
  )
  const held = turnedGrip(after, reach)
  const jawsAt = held.bottom - HOLDING.grip.clear
  const back = (step: Step, far: Millimetre, diameter: Millimetre): Loaded => ({ step, out: far - jawsAt, diameter })
  const begun = new Set(upper.map(({ feature }) => feature))
  const second = deepestHeld(task, { ...held, surface: 'turned', jaws: 'bored soft jaws' }, (trial, share) => [
    ...(bottom ?? [])
      .map(opened)
      .flatMap(face => roughFace(trial, face, share))
      .map(step => back(step, before.bottom, barDiameter)),
    ...lower.flatMap(cut =>
      roughOutside(trial, cut, { share, where: begun.has(cut.feature) ? ', lower end' : '' }).map(step =>
        back(step, cut.bottom, cut.from),
      ),
    ),
  ])
  return [
    {
      chucking: {
        end: 'top',
        grip: { surface: bar?.name ?? 'bar', length: grip },
        stop: first.settled?.ring ? 'a loose ring in the chuck, part tapped home' : 'the chuck stop, part tapped home',
        heldWith: 'hard jaws',
        ...(first.settled && { jawForce: first.settled.force }),
        clocking: 'by eye: the whole blank is stock',
      },
      steps: first.cuts.map(({ step }) => step),
    },
    {
      chucking: {
        end: 'bottom',
        grip: { surface: held.name, length: held.length },
        stop: `${second.settled?.ring ? 'a loose ring' : 'the stop'} in the chuck, top face home${held.larger ? `, ${held.larger} clear in the relief of the jaws` : ''}`,
        heldWith: 'bored soft jaws',
        ...(second.settled && { jawForce: second.settled.force }),
        clocking: 'jaws bored in place to the turned size',
      },
      steps: [...second.cuts.map(({ step }) => step), ...(part.kind === 'pin' ? [centres(task)] : [])],
    },
  ]
}

/** How much of the raw blank the jaws hold, and the depth down to which the tool then comes. */
function rawGrip({ top, bottom }: Shape): { readonly grip: Millimetre; readonly reach: Millimetre } {
  const { share, least, most, clear } = HOLDING.grip
  const grip = Math.min(most, Math.max(least, share * (bottom - top)))
  return { grip, reach: bottom - grip - clear }
}

/** Cuts above a depth and below it: the stretch that the jaws cover waits until the part is turned round. */
function partedAt(depth: Millimetre, cuts: readonly BandCut[]): readonly [readonly BandCut[], readonly BandCut[]] {
  const stretch = (cut: BandCut, top: Millimetre, bottom: Millimetre): readonly BandCut[] =>
    bottom - top > 1e-6 ? [{ ...cut, top, bottom, length: bottom - top }] : []
  return [
    cuts.flatMap(cut => stretch(cut, cut.top, Math.min(cut.bottom, depth))),
    cuts.flatMap(cut => stretch(cut, Math.max(cut.top, depth), cut.bottom)),
  ]
}

type TurnedGrip = {
  readonly name: string
  readonly diameter: Millimetre
  readonly length: Millimetre
  readonly bottom: Millimetre
  /** A band above that is larger, and stands inside the chuck. */
  readonly larger?: string
}

/** The longest stretch that is turned by now, held near its lower end. */
function turnedGrip({ outside }: Shape, reach: Millimetre): TurnedGrip {
  const turned = outside.map(band => ({ ...band, to: Math.min(band.to, reach) })).filter(({ from, to }) => to > from)
  const [band] = turned.toSorted((a, b) => b.to - b.from - (a.to - a.from))
  if (!band) return { name: 'bar', diameter: 1, length: 1, bottom: reach }
  const larger = turned.find(({ to, diameter }) => to <= band.from + 1e-6 && diameter > band.diameter)
  const length = Math.min(MOST_TURNED_GRIP, band.to - band.from)
  return { name: band.name, diameter: band.diameter, length, bottom: band.to, ...(larger && { larger: larger.name }) }
}

/** Soft jaws are seldom longer. Common practice, no source. */
const MOST_TURNED_GRIP: Millimetre = 50

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

function roughFace(task: CuttingTask, face: FaceCut, share: number): readonly Step[] {
  const tool = chooseTurningTool(task, 'largest')
  if (!tool) return []
  const pass = settlePass(task, {
    feature: face.feature,
    diameter: face.outside,
    stock: face.stock,
    mostDepth: rough.face.depth * share,
    feed: Math.min(rough.face.feed, mostFeedOverNose * tool.noseRadius),
    operationFactor: FORCE_FACTORS.externalTurning,
  })
  return [facingStep(task, { tool: tool.name, action: `face ${face.feature}`, feature: face.feature }, pass, face)]
}

function roughOutside(
  task: CuttingTask,
  cut: BandCut,
  { share, where = '' }: { readonly share: number; readonly where?: string },
): readonly Step[] {
  const tool = chooseTurningTool(task, 'largest')
  if (!tool) return []
  const pass = settlePass(task, {
    feature: cut.feature,
    diameter: cut.from,
    stock: (cut.from - cut.to) / 2,
    mostDepth: rough.outside.depth * share,
    feed: Math.min(rough.outside.feed, mostFeedOverNose * tool.noseRadius),
    operationFactor: FORCE_FACTORS.externalTurning,
  })
  const named = { tool: tool.name, action: `rough ${cut.feature}${where}`, feature: cut.feature }
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
