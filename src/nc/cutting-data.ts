import type { Step } from '../cutting/step.ts'
import type { Millimetre, MillimetrePerMinute, SpindleSpeed } from '../units.ts'

export type CuttingData = {
  readonly spindleSpeed: SpindleSpeed
  readonly feed: MillimetrePerMinute
  /** Axial step of roughing. */
  readonly depth: Millimetre
}

/** Where no step names the tool. Common practice, no source: carbide at 60 m/min, 0.004 D a tooth, steps of 0.075 D. */
const CUTTING_SPEED = 60
const SPINDLE_LIMIT: SpindleSpeed = 12_000

/** From the milling's steps, by the tool's name; else habits. */
export function cuttingDataOf(
  steps: readonly Step[],
  tool: 'end mill' | 'drill',
  diameter: Millimetre,
  name: string | undefined,
): CuttingData {
  const step = steps.find(candidate => candidate.tool === name)
  if (step) return { spindleSpeed: step.spindleSpeed, feed: step.tableFeed, depth: step.depth }
  const spindleSpeed = Math.min(SPINDLE_LIMIT, (1000 * CUTTING_SPEED) / (Math.PI * diameter))
  return tool === 'drill'
    ? { spindleSpeed, feed: spindleSpeed * 0.01 * diameter, depth: diameter }
    : { spindleSpeed, feed: 4 * 0.004 * diameter * spindleSpeed, depth: 0.075 * diameter }
}
