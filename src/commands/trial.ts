import { hasErrors } from '../finding.ts'
import { readTrial } from '../part/read-trial.ts'
import { judgeTrial } from '../trial/judge-trial.ts'
import { planTrial } from '../trial/plan-trial.ts'
import { jsonText } from './json.ts'
import type { Options } from './options.ts'
import { reportBeside } from './report.ts'
import { trialPlanText } from './trial-plan-text.ts'
import { trialText } from './trial-text.ts'
import { STATUS, type World } from './world.ts'

export type TrialOptions = Pick<Options, 'json'> & {
  /** Say how to run it; judge nothing. */
  readonly plan?: boolean
}

/** Judges an engine trial of liners against each other, or says how to run one. */
export async function trialCommand(file: string, options: TrialOptions, world: World): Promise<number> {
  const { trial, findings: inFile } = readTrial(world.readText(file), file)
  if (options.plan) {
    if (trial) {
      const plan = planTrial(trial)
      world.out(
        options.json ? jsonText({ trial: withoutPlaces(trial), plan, findings: inFile }) : trialPlanText(trial, plan),
      )
    }
    reportBeside(inFile, world)
    return hasErrors(inFile) ? STATUS.errors : STATUS.fine
  }
  const judged = trial ? judgeTrial(trial) : { findings: [] }
  const liners =
    trial && trial.liners.filter(({ file }) => file !== undefined).length > 1
      ? (await import('./trial-liners.ts')).linersCompared(trial, world)
      : { differ: [], findings: [] }
  const findings = [...inFile, ...judged.findings, ...liners.findings]
  if (options.json) {
    const { findings: _, ...result } = judged.result ?? { findings: [] }
    world.out(jsonText({ ...(trial && { trial: withoutPlaces(trial) }), ...result, liners: liners.differ, findings }))
  } else if (trial && judged.result) world.out(trialText(trial, judged.result, liners.differ))
  reportBeside(findings, world)
  return hasErrors(findings) ? STATUS.errors : STATUS.fine
}

/** What the file says, without where it stands there; the runs are told as judged. */
function withoutPlaces({ at: _, runs: __, liners, ...trial }: NonNullable<ReturnType<typeof readTrial>['trial']>) {
  return { ...trial, liners: liners.map(({ at: _, ...liner }) => liner) }
}
