import type { Finding } from '../finding.ts'
import { type Part, placeOf } from '../part/part.ts'
import { suggestionOrList } from '../part/suggestion.ts'
import { HARDENING_PROCESSES, type Process } from '../process.ts'
import type { Shop } from '../shop/shop.ts'
import { finishingTasks, hardeningTasks } from './hard-tasks.ts'
import { atOneFirm, houseOrOutside } from './house-or-outside.ts'
import { finishingNeeds, NEED_RULE_NAMES } from './needs.ts'
import type { Operation, Purpose } from './operation.ts'
import { orderOperations, type Wait } from './order-operations.ts'
import { PASS_RULES, withPassChecks } from './pass-checks.ts'
import { reachFindings } from './reach-findings.ts'
import { holdingWaits, reasonsFor, waitsOf, waivedReasons } from './reasons.ts'
import { refusals, stressReliefWanted } from './refusals.ts'
import type { Task } from './rules/route-rule.ts'
import { ROUTE_RULES } from './rules/route-rules.ts'
import { cautions, softTasks, type TaskSketch } from './soft-tasks.ts'

export type Route = { readonly operations: readonly Operation[]; readonly findings: readonly Finding[] }

/**
 * The operations in order, each with the reasons for its place; findings instead where there is no route. Of operations that
 * wait for nothing the one goes first that `wanted` has first, else the one that the trade does first.
 */
export function planRoute(part: Part, shop: Shop, wanted: readonly Purpose[] = []): Route {
  const needs = finishingNeeds(part, shop)
  const refused = refusals(part, needs)
  if (refused.length > 0) return { operations: [], findings: refused }

  const sketches = [
    ...softTasks(part, shop, needs, stressReliefWanted(part)),
    ...hardeningTasks(part),
    ...finishingTasks(part, shop, needs),
  ]
  const placed = sketches.map(sketch => placedIn(shop, sketch, part))
  const tasks = placed
    .flatMap(({ task }) => (task ? [task] : []))
    .toSorted((a, b) => wanted.indexOf(a.purpose) - wanted.indexOf(b.purpose))
  const waivers = waived(part)
  const findings = [...placed.flatMap(({ finding }) => (finding ? [finding] : [])), ...waivers.findings]

  const inForce = ROUTE_RULES.filter(rule => !waivers.waived.some(waiver => waiver.rule === rule))
  const ordering = orderOperations(tasks, inForce)
  if (!ordering.ok) return { operations: [], findings: [...findings, deadlock(part, ordering.unmet)] }
  const inOrder = atOneFirm(shop, ordering.tasks)
  const holding = holdingWaits(ordering.tasks, ordering.waits)
  const numberOf = (task: Task): number => 10 * (ordering.tasks.indexOf(task) + 1)
  const nameOf = (number: number): string => ordering.tasks[number / 10 - 1]?.name ?? ''
  const operations = withPassChecks(
    part,
    ordering.tasks.map((task, index) => {
      const { why: _, ...rest } = inOrder[index] ?? task
      const waits = waitsOf(task, ordering.tasks, { holding, numberOf })
      return {
        ...rest,
        number: numberOf(task),
        because: [...reasonsFor(task, waits, nameOf), ...waivedReasons(task, ordering.tasks, waivers.waived)],
        waits,
      }
    }),
  )
  return { operations, findings: [...findings, ...reachFindings(part, operations)] }
}

function placedIn(shop: Shop, sketch: TaskSketch, part: Part): { readonly task?: Task; readonly finding?: Finding } {
  const { on, at, ...rest } = sketch
  const process = at ?? sketch.process
  const where = houseOrOutside(shop, process, on)
  if (where) return { task: { ...rest, ...where, cautions: cautions(sketch.process) } }
  if (process === 'crack-test')
    return { task: { ...rest, ...TO_FIND, cautions: cautions(process) }, finding: toFind(part, shop) }
  // The operation beside which it is done says so already.
  if (at !== undefined) return {}
  return {
    finding: {
      severity: 'error',
      code: 'route/no-place',
      message: `${sketch.name}: neither a machine of ${shop.name} nor a firm does "${process}"${on ? ` on the ${on}` : ''}`,
      at: placeOf(part, pathOf(part, process)),
      hint: `add the process to a machine or a firm of the shop file`,
    },
  }
}

/** Whoever is qualified: hardly any small works is. Common practice, no source. */
const TO_FIND = { place: 'outside', workCentre: 'a crack-testing firm' } as const

const toFind = (part: Part, { name }: Shop): Finding => ({
  severity: 'note',
  code: 'route/no-place',
  message: `Crack test: neither a machine of ${name} nor a firm does "crack-test"; planned at a firm that is still to be found`,
  at: placeOf(part, part.hardening?.path ?? ''),
  hint: 'give the firm in the shop file, or add crack-test to one that is there',
})

/** What of the part file asks for a process. */
function pathOf({ hardening, plating }: Part, process: Process): string {
  if (HARDENING_PROCESSES.has(process)) return hardening?.path ?? ''
  return process === 'plate' ? (plating?.path ?? '') : ''
}

/** The rules the part waives; a name that no rule has is told with the near one. */
function waived(part: Part) {
  const names = [
    ...ROUTE_RULES.map(({ name }) => name),
    ...NEED_RULE_NAMES,
    ...Object.values(PASS_RULES).map(({ name }) => name),
  ]
  const findings = part.waive.map((waiver): Finding => {
    const at = placeOf(part, waiver.path)
    return names.includes(waiver.rule)
      ? {
          severity: 'note',
          code: 'route/waived',
          message: `rule ${waiver.rule} is waived: ${waiver.because}`,
          at,
        }
      : {
          severity: 'error',
          code: 'route/unknown-rule',
          message: `no rule is called "${waiver.rule}"`,
          at,
          hint: suggestionOrList(waiver.rule, names, 'rules'),
        }
  })
  const rules = part.waive.flatMap(waiver => {
    const rule = ROUTE_RULES.find(({ name }) => name === waiver.rule)
    return rule ? [{ rule, waiver }] : []
  })
  return { findings, waived: rules }
}

const deadlock = (part: Part, unmet: readonly Wait[]): Finding => ({
  severity: 'error',
  code: 'route/cannot-order',
  message: `no order keeps ${[...new Set(unmet.map(({ rule }) => rule.name))].join(', ')} together`,
  at: placeOf(part, ''),
  hint: `waive one of them with a reason under waive:`,
})
