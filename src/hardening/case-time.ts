import { CHD_SHARE, carburisingTime } from '../handbook/carburising.ts'
import type { HardeningWindow } from '../handbook/hardening-processes.ts'
import {
  depthConstant,
  NITROGEN_ACTIVATION_ENERGY,
  nitridingTime,
  REFERENCE_TEMPERATURE,
  twoStageConstant,
} from '../handbook/nitriding-depth.ts'
import { fromHandbook, known, told, worked } from '../known.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { CaseCycle } from './case-cycle.ts'
import type { CaseFigures } from './case-figures.ts'
import type { CasePlan } from './case-plan.ts'

const AIMED = worked('middle of the depth ordered')
const AT_STAGE = worked(`${depthConstant.symbol}, ${depthConstant.meaning}`)
const SHARES = fromHandbook('cycles of the process: stages and their shares of the time')

/**
 * Time at temperature for the middle of the depth ordered: a mean at the lower limit would leave half of the readings short.
 * Nought for a process that is over in seconds.
 */
export function caseTime({
  notebook,
  window,
  figures,
  middle,
  cycle,
}: {
  readonly notebook: Notebook
  readonly window: HardeningWindow
  readonly figures: CaseFigures
  readonly middle: Millimetre
  readonly cycle: CaseCycle
}): CasePlan['time'] {
  if (window.term === 'CHD') {
    const hours = (r: number, end: string) =>
      notebook.use(
        carburisingTime,
        { ...told(AIMED, { CHD: middle }), ...told(fromHandbook('memory'), { r }), T: cycle.temperature },
        { about: `case, ${end}` },
      )
    return {
      least: hours(CHD_SHARE.most, 'least time'),
      nominal: hours(CHD_SHARE.usual, 'time'),
      most: hours(CHD_SHARE.least, 'most time'),
    }
  }
  const K = figures.depthConstant
  if (!K) return { least: 0, nominal: 0, most: 0 }
  const hours = (K_ref: number, end: string) => {
    const about = { about: `case, ${end}` }
    const law = { T_ref: REFERENCE_TEMPERATURE, Q: NITROGEN_ACTIVATION_ENERGY }
    const given = { K_ref: known(K_ref, 'mm/h^0.5', K), ...told(fromHandbook(depthConstant.source), law) }
    const [first = 0, second] = cycle.stages.map(({ temperature: T }) =>
      notebook.use(depthConstant, { ...given, T }, about),
    )
    const q = cycle.stages[0]?.share ?? 1
    const constant =
      second === undefined
        ? first
        : notebook.use(
            twoStageConstant,
            { ...told(AT_STAGE, { K_1: first, K_2: second }), ...told(SHARES, { q }) },
            about,
          )
    return notebook.use(nitridingTime, { ...told(AIMED, { N: middle }), K: constant }, about)
  }
  return { least: hours(K.most, 'least time'), nominal: hours(K.usual, 'time'), most: hours(K.least, 'most time') }
}
