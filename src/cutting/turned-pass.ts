import {
  chipThickness,
  chipWidth,
  cuttingForce,
  cuttingPower,
  FORCE_FACTORS,
  specificCuttingForce,
} from '../handbook/kienzle.ts'
import { feedRate } from '../handbook/turning.ts'
import { TURNING_STARTS, turningSpeed } from '../handbook/turning-speeds.ts'
import { fromHandbook, told } from '../known.ts'
import type {
  Kilowatt,
  MetrePerMinute,
  Millimetre,
  MillimetrePerMinute,
  MillimetrePerRevolution,
  Newton,
  SpindleSpeed,
} from '../units.ts'
import { type CuttingMaterial, specificForceOf } from './cutting-material.ts'
import type { CuttingTask } from './cutting-task.ts'
import { spindleFor } from './spindle.ts'
import { AS_CUT, PRACTICE, SETTLED } from './where-from.ts'

/** What is to be taken off, and how it would be done on a machine without limits. */
export type WantedPass = {
  readonly feature: string
  /** The diameter that runs fastest through the cut. */
  readonly diameter: Millimetre
  /** Radial, or along the axis for a face. */
  readonly stock: Millimetre
  readonly mostDepth: Millimetre
  readonly feed: MillimetrePerRevolution
  readonly operationFactor: number
  /** Faster, the jaws lose too much of their grip. */
  readonly mostSpindleSpeed?: SpindleSpeed
  readonly limitedBy?: readonly string[]
}

export type SettledPass = {
  readonly passes: number
  readonly depth: Millimetre
  readonly feed: MillimetrePerRevolution
  readonly cuttingSpeed: MetrePerMinute
  readonly spindleSpeed: SpindleSpeed
  readonly tableFeed: MillimetrePerMinute
  readonly force: Newton
  readonly forceBand: { readonly least: Newton; readonly most: Newton }
  readonly power: Kilowatt
  readonly limitedBy?: string
}

const KAPPA = TURNING_STARTS.enteringAngle
/** Passes and pieces: binary fractions otherwise add one. */
const roundedUp = (count: number): number => Math.max(1, Math.ceil(count - 1e-9))

/**
 * Depth, feed and speed of equal passes that the motor can drive. A motor too weak for the feed first gets less feed, down
 * to the least that still cuts, and then less depth.
 */
export function settlePass(task: CuttingTask, wanted: WantedPass): SettledPass {
  const { machine, material, notebook, operation } = task
  const about = { operation: operation.number, about: wanted.feature }
  const limitedBy = [...(wanted.limitedBy ?? [])]
  let passes = roundedUp(wanted.stock / wanted.mostDepth)
  let depth = wanted.stock / passes
  let { feed } = wanted
  const speed = spindleFor({
    machine: { ...machine, gripLimit: wanted.mostSpindleSpeed },
    ...told(fromHandbook(material.turning.source), { wanted: turningSpeed(material.turning, depth) }),
    ...told(AS_CUT, { diameter: wanted.diameter }),
    notebook,
    about,
  })
  if (speed.limitedBy) limitedBy.push(speed.limitedBy)

  const factor = wanted.operationFactor * FORCE_FACTORS.worn
  const available = machine.power === undefined ? Infinity : machine.power * TURNING_STARTS.driveEfficiency
  const powerAt = (ap: Millimetre, f: MillimetrePerRevolution): Kilowatt =>
    cuttingPower.value({ Fc: forceOf(material.force, ap, f, factor), vc: speed.cuttingSpeed })
  if (powerAt(depth, feed) > available) {
    limitedBy.push(`motor power ${machine.power} kW`)
    const share = (available / powerAt(depth, feed)) ** (1 / (1 - material.force.mc))
    feed = Math.max(feed * share, Math.min(feed, TURNING_STARTS.leastFeed))
    if (powerAt(depth, feed) > available * (1 + 1e-9)) {
      passes = roundedUp((passes * powerAt(depth, feed)) / available)
      depth = wanted.stock / passes
    }
  }

  const [f, kappa] = [told(SETTLED, { f: feed }), told(PRACTICE, { kappa: KAPPA })]
  const h = notebook.use(chipThickness, { ...f, ...kappa }, about)
  const b = notebook.use(chipWidth, { ...told(SETTLED, { ap: depth }), ...kappa }, about)
  const kc = notebook.use(specificCuttingForce, { ...specificForceOf(material, factor), h }, about)
  const force = notebook.use(cuttingForce, { kc, b, h }, about)
  return {
    passes,
    depth,
    feed,
    cuttingSpeed: speed.cuttingSpeed,
    spindleSpeed: speed.spindleSpeed,
    tableFeed: notebook.use(feedRate, { ...f, ...told(SETTLED, { n: speed.spindleSpeed }) }, about),
    force,
    forceBand: forceBand(material, depth, feed, wanted.operationFactor),
    power: notebook.use(cuttingPower, { Fc: force, ...told(SETTLED, { vc: speed.cuttingSpeed }) }, about),
    ...(limitedBy.length > 0 ? { limitedBy: limitedBy.join('; ') } : {}),
  }
}

export function forceOf(
  { kc11, mc }: { kc11: number; mc: number },
  ap: Millimetre,
  f: MillimetrePerRevolution,
  K: number,
): Newton {
  const h = chipThickness.value({ f, kappa: KAPPA })
  const b = chipWidth.value({ ap, kappa: KAPPA })
  return specificCuttingForce.value({ kc11, mc, h, K }) * b * h
}

/** From sharp tools by the published groups to worn ones, or to the textbook's value where that is higher. */
function forceBand(
  { force, textbook }: CuttingMaterial,
  ap: Millimetre,
  f: MillimetrePerRevolution,
  operationFactor: number,
): SettledPass['forceBand'] {
  const sharp = forceOf(force, ap, f, operationFactor)
  const older = textbook ? forceOf(textbook, ap, f, operationFactor) : 0
  return { least: sharp, most: Math.max(sharp * FORCE_FACTORS.worn, older) }
}
