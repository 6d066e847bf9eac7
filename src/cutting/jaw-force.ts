import {
  arcFactor,
  elasticModulusOf,
  gripAtSpeed,
  inwardAtJaw,
  jawForce,
  jawPull,
  jawSetting,
  loadedLength,
  lobing,
  outwardBetweenJaws,
  SOFT_JAWS,
  THIN_RING,
} from '../handbook/chuck-distortion.ts'
import { fromHandbook, told, worked } from '../known.ts'
import { toleranceOf } from '../limits.ts'
import { type Micrometre, type Millimetre, micrometres, type Newton, type SpindleSpeed } from '../units.ts'
import { type Notebook, SCRATCH } from '../working.ts'
import type { CuttingTask } from './cutting-task.ts'
import { figure } from './figure.ts'
import type { BandCut } from './turned-cuts.ts'
import { AS_CUT, PRACTICE, SETTLED } from './where-from.ts'

/**
 * Bored soft jaws of a small lathe. Safety, 1.5 on the cut and 1.5 on the setting: VDI 3106 as quoted in chuck manuals; the
 * rest common practice, no source. The centre of a jaw's mass lies so far outside what it grips.
 */
const JAWS = {
  ...SOFT_JAWS,
  friction: 0.18,
  safety: 2.25,
  settingSafety: 1.5,
  feedForceShare: 0.4,
  mass: 0.5,
  outward: 30,
} as const

type Ring = { readonly outside: Millimetre; readonly wall: Millimetre; readonly R: Millimetre }

/** The wall as a thin ring, where it is one: inside the band that the jaws hold, which is as it came to the operation. */
function ringOf({ operation, before }: CuttingTask, cut: BandCut): Ring | undefined {
  const held = before.outside.find(({ name }) => operation.locatedBy.includes(name)) ?? before.outside.at(-1)
  const outside = held?.diameter
  if (outside === undefined) return undefined
  const wall = (outside - cut.to) / 2
  const R = (outside + cut.to) / 4
  return R / wall >= THIN_RING ? { outside, wall, R } : undefined
}

type Use = Notebook['use']
/** For a first look, which is not written down. */
const unwritten: Use = SCRATCH.use

/** The cut that the jaws hold against: its force, and the speed at which the jaws lose some of theirs. */
export type HeldCut = { readonly force: Newton; readonly spindleSpeed: SpindleSpeed }

type Spring = {
  /** What each jaw is set to at standstill, what it loses at speed, and what is left to press on the wall. */
  readonly set: Newton
  readonly lost: Newton
  readonly grip: Newton
  /** Radial, after release. */
  readonly lobes: Micrometre
}

/** Force of each jaw that holds against the cut at its speed, and the lobes that it leaves. */
function springOf({
  task,
  cut,
  ring,
  held,
  use,
}: {
  readonly task: CuttingTask
  readonly cut: BandCut
  readonly ring: Ring
  readonly held: HeldCut
  readonly use: Use
}): Spring {
  const { force } = held
  const { after, operation, material } = task
  const about = { operation: operation.number, about: cut.feature }
  const { outside, wall, R } = ring
  const turning = {
    ...told(worked('cutting force, and its share along the axis'), { F_c: force, F_f: JAWS.feedForceShare * force }),
    ...told(AS_CUT, { d_c: cut.to, d_g: outside }),
  }
  const needed = use(
    jawForce,
    { ...turning, ...told(PRACTICE, { S: JAWS.safety, mu: JAWS.friction, N: JAWS.count }) },
    about,
  )
  const lost = use(
    jawPull,
    { ...told(PRACTICE, { m: JAWS.mass, r: outside / 2 + JAWS.outward }), ...told(SETTLED, { n: held.spindleSpeed }) },
    about,
  )
  const set = use(jawSetting, { F: needed, ...told(PRACTICE, { S_sp: JAWS.settingSafety }), F_z: lost }, about)
  const F = use(gripAtSpeed, { F_set: set, F_z: lost }, about)
  const b = use(
    loadedLength,
    { ...told(PRACTICE, { l_j: JAWS.length }), ...told(AS_CUT, { R, L: after.bottom - after.top }) },
    about,
  )
  const stiffness = elasticModulusOf(material.grade)
  const pressed = {
    ...told(worked('force that each jaw has left at speed'), { F }),
    ...told(AS_CUT, { R, t: wall }),
    ...told(worked('length that carries the load of the jaws'), { b }),
    ...told(fromHandbook(stiffness.source), { E: stiffness.E }),
    ...told(PRACTICE, { N: JAWS.count }),
  }
  const delta_L = use(inwardAtJaw, pressed, about)
  const delta_M = use(outwardBetweenJaws, pressed, about)
  const k = use(arcFactor, told(PRACTICE, { arc: JAWS.arc }), about)
  return { set, lost, grip: F, lobes: micrometres(use(lobing, { delta_L, delta_M, k }, about)) }
}

/** Lobes show twice on the diameter, and may take half of the tolerance there. */
const mostLobes = (tolerance: Millimetre): Micrometre => micrometres(tolerance) / 4

/**
 * Share of a cutting force at which the wall, held against it, springs within its tolerance: 1 where it does, 0 where what
 * makes good the loss at speed is too much by itself. The force goes with the depth of cut, so it is the share of the depth
 * too.
 */
export function shareWithinLobes(task: CuttingTask, cut: BandCut, held: HeldCut): number {
  const ring = ringOf(task, cut)
  const tolerance = toleranceAt(task, cut)
  if (!ring || tolerance === undefined) return 1
  const lobesOf = (force: Newton) => springOf({ task, cut, ring, held: { ...held, force }, use: unwritten }).lobes
  const idle = lobesOf(0)
  return Math.min(1, Math.max(0, (mostLobes(tolerance) - idle) / (lobesOf(held.force) - idle)))
}

/** Slower than this share of the usual speed a cut smears: then it is the grip that must change. Common practice, no source. */
const SLOWEST = 0.3

/**
 * Speed up to which the lobes of a cut stay within the tolerance, where the usual one is too fast: the jaws are set harder for
 * what they lose, which goes with the square of the speed.
 */
export function speedWithinLobes(task: CuttingTask, cut: BandCut, held: HeldCut): SpindleSpeed | undefined {
  const ring = ringOf(task, cut)
  const tolerance = toleranceAt(task, cut)
  if (!ring || tolerance === undefined) return undefined
  const lobesAt = (spindleSpeed: SpindleSpeed) =>
    springOf({ task, cut, ring, held: { ...held, spindleSpeed }, use: unwritten }).lobes
  const [standing, turning] = [lobesAt(0), lobesAt(held.spindleSpeed)]
  const spare = mostLobes(tolerance) - standing
  if (turning - standing <= spare * (1 + 1e-9)) return undefined
  return held.spindleSpeed * Math.max(SLOWEST, Math.sqrt(Math.max(0, spare) / (turning - standing)))
}

/** What the jaws may press while a bore is finished, in words; a wall that springs too far is reported. */
export function jawRemarks(task: CuttingTask, cut: BandCut, held: HeldCut): readonly string[] {
  const ring = ringOf(task, cut)
  if (!ring) return []
  const { set, lost, grip, lobes } = springOf({ task, cut, ring, held, use: task.notebook.use })
  const tolerance = toleranceAt(task, cut)
  if (tolerance !== undefined && lobes > mostLobes(tolerance) * (1 + 1e-9)) {
    task.report({
      code: 'cutting/jaws-bend-wall',
      severity: 'warning',
      message: `${cut.feature}: jaws that hold against the cut leave lobes of ${figure(lobes, 2)} µm, over a quarter of the tolerance of ${figure(micrometres(tolerance))} µm`,
      hint: 'soft jaws right round the part, axial clamping, a slower spindle or a lighter last cut',
      path: '/body/bore',
    })
  }
  return [
    `ease the jaws to about ${figure(set, 2)} N each at standstill for the last passes: at ${figure(held.spindleSpeed, 3)} rpm they lose ${figure(lost, 2)} N and hold with ${figure(grip, 2)}, and the bore springs ${figure(lobes, 2)} µm lobed`,
  ]
}

const toleranceAt = ({ sizes }: CuttingTask, { feature }: BandCut): Millimetre | undefined => {
  const size = sizes.find(known => known.feature === feature && known.measure === 'diameter')
  return size && toleranceOf(size)
}
