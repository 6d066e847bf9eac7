import { RELIEF_SAFETY } from '../handbook/hardening-safety.ts'
import type { Drafted } from './drafted.ts'
import { ONE_HEAT } from './identity.ts'
import type { Visit } from './order-source.ts'
import { celsius } from './quantity.ts'
import { point, say, sentence } from './say.ts'

/** The order for stress relief between roughing and finishing. The window is the plan's; time and rate are the treater's. */
export function reliefOrder(visit: Visit): Drafted {
  const { source, operations } = visit
  const [operation] = operations
  const {
    stressRelief: aim,
    stressReliefWindow: window,
    temper,
  } = source.quench
    ? { stressRelief: source.quench.stressRelief.aim, stressReliefWindow: source.quench.stressRelief }
    : { temper: undefined, ...source.case?.order }
  const asked = window && celsius('asked', 'stress-relieving temperature', window)
  return {
    points: [
      ...point(
        'Material and condition',
        temper === undefined
          ? `${source.grade}, condition as the bar certificate says.`
          : say`${source.grade}, tempered at ${celsius('given', 'temper of the bar', { value: temper })} by the bar certificate.`,
        'Rough turned, clean of oil and chips.',
        ONE_HEAT,
      ),
      ...point(
        'Stress relief',
        ...(asked && aim !== undefined
          ? [
              say`At ${asked}, measured at the parts: aim at ${celsius('planned', 'middle of the window', { value: aim })}.`,
              source.quench
                ? 'Cooler, and what is left of the stress moves the part in hardening; hotter, and the carbides change.'
                : 'Cooler, and nitriding moves the part; hotter, and the bar softens.',
            ]
          : ['Below the temper of the bar, by the practice for this grade: tell us at what temperature.']),
        'Heat and cool slowly, parts free to move; time and rate are for the treater to choose and to confirm.',
      ),
      ...point('Fixturing', `${sentence(operation?.holding ?? 'Parts free to move')}.`),
      ...point('Certificate', 'Furnace chart of the load, with load number.'),
      ...point('Packing', 'Dry and preserved, nothing metal to metal.'),
      ...point('Nonconformance', 'A load off its temperature: hold it and ring. No straightening without our consent.'),
    ],
    finish: [],
    returns: asked ? [{ ...asked, of: 'load', readings: 1 }] : [],
    cautions: RELIEF_SAFETY,
  }
}
