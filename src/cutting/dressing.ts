import { SHOP_TIMES } from '../handbook/shop-times.ts'
import type { CuttingTask } from './cutting-task.ts'
import { type Step, timeOnly } from './step.ts'
import type { Wheel } from './traverse-grinding.ts'

/** Dressing, its time spread over the pieces that it serves; sooner when a port has struck grains out of the wheel. */
export const dressing = ({ before }: CuttingTask, wheel: Wheel): readonly Step[] => [
  timeOnly(
    wheel.name,
    `dress the wheel, every ${SHOP_TIMES.piecesADressing} pieces`,
    SHOP_TIMES.dressing / SHOP_TIMES.piecesADressing,
    [
      '0.01 to 0.02 mm deep, then one or two passes without infeed; before it burns, not after',
      ...(before.ported ? ['ports round the wheel: dress sooner when the ends grow tight'] : []),
    ],
  ),
]
