import type { AsMilled } from '../../../src/stock/stock.ts'
import { type Programmed, programsOf, SHOP } from './at-the-door.ts'
import { expectProved } from './compare.ts'
import { prove } from './prove.ts'
import { standOf } from './stand-clear.ts'

/** Runs the programs that the command writes for a part on a solid blank, bores it to size and measures every window. */
export async function expectPartProved(
  part: string,
  finished: number,
  shop: string = SHOP,
): Promise<Programmed | undefined> {
  const programmed = await programsOf(part, shop)
  if (!programmed) return undefined
  const { plan, programs } = programmed
  const asMilled = asMilledOf(programmed)
  const stand = standOf(shop, plan, asMilled)
  expectProved(prove(programs, plan.ports, asMilled, finished, stand), plan.ports, finished / 2, shiftOf(programmed))
  return programmed
}

/**
 * How much higher a port is milled than it ends: hardening moves metal away from mid length, by the stretch times its distance
 * from there.
 */
function shiftOf({ plan }: Programmed): (top: number) => number {
  const { lower, upper } = plan.axial?.stretch?.limits ?? { lower: 0, upper: 0 }
  const finished = plan.operations.at(-1)?.shape
  const middle = finished ? (finished.top + finished.bottom) / 2 : 0
  return top => ((lower + upper) / 2) * (top - middle)
}

function asMilledOf({ plan }: Programmed): AsMilled {
  const shape = plan.operations.find(({ number }) => number === plan.setUps[0]?.operation)?.shape
  if (!shape) throw new Error('the plan mills nothing')
  return { boreDiameter: shape.bore[0]?.diameter ?? 0, shape, topStock: -shape.top }
}
