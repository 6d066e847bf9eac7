import { nearestBandAt } from '../band.ts'
import { FINE_BORED } from '../handbook/distortion.ts'
import { FORCE_FACTORS, PASSIVE_FORCE_SHARE } from '../handbook/kienzle.ts'
import { feedForRoughness, RIDGES_OVER_THEORY, ridgeHeightOfRa, ridgesInTheory } from '../handbook/turning.ts'
import { TURNING_STARTS, turningSpeed } from '../handbook/turning-speeds.ts'
import { fromHandbook, fromPart, type Known, known, told, worked } from '../known.ts'
import { toleranceOf } from '../limits.ts'
import { habit } from '../shop/habit.ts'
import { type Micrometre, type Millimetre, type MillimetrePerRevolution, micrometres } from '../units.ts'
import { wallAt } from '../wall.ts'
import { SCRATCH } from '../working.ts'
import { chooseBoringBar, type StandingBar } from './choose-boring-bar.ts'
import { chooseTurningTool } from './choose-turning-tool.ts'
import type { CuttingTask } from './cutting-task.ts'
import { figure } from './figure.ts'
import { type BoredGrip, type HeldCut, jawRemarks, shareWithinLobes, speedWithinLobes } from './jaw-spring.ts'
import { bend, reachInto } from './rough-turning.ts'
import { spindleFor } from './spindle.ts'
import type { Step } from './step.ts'
import type { BandCut, FaceCut } from './turned-cuts.ts'
import { forceOf, settlePass } from './turned-pass.ts'
import { facingStep, turningStep } from './turning-step.ts'
import { AS_CUT, PRACTICE, SETTLED } from './where-from.ts'

const { semiFinish, finish, thinWall, leastFeed, mostFeedOverNose } = TURNING_STARTS
/** Less than this is not worth a semi-finishing pass. Common practice, no source. */
const LEAST_SEMI_FINISH: Millimetre = 0.1
/** A last cut is no lighter than this, or it rubs. Common practice, no source. */
const LEAST_FINISH: Millimetre = 0.2

export function finishFace(task: CuttingTask, face: FaceCut): readonly Step[] {
  const tool = chooseTurningTool(task, 'smallest')
  if (!tool) return []
  const { feed, limitedBy } = feedWanted(task, face.feature, tool.noseRadius)
  const pass = settlePass(task, {
    feature: face.feature,
    diameter: face.outside,
    stock: face.stock,
    mostDepth: 2 * finish.depth,
    feed,
    operationFactor: FORCE_FACTORS.externalTurning,
    limitedBy,
  })
  return [facingStep(task, { tool: tool.name, action: `face ${face.feature}`, feature: face.feature }, pass, face)]
}

export function finishOutside(task: CuttingTask, cut: BandCut): readonly Step[] {
  const tool = chooseTurningTool(task, 'smallest')
  return tool ? bandSteps({ task, cut, tool: tool.name, nose: tool.noseRadius }) : []
}

/** `grip` is what the jaws hold meanwhile, and how far the cut reaches out of them. */
export function finishBore(task: CuttingTask, cut: BandCut, grip: BoredGrip): readonly Step[] {
  const bar = chooseBoringBar(task, cut.from, reachInto(task, cut), 'smallest')
  return bar ? bandSteps({ task, cut, tool: bar.name, nose: bar.noseRadius, bored: { bar, grip } }) : []
}

/** Whether a bore stays within what its wall may spring, cut as is usual. */
export function springsWithin(task: CuttingTask, cut: BandCut, grip: BoredGrip): boolean {
  const unsaid: CuttingTask = { ...task, notebook: SCRATCH, report: () => undefined }
  const bar = chooseBoringBar(unsaid, cut.from, reachInto(unsaid, cut), 'smallest')
  if (!bar) return true
  const { feed } = feedWanted(unsaid, cut.feature, bar.noseRadius)
  const usual = cutAt(unsaid, cut, isThin(unsaid, cut) ? thinWall.depth : finish.depth, feed)
  const held = { task: unsaid, cut, grip }
  return shareWithinLobes(held, usual) === 1 && speedWithinLobes(held, usual) === undefined
}

function bandSteps({
  task,
  cut,
  tool,
  nose,
  bored,
}: {
  readonly task: CuttingTask
  readonly cut: BandCut
  readonly tool: string
  readonly nose: Millimetre
  readonly bored?: { readonly bar: StandingBar; readonly grip: BoredGrip }
}): readonly Step[] {
  const thin = isThin(task, cut)
  const usual = thin ? thinWall.depth : finish.depth
  const { feed, limitedBy } = feedWanted(task, cut.feature, nose)
  const held = bored && { task, cut, grip: bored.grip }
  const share = held ? shareWithinLobes(held, cutAt(task, cut, usual, feed)) : 1
  const depth = Math.max(usual * share, Math.min(usual, LEAST_FINISH))
  const stock = Math.abs(cut.from - cut.to) / 2
  const spare = stock - 2 * depth
  const semi = spare < LEAST_SEMI_FINISH ? 0 : spare
  const operationFactor = bored ? FORCE_FACTORS.boringDrillingMilling : FORCE_FACTORS.externalTurning
  const diameter = Math.max(cut.from, cut.to)
  const common = { feature: cut.feature, diameter, operationFactor }
  const steps: Step[] = []
  if (semi > 0) {
    const semiFeed = Math.min(semiFinish.feed, mostFeedOverNose * nose)
    const pass = settlePass(task, { ...common, stock: semi, mostDepth: semiFinish.depth, feed: semiFeed })
    const named = { tool, action: `semi-finish ${cut.feature}`, feature: cut.feature }
    steps.push(turningStep(task, named, pass, cut.length))
  }
  const left = stock - semi
  const reasons = [...limitedBy, ...(share < 1 ? ['spring of the wall in the jaws'] : [])]
  const slowed = held && speedWithinLobes(held, cutAt(task, cut, left / 2, feed))
  const pass = settlePass(task, {
    ...common,
    stock: left,
    mostDepth: left / 2,
    feed,
    limitedBy: reasons,
    ...(slowed !== undefined && { mostSpindleSpeed: slowed }),
  })
  const remarks = [
    'last two passes of equal depth and feed, so that tool and work spring alike',
    ...(thin ? ['thin wall: sharp positive insert'] : []),
    ...(held ? jawRemarks(held, pass) : []),
    ...(pass.depth < nose * SHALLOW ? ['cut shallower than half the nose radius: watch for rubbing'] : []),
  ]
  const step = turningStep(
    task,
    { tool, action: `finish ${cut.feature}`, feature: cut.feature, remarks },
    pass,
    cut.length,
  )
  if (!bored) return [...steps, step]
  const { bar } = bored
  const deflection = bend(task, cut, bar, PASSIVE_FORCE_SHARE.finishingBelowNoseRadius * pass.force)
  watchBend(task, cut, bar, deflection)
  return [...steps, { ...step, deflection }]
}

/** A bore's last cut of a depth, at its usual speed. */
function cutAt({ machine, material }: CuttingTask, cut: BandCut, depth: Millimetre, feed: number): HeldCut {
  const factor = FORCE_FACTORS.boringDrillingMilling * FORCE_FACTORS.worn
  const speed = turningSpeed(material.turning, depth)
  return {
    force: forceOf(material.force, depth, feed, factor),
    spindleSpeed: spindleFor({
      machine,
      ...told(SETTLED, { wanted: speed }),
      ...told(AS_CUT, { diameter: Math.max(cut.from, cut.to) }),
      notebook: SCRATCH,
      about: {},
    }).spindleSpeed,
  }
}

/** Depth over nose radius. Common practice, no source. */
const SHALLOW = 0.5

/** Wall against diameter where the cut is. */
function isThin({ after }: CuttingTask, cut: BandCut): boolean {
  const middle = (cut.top + cut.bottom) / 2
  const wall = wallAt(after, middle)
  const outside = nearestBandAt(after.outside, middle)
  return wall !== undefined && outside !== undefined && wall < thinWall.share * outside.diameter
}

type WantedFeed = { readonly feed: MillimetrePerRevolution; readonly limitedBy: readonly string[] }

/**
 * The feed that leaves the roughness wanted here, as it is measured, within what cuts and what the nose allows. A surface that is ground or
 * honed later is left as the works plans its stock for.
 */
function feedWanted(task: CuttingTask, feature: string, nose: Millimetre): WantedFeed {
  const { sizes, notebook, operation, shop } = task
  const about = { operation: operation.number, about: feature }
  const Ra = sizes.find(size => size.feature === feature && size.roughness !== undefined)?.roughness
  const left = task.fineBored?.has(feature)
    ? known(FINE_BORED.roughness, 'µm', fromHandbook(FINE_BORED.source))
    : habit(shop, 'turnedRoughness', 'µm')
  const Rz: Known<'µm'> =
    Ra === undefined
      ? left
      : known(
          notebook.use(ridgeHeightOfRa, told(fromPart(`Ra of ${feature}`), { Ra }), about),
          'µm',
          worked(`${ridgeHeightOfRa.symbol}, ${ridgeHeightOfRa.meaning}`),
        )
  const inTheory = notebook.use(ridgesInTheory, { Rz, ...told(PRACTICE, { k: RIDGES_OVER_THEORY }) }, about)
  const smooth = notebook.use(
    feedForRoughness,
    {
      Rz: known(inTheory, 'µm', worked(`${ridgesInTheory.symbol}, ${ridgesInTheory.meaning}`)),
      ...told(worked('nose radius of the tool on hand'), { r: nose }),
    },
    about,
  )
  const usual = Math.min(finish.feed, mostFeedOverNose * nose)
  const wanted = Ra === undefined ? `Rz ${figure(Rz.value)}` : `Ra ${figure(Ra)}`
  if (smooth < leastFeed) {
    task.report({
      code: 'cutting/too-fine-to-turn',
      severity: 'warning',
      message: `${feature}: ${wanted} asks for a feed of ${figure(smooth)} mm with a nose of ${nose} mm; under ${leastFeed} mm the tool rubs`,
      hint: 'take a larger nose radius, or grind the surface',
      path: '/body',
    })
  }
  if (smooth >= usual) return { feed: usual, limitedBy: [] }
  return { feed: Math.max(smooth, Math.min(usual, leastFeed)), limitedBy: [`roughness ${wanted}`] }
}

/** The two equal passes take most of it out again; over half the tolerance they do not. */
function watchBend(task: CuttingTask, cut: BandCut, bar: StandingBar, deflection: Micrometre): void {
  const size = task.sizes.find(({ feature, measure }) => feature === cut.feature && measure === 'diameter')
  if (!size || 2 * deflection <= micrometres(toleranceOf(size)) / 2) return
  task.report({
    code: 'cutting/bar-bends',
    severity: 'warning',
    message: `${bar.name} gives way ${figure(2 * deflection)} µm on the diameter of ${cut.feature}, over half its tolerance of ${figure(micrometres(toleranceOf(size)))} µm`,
    hint: 'take a thicker or a carbide bar, or a lighter last cut',
    path: '/body/bore',
  })
}
