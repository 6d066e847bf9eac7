import type { JawForce } from '../chucking.ts'
import { GRIP_LEVERS, HOLDING, JAWS, jawFriction, momentOfCut } from '../handbook/holding.ts'
import { forceOfJaws, gripAtSpeed, jawPull } from '../handbook/jaws-at-speed.ts'
import { told, worked } from '../known.ts'
import { type Kilowatt, kilonewtons, type Millimetre, type Newton, type SpindleSpeed } from '../units.ts'
import { type Notebook, SCRATCH } from '../working.ts'
import type { CuttingTask } from './cutting-task.ts'
import { figure } from './figure.ts'
import { slipAndTilt, toSet } from './slip-and-tilt.ts'
import type { Step } from './step.ts'
import { AS_CUT, PRACTICE, SETTLED } from './where-from.ts'

/** A step with the place of its load: how far from the jaws, on which diameter. */
export type Loaded = { readonly step: Step; readonly out: Millimetre; readonly diameter: Millimetre }

export type JawGrip = {
  readonly diameter: Millimetre
  readonly length: Millimetre
  /** Raw bar in teeth, or turned work in bored jaws. */
  readonly surface: 'bar' | 'turned'
  readonly jaws: keyof typeof JAWS
}

export type SettledGrip = { readonly force: JawForce; readonly ring: boolean }

/** What pushes a part about in its jaws, at which speed. */
export type JawLoad = {
  readonly action: string
  readonly force: Newton
  readonly power?: Kilowatt | undefined
  readonly spindleSpeed: SpindleSpeed
  readonly out: Millimetre
  readonly diameter: Millimetre
}

/**
 * What every jaw is set to so that it holds against each step at its speed: slip and tilt together, against a stop. A ring in
 * the chuck is the first help where jaws alone would need more than a chuck gives; what then still does not hold is told.
 */
export function gripAgainst(task: CuttingTask, grip: JawGrip, loaded: readonly Loaded[]): SettledGrip | undefined {
  const loads = loaded.flatMap(loadOf)
  const most = (ring: boolean) =>
    loads
      .map(load => ({ load, ...jawsNeeded({ task, grip, load, ring, use: SCRATCH.use }) }))
      .toSorted((a, b) => b.set - a.set)[0]
  const alone = most(false)
  if (!alone) return undefined
  const ring = alone.set > HOLDING.capacity
  const { load } = ring ? (most(true) ?? alone) : alone
  const { set, left, against } = jawsNeeded({ task, grip, load, ring, use: task.notebook.use })
  if (set > HOLDING.capacity * (1 + 1e-9)) tooMuch(task, grip, load, set)
  const { jaws } = HOLDING
  return { force: { jaws, set: set / jaws, ask: toSet(set / jaws), left, step: load.action, against }, ring }
}

const loadOf = ({ step, out, diameter }: Loaded): readonly JawLoad[] => {
  const { action, force, power, spindleSpeed } = step
  return force === undefined || spindleSpeed <= 0 ? [] : [{ action, force, power, spindleSpeed, out, diameter }]
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
  step: isDrilled(step.action)
    ? step
    : { ...step, limitedBy: [step.limitedBy, 'what the jaws hold'].filter(Boolean).join('; ') },
})

const isDrilled = (action: string): boolean => action.startsWith('drill')

/** All jaws together at standstill, what they lose of it at speed, and what each then has left. */
export type JawNeed = {
  readonly set: Newton
  readonly lost: Newton
  readonly left: Newton
  readonly against: JawForce['against']
}

/** What the jaws need against one load, on a stop: a drill turns the part and does not tilt it. */
export function jawsNeeded({
  task: { operation, material },
  grip,
  load: { action, force, power = 0, spindleSpeed, out, diameter },
  ring = false,
  use,
}: {
  readonly task: CuttingTask
  readonly grip: JawGrip
  readonly load: JawLoad
  readonly ring?: boolean
  readonly use: Notebook['use']
}): JawNeed {
  const about = { operation: operation.number, about: action }
  const { settingSafety: S_sp, jaws: N } = HOLDING
  const drilled = isDrilled(action)
  const moment = drilled
    ? { value: (9549 * power) / spindleSpeed, ...worked('power of the drill at its speed') }
    : {
        value: use(
          momentOfCut,
          { ...told(worked('cutting force'), { F_c: force }), ...told(AS_CUT, { d_c: diameter }) },
          about,
        ),
        ...worked(`${momentOfCut.symbol}, ${momentOfCut.meaning}`),
      }
  const { slip, tilt, together } = slipAndTilt({
    use,
    about,
    held: grip,
    friction: jawFriction(grip.surface, material.family),
    levers: GRIP_LEVERS[ring ? 'jaws and ring' : 'jaws'],
    push: {
      moment,
      pull: { ...worked('the stop takes it'), value: 0 },
      side: {
        ...worked('cutting and passive force together'),
        value: drilled ? 0 : force * Math.hypot(1, HOLDING.passive),
      },
      arm: { ...AS_CUT, value: Math.max(0, out) + grip.length / 2 },
    },
  })
  const { mass, outward } = JAWS[grip.jaws]
  const lost =
    N *
    use(
      jawPull,
      { ...told(PRACTICE, { m: mass, r: grip.diameter / 2 + outward }), ...told(SETTLED, { n: spindleSpeed }) },
      about,
    )
  const F_z = told(worked(`${jawPull.symbol}, of all jaws`), { F_z: lost })
  const set = use(
    forceOfJaws,
    {
      ...told(worked('slip and tilt together, less the safety of the setting'), { F_req: together / S_sp }),
      ...F_z,
      ...told(PRACTICE, { S_sp }),
    },
    about,
  )
  const F_0 = told(worked(`${forceOfJaws.symbol}, ${forceOfJaws.meaning}`), { F_0: set })
  const left = use(gripAtSpeed, { ...F_0, ...F_z, ...told(PRACTICE, { N }) }, about)
  return { set, lost, left, against: tilt > slip ? 'tilt' : 'slip' }
}

function tooMuch(task: CuttingTask, grip: JawGrip, { action, out }: JawLoad, set: Newton): void {
  task.report({
    code: 'cutting/grip-too-light',
    severity: 'warning',
    message: `${action}: ${figure(grip.length)} mm of Ø${figure(grip.diameter)} in the jaws, ${figure(out)} mm out, would need ${figure(kilonewtons(set))} kN of all jaws together; a manual chuck of 200 gives ${kilonewtons(HOLDING.capacity)}`,
    hint: isDrilled(action)
      ? 'drill it in two sizes, or grip it longer'
      : 'carry the free end on a centre, grip it longer, or use a power chuck',
    path: '/body',
  })
}
