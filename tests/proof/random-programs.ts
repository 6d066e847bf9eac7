import { jsonText } from '../../src/commands/json.ts'
import { ncPrograms } from '../../src/nc/nc-programs.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { expectProgramsAsPlanned } from '../nc/as-planned.ts'
import { readAndPlan } from '../nc/general-reader.ts'
import type { ProgrammedWhole } from '../nc/programs-read.ts'
import { linerText, randomLiners } from './random-ports.ts'

/** A quarter of two hundred: a file for each, so that every core has one. */
const LINERS = 50

/**
 * Programs of random liners, each planned once: two commands and the plan that a test makes for itself would plan it three
 * times, and planning is most of the time. That the commands write and print the same is held with the demo parts.
 */
export function expectRandomProgramsAsPlanned(seed: number): void {
  const texts = randomLiners(LINERS, seed).map((ports, i) => [`random liner ${i + 1}`, linerText(ports)] as const)
  expectProgramsAsPlanned(texts, plannedOnce)
}

async function plannedOnce(text: string): Promise<ProgrammedWhole | undefined> {
  const { plan: whole, findings } = readAndPlan(text)
  if (!whole || findings.some(({ severity }) => severity === 'error')) return undefined
  return { whole, plan: JSON.parse(jsonText(whole)) as Plan, programs: ncPrograms(whole) }
}
