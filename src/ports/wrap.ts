import type { Shape } from '../shape.ts'
import type { Millimetre } from '../units.ts'
import type { PlannedPort } from './port.ts'

/** Where the upper edge of a paper stands that is wrapped round the outside to check the ports by. */
export type Wrap = {
  /** Depth from the finished top face. */
  readonly from: Millimetre
  /** Below the top face as it then stands: 0 where the paper is level with it, else the underside of a flange. */
  readonly below: Millimetre
}

/** As high as a larger band above the ports, as a flange, lets the paper lie flat. */
export function wrapOf(ports: readonly PlannedPort[], { outside, top }: Shape): Wrap {
  const highest = Math.min(...ports.map(port => port.top))
  const radius = Math.min(...ports.flatMap(({ windows }) => windows.map(({ walls }) => walls.outside)))
  const above = outside.filter(({ to, diameter }) => to <= highest && diameter / 2 > radius + 1e-9)
  const from = Math.max(top, ...above.map(({ to }) => to))
  return { from, below: from - top }
}
