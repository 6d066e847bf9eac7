import { fixed } from '../figures.ts'
import { type Friction, GRIP_LEVERS, HOLDING, jawFriction } from '../handbook/holding.ts'
import { worked } from '../known.ts'
import type { Grip } from '../ports/grip.ts'
import { type Millimetre, metres, type Newton, radians } from '../units.ts'
import { SCRATCH } from '../working.ts'
import type { CuttingTask } from './cutting-task.ts'
import { type HoldNeeded, slipAndTilt, toSet } from './slip-and-tilt.ts'
import type { Step } from './step.ts'
import type { WindowJob } from './window-job.ts'

/** What the jaws must press with, and what they do, while the ports are milled: of all jaws together. */
export type MillingGrip = {
  readonly needed: Newton
  /** The same, to set the chuck to: no chuck is set finer than to the hundred. */
  readonly ask: Newton
  /** The cut that asks most. */
  readonly for: string
  /** Of that cut, and how far from the middle of the grip. */
  readonly cutForce: Newton
  readonly arm: Millimetre
  readonly slip: Newton
  readonly tilt: Newton
  readonly friction: Friction
  /** What the works sets the jaws to; the built-in figure where it does not say. */
  readonly set: Newton
  /** Grip with which that would hold; absent where the grip there is holds. */
  readonly lengthNeeded?: Millimetre
}

type Load = {
  readonly action: string
  readonly force: Newton
  /** About the part's axis, N m; out of the jaws; square to the axis; from the jaws' mouth. */
  readonly turn: number
  readonly pull: Newton
  readonly side: Newton
  readonly overhang: Millimetre
}

/** The worst of all cuts in all windows; nothing where nothing pushes. */
export function millingGrip(
  task: CuttingTask,
  grip: Grip,
  made: readonly { readonly job: WindowJob; readonly step: Step }[],
): MillingGrip | undefined {
  // Jaws that hold nothing have their own finding.
  if (grip.length <= 0) return undefined
  const loads = made.flatMap(({ job, step }) => loadOf(task, grip, job, step) ?? [])
  const judged = loads.map(load => ({ load, ...heldBy(task, grip, load, SCRATCH.use) }))
  const worst = judged.toSorted((a, b) => b.together - a.together)[0]
  if (!worst) return undefined
  const { load } = worst
  const { slip, tilt, together: needed } = heldBy(task, grip, load, task.notebook.use)
  const set = task.shop.fixture.chuck.force ?? HOLDING.unsaid
  const length = needed > set ? lengthFor(task, grip, load, set) : undefined
  const found: MillingGrip = {
    needed,
    ask: toSet(needed),
    for: load.action,
    cutForce: load.force,
    arm: load.overhang + grip.length / 2,
    slip,
    tilt,
    friction: frictionOf(task),
    set,
    ...(length === undefined ? {} : { lengthNeeded: length }),
  }
  if (needed > set) report(task, grip, found)
  return found
}

function loadOf(
  { shop: { fixture } }: CuttingTask,
  grip: Grip,
  { window }: WindowJob,
  { force, action, tool }: Step,
): Load | undefined {
  if (force === undefined || force <= 0) return undefined
  const tilt = radians(window.tilt)
  if (action.startsWith('drill ')) {
    // The tilt turns the outer end away from the drill or toward it: positive, its thrust pulls the part out of the jaws.
    const [along, square] = [force * Math.sin(tilt), force * Math.cos(tilt)]
    const { x, y } = window.entryHole
    // Along the rotary's axis, where the hole meets the outside.
    const up = fixture.pivotHeight + Math.sqrt(Math.max(0, window.walls.outside ** 2 - y ** 2))
    const station = (x - up * Math.sin(tilt)) / Math.cos(tilt)
    return {
      action,
      force,
      turn: square * metres(Math.abs(y)),
      pull: Math.max(0, along),
      side: square,
      overhang: Math.max(0, station - grip.chuckFace),
    }
  }
  // A cutter pushes any way across: along Y it turns the part and tilts it at once, most at the far edge.
  const overhang = Math.max(...window.outline.outside.map(({ depth }) => Math.abs(grip.front - depth)))
  return {
    action: `${action} with ${tool}`,
    force,
    turn: force * metres(window.walls.outside),
    pull: 0,
    side: force,
    overhang,
  }
}

const leversOf = ({ shop }: CuttingTask) => GRIP_LEVERS[shop.fixture.chuck.kind ?? 'jaws']

const frictionOf = ({ material }: CuttingTask): Friction => jawFriction('turned', material.family)

const CUT = worked('force of the cut and its place')

const heldBy = (
  task: CuttingTask,
  grip: Grip,
  { turn, pull, side, overhang, action }: Load,
  use: CuttingTask['notebook']['use'],
): HoldNeeded =>
  slipAndTilt({
    use,
    about: { operation: task.operation.number, about: action },
    held: grip,
    friction: frictionOf(task),
    levers: leversOf(task),
    push: {
      moment: { ...CUT, value: turn },
      pull: { ...CUT, value: pull },
      side: { ...CUT, value: side },
      arm: { ...CUT, value: overhang + grip.length / 2 },
    },
  })

/** The mouth of the jaws comes nearer to the window by what they hold more. */
function lengthFor(task: CuttingTask, grip: Grip, load: Load, set: Newton): Millimetre | undefined {
  const { slip } = heldBy(task, grip, load, SCRATCH.use)
  if (slip >= set) return undefined
  const left = Math.sqrt(set * set - slip * slip)
  const { k, c } = leversOf(task)
  const friction = k * frictionOf(task).axial * grip.diameter
  const reach = load.overhang + grip.length
  const length = (HOLDING.safety * load.side * reach - left * friction) / (left * c + (HOLDING.safety * load.side) / 2)
  return length < Math.min(reach, grip.most) ? length : undefined
}

/**
 * A part that slips for want of force is an error where the works says what it presses with. Too little of the handbook's safety is a
 * warning, and so is a force that nobody has set.
 */
function report(task: CuttingTask, grip: Grip, { ask, set, for: cut, arm, cutForce, lengthNeeded }: MillingGrip): void {
  const given = task.shop.set.has('/fixture/chuck/force')
  const longer =
    lengthNeeded === undefined ? '' : `, or grip ${fixed(Math.ceil(lengthNeeded), 0)} mm, not ${fixed(grip.length, 1)}`
  task.report({
    code: 'cutting/grip-too-light',
    severity: given && set < ask / HOLDING.safety ? 'error' : 'warning',
    message: `${cut}: ${fixed(cutForce, 0)} N at ${fixed(arm, 1)} mm from the middle of the grip want ${fixed(ask, 0)} N of jaws or collet together; they press with ${fixed(set, 0)}${given ? '' : ', as nobody said otherwise'}${set < ask / HOLDING.safety ? ': it slips' : `, ${fixed((HOLDING.safety * set) / ask, 1)} times what holds it and not ${HOLDING.safety}`}`,
    hint: `press with ${fixed(ask, 0)} N${longer}, or carry the free end by a centre or a plug in the bore; \`fixture: {chuck: {force: …}}\` in the shop file says what the jaws are set to`,
    path: '/ports',
  })
}
