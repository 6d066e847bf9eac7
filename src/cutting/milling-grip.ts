import { fixed } from '../figures.ts'
import {
  FRICTION_SHARE,
  GRIP_LEVERS,
  GRIP_SAFETY,
  JAW_FRICTION,
  JAWS_SET,
  slipForce,
  tiltForce,
} from '../handbook/milling-grip.ts'
import { fromHandbook, told, worked } from '../known.ts'
import type { Grip } from '../ports/grip.ts'
import { type Millimetre, metres, type Newton, radians } from '../units.ts'
import { SCRATCH } from '../working.ts'
import type { CuttingTask } from './cutting-task.ts'
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
  readonly friction: { readonly tangential: number; readonly axial: number; readonly source: string }
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
  const worst = judged.toSorted((a, b) => b.needed - a.needed)[0]
  if (!worst) return undefined
  const { load } = worst
  const { slip, tilt, needed } = heldBy(task, grip, load, task.notebook.use)
  const set = task.shop.fixture.chuck.force ?? JAWS_SET
  const length = needed > set ? lengthFor(task, grip, load, set) : undefined
  const found: MillingGrip = {
    needed,
    ask: Math.ceil(needed / 100 - 1e-9) * 100,
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

const frictionOf = ({ material }: CuttingTask): MillingGrip['friction'] => {
  const share = FRICTION_SHARE[material.family] ?? 1
  const { tangential, axial, source } = JAW_FRICTION
  return { tangential: share * tangential, axial: share * axial, source }
}

function heldBy(
  task: CuttingTask,
  { diameter, length }: Grip,
  { turn, pull, side, overhang, action }: Load,
  use: CuttingTask['notebook']['use'],
): { readonly slip: Newton; readonly tilt: Newton; readonly needed: Newton } {
  const { tangential: mu, axial: mu_a, source } = frictionOf(task)
  const about = { operation: task.operation.number, about: action }
  const S = told(fromHandbook('VDI 3106 as quoted in chuck manuals'), { S: GRIP_SAFETY })
  const rub = told(fromHandbook(source), { mu_a })
  const held = told(worked('what the jaws hold'), { d_g: diameter })
  const slip = use(
    slipForce,
    {
      ...S,
      ...told(worked('force of the cut, by its arm about the axis'), { M: turn, T: pull }),
      ...told(fromHandbook(source), { mu }),
      ...rub,
      ...held,
    },
    about,
  )
  const tilt = use(
    tiltForce,
    {
      ...S,
      ...told(worked('force of the cut and its place'), { P: side, h: overhang + length / 2 }),
      ...told(fromHandbook('derived: no ring stop'), leversOf(task)),
      ...told(worked('what the jaws hold'), { l_g: length }),
      ...rub,
      ...held,
    },
    about,
  )
  return { slip, tilt, needed: Math.hypot(slip, tilt) }
}

/** The mouth of the jaws comes nearer to the window by what they hold more. */
function lengthFor(task: CuttingTask, grip: Grip, load: Load, set: Newton): Millimetre | undefined {
  const { slip } = heldBy(task, grip, load, SCRATCH.use)
  if (slip >= set) return undefined
  const left = Math.sqrt(set * set - slip * slip)
  const { k, c } = leversOf(task)
  const friction = k * frictionOf(task).axial * grip.diameter
  const reach = load.overhang + grip.length
  const length = (GRIP_SAFETY * load.side * reach - left * friction) / (left * c + (GRIP_SAFETY * load.side) / 2)
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
    severity: given && set < ask / GRIP_SAFETY ? 'error' : 'warning',
    message: `${cut}: ${fixed(cutForce, 0)} N at ${fixed(arm, 1)} mm from the middle of the grip want ${fixed(ask, 0)} N of jaws or collet together; they press with ${fixed(set, 0)}${given ? '' : ', as nobody said otherwise'}${set < ask / GRIP_SAFETY ? ': it slips' : `, ${fixed((GRIP_SAFETY * set) / ask, 1)} times what holds it and not ${GRIP_SAFETY}`}`,
    hint: `press with ${fixed(ask, 0)} N${longer}, or carry the free end by a centre or a plug in the bore; \`fixture: {chuck: {force: …}}\` in the shop file says what the jaws are set to`,
    path: '/ports',
  })
}
