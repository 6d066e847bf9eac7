import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { facingTime, turningTime } from '../handbook/turning.ts'
import { TURNING_STARTS } from '../handbook/turning-speeds.ts'
import { told } from '../known.ts'
import type { Millimetre } from '../units.ts'
import { type CuttingTask, START_AT } from './cutting-task.ts'
import type { Step } from './step.ts'
import type { FaceCut } from './turned-cuts.ts'
import type { SettledPass } from './turned-pass.ts'
import { AS_CUT, ofMachine, PRACTICE, SETTLED } from './where-from.ts'

type Named = {
  readonly tool: string
  readonly action: string
  readonly feature: string
  readonly remarks?: readonly string[]
}

/** Passes along a band. */
export function turningStep(task: CuttingTask, named: Named, pass: SettledPass, length: Millimetre): Step {
  const about = { operation: task.operation.number, about: named.feature }
  const given = {
    ...told(AS_CUT, { L: length }),
    ...told(PRACTICE, { La: TURNING_STARTS.approach, Lo: TURNING_STARTS.overtravel }),
    ...told(SETTLED, { i: pass.passes, f: pass.feed, n: pass.spindleSpeed }),
  }
  const cutting = task.notebook.use(turningTime, given, about)
  return stepOf(named, pass, cutting)
}

/** Passes across a face, at constant cutting speed until the spindle's limit. */
export function facingStep(task: CuttingTask, named: Named, pass: SettledPass, { outside, bore }: FaceCut): Step {
  const { machine, notebook, operation } = task
  const limit = Math.min(machine.speedLimit ?? Infinity, machine.chuckLimit ?? Infinity)
  const n = Number.isFinite(limit) ? limit : FACING_LIMIT
  const given = {
    ...told(AS_CUT, { Do: outside, Di: bore }),
    ...told(SETTLED, { vc: pass.cuttingSpeed, f: pass.feed }),
    ...told(Number.isFinite(limit) ? ofMachine(task) : PRACTICE, { n }),
  }
  const once = notebook.use(facingTime, given, { operation: operation.number, about: named.feature })
  const toCentre = bore === 0 ? [`not over ${n} rpm toward the centre`] : []
  return stepOf({ ...named, remarks: [...(named.remarks ?? []), ...toCentre] }, pass, pass.passes * once)
}

/** rpm, for a machine whose limit is not known. Common practice, no source. */
const FACING_LIMIT = 3000

const stepOf = ({ remarks = [], ...named }: Named, pass: SettledPass, cutting: number): Step => ({
  ...named,
  ...pass,
  feedUnit: 'mm/rev',
  time: cutting + pass.passes * SHOP_TIMES.rapid,
  remarks: [START_AT, ...remarks],
})
