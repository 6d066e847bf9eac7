import { CRACK_TESTING, coilTurns, conductorCurrent } from '../handbook/crack-testing.ts'
import { GRINDING_MIST } from '../handbook/hardening-safety.ts'
import { fromHandbook, told, worked } from '../known.ts'
import type { Drafted } from './drafted.ts'
import type { Visit } from './order-source.ts'
import { amperes, fieldLeft } from './quantity.ts'
import { point, say } from './say.ts'

/** The order for the crack test, one point: method, acceptance, and the part as it comes back. Common practice, no source. */
export function crackTestOrder(visit: Visit): Drafted {
  const { source, operations, notebook } = visit
  const [operation] = operations
  const shape = operation?.shape
  const about = { ...(operation && { operation: operation.number }), about: 'crack test' }
  const made = worked('the part as it comes')
  const outside = Math.max(...(shape?.outside ?? []).map(({ diameter }) => diameter))
  const bore = Math.max(0, ...(shape?.bore ?? []).map(({ diameter }) => diameter))
  const field = told(fromHandbook('excerpts of ISO 9934-1'), { H: CRACK_TESTING.field })
  const through = notebook.use(conductorCurrent, { ...field, ...told(made, { D: outside }) }, about)
  const round = notebook.use(
    coilTurns,
    told(made, { L: (shape?.bottom ?? 0) - (shape?.top ?? 0), D: Math.min(...seats(shape)), d: bore }),
    about,
  )
  const left = fieldLeft('asked', 'field left after demagnetising', { most: CRACK_TESTING.residual })
  return {
    points: [
      ...point(
        'Crack test',
        'Every piece, wet fluorescent magnetic particles in two directions at right angles (ISO 9934-1).',
        bore > 0 &&
          say`A start, to be proved with a test piece or a field meter: ${amperes('planned', 'current through the conductor', { value: through })} through a conductor in the bore; a coil of ${amperes('planned', 'ampere-turns of the coil', { value: round })} turns of one ampere, with pole pieces where the part is short.`,
        'By a person qualified by ISO 9712, or as local rules say. No line is accepted anywhere, at port corners, edges and ground surfaces above all.',
        say`Report by piece. Demagnetised to ${left} at the ends, each piece singly; ink washed off, dry, oiled.`,
      ),
    ],
    finish: [],
    returns: [{ ...left, of: 'piece', readings: source.batch.start }],
    cautions: [...operations.flatMap(({ cautions }) => cautions), GRINDING_MIST],
    named: [],
  }
}

const seats = (shape: Visit['operations'][number]['shape'] | undefined): readonly number[] =>
  (shape?.outside ?? []).map(({ diameter }) => diameter)
