import { CHD_SHARE, carburisingTime } from '../handbook/carburising.ts'
import type { HardeningWindow } from '../handbook/hardening-processes.ts'
import {
  depthConstant,
  NITROGEN_ACTIVATION_ENERGY,
  nitridingTime,
  REFERENCE_TEMPERATURE,
  twoStageConstant,
} from '../handbook/nitriding-depth.ts'
import { known } from '../known.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { CaseCycle } from './case-cycle.ts'
import type { CaseFigures } from './case-figures.ts'
import type { CasePlan } from './case-plan.ts'

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
      notebook.use(carburisingTime, { CHD: middle, r, T: cycle.temperature }, { about: `case, ${end}` })
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
    const given = { K_ref: known(K_ref, 'mm/h^0.5', K), T_ref: REFERENCE_TEMPERATURE, Q: NITROGEN_ACTIVATION_ENERGY }
    const [first = 0, second] = cycle.stages.map(({ temperature: T }) =>
      notebook.use(depthConstant, { ...given, T }, about),
    )
    const q = cycle.stages[0]?.share ?? 1
    const constant =
      second === undefined ? first : notebook.use(twoStageConstant, { K_1: first, K_2: second, q }, about)
    return notebook.use(nitridingTime, { N: middle, K: constant }, about)
  }
  return { least: hours(K.most, 'least time'), nominal: hours(K.usual, 'time'), most: hours(K.least, 'most time') }
}
