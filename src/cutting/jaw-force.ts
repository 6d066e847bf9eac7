import {
  arcFactor,
  inwardAtJaw,
  jawForce,
  loadedLength,
  lobing,
  outwardBetweenJaws,
} from '../handbook/chuck-distortion.ts'
import type { CuttingFamily } from '../handbook/cutting-grades.ts'
import { toleranceOf } from '../limits.ts'
import type { Micrometre, Millimetre, Newton } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { CuttingTask } from './cutting-task.ts'
import { figure } from './figure.ts'
import type { BandCut } from './turned-cuts.ts'

/** Bored soft jaws of a small lathe. Safety: VDI 3106 as quoted in chuck manuals; the rest common practice, no source. */
const JAWS = { count: 3, length: 20, arc: 60, friction: 0.18, safety: 2.25, feedForceShare: 0.4 } as const

/** N/mm². Steel: data sheets; aluminium: data sheets; iron and bronze: memory. */
const STIFFNESS: Readonly<Partial<Record<CuttingFamily, number>>> = {
  'grey iron': 110_000,
  'ductile iron': 170_000,
  aluminium: 70_000,
  bronze: 110_000,
}
const STEEL = 210_000
/** The ring formula holds from this ratio of mean radius to wall. */
const THIN_RING = 5

type Ring = { readonly outside: Millimetre; readonly wall: Millimetre; readonly R: Millimetre }

/** The wall as a thin ring, where it is one. */
function ringOf({ after }: CuttingTask, cut: BandCut): Ring | undefined {
  const outside = after.outside.at(-1)?.diameter
  if (outside === undefined) return undefined
  const wall = (outside - cut.to) / 2
  const R = (outside + cut.to) / 4
  return R / wall >= THIN_RING ? { outside, wall, R } : undefined
}

type Use = Notebook['use']
/** For a first look, which is not written down. */
const unwritten: Use = (formula, given) => formula.value(given)

/** Force of each jaw that holds against the cut, and the lobes that it leaves, radial. */
function springOf(
  task: CuttingTask,
  cut: BandCut,
  ring: Ring,
  force: Newton,
  use: Use,
): { F: Newton; lobes: Micrometre } {
  const { after, operation, material } = task
  const about = { operation: operation.number, about: cut.feature }
  const { outside, wall, R } = ring
  const turning = { F_c: force, d_c: cut.to, d_g: outside, F_f: JAWS.feedForceShare * force }
  const F = use(jawForce, { S: JAWS.safety, ...turning, mu: JAWS.friction, N: JAWS.count }, about)
  const b = use(loadedLength, { l_j: JAWS.length, R, L: after.bottom - after.top }, about)
  const held = { F, R, t: wall, b, E: STIFFNESS[material.family] ?? STEEL, N: JAWS.count }
  const delta_L = use(inwardAtJaw, held, about)
  const delta_M = use(outwardBetweenJaws, held, about)
  const k = use(arcFactor, { arc: JAWS.arc }, about)
  return { F, lobes: 1000 * use(lobing, { delta_L, delta_M, k }, about) }
}

/** Lobes show twice on the diameter, and may take half of the tolerance there. */
const mostLobes = (tolerance: Millimetre): Micrometre => 250 * tolerance

/**
 * Share of a cutting force at which the wall, held against it, springs within its tolerance: 1 where it does. The force goes
 * with the depth of cut, so it is the share of the depth too.
 */
export function shareWithinLobes(task: CuttingTask, cut: BandCut, force: Newton): number {
  const ring = ringOf(task, cut)
  const tolerance = toleranceAt(task, cut)
  if (!ring || tolerance === undefined) return 1
  return Math.min(1, mostLobes(tolerance) / springOf(task, cut, ring, force, unwritten).lobes)
}

/** What the jaws may press while a bore is finished, in words; a wall that springs too far is reported. */
export function jawRemarks(task: CuttingTask, cut: BandCut, force: Newton): readonly string[] {
  const ring = ringOf(task, cut)
  if (!ring) return []
  const { F, lobes } = springOf(task, cut, ring, force, task.notebook.use)
  const tolerance = toleranceAt(task, cut)
  if (tolerance !== undefined && lobes > mostLobes(tolerance) * (1 + 1e-9)) {
    task.report({
      code: 'cutting/jaws-bend-wall',
      severity: 'warning',
      message: `${cut.feature}: jaws that hold against the cut leave lobes of ${figure(lobes, 2)} µm, over a quarter of the tolerance of ${figure(1000 * tolerance)} µm`,
      hint: 'soft jaws right round the part, axial clamping, or a lighter last cut',
      path: '/body/bore',
    })
  }
  return [
    `ease the jaws to about ${figure(F, 2)} N each for the last passes: the bore then springs ${figure(lobes, 2)} µm lobed`,
  ]
}

const toleranceAt = ({ sizes }: CuttingTask, { feature }: BandCut): Millimetre | undefined => {
  const size = sizes.find(known => known.feature === feature && known.measure === 'diameter')
  return size && toleranceOf(size)
}
