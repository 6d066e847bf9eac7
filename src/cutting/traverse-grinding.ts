import { BORE_BURN_SHARE, burnThreshold, SPECIFIC_ENERGY } from '../handbook/burn-screen.ts'
import { STEELS } from '../handbook/cutting-grades.ts'
import {
  equivalentChip,
  grindingForce,
  grindingPasses,
  NORMAL_FORCE_SHARE,
  sparkOutRest,
  specificRemovalRate,
  traverseFeed,
  traverseTime,
  wheelSpindleSpeed,
} from '../handbook/grinding.ts'
import { THIN_HARD_LINER } from '../handbook/grinding-data.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { spindleSpeed } from '../handbook/turning.ts'
import { TURNING_STARTS } from '../handbook/turning-speeds.ts'
import { told, worked } from '../known.ts'
import {
  kilowatts,
  type MetrePerSecond,
  type Micrometre,
  type Millimetre,
  micrometres,
  type Newton,
  type SpindleSpeed,
  watts,
} from '../units.ts'
import { type CuttingTask, START_AT } from './cutting-task.ts'
import { figure } from './figure.ts'
import type { GrindingSetting } from './ground-work.ts'
import type { Step } from './step.ts'
import { AS_CUT, ofTool, PRACTICE, SETTLED } from './where-from.ts'

export type Wheel = {
  readonly name: string
  readonly diameter: Millimetre
  readonly width: Millimetre
  readonly grade: string
}

export type WheelSpin = {
  /** m/s. */
  readonly speed: MetrePerSecond
  readonly spindleSpeed: SpindleSpeed
  readonly limitedBy?: string
}

/** The wheel's speed as wanted, as far as the spindle goes; the mark on the wheel stands over both. */
export function wheelSpin(task: CuttingTask, wheel: Pick<Wheel, 'name' | 'diameter'>, wanted: number): WheelSpin {
  const { machine, notebook, operation } = task
  const n = notebook.use(
    wheelSpindleSpeed,
    { ...told(PRACTICE, { vs: wanted }), ...told(ofTool(task, wheel), { ds: wheel.diameter }) },
    { operation: operation.number, about: wheel.name },
  )
  const limit = machine.speedLimit ?? Infinity
  if (n <= limit) return { speed: wanted, spindleSpeed: n }
  return { speed: (wanted * limit) / n, spindleSpeed: limit, limitedBy: `spindle speed limit ${limit} rpm` }
}

export type TraverseGrinding = {
  readonly feature: string
  readonly where: 'outside' | 'bore'
  /** Of the work as it is ground. */
  readonly diameter: Millimetre
  /** On diameter. */
  readonly stock: Millimetre
  readonly stroke: Millimetre
  readonly wheel: Wheel
  readonly spin: WheelSpin
  readonly equivalentDiameter: Millimetre
  readonly setting: GrindingSetting
  readonly remarks: readonly string[]
  /** Bend of quill or work under a normal force, µm for each N; left out where it does not matter. */
  readonly bend?: number
}

/** Roughing, finishing and spark-out passes over one band. */
export function traverseGrinding(task: CuttingTask, cut: TraverseGrinding): readonly Step[] {
  const { machine, notebook, operation } = task
  const { setting, wheel, spin, stroke } = cut
  const available = machine.power === undefined ? Infinity : watts(machine.power) * TURNING_STARTS.driveEfficiency
  const about = { operation: operation.number, about: cut.feature }
  const nw = notebook.use(
    spindleSpeed,
    { ...told(PRACTICE, { vc: setting.workSpeed }), ...told(AS_CUT, { D: cut.diameter }) },
    about,
  )
  const finishStock = Math.min(cut.stock, THIN_HARD_LINER.finishStock)
  const passes = (z: Millimetre, ae: Millimetre): number =>
    z > 1e-9 ? notebook.use(grindingPasses, told(SETTLED, { z, ae }), about) : 0

  const step = (stage: 'rough' | 'finish', z: Millimetre): readonly Step[] => {
    const wanted = stage === 'rough' ? setting.roughInfeed : setting.finishInfeed
    const s = stage === 'rough' ? setting.roughTraverse : setting.finishTraverse
    const u = stage === 'rough' ? SPECIFIC_ENERGY.roughing : SPECIFIC_ENERGY.finishing
    const forced = { vw: setting.workSpeed, s, b: wheel.width, u, vs: spin.speed }
    // The power goes with the infeed, so a motor that is too weak gets its share of it.
    const spent = grindingForce.value({ ...forced, ae: wanted }) * spin.speed
    const ae = wanted * Math.min(1, available / spent)
    const limits = [spin.limitedBy, ...(ae < wanted ? [`motor power ${machine.power} kW`] : [])]
    const limitedBy = limits.filter(text => text !== undefined).join('; ')
    const count = passes(z, ae)
    if (count === 0) return []
    const sparkOut = stage === 'finish' ? setting.sparkOut : 0
    const vfa = notebook.use(
      traverseFeed,
      { ...told(PRACTICE, { s }), ...told(ofTool(task, wheel), { b: wheel.width }), ...told(SETTLED, { nw }) },
      about,
    )
    const time = notebook.use(
      traverseTime,
      {
        ...told(SETTLED, { N: count + sparkOut }),
        ...told(worked('stroke, the overrun at least'), { L_s: stroke }),
        vfa,
      },
      about,
    )
    const Ft = notebook.use(
      grindingForce,
      {
        ...told(PRACTICE, { vw: forced.vw, s, u }),
        ...told(ofTool(task, wheel), { b: forced.b }),
        ...told(SETTLED, { vs: forced.vs, ae }),
      },
      about,
    )
    notebook.use(specificRemovalRate, told(SETTLED, { ae, vw: setting.workSpeed }), about)
    notebook.use(equivalentChip, told(SETTLED, { ae, vw: setting.workSpeed, vs: spin.speed }), about)
    screenForBurn(task, cut, ae, u)
    return [
      {
        tool: wheel.name,
        action: `${stage} grind ${cut.feature}`,
        feature: cut.feature,
        cuttingSpeed: setting.workSpeed,
        spindleSpeed: nw,
        feed: ae,
        feedUnit: 'mm/pass',
        tableFeed: vfa,
        depth: z / 2 / count,
        passes: count + sparkOut,
        time: time + SHOP_TIMES.rapid,
        force: Ft,
        power: kilowatts(Ft * spin.speed),
        wheel: { speed: spin.speed, spindleSpeed: spin.spindleSpeed },
        ...(cut.bend === undefined
          ? {}
          : { deflection: bendAfter({ task, cut, bend: cut.bend, tangential: Ft, ae, N: sparkOut }) }),
        ...(limitedBy ? { limitedBy } : {}),
        remarks: [
          START_AT,
          `wheel ${wheel.grade}: ${figure(spin.speed)} m/s, ${Math.round(spin.spindleSpeed)} rpm at ${figure(wheel.diameter)} mm; not over its mark`,
          ...(sparkOut > 0 ? [`${count} passes, then ${sparkOut} to spark out`] : []),
          ...cut.remarks,
        ],
      },
    ]
  }
  return [...step('rough', cut.stock - finishStock), ...step('finish', finishStock)]
}

/** What the quill still springs after sparking out, µm: linear model. */
function bendAfter({
  task,
  cut,
  bend,
  tangential,
  ae,
  N,
}: {
  readonly task: CuttingTask
  readonly cut: TraverseGrinding
  readonly bend: number
  readonly tangential: Newton
  readonly ae: Millimetre
  readonly N: number
}): Micrometre {
  const normal = NORMAL_FORCE_SHARE * tangential
  const about = { operation: task.operation.number, about: cut.feature }
  const rest = task.notebook.use(
    sparkOutRest,
    {
      ...told(worked('normal force for the infeed; stiffness of the quill'), {
        kc: normal / micrometres(ae),
        ks: 1 / bend,
      }),
      ...told(SETTLED, { N }),
    },
    about,
  )
  return normal * bend * rest
}

/** Only compares settings: the constants are from memory, and the energy a wheel spends is a middle value. */
function screenForBurn(task: CuttingTask, cut: TraverseGrinding, ae: Millimetre, spent: number): void {
  const { material, notebook, operation } = task
  // The constants are of steel.
  if (!STEELS.has(material.family)) return
  const about = { operation: operation.number, about: cut.feature }
  const u = notebook.use(
    burnThreshold,
    {
      ...told(worked('equivalent diameter'), { de: cut.equivalentDiameter }),
      ...told(SETTLED, { ae, vw: cut.setting.workSpeed }),
    },
    about,
  )
  const limit = cut.where === 'bore' ? BORE_BURN_SHARE * u : u
  if (spent <= limit) return
  task.report({
    code: 'cutting/burn-screen',
    severity: 'note',
    message: `${cut.feature}: a usual wheel spends ${spent} J/mm³ and burning is likely from ${figure(limit)} (memory, a screen only)`,
    hint: 'less infeed with a faster work speed, a sharper wheel, more coolant',
    path: '/body',
  })
}
