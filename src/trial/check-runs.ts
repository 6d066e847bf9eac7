import type { Finding, Place } from '../finding.ts'
import { tipMach } from '../handbook/engine-load.ts'
import type { Trial, TrialRun } from '../part/trial.ts'
import { airOf } from './air-of-runs.ts'
import { markOf, meanOf } from './fitted.ts'
import type { TrialResult } from './judge-trial.ts'
import { basisOf, without } from './least-squares.ts'
import { steadyOf } from './steady.ts'

/** From the first run of the block on: common practice, no source. */
const AIR_STAYS = { kelvin: 3, hPa: 3 }
/** Estimates, no evidence. */
const LAW = { speedWithin: 0.05, thrustWithin: 0.01, tipMach: 0.6, staticLift: 0.05 }

/** What speaks against a run: written in the file, or seen in its air and temperatures; never in its speed. */
export function doubtsOf(run: TrialRun, trial: Trial): readonly string[] {
  const first = trial.runs.find(({ block }) => block === run.block)
  const steady = steadyOf(run, trial)
  const moved = (now: number | undefined, then: number | undefined): number =>
    now === undefined || then === undefined ? 0 : Math.abs(now - then)
  return [
    ...(run.doubt === undefined ? [] : [run.doubt]),
    ...(moved(run.air, first?.air) > AIR_STAYS.kelvin
      ? [`air ${moved(run.air, first?.air).toFixed(1)} K from where the block began`]
      : []),
    ...(moved(run.pressure, first?.pressure) > AIR_STAYS.hPa
      ? [`pressure ${moved(run.pressure, first?.pressure).toFixed(1)} hPa from where the block began`]
      : []),
    ...(steady && !steady.isSteady ? [`not steady: ${steady.why}`] : []),
  ]
}

type Judged = Omit<TrialResult, 'findings'>

const say =
  (severity: 'warning' | 'note', at: Place) =>
  (code: Finding['code'], message: string, hint: string): Finding => ({ code, severity, message, hint, at })

/** What must be known beside the result. */
export function checkRuns(trial: Trial, result: Judged): readonly Finding[] {
  const [warn, note] = [say('warning', trial.at), say('note', trial.at)]
  const doubtful = result.runs.filter(({ doubts, rejected }) => doubts.length > 0 && rejected === undefined)
  return [
    ...doubtful.map(({ number, doubts }) =>
      say('warning', trial.runs[number - 1]?.at ?? trial.at)(
        'trial/doubtful',
        `run ${number}: ${doubts.join('; ')}`,
        'it counts; the result without such runs stands beside',
      ),
    ),
    ...designFindings(trial, result),
    ...lawFindings(trial, result),
    ...(trial.budget.length === 0
      ? [
          note(
            'trial/bare-budget',
            'nothing but the spread of fittings is in the budget',
            'add budget: what else may have moved power between the liners, air left over, load, bedding-in',
          ),
        ]
      : []),
    ...(result.air
      ? []
      : [
          note(
            'trial/air',
            'the air was not read at every run: whether it moved cannot be told',
            'read temperature, pressure and humidity at the engine at every run',
          ),
        ]),
    ...(result.corrected && !result.corrected.within
      ? [
          warn(
            'trial/air',
            `${result.corrected.rule}: factors from ${result.corrected.least.toFixed(4)} to ${result.corrected.most.toFixed(4)} go beyond ${result.corrected.from} to ${result.corrected.upTo}, which it is good for`,
            'run again in other weather',
          ),
        ]
      : []),
  ]
}

/** Whether the order run keeps a drift out, and whether it was held to. */
function designFindings(trial: Trial, { main }: Judged): readonly Finding[] {
  const [warn] = [say('warning', trial.at)]
  const { fittings } = main
  const blocks = [...new Set(fittings.map(({ block }) => block))]
  const leaning = trial.liners.filter(({ letter }) => letter !== 'A' && leans(fittings, letter, blocks))
  const each = trial.liners.map(({ letter }) => fittings.filter(({ liner }) => liner === letter).length)
  const most = Math.max(...each)
  const [times] = [trial.liners.map(({ runIn }) => runIn)]
  const known = times.filter(time => time !== undefined)
  return [
    ...(leaning.length > 0
      ? [
          warn(
            'trial/drift',
            `the order ${fittings.map(({ liner }) => liner).join('')} does not cancel a drift by itself: it is taken out by the fit, and the interval is the wider for it`,
            'fit as --plan says, ABBA or ABBA BAAB',
          ),
        ]
      : []),
    ...(trial.fittingsEach !== undefined && most > trial.fittingsEach
      ? [
          warn(
            'trial/extended',
            `${most} fittings each were run, and ${trial.fittingsEach} were settled beforehand`,
            'tell it as extended after looking: fittings added until something shows will show something',
          ),
        ]
      : []),
    ...(known.length > 1 && Math.max(...known) > 1.25 * Math.min(...known)
      ? [
          warn(
            'trial/run-in',
            `the liners were run in for ${known.join(' and ')} h`,
            'run both in for the same time first, or put bedding-in into the budget',
          ),
        ]
      : []),
  ]
}

/** Whether a liner stands earlier or later than the old one on the whole. */
function leans(fittings: Judged['main']['fittings'], letter: 'A' | 'B' | 'C', blocks: readonly string[]): boolean {
  const own = fittings.filter(({ liner }) => liner === letter || liner === 'A')
  const means = blocks.map(block => own.map(fitting => (fitting.block === block ? 1 : 0)))
  const mark = without(markOf(own, letter), basisOf(means))
  return Math.abs(mark.reduce((sum, value, i) => sum + value * (own[i]?.number ?? 0), 0)) > 1e-6
}

/** Whether the law by which power is told from speed holds. */
function lawFindings(trial: Trial, { main, others }: Judged): readonly Finding[] {
  const warn = say('warning', trial.at)
  const { load, runs, verdict } = trial
  const [{ difference = 0, old = 1 } = {}] = main.differences
  const speed = verdict === 'speed' ? Math.abs(difference / old) : 0
  const fastest = Math.max(...runs.map(run => run.speed))
  const warmest = Math.max(...runs.map(({ air }) => air ?? 20))
  const mach = load.diameter === undefined ? 0 : tipMach.value({ D: load.diameter, n: fastest, t: warmest })
  const thrusts = others.some(({ measure }) => measure === 'thrust') ? thrustRatios(trial) : []
  return [
    ...(speed > LAW.speedWithin
      ? [
          warn(
            'trial/load',
            `the speeds lie ${(100 * speed).toFixed(1)} % apart: the cube of speed is good for 5 %`,
            'read power by flow and head, or on a brake',
          ),
        ]
      : []),
    ...(mach > LAW.tipMach
      ? [
          warn(
            'trial/load',
            `the tip runs at ${mach.toFixed(2)} of the speed of sound: the cube of speed is good for 0.6`,
            'take a smaller propeller',
          ),
        ]
      : []),
    ...(verdict === 'speed' && (load.staticLift ?? 0) > LAW.staticLift
      ? [
          warn(
            'trial/load',
            `${(100 * (load.staticLift ?? 0)).toFixed(0)} % of the head does not go with speed: the cube of speed is good for 5 %`,
            'read flow and head, and write verdict: power',
          ),
        ]
      : []),
    ...thrusts
      .filter(({ ratio }) => Math.abs(ratio - 1) > LAW.thrustWithin)
      .map(({ letter, ratio }) =>
        warn(
          'trial/load',
          `thrust by density and speed squared differs by ${(100 * Math.abs(ratio - 1)).toFixed(1)} % between A and ${letter}`,
          'the flow or the load cell moved: look at both before the result',
        ),
      ),
  ]
}

function thrustRatios({ liners, runs }: Trial): readonly { readonly letter: string; readonly ratio: number }[] {
  const of = (letter: string) =>
    runs
      .filter(run => run.liner === letter && run.rejected === undefined)
      .flatMap(run => {
        const density = airOf(run)?.density
        return run.thrust === undefined || density === undefined ? [] : [run.thrust / (density * run.speed ** 2)]
      })
  const old = of('A')
  return liners.flatMap(({ letter }) =>
    letter === 'A' || old.length === 0 || of(letter).length === 0
      ? []
      : [{ letter, ratio: meanOf(of(letter)) / meanOf(old) }],
  )
}
