import { fixed } from '../figures.ts'
import { boreAsPlated } from '../handbook/plating.ts'
import { toleranceOf } from '../limits.ts'
import type { Millimetre } from '../units.ts'
import type { Part } from './part.ts'
import type { PartFault } from './part-fault.ts'

/** On diameter: what may be honed off a layer at most, as the handbook's formula takes it. */
const HONED_AT_MOST: Millimetre = 2 * (boreAsPlated.inputs.s.upTo ?? 0.5)

/** On diameter. A layer is some 0.15 thick on diameter: a bore that may vary by more than three of them is not one that is plated to size. Common practice, no source. */
const WIDEST_TOLERANCE: Millimetre = 0.5

/** A plated bore is honed to its size: its limits and the stock left for the hone must be such that a layer stays. */
export function checkPlatedBore({ plating, bore, stock }: Part): readonly PartFault[] {
  const band = plating && bore.find(({ name }) => name === plating.surface)
  if (!band) return []
  const tolerance = toleranceOf(band.size)
  const wide: readonly PartFault[] =
    tolerance > WIDEST_TOLERANCE
      ? [
          {
            code: 'input/out-of-range',
            message: `${band.name} may be anything within ${fixed(tolerance, 2)} mm, and a plated bore is honed to within ${fixed(WIDEST_TOLERANCE, 1)} mm at most`,
            hint: 'write the limits of the honed bore, as 60 H7 or 60 +0.02/0',
            path: `${band.path}/size`,
          },
        ]
      : []
  const deep: readonly PartFault[] =
    (stock.hone ?? 0) > HONED_AT_MOST
      ? [
          {
            code: 'input/out-of-range',
            message: `${fixed(stock.hone ?? 0, 2)} mm for the hone on a plated bore: ${fixed(HONED_AT_MOST, 1)} mm on diameter is the most`,
            hint: 'a layer is honed by some hundredths: leave stock: {hone} out and the planner chooses it',
            path: '/stock/hone',
          },
        ]
      : []
  return [...wide, ...deep]
}
