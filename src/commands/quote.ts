import { hasErrors } from '../finding.ts'
import { icalendar } from '../ical/icalendar.ts'
import type { Plan } from '../plan/plan.ts'
import { jsonText } from './json.ts'
import { load } from './load.ts'
import type { Options } from './options.ts'
import { planFile, wholePlan } from './plan-file.ts'
import { quoteText } from './quote-text.ts'
import { counted, reportBeside } from './report.ts'
import { STATUS, UsageProblem, type World } from './world.ts'

/** What a batch costs and when it is done, for one quantity or for several side by side. */
export function quote(file: string, { quantities, ...options }: Options, world: World): number {
  const [quantity] = quantities ?? []
  const first = planFile(file, quantity === undefined ? options : { ...options, quantity }, world)
  reportBeside(first.findings, world)
  if (!first.plan || hasErrors(first.findings)) {
    world.err(`${file}: no quote: ${counted(first.findings)}\n`)
    return STATUS.errors
  }
  const { plan } = first
  const others = (quantities ?? []).slice(1).flatMap(more => planOf(file, { ...options, quantity: more }, world))
  const plans = [plan, ...others]
  refuseUnpriced(plan)
  if (options.calendar !== undefined) {
    const content = icalendar(plan)
    if (content === undefined) throw new UsageProblem('--calendar wants a day to begin on: --start YYYY-MM-DD')
    world.write({ path: options.calendar, content })
  }
  if (options.json) world.out(jsonText({ file, quotes: plans.map(dataOf) }))
  else world.out(quoteText(plans))
  return STATUS.fine
}

const dataOf = ({ part, batch, cost, calendar, delivery }: Plan) => ({ part, batch, cost, calendar, delivery })

function planOf(file: string, options: Options, world: World): readonly Plan[] {
  const loaded = load(file, options, world)
  const { part, shop } = loaded
  const { plan } = part && shop ? wholePlan(part, shop, loaded, world) : {}
  return plan ? [plan] : []
}

/** A quote of half the work misleads. */
function refuseUnpriced({ cost, unpriced, delivery }: Plan): void {
  if (cost || (!unpriced && delivery)) return
  if (unpriced) throw new UsageProblem(`no price in the shop file for: ${unpriced.join('; ')}`)
  throw new UsageProblem(
    'the shop file gives no rates, and no day to begin on is said: nothing to quote; --start YYYY-MM-DD gives the dates',
  )
}
