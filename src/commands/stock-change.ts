import { hasErrors } from '../finding.ts'
import { length } from '../figures.ts'
import type { Plan } from '../plan/plan.ts'
import type { StockEntry } from '../stock/stock.ts'
import { planTexts, type Setting, setInTexts, textsOf } from './load.ts'
import type { Options } from './options.ts'
import { reportBeside } from './report.ts'
import { heading } from './route.ts'
import { signed, stock } from './stock.ts'
import { table } from './table.ts'
import { STATUS, type World } from './world.ts'

export type ChangeWanted = Options & { readonly set: readonly Setting[] }

/** Plans the part as its files stand and with values set, and shows the stock of both. The status is that of the change. */
export function stockChange(file: string, options: ChangeWanted, world: World): number {
  const texts = textsOf(file, options, world)
  const { texts: changed, findings: unset } = setInTexts(texts, options.set)
  if (!changed) {
    if (options.json) world.out(`${JSON.stringify({ findings: unset }, null, 2)}\n`)
    reportBeside(unset, world)
    return STATUS.errors
  }
  const before = planTexts(texts, options, world)
  const after = planTexts(changed, options, world)
  const data = ({ plan, findings }: typeof before): unknown => (plan ? stock.data(plan) : { findings })
  if (options.json) {
    world.out(`${JSON.stringify({ set: options.set, before: data(before), after: data(after) }, null, 2)}\n`)
  } else if (after.plan) world.out(sideBySide(before.plan, after.plan, options))
  reportBeside(after.findings, world)
  return hasErrors(after.findings) ? STATUS.errors : STATUS.fine
}

function sideBySide(before: Plan | undefined, after: Plan, options: ChangeWanted): string {
  const settings = options.set.map(({ path, value }) => `With ${path} = ${value}\n`).join('')
  return [heading(after) + settings, compared(before, after, options), cases(before, after, options)].join('\n')
}

function compared(before: Plan | undefined, after: Plan, options: Options): string {
  const key = ({ surface, operation }: StockEntry): string => JSON.stringify([surface, operation])
  const old = new Map(before?.stock.map(entry => [key(entry), entry]))
  const now = new Map(after.stock.map(entry => [key(entry), entry]))
  const pairs = [...new Set([...old.keys(), ...now.keys()])].map(it => [old.get(it), now.get(it)] as const)
  const figures: readonly (readonly [string, (entry: StockEntry) => string])[] = [
    [`per side least (${options.units})`, ({ perSide }) => length(perSide.least, options.units)],
    ['per side most', ({ perSide }) => length(perSide.most, options.units)],
    ['spare to clean up', ({ margin }) => signed(margin.cleanUp, options.units)],
    ['spare case', ({ margin }) => (margin.case === undefined ? '' : signed(margin.case, options.units))],
    ['verdict', ({ verdict }) => verdict],
  ]
  return table(
    [
      { head: 'surface' },
      { head: 'operation' },
      ...figures.flatMap(([head]) => {
        const align = head === 'verdict' ? 'left' : 'right'
        return [{ head, align } as const, { head: 'changed', align } as const]
      }),
    ],
    pairs.map(([was, is]) => [
      (is ?? was)?.surface ?? '',
      String((is ?? was)?.operation ?? ''),
      ...figures.flatMap(([, write]) => [was, is].map(entry => (entry ? write(entry) : 'none'))),
    ]),
  )
}

function cases(before: Plan | undefined, after: Plan, { units }: Options): string {
  const say = (plan: Plan | undefined): string => {
    if (!plan) return 'not planned: it has errors'
    if (!plan.case) return 'no hardening'
    const { process, ordered } = plan.case
    const mm = (value: number): string => length(value, units, 2)
    return `order ${process}, depth ${mm(ordered.least)} to ${mm(ordered.most)} ${units} as hardened`
  }
  return `As it stands: ${say(before)}.\nChanged: ${say(after)}.\n`
}
