import { cuttingDataOf } from '../../../src/nc/cutting-data.ts'
import { type NcProgram, ncProgramsFor } from '../../../src/nc/nc-programs.ts'
import { planPorts } from '../../../src/ports/plan-ports.ts'
import type { PlannedPort } from '../../../src/ports/port.ts'
import type { Fixture } from '../../../src/shop/shop.ts'
import { type Asked, linerOf, milledAt, shopWith } from '../liner.ts'
import { type Proof, prove } from './prove.ts'

export type Proved = {
  readonly programs: readonly NcProgram[]
  readonly ports: readonly PlannedPort[]
  readonly proof: Proof
}

/** Plans ports of a 48 mm bore, writes their programs and proves them; nothing where the plan finds that they cannot be. */
export function provePorts(
  asked: readonly Asked[],
  fixture: Partial<Fixture> = {},
  topStock = 0.2,
  slug: 'cleared' | 'kept' = 'cleared',
): Proved | undefined {
  const shop = shopWith(fixture)
  const asMilled = milledAt(47.8, 55.2, topStock)
  const { ports, findings } = planPorts(linerOf(asked), shop, asMilled)
  if (findings.some(({ severity }) => severity === 'error')) return undefined
  const programs = ncProgramsFor({
    part: { number: 'T-1', revision: 'A' },
    ports,
    shop,
    asMilled,
    fingerprint: 'none',
    slug,
    data: (tool, diameter) => ({ ...cuttingDataOf([], tool, diameter, undefined), depth: 0.5 }),
  })
  return { programs, ports, proof: prove(programs, ports, asMilled, 48) }
}
