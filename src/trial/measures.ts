import { armPower, fuelFlow, specificFuel, waterPower } from '../handbook/engine-load.ts'
import type { Trial, TrialRun } from '../part/trial.ts'

export type MeasureName = 'speed' | 'power' | 'thrust' | 'head' | 'fuel flow' | 'specific fuel'

export type Measure = {
  readonly name: MeasureName
  readonly unit: string
  /** Places that it is printed with. */
  readonly places: number
  readonly of: (run: TrialRun, trial: Trial) => number | undefined
}

/** kW on a brake or through a pump whose flow and head are read; a propeller has none but by its law. */
function powerOf({ force, flow, lift, speed }: TrialRun, { load }: Trial): number | undefined {
  if (load.kind === 'brake arm' && load.arm !== undefined && force !== undefined)
    return armPower.value({ F: force, F_0: load.tare ?? 0, L: load.arm, n: speed })
  if (load.kind === 'pump' && load.efficiency !== undefined && flow !== undefined && lift !== undefined)
    return waterPower.value({ Q: flow, H: lift, eta: load.efficiency })
  return undefined
}

function fuelOf({ fuel: t }: TrialRun, { fuel }: Trial): number | undefined {
  return t === undefined || !fuel ? undefined : fuelFlow.value({ V: fuel.volume, t, rho: fuel.density })
}

/** Everything that a run may give; those that are in the file are told. */
export const MEASURES: readonly Measure[] = [
  { name: 'speed', unit: 'rpm', places: 1, of: run => run.speed },
  { name: 'power', unit: 'kW', places: 3, of: powerOf },
  { name: 'thrust', unit: 'N', places: 2, of: ({ thrust }) => thrust },
  { name: 'head', unit: '°C', places: 1, of: ({ head }) => head?.at(-1) },
  { name: 'fuel flow', unit: 'kg/h', places: 3, of: fuelOf },
  {
    name: 'specific fuel',
    unit: 'g/kWh',
    places: 0,
    of: (run, trial) => {
      const [flow, power] = [fuelOf(run, trial), powerOf(run, trial)]
      return flow === undefined || power === undefined ? undefined : specificFuel.value({ m: flow, P: power })
    },
  },
]
