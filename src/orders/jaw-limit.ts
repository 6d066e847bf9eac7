import {
  arcFactor,
  forceForLobes,
  inwardAtJaw,
  loadedLength,
  lobing,
  outwardBetweenJaws,
  SOFT_JAWS,
  THIN_RING,
} from '../handbook/chuck-distortion.ts'
import { GROUND_ROUNDNESS } from '../handbook/distortion.ts'
import type { Newton } from '../units.ts'
import type { OrderedOperation, Visit } from './order-source.ts'

/** N/mm², steel. Source: data sheets. */
const STEEL = 210_000

/**
 * What each jaw may press with while a bore is ground for honing: more leaves lobes that the hone's stock is not planned for.
 * Nothing for a wall too stout to spring, or where nothing is honed after.
 */
export function jawLimit({ source, notebook }: Visit, operation: OrderedOperation): Newton | undefined {
  const { number, surfaces, locatedBy, process, heldIn, shape } = operation
  if (process !== 'grind' || heldIn !== 'jaws') return undefined
  const bore = shape.bore.find(({ name }) => surfaces.includes(name))
  const seat = shape.outside.find(({ name }) => locatedBy.includes(name))
  const honed = source.operations.some(
    later => later.process === 'hone' && later.number > number && later.surfaces.includes(bore?.name ?? ''),
  )
  if (!bore || !seat || !honed) return undefined
  const t = (seat.diameter - bore.diameter) / 2
  const R = (seat.diameter + bore.diameter) / 4
  if (R / t < THIN_RING) return undefined
  const about = { operation: number, about: bore.name }
  const b = notebook.use(loadedLength, { l_j: SOFT_JAWS.length, R, L: shape.bottom - shape.top }, about)
  const one = { F: 1, R, t, b, E: STEEL, N: SOFT_JAWS.count }
  const delta_1 = notebook.use(
    lobing,
    {
      delta_L: notebook.use(inwardAtJaw, one, about),
      delta_M: notebook.use(outwardBetweenJaws, one, about),
      k: notebook.use(arcFactor, { arc: SOFT_JAWS.arc }, about),
    },
    about,
  )
  return notebook.use(forceForLobes, { Delta: GROUND_ROUNDNESS, delta_1 }, about)
}
