import { dirname, join } from 'node:path'
import { type Comparison, comparePlans, isEmpty } from '../compare/compare-plans.ts'
import { barAnew, setAnew } from '../compare/set-anew.ts'
import { byPlace, type Finding, hasErrors } from '../finding.ts'
import type { Part } from '../part/part.ts'
import type { Plan } from '../plan/plan.ts'
import { sheetsWithdrawn } from '../sheets/sheets-withdrawn.ts'
import { comparedText } from './compare-text.ts'
import { planAt } from './issue.ts'
import { jsonText } from './json.ts'
import type { Options } from './options.ts'
import { planFile } from './plan-file.ts'
import { reportBeside } from './report.ts'
import { STATUS, UsageProblem, type World } from './world.ts'

type Side = { readonly file: string; readonly plan?: Plan; readonly part?: Part; readonly findings: readonly Finding[] }
type Planned = Pick<Side, 'part'> & { readonly plan: Plan }

/** Holds two revisions of a part against each other, each a part file or a plan as issued, planned for one works, quantity and date. */
export function compare(oldFile: string, newFile: string, options: Options, world: World): number {
  const { was, is } = bothSides(oldFile, newFile, options, world)
  const findings = byPlace([...was.findings, ...is.findings].filter(({ severity }) => severity === 'error'))
  if (!was.plan || !is.plan) {
    reportBeside(findings, world)
    return STATUS.errors
  }
  const compared = compareSides({ ...was, plan: was.plan }, { ...is, plan: is.plan })
  const parts = was.part && is.part
  const more = moreOf(was.plan, is.plan, compared)
  if (options.json) world.out(jsonText({ old: whose(was.plan), new: whose(is.plan), ...compared, ...more, findings }))
  else world.out(comparedText({ was: was.plan, is: is.plan, compared, more, drawing: parts !== undefined }, options))
  reportBeside(findings, world)
  return hasErrors(findings) ? STATUS.errors : STATUS.fine
}

/** Both files planned for one works, quantity and date. */
export function bothSides(
  oldFile: string,
  newFile: string,
  options: Options,
  world: World,
): { readonly was: Side; readonly is: Side } {
  const issued = [oldFile, newFile].filter(isPlan).map(file => planAt(file, world))
  const [like] = issued
  const beside = join(dirname(oldFile), 'shop.yaml')
  const shop = options.shop ?? (!isPlan(oldFile) && world.exists(beside) ? beside : undefined)
  const same: Options = {
    ...options,
    ...(shop !== undefined && { shop }),
    ...(like && {
      quantity: options.quantity ?? like.batch.quantity,
      batch: options.batch ?? like.batch.number,
      date: options.date ?? like.date,
    }),
  }
  const [was, is] = [sideOf(oldFile, same, world), sideOf(newFile, same, world)]
  if (was.plan && is.plan && was.plan.part.kind !== is.plan.part.kind)
    throw new UsageProblem(
      `${oldFile} is a ${was.plan.part.kind}, ${newFile} a ${is.plan.part.kind}: they have nothing to compare`,
    )
  return { was, is }
}

/** What differs between two sides that could be planned. */
export const compareSides = (was: Planned, is: Planned): Comparison =>
  comparePlans(was.plan, is.plan, was.part && is.part ? { was: was.part, is: is.part } : undefined)

export type More = {
  readonly bar: ReturnType<typeof barAnew>
  readonly setAnew: ReturnType<typeof setAnew>
  readonly withdrawn: ReturnType<typeof sheetsWithdrawn>
}

const moreOf = (was: Plan, is: Plan, compared: Comparison): More =>
  isEmpty(compared)
    ? { bar: [], setAnew: [], withdrawn: [] }
    : { bar: barAnew(was, is), setAnew: setAnew(was, is), withdrawn: sheetsWithdrawn(was, is) }

const isPlan = (file: string): boolean => /\.json$/i.test(file)

const whose = ({ part, batch, date, fingerprint }: Plan) => ({
  ...part,
  batch: batch.number,
  quantity: batch.quantity,
  date,
  fingerprint,
})

function sideOf(file: string, options: Options, world: World): Side {
  if (isPlan(file)) return { file, plan: planAt(file, world), findings: [] }
  const { plan, findings, loaded } = planFile(file, options, world)
  return { file, findings, ...(plan && { plan }), ...(loaded.part && { part: loaded.part }) }
}
