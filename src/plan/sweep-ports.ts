import type { BatchRequest } from '../batch/batch.ts'
import { type Finding, hasErrors } from '../finding.ts'
import type { Part } from '../part/part.ts'
import type { GasExchange } from '../ports/gas-exchange.ts'
import type { PlannedPort } from '../ports/port.ts'
import { type PortsSide, planPortsSide } from './ports-side.ts'
import type { Changed } from './sweep.ts'

export type PortsPoint = {
  readonly value: number
  readonly ports: readonly Pick<
    PlannedPort,
    'name' | 'role' | 'opens' | 'closes' | 'duration' | 'top' | 'bottom' | 'area'
  >[]
  readonly blowdown?: GasExchange['blowdown']
  readonly trappedRatio?: number
  readonly areas: readonly Omit<GasExchange['areas'][number], 'uncovered'>[]
  readonly together: GasExchange['together']
  /** Nothing in the plan of the ports is an error. */
  readonly serves: boolean
  readonly findings: readonly Finding[]
}

/** Plans the ports anew at every value; `held` may keep what has been cut where it is. */
export function planPortsSweep(
  values: readonly number[],
  changedTo: (value: number) => Changed,
  request: BatchRequest,
  held: (part: Part) => Part,
): readonly PortsPoint[] {
  return values.map((value): PortsPoint => {
    const changed = changedTo(value)
    const { plan, findings }: { readonly plan?: PortsSide; readonly findings: readonly Finding[] } =
      'findings' in changed ? changed : planPortsSide(held(changed.part), changed.shop, request)
    const { ports, gasExchange } = plan ?? { ports: [] }
    return {
      value,
      ports: ports.map(({ name, role, opens, closes, duration, top, bottom, area }) => ({
        name,
        role,
        top,
        bottom,
        area,
        ...(opens !== undefined && { opens }),
        ...(closes !== undefined && { closes }),
        ...(duration !== undefined && { duration }),
      })),
      ...(gasExchange?.blowdown && { blowdown: gasExchange.blowdown }),
      ...(gasExchange?.trappedRatio !== undefined && { trappedRatio: gasExchange.trappedRatio }),
      areas: (gasExchange?.areas ?? []).map(({ uncovered: _, ...area }) => area),
      together: gasExchange?.together ?? [],
      serves: !hasErrors(findings),
      findings,
    }
  })
}
