import type { JawForce } from '../chucking.ts'
import { jawPull } from '../handbook/chuck-distortion.ts'
import { forceOfJaws, HOLDING, slipOfDrilling, slipOfTurning, tiltOfTurning } from '../handbook/holding.ts'
import { fromHandbook, told, worked } from '../known.ts'
import { kilonewtons, type Millimetre, type Newton } from '../units.ts'
import { type Notebook, SCRATCH } from '../working.ts'
import type { CuttingTask } from './cutting-task.ts'
import { figure } from './figure.ts'
import type { Step } from './step.ts'
import { AS_CUT, PRACTICE, SETTLED } from './where-from.ts'

/** A step with the place of its load: how far from the jaws, on which diameter. */
export type Loaded = { readonly step: Step; readonly out: Millimetre; readonly diameter: Millimetre }

export type JawGrip = {
  readonly diameter: Millimetre
  readonly length: Millimetre
  /** Raw bar in teeth, or turned work in bored jaws. */
  readonly surface: 'bar' | 'turned'
}

export type SettledGrip = { readonly force: JawForce; readonly ring: boolean }

/**
 * What every jaw is set to so that it holds against each step at its speed: slip and tilt together, against a stop. A ring in
 * the chuck is the first help where jaws alone would need more than a chuck gives; what then still does not hold is told.
 */
export function gripAgainst(task: CuttingTask, grip: JawGrip, loaded: readonly Loaded[]): SettledGrip | undefined {
  const cuts = loaded.filter(({ step }) => step.force !== undefined && step.spindleSpeed > 0)
  const most = (ring: boolean) =>
    cuts
      .map(load => ({ load, ...needOf({ task, grip, load, ring, use: SCRATCH.use }) }))
      .toSorted((a, b) => b.set - a.set)[0]
  const alone = most(false)
  if (!alone) return undefined
  const ring = alone.set > HOLDING.capacity
  const ruling = ring ? (most(true) ?? alone) : alone
  const { set, left, against } = needOf({ task, grip, load: ruling.load, ring, use: task.notebook.use })
  if (set > HOLDING.capacity * (1 + 1e-9)) tooMuch(task, grip, ruling.load, set)
  const { jaws } = HOLDING
  return { force: { jaws, set: set / jaws, left: left / jaws, step: ruling.load.step.action, against }, ring }
}

/** A full cut, then half as deep, then a third: the deepest that the jaws hold, with a ring where they need one. */
export function deepestHeld(
  task: CuttingTask,
  grip: JawGrip,
  cutsOf: (task: CuttingTask, share: number) => readonly Loaded[],
): { readonly cuts: readonly Loaded[]; readonly settled: SettledGrip | undefined } {
  const unsaid: CuttingTask = { ...task, notebook: SCRATCH, report: () => undefined }
  const holds = (share: number): boolean => {
    const settled = gripAgainst(unsaid, grip, cutsOf(unsaid, share))
    return !settled || settled.force.set * settled.force.jaws <= HOLDING.capacity
  }
  const share = SHARES.find(holds) ?? SHARES.at(-1) ?? 1
  const cuts = cutsOf(task, share)
  return { cuts: share < 1 ? cuts.map(eased) : cuts, settled: gripAgainst(task, grip, cuts) }
}

const SHARES = [1, 1 / 2, 1 / 3] as const

const eased = ({ step, ...load }: Loaded): Loaded => ({
  ...load,
  step: step.action.startsWith('drill')
    ? step
    : { ...step, limitedBy: [step.limitedBy, 'what the jaws hold'].filter(Boolean).join('; ') },
})

type Need = { readonly set: Newton; readonly left: Newton; readonly against: JawForce['against'] }

function needOf({
  task: { operation, material },
  grip,
  load: { step, out, diameter },
  ring,
  use,
}: {
  readonly task: CuttingTask
  readonly grip: JawGrip
  readonly load: Loaded
  readonly ring: boolean
  readonly use: Notebook['use']
}): Need {
  const about = { operation: operation.number, about: step.action }
  const { safety: S, settingSafety: S_sp, jaws, jawMass, outward } = HOLDING
  const metal = metalOf(material.family)
  const { tangential, axial } = HOLDING.friction[grip.surface]
  const friction = told(fromHandbook("a chuck maker's table, three editions"), {
    mu: tangential * metal,
    mu_a: axial * metal,
  })
  const held = { ...told(PRACTICE, { S }), ...friction, ...told(AS_CUT, { d_g: grip.diameter }) }
  const { force = 0, power = 0, spindleSpeed } = step
  const drilled = step.action.startsWith('drill')
  const slip = drilled
    ? use(
        slipOfDrilling,
        {
          ...held,
          ...told(worked('power of the drill at its speed'), { M: (9549 * power) / spindleSpeed }),
          ...told(PRACTICE, { T: 0 }),
        },
        about,
      )
    : use(
        slipOfTurning,
        {
          ...held,
          ...told(worked('cutting force'), { F_c: force }),
          ...told(AS_CUT, { d_c: diameter }),
          ...told(PRACTICE, { F_f: 0 }),
        },
        about,
      )
  const tilt = drilled
    ? 0
    : use(
        tiltOfTurning,
        {
          ...told(PRACTICE, { S, c: HOLDING.shift, k: ring ? HOLDING.lever.ring : HOLDING.lever.jaws }),
          ...told(worked('cutting and passive force together'), { P: force * Math.hypot(1, HOLDING.passive) }),
          ...told(AS_CUT, { a: Math.max(0, out), l_g: grip.length, d_g: grip.diameter }),
          mu_a: friction.mu_a,
        },
        about,
      )
  const needed = Math.hypot(slip, tilt)
  const lost =
    jaws *
    use(
      jawPull,
      { ...told(PRACTICE, { m: jawMass, r: grip.diameter / 2 + outward }), ...told(SETTLED, { n: spindleSpeed }) },
      about,
    )
  const set = use(
    forceOfJaws,
    {
      ...told(worked('slip and tilt together, less the safety of the setting'), { F_req: needed / S_sp, F_z: lost }),
      ...told(PRACTICE, { S_sp }),
    },
    about,
  )
  return { set, left: set - lost, against: tilt > slip ? 'tilt' : 'slip' }
}

const metalOf = (family: string): number => {
  if (family.endsWith('iron')) return HOLDING.metal.iron
  if (family === 'aluminium') return HOLDING.metal.aluminium
  return family === 'bronze' ? HOLDING.metal.bronze : 1
}

function tooMuch(task: CuttingTask, grip: JawGrip, { step, out }: Loaded, set: Newton): void {
  task.report({
    code: 'cutting/grip-too-light',
    severity: 'warning',
    message: `${step.action}: ${figure(grip.length)} mm of Ø${figure(grip.diameter)} in the jaws, ${figure(out)} mm out, would need ${figure(kilonewtons(set))} kN of all jaws together; a manual chuck of 200 gives ${kilonewtons(HOLDING.capacity)}`,
    hint: step.action.startsWith('drill')
      ? 'drill it in two sizes, or grip it longer'
      : 'carry the free end on a centre, grip it longer, or use a power chuck',
    path: '/body',
  })
}
