import { type PortsSide, planPortsSide } from '../plan/ports-side.ts'
import { ports } from './ports.ts'
import { portsCompared } from './ports-compared.ts'
import type { Room } from './side-by-side.ts'

/** The ports as a what-if asks them. */
export const PORTS: Room<PortsSide> = {
  make: (part, shop, { request }) => planPortsSide(part, shop, request),
  view: ports,
  compared: portsCompared,
}
