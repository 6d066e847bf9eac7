import { type BoredJaws, HOLDING } from '../handbook/holding.ts'
import { type HeldRing, lobesInJaws, ringBetween } from '../handbook/lobes-in-jaws.ts'
import { worked } from '../known.ts'
import { toleranceOf } from '../limits.ts'
import { type Micrometre, type Millimetre, micrometres, type Newton, type SpindleSpeed } from '../units.ts'
import { type Notebook, SCRATCH } from '../working.ts'
import type { CuttingTask } from './cutting-task.ts'
import { figure } from './figure.ts'
import { type JawGrip, jawsNeeded } from './jaw-grip.ts'
import type { BandCut } from './turned-cuts.ts'
import { AS_CUT } from './where-from.ts'

/** Bored jaws on the part while a bore is cut in it, and how far out of them the cut reaches. */
export type BoredGrip = JawGrip & { readonly jaws: BoredJaws; readonly out: Millimetre }

/** The cut that the jaws hold against: its force, and the speed at which the jaws lose some of theirs. */
export type HeldCut = { readonly force: Newton; readonly spindleSpeed: SpindleSpeed }

type Held = {
  readonly task: CuttingTask
  readonly cut: BandCut
  readonly grip: BoredGrip
}

/** The wall between what the jaws hold and the bore, where it is a thin ring. */
const ringOf = ({ task: { after }, cut, grip }: Held): HeldRing | undefined =>
  ringBetween(grip.diameter, cut.to, after.bottom - after.top)

type Spring = {
  /** What each jaw is set to at standstill, what it loses at speed, and what is left to press on the wall. */
  readonly set: Newton
  readonly lost: Newton
  readonly left: Newton
  /** Radial, after release. */
  readonly lobes: Micrometre
}

/** Force of each jaw that holds against the cut at its speed, and the lobes that it leaves. */
function springOf(
  { task, cut, grip }: Held,
  ring: HeldRing,
  { force, spindleSpeed }: HeldCut,
  use: Notebook['use'],
): Spring {
  const action = `finish ${cut.feature}`
  const about = { operation: task.operation.number, about: action }
  const load = { action, force, spindleSpeed, out: grip.out, diameter: cut.to }
  const { set, lost, left } = jawsNeeded({ task, grip, load, use })
  const lobes = lobesInJaws({
    use,
    about,
    ring,
    grade: task.material.grade,
    jaws: grip.jaws,
    gripped: { ...AS_CUT, value: grip.length },
    force: { ...worked('force that each jaw has left at speed'), value: left },
  })
  const { jaws } = HOLDING
  return { set: set / jaws, lost: lost / jaws, left, lobes: micrometres(lobes) }
}

/** Lobes show twice on the diameter, and may take half of the tolerance there. */
const mostLobes = (tolerance: Millimetre): Micrometre => micrometres(tolerance) / 4

/**
 * Share of a cutting force at which the wall, held against it, springs within its tolerance: 1 where it does, 0 where what
 * makes good the loss at speed is too much by itself. The force goes with the depth of cut, so it is the share of the depth
 * too.
 */
export function shareWithinLobes(held: Held, cut: HeldCut): number {
  const ring = ringOf(held)
  const tolerance = toleranceAt(held)
  if (!ring || tolerance === undefined) return 1
  const lobesOf = (force: Newton) => springOf(held, ring, { ...cut, force }, SCRATCH.use).lobes
  const idle = lobesOf(0)
  return Math.min(1, Math.max(0, (mostLobes(tolerance) - idle) / (lobesOf(cut.force) - idle)))
}

/** Slower than this share of the usual speed a cut smears: then it is the grip that must change. Common practice, no source. */
const SLOWEST = 0.3

/**
 * Speed up to which the lobes of a cut stay within the tolerance, where the usual one is too fast: the jaws are set harder for
 * what they lose, which goes with the square of the speed.
 */
export function speedWithinLobes(held: Held, cut: HeldCut): SpindleSpeed | undefined {
  const ring = ringOf(held)
  const tolerance = toleranceAt(held)
  if (!ring || tolerance === undefined) return undefined
  const lobesAt = (spindleSpeed: SpindleSpeed) => springOf(held, ring, { ...cut, spindleSpeed }, SCRATCH.use).lobes
  const [standing, turning] = [lobesAt(0), lobesAt(cut.spindleSpeed)]
  const spare = mostLobes(tolerance) - standing
  if (turning - standing <= spare * (1 + 1e-9)) return undefined
  return cut.spindleSpeed * Math.max(SLOWEST, Math.sqrt(Math.max(0, spare) / (turning - standing)))
}

/** What the jaws may press while a bore is finished, in words; a wall that springs too far is reported. */
export function jawRemarks(held: Held, pass: HeldCut): readonly string[] {
  const ring = ringOf(held)
  if (!ring) return []
  const { task, cut } = held
  const { set, lost, left, lobes } = springOf(held, ring, pass, task.notebook.use)
  const tolerance = toleranceAt(held)
  if (tolerance !== undefined && lobes > mostLobes(tolerance) * (1 + 1e-9)) {
    task.report({
      code: 'cutting/jaws-bend-wall',
      severity: 'warning',
      message: `${cut.feature}: jaws that hold against the cut leave lobes of ${figure(lobes, 2)} µm, over a quarter of the tolerance of ${figure(micrometres(tolerance))} µm`,
      hint: `${held.grip.jaws === 'pie jaws' ? '' : 'pie jaws, '}clamping along the axis, or a bore finished by grinding or honing alone`,
      path: '/body/bore',
    })
  }
  return [
    `ease the jaws to about ${figure(set, 2)} N each at standstill for the last passes: at ${figure(pass.spindleSpeed, 3)} rpm they lose ${figure(lost, 2)} N and hold with ${figure(left, 2)}, and the bore springs ${figure(lobes, 2)} µm lobed`,
  ]
}

const toleranceAt = ({ task: { sizes }, cut: { feature } }: Held): Millimetre | undefined => {
  const size = sizes.find(known => known.feature === feature && known.measure === 'diameter')
  return size && toleranceOf(size)
}
