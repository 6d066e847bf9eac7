import {
  arcFactor,
  elasticModulusOf,
  forceForLobes,
  inwardAtJaw,
  loadedLength,
  lobing,
  outwardBetweenJaws,
  SOFT_JAWS,
  THIN_RING,
} from '../handbook/chuck-distortion.ts'
import { GROUND_ROUNDNESS } from '../handbook/distortion.ts'
import { fromHandbook, told, worked } from '../known.ts'
import type { Newton } from '../units.ts'
import type { OrderedOperation, Visit } from './order-source.ts'

const JAWS = fromHandbook('common practice, no source')
const AS_HELD = worked('the part as it comes to this operation')

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
  const b = notebook.use(
    loadedLength,
    { ...told(JAWS, { l_j: SOFT_JAWS.length }), ...told(AS_HELD, { R, L: shape.bottom - shape.top }) },
    about,
  )
  const stiffness = elasticModulusOf(source.grade)
  const one = {
    ...told(worked('one newton a jaw'), { F: 1 }),
    ...told(AS_HELD, { R, t }),
    ...told(worked(`${loadedLength.symbol}, ${loadedLength.meaning}`), { b }),
    ...told(fromHandbook(stiffness.source), { E: stiffness.E }),
    ...told(JAWS, { N: SOFT_JAWS.count }),
  }
  const delta_1 = notebook.use(
    lobing,
    {
      delta_L: notebook.use(inwardAtJaw, one, about),
      delta_M: notebook.use(outwardBetweenJaws, one, about),
      k: notebook.use(arcFactor, told(JAWS, { arc: SOFT_JAWS.arc }), about),
    },
    about,
  )
  return notebook.use(
    forceForLobes,
    {
      ...told(fromHandbook('common practice, no source'), { Delta: GROUND_ROUNDNESS }),
      ...told(worked(`${lobing.symbol}, ${lobing.meaning}`), { delta_1 }),
    },
    about,
  )
}
