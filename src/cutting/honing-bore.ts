import {
  axialSpeed,
  crossHatchAngle,
  doubleStrokes,
  honedVolume,
  honingSpeed,
  honingStroke,
  honingTime,
  landShare,
  landUnderStone,
} from '../handbook/honing.ts'
import {
  CROSS_HATCH_ANGLE,
  HONING_PRESSURE,
  HONING_RATE,
  HONING_SPEED,
  LAST_STONE_STOCK,
  STONE_RULES,
} from '../handbook/honing-data.ts'
import { platingOf } from '../handbook/plating.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { told, worked } from '../known.ts'
import type { Roughness } from '../limits.ts'
import { type Millimetre, millimetresPerMinute } from '../units.ts'
import { chooseStones, type Stones } from './choose-stones.ts'
import { type CuttingTask, type PlannedCuts, START_AT } from './cutting-task.ts'
import { figure } from './figure.ts'
import { type Belt, portBelt } from './ports-and-wheel.ts'
import { spindleFor } from './spindle.ts'
import type { Step } from './step.ts'
import { type BandCut, boreCuts } from './turned-cuts.ts'
import { AS_CUT, ofTool, PRACTICE, SETTLED } from './where-from.ts'

/** Where the drawing gives none. Common practice, no source. */
const USUAL_ROUGHNESS: Roughness = 0.5

/** Hones the bore bands that change: stock with coarse stones where there is more than the last ones take, then the last. */
export function honeBore(task: CuttingTask): PlannedCuts {
  const cuts = boreCuts(task.before, task.after).filter(({ feature }) => !isPlated(task, feature))
  const steps = cuts.flatMap(cut => honeBand(task, cut))
  return { steps, each: cuts.length > 0 ? SHOP_TIMES.wash : 0 }
}

/** Stones and rates here are for steel and iron: what a plated layer wants, its stones' maker says. */
function isPlated({ part: { plating }, operation, report }: CuttingTask, feature: string): boolean {
  if (!plating || operation.purpose !== 'hone-bore' || plating.surface !== feature) return false
  report({
    code: 'plating/no-honing-data',
    severity: 'warning',
    message: `${feature}: there are no stones, speeds or times on hand for honing ${plating.process}: the operation has no steps and counts no time`,
    hint: `${platingOf(plating.process)?.honedWith ?? 'ask the plater'}; or send it to a firm that hones plated bores`,
    path: plating.path,
  })
  return true
}

function honeBand(task: CuttingTask, cut: BandCut): readonly Step[] {
  const belt = task.before.ported ? portBelt(task.ports, cut) : undefined
  const wanted =
    task.sizes.find(({ feature, roughness }) => feature === cut.feature && roughness !== undefined)?.roughness ??
    task.part.bore.find(({ name }) => name === cut.feature)?.roughness ??
    USUAL_ROUGHNESS
  const stones = chooseStones(task, cut, wanted, belt)
  if (!stones) return []
  const stock = cut.to - cut.from
  const twice = stones.rough !== undefined && stock > 2 * LAST_STONE_STOCK
  const lastStock = twice ? LAST_STONE_STOCK : stock
  return [
    ...(twice && stones.rough
      ? [honeStep({ task, cut, stones: stones.rough, stage: 'rough', stock: stock - lastStock, belt })]
      : []),
    honeStep({ task, cut, stones: stones.last, stage: 'finish', stock: lastStock, belt }),
  ]
}

function honeStep({
  task,
  cut,
  stones,
  stage,
  stock,
  belt,
}: {
  readonly task: CuttingTask
  readonly cut: BandCut
  readonly stones: Stones
  readonly stage: 'rough' | 'finish'
  readonly stock: Millimetre
  readonly belt: Belt | undefined
}): Step {
  const { machine, notebook, operation, material } = task
  const about = { operation: operation.number, about: cut.feature }
  const iron = material.family === 'grey iron' || material.family === 'ductile iron'
  const cbn = stones.abrasive === 'CBN'
  const wanted = cbn ? HONING_SPEED.cbn : iron ? HONING_SPEED.castIron : HONING_SPEED.hardSteel
  const spindle = spindleFor({
    machine,
    ...told(PRACTICE, { wanted }),
    ...told(AS_CUT, { diameter: cut.to }),
    notebook,
    about,
  })
  const ov = STONE_RULES.overrun * stones.length
  const S = notebook.use(
    honingStroke,
    {
      ...told(AS_CUT, { L: cut.length }),
      ...told(PRACTICE, { ov }),
      ...told(ofTool(task, stones), { l_s: stones.length }),
    },
    about,
  )
  const va = notebook.use(
    axialSpeed,
    { ...told(SETTLED, { vt: spindle.cuttingSpeed }), ...told(PRACTICE, { alpha: CROSS_HATCH_ANGLE }) },
    about,
  )
  const strokes = notebook.use(doubleStrokes, { va, S }, about)
  const { n, vt } = clearOfRetracing(spindle, strokes)
  const angle = notebook.use(crossHatchAngle, { va, ...told(SETTLED, { vt }) }, about)
  const rate = rateOf(stage, iron, cbn)
  const time = notebook.use(honingTime, { ...told(AS_CUT, { z: stock }), ...told(PRACTICE, { rate }) }, about)
  notebook.use(honingSpeed, { ...told(SETTLED, { vt }), va }, about)
  notebook.use(honedVolume, told(AS_CUT, { d: cut.to, L: cut.length, z: stock }), about)
  return {
    tool: stones.name,
    action: `${stage} hone ${cut.feature}`,
    feature: cut.feature,
    cuttingSpeed: vt,
    spindleSpeed: n,
    feed: rate / strokes,
    feedUnit: 'µm/stroke',
    tableFeed: millimetresPerMinute(va),
    depth: stock / 2,
    passes: Math.ceil(time * strokes - 1e-9),
    time: time + SHOP_TIMES.rapid,
    ...(spindle.limitedBy ? { limitedBy: spindle.limitedBy } : {}),
    remarks: [
      START_AT,
      `stroke ${figure(S)}, ${figure(strokes)} double strokes a minute; cross-hatch ${figure(angle, 2)}° included, about the circumference`,
      `${HONING_PRESSURE[stage].join(' to ')} N/mm² on the stones (memory)`,
      `overrun ${figure(ov)} mm at each end: shorter if the ends are large, longer if they are small`,
      `leaves Ra ${stones.leaves[0]} to ${stones.leaves[1]} (memory, ±40 %); measure`,
      ...(belt ? overPorts(task, cut, stones, belt) : []),
    ],
  }
}

const rateOf = (stage: 'rough' | 'finish', iron: boolean, cbn: boolean): number => {
  if (stage === 'finish') return HONING_RATE.finish
  if (cbn) return HONING_RATE.roughCbn
  return iron ? HONING_RATE.roughIron : HONING_RATE.rough
}

/** How much slower, where turns and strokes would meet in the same grooves. */
const NUDGE = 0.94

/** A whole number of turns a stroke cuts the same grooves again: the head then runs a little slower. */
function clearOfRetracing(
  { spindleSpeed, cuttingSpeed }: { spindleSpeed: number; cuttingSpeed: number },
  strokes: number,
): { n: number; vt: number } {
  const ratio = spindleSpeed / strokes
  const retraces = Math.abs(ratio - Math.round(ratio)) < STONE_RULES.retraces
  return retraces ? { n: NUDGE * spindleSpeed, vt: NUDGE * cuttingSpeed } : { n: spindleSpeed, vt: cuttingSpeed }
}

function overPorts({ notebook, operation }: CuttingTask, cut: BandCut, stones: Stones, belt: Belt): readonly string[] {
  const about = { operation: operation.number, about: cut.feature }
  const lambda = notebook.use(
    landShare,
    { ...told(worked('width of all ports at their height'), { w: belt.width }), ...told(AS_CUT, { d: cut.to }) },
    about,
  )
  // Ports that overlap leave no land, which the ports' own checks report.
  if (lambda <= 0) return []
  const under = notebook.use(
    landUnderStone,
    {
      lambda,
      ...told(worked('depths with ports in them'), { h_p: belt.ported }),
      ...told(worked('stones on hand'), { l_s: stones.length }),
    },
    about,
  )
  return [
    `ports: the belt hones ${figure(1 / under)} times as fast; reverse clear of it, measure away from the ports`,
    `stones ${figure(STONE_RULES.overPortWidth)} times as wide as a port, or guide shoes, or half the pressure; port edges broken first`,
  ]
}
