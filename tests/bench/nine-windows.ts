// All nine windows of a part planned, mapped and written to programs, once warm.
import { type NcProgram, ncPrograms } from '../../src/nc/nc-programs.ts'
import { readPart } from '../../src/part/read-part.ts'
import type { Measure, Picture } from '../../src/pictures/picture.ts'
import { drawPortMap } from '../../src/pictures/port-map.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { planPorts } from '../../src/ports/plan-ports.ts'
import { planRoute } from '../../src/route/plan-route.ts'
import type { Shop } from '../../src/shop/shop.ts'
import { planStock } from '../../src/stock/plan-stock.ts'

/** Seven ports, one of them bridged and one pair of pairs mirrored: nine windows. */
const PART = `part: {number: OX-098-29, title: Cylinder liner, revision: A, kind: liner}
engine: {stroke: 54, rod: 100, crown-below-top: 0.4, speed: 4200}
material: {grade: 42CrMo4, hardness: 300 HV, temper: 620}
body:
  length: 92 ±0.05
  outside: [{to: 4, size: 62 h9, name: flange}, {to: 92, size: 55 g6, Ra: 0.8, name: seat}]
  bore: {size: 48 H6, Ra: 0.3}
hardening: {process: gas nitriding, hardness: min 550 HV, depth: min 0.20}
ports:
  - {name: exhaust, at: 0, opens: 106, height: 16.1, width: 24, corner: 3, bridge: 4}
  - {name: front transfer, at: 55, mirror: true, opens: 121, height: 10.4, width: 9, corner: 2, up: 15, back: 20}
  - {name: middle transfer, at: 88, mirror: true, opens: 121, height: 10.4, width: 9, corner: 2, up: 10, back: 25}
  - {name: rear transfer, at: 122, mirror: true, opens: 121, height: 10.4, width: 9, corner: 2, up: 5, back: 20}
  - {name: boost, at: 180, opens: 123, height: 9.7, width: 10, corner: {cut: 1.5}, up: 40}
`

/** The work, ready to be timed: all its windows planned, a map of them and a program for every set-up. Throws where the part no longer has its nine. */
export function nineWindows(shop: Shop): () => { readonly map: Picture; readonly programs: readonly NcProgram[] } {
  const { part } = readPart(PART, 'nine.yaml')
  if (!part) throw new Error('the part does not read')
  const issue = { date: '2026-11-25', fingerprint: '000000000000', program: 'bench' }
  const { plan } = makePlan({ part, shop, batch: { number: '2631', quantity: 12 }, issue })
  const { asMilled } = planStock(part, shop, planRoute(part, shop).operations)
  if (!plan || !asMilled) throw new Error('the part does not plan')
  const measure: Measure = (text, size) => 0.5 * size * text.length
  return () => {
    const { ports } = planPorts(part, shop, asMilled)
    const windows = ports.flatMap(port => port.windows).length
    if (windows !== 9) throw new Error(`the part has ${windows} windows, not nine`)
    const fresh = { ...plan, ports }
    return { map: drawPortMap({ plan: fresh, kind: 'bore', width: 510, measure }), programs: ncPrograms(fresh) }
  }
}
