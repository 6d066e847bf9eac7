import { SHOP_TIMES } from '../handbook/shop-times.ts'
import type { CuttingTask } from './cutting-task.ts'
import type { Step } from './step.ts'
import type { Wheel } from './traverse-grinding.ts'

/** Dressing, its time spread over the pieces that it serves; sooner when a port has struck grains out of the wheel. */
export const dressing = ({ before }: CuttingTask, wheel: Wheel): readonly Step[] => [
  {
    tool: wheel.name,
    action: `dress the wheel, every ${SHOP_TIMES.piecesADressing} pieces`,
    cuttingSpeed: 0,
    spindleSpeed: 0,
    feed: 0,
    feedUnit: 'mm/pass',
    tableFeed: 0,
    depth: 0,
    passes: 1,
    time: SHOP_TIMES.dressing / SHOP_TIMES.piecesADressing,
    remarks: [
      '0.01 to 0.02 mm deep, then one or two passes without infeed; before it burns, not after',
      ...(before.ported ? ['ports round the wheel: dress sooner when the ends grow tight'] : []),
    ],
  },
]
