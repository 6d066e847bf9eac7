import type { Shop } from '../../shop/shop.ts'
import type { AsMilled } from '../../stock/stock.ts'
import type { Degree, Millimetre } from '../../units.ts'
import { toMachine } from '../fixture-setting.ts'

const CLEARANCE: Millimetre = 5

/** Machine Z above everything of the blank at a tilt, whatever the rotary stands at. */
export function safeHeight(fixture: Shop['fixture'], { shape, topStock }: AsMilled, tilt: Degree): Millimetre {
  const stand = { tilt, rotary: 0 }
  const corners = shape.outside.flatMap(({ from, to, diameter }) =>
    [from, to].map(depth => toMachine(fixture, stand, [diameter / 2, 0, -(depth + topStock)])[2]),
  )
  const top = shape.outside.map(({ diameter }) => toMachine(fixture, stand, [diameter / 2, 0, 0])[2])
  return Math.max(...corners, ...top) + CLEARANCE
}
