import type { Band } from '../band.ts'
import { GROOVE_DEPTHS, PROCESS_LIMITS_SOURCE } from '../handbook/process-limits.ts'
import type { Part } from './part.ts'
import type { PartFault } from './part-fault.ts'

/** A band between two that stand over it is a groove: an insert of its width goes only so deep. */
export const checkGrooves = ({ outside, bore }: Part): readonly PartFault[] => [
  ...faultsIn(outside, 1),
  ...faultsIn(bore, -1),
]

/** `into` is +1 where a smaller diameter is deeper, -1 in a bore. */
function faultsIn(bands: readonly Band[], into: 1 | -1): readonly PartFault[] {
  return bands.flatMap((band, index) => {
    const [above, below] = [bands[index - 1], bands[index + 1]]
    if (!above || !below) return []
    const over = Math.min(into * above.size.nominal, into * below.size.nominal)
    const depth = (over - into * band.size.nominal) / 2
    if (depth <= 0) return []
    const width = band.to.nominal - band.from
    const reach = GROOVE_DEPTHS.findLast(row => width >= row.width - 1e-9)?.depth ?? 0
    if (depth <= reach + 1e-9 || width > 3) return []
    const limit =
      reach === 0
        ? `no insert is narrower than ${GROOVE_DEPTHS[0]?.width} mm`
        : `an insert of that width goes ${reach} mm deep`
    return [
      {
        code: 'input/bands',
        message: `${band.name} is a groove ${Number(width.toFixed(3))} mm wide and ${Number(depth.toFixed(3))} mm deep; ${limit} (${PROCESS_LIMITS_SOURCE})`,
        hint: 'draw it wider or shallower',
        path: band.path,
      },
    ]
  })
}
