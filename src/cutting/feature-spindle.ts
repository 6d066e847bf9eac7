import { TURNING_STARTS, turningSpeed } from '../handbook/turning-speeds.ts'
import { fromHandbook, told, worked } from '../known.ts'
import type { MetrePerMinute, Millimetre, SpindleSpeed } from '../units.ts'
import type { CuttingTask } from './cutting-task.ts'
import { spindleFor } from './spindle.ts'

/** Speed of a short cut at a diameter: that of a finishing cut, or a share of it. */
export function featureSpindle(
  { machine, material, notebook, operation }: CuttingTask,
  about: string,
  diameter: Millimetre,
  share: number,
): { readonly n: SpindleSpeed; readonly speed: MetrePerMinute; readonly limitedBy: string | undefined } {
  const wanted = share * turningSpeed(material.turning, TURNING_STARTS.finish.depth)
  const spindle = spindleFor({
    machine,
    ...told(fromHandbook(material.turning.source), { wanted }),
    ...told(worked('diameter that it is cut into'), { diameter }),
    notebook,
    about: { operation: operation.number, about },
  })
  return { n: spindle.spindleSpeed, speed: spindle.cuttingSpeed, limitedBy: spindle.limitedBy }
}
