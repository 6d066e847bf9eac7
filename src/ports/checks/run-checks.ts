import { bandAt, nearestBandAt } from '../../band.ts'
import type { Finding } from '../../finding.ts'
import type { Part } from '../../part/part.ts'
import type { Shop } from '../../shop/shop.ts'
import type { AsMilled } from '../../stock/stock.ts'
import { degrees, radians } from '../../units.ts'
import { diameterOf } from '../../wall.ts'
import type { GasExchange } from '../gas-exchange.ts'
import type { EdgePoint, PlannedPort, PortWindow } from '../port.ts'
import { portFinding } from '../port-finding.ts'
import { portLimit } from '../port-limit.ts'
import { PORT_CHECKS } from './all-checks.ts'
import { drillClearance, holderClearance } from './holder-clearance.ts'
import { boxed } from './land-between.ts'
import type { CheckedPort, CheckFault, PortCheck, Ported } from './port-check.ts'

/** Every rule about ports, tried on the ports as planned. A rule that the part waives is kept as a note with the reason. */
export function runChecks({
  part,
  shop,
  asMilled,
  ports,
  gasExchange,
}: {
  readonly part: Part
  readonly shop: Pick<Shop, 'portChecks' | 'set'>
  readonly asMilled: AsMilled
  readonly ports: readonly CheckedPort[]
  readonly gasExchange: GasExchange | undefined
}): readonly Finding[] {
  const ported = { ...portedOf(part, asMilled, ports), ...(gasExchange && { gasExchange }) }
  return PORT_CHECKS.flatMap(check => {
    const limit = (threshold: string): number => portLimit(shop, check.name, threshold)
    return check.test(ported, limit).map(fault => findingOf(part, check, asMeasured(shop, check, fault)))
  })
}

/** The drills of the windows that are drilled, by the ports as the set-ups cut them. */
export function checkDrills(
  part: Part,
  shop: Pick<Shop, 'portChecks' | 'set'>,
  planned: readonly PlannedPort[],
): readonly Finding[] {
  const ports = planned.flatMap(planned => {
    const port = part.ports.find(({ name, at }) => name === planned.name && at === planned.at)
    return port ? [{ port, planned }] : []
  })
  const limit = (threshold: string): number => portLimit(shop, holderClearance.name, threshold)
  return drillClearance({ ports }, limit).map(fault =>
    findingOf(part, holderClearance, asMeasured(shop, holderClearance, fault)),
  )
}

/** What strikes a fixture that nobody has measured stops no plan: no program is written before it is. */
const asMeasured = ({ set }: Pick<Shop, 'set'>, { name }: PortCheck, fault: CheckFault): CheckFault =>
  name !== holderClearance.name || set.has('/fixture') ? fault : { ...fault, severity: 'warning' }

function findingOf(part: Part, check: PortCheck, fault: CheckFault): Finding {
  const waiver = part.waive.find(({ rule }) => rule === check.name)
  const reason = `${check.because} (${check.source})`
  return portFinding(part, fault.port, {
    code: check.code,
    severity: waiver ? 'note' : (fault.severity ?? check.severity),
    message: waiver ? `${fault.message}; waived: ${waiver.because}` : fault.message,
    hint: fault.hint === undefined ? reason : `${fault.hint}; ${reason}`,
    ...(fault.key === undefined ? {} : { key: fault.key }),
  })
}

/** Each point of the outline goes through the wall along the stream: half-way from the bore to the outside. */
function halfWay({ outline, walls }: PortWindow): readonly EdgePoint[] {
  if (!walls) return outline.finished
  return outline.finished.flatMap((inner, index) => {
    const outer = outline.outside[index]
    if (!outer) return []
    const [phi, psi] = [radians(inner.azimuth), radians(outer.azimuth)]
    const x = walls.finished * Math.cos(phi) + walls.outside * Math.cos(psi)
    const y = walls.finished * Math.sin(phi) + walls.outside * Math.sin(psi)
    return [{ azimuth: degrees(Math.atan2(y, x)), depth: (inner.depth + outer.depth) / 2 }]
  })
}

function portedOf(part: Part, asMilled: AsMilled, ports: readonly CheckedPort[]): Ported {
  const middle = (port: PlannedPort): number => (port.top + port.bottom) / 2
  const first = ports[0]
  const depth = first ? middle(first.planned) : 0
  const bore = nearestBandAt(part.bore, depth)
  return {
    part,
    ports,
    windows: ports.flatMap(({ port, planned }) =>
      planned.windows.map(window => ({
        port,
        planned,
        window,
        onBore: boxed(window.outline.finished),
        onMiddle: boxed(halfWay(window)),
        onOutside: boxed(window.outline.outside),
      })),
    ),
    radius: (bore?.size.nominal ?? 0) / 2,
    outside: port => {
      const band = bandAt(part.outside, middle(port)) ?? bandAt(asMilled.shape.outside, middle(port))
      return band ? diameterOf(band) / 2 : 0
    },
  }
}
