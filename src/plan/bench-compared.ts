import { nearestBandAt } from '../band.ts'
import type { Finding } from '../finding.ts'
import type { Part } from '../part/part.ts'
import { isExhaust } from '../part/port-role.ts'
import type { Bench } from '../part/read-bench.ts'
import { suggestionOrList } from '../part/suggestion.ts'
import type { PlannedPort } from '../ports/port.ts'
import { type BenchPortHeld, type Held, held, portHeld } from '../ports/port-held.ts'
import type { PortsSide } from './ports-side.ts'

export type BenchHeld = {
  readonly bore?: Held
  readonly crownBelowTop?: Held
  readonly ports: readonly BenchPortHeld[]
  /** Crank degrees from the first exhaust to the first transfer, where both were measured. */
  readonly blowdown?: Held
  readonly findings: readonly Finding[]
}

/** A liner measured on the bench, held against the plan in mm and crank degrees. */
export function benchHeld(bench: Bench, part: Part, plan: Pick<PortsSide, 'ports' | 'gasExchange'>): BenchHeld {
  const boreAt = (port?: PlannedPort): number => nearestBandAt(part.bore, port?.top ?? 0)?.size.nominal ?? 0
  const engine = part.engine && {
    ...part.engine,
    ...(bench.crownBelowTop !== undefined && { crownBelowTop: bench.crownBelowTop }),
  }
  const pairs = bench.ports.map(measured => ({
    measured,
    planned: plan.ports.find(({ name }) => name === measured.name),
  }))
  const ports = pairs.flatMap(({ measured, planned }) =>
    planned ? [portHeld(measured, planned, bench.bore ?? boreAt(planned), engine)] : [],
  )
  const first = (wanted: (port: PlannedPort) => boolean): number =>
    Math.min(
      ...ports.flatMap(({ name, opens }) =>
        plan.ports.some(port => port.name === name && wanted(port)) && opens ? [opens.measured] : [],
      ),
    )
  const [exhaust, transfer] = [first(({ role }) => isExhaust(role)), first(({ role }) => role === 'transfer')]
  const blowdown = plan.gasExchange?.blowdown
  const names = plan.ports.map(({ name }) => name)
  return {
    ...(bench.bore !== undefined && { bore: held(boreAt(plan.ports[0]), bench.bore) }),
    ...(bench.crownBelowTop !== undefined &&
      part.engine && { crownBelowTop: held(part.engine.crownBelowTop, bench.crownBelowTop) }),
    ports,
    ...(blowdown && Number.isFinite(transfer - exhaust) && { blowdown: held(blowdown.angle, transfer - exhaust) }),
    findings: pairs.flatMap(({ measured: { name, place }, planned }) =>
      planned
        ? []
        : [
            {
              code: 'input/port',
              severity: 'error',
              message: `the part has no port ${name}`,
              at: place,
              hint: suggestionOrList(name, names, 'ports'),
            },
          ],
    ),
  }
}
