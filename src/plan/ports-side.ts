import type { BatchRequest } from '../batch/batch.ts'
import { byPlace, type Finding } from '../finding.ts'
import type { Part } from '../part/part.ts'
import { planPorts } from '../ports/plan-ports.ts'
import type { Shop } from '../shop/shop.ts'
import { beginPlan } from './begin-plan.ts'
import type { Plan } from './plan.ts'

/** What the ports are judged on: the Plan as far as no operation's time, gauge or paper is needed. */
export type PortsSide = Pick<Plan, 'part' | 'batch' | 'ports' | 'fixture' | 'gasExchange' | 'findings'>

/** The ports alone, for who asks nothing else, with the findings of the rooms that the plan went through. */
export function planPortsSide(
  part: Part,
  shop: Shop,
  request: BatchRequest,
): { readonly plan?: PortsSide; readonly findings: readonly Finding[] } {
  const { rooms, findings: begun } = beginPlan(part, shop, request)
  if (!rooms?.stock.asMilled) return { findings: begun }
  const { ports, fixture, gasExchange, findings: found } = planPorts(part, rooms.shop, rooms.stock.asMilled)
  const findings = byPlace([...begun, ...found])
  const { number, title, revision, kind } = part
  return {
    findings,
    plan: {
      part: { number, title, revision, kind },
      batch: rooms.batch.batch,
      ports,
      ...(fixture && { fixture }),
      ...(gasExchange && { gasExchange }),
      findings,
    },
  }
}
