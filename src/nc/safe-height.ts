import { heightUnder } from '../ports/height-under.ts'
import { roundBodies } from '../ports/held-cutter.ts'
import type { Shop } from '../shop/shop.ts'
import type { AsMilled } from '../stock/stock.ts'
import type { Degree, Millimetre } from '../units.ts'

const CLEARANCE: Millimetre = 5
const EVERYWHERE = { x: [-1e6, 1e6], y: [0, 0] } as const

/** Machine Z above everything of the blank and the chuck at a tilt, whatever the rotary stands at. */
export function safeHeight(
  fixture: Shop['fixture'],
  asMilled: AsMilled,
  chuckFace: Millimetre,
  tilt: Degree,
): Millimetre {
  const heights = roundBodies(fixture, asMilled, chuckFace).map(body =>
    heightUnder({ fixture, tilt, body, swept: EVERYWHERE, tool: 0 }),
  )
  return Math.max(...heights) + CLEARANCE
}
