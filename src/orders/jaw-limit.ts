import { forceForLobes, lobing } from '../handbook/chuck-distortion.ts'
import { GROUND_ROUNDNESS } from '../handbook/distortion.ts'
import { lobesInJaws, ringBetween } from '../handbook/lobes-in-jaws.ts'
import { fromHandbook, told, worked } from '../known.ts'
import type { Millimetre, Newton } from '../units.ts'
import type { OrderedOperation, Visit } from './order-source.ts'

const JAWS = fromHandbook('common practice, no source')
/** How much of the seat a grinder's soft jaws are on. Common practice, no source. */
const GRIPPED: Millimetre = 20

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
  const ring = ringBetween(seat.diameter, bore.diameter, shape.bottom - shape.top)
  if (!ring) return undefined
  const about = { operation: number, about: bore.name }
  const delta_1 = lobesInJaws({
    use: notebook.use,
    about,
    ring,
    grade: source.grade,
    jaws: 'bored soft jaws',
    gripped: { ...JAWS, value: GRIPPED },
    force: { ...worked('one newton a jaw'), value: 1 },
  })
  return notebook.use(
    forceForLobes,
    {
      ...told(JAWS, { Delta: GROUND_ROUNDNESS }),
      ...told(worked(`${lobing.symbol}, ${lobing.meaning}`), { delta_1 }),
    },
    about,
  )
}
