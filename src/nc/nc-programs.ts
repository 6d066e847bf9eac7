import { unmeasuredPlaces } from '../ports/fixture-plan.ts'
import { Refusal } from '../refusal.ts'
import type { AsMilled } from '../stock/stock.ts'
import type { Degree, Millimetre } from '../units.ts'
import type { Programmed } from './programmed.ts'
import { writeProgram } from './write-program.ts'

export type NcProgram = { readonly name: string; readonly text: string }

/** A program of ISO 6983 for every set-up of the Plan, in the order of cutting. */
export function ncPrograms(plan: Programmed): readonly NcProgram[] {
  const { fixture } = plan.shop
  if (!fixture || plan.setUps.length === 0) return []
  const missing = plan.fixture ? unmeasuredPlaces(plan.fixture) : []
  if (missing.length > 0) {
    throw new Refusal(
      `${plan.part.number}: no program is written on a fixture that nobody measured: give ${missing.join(', ')} under fixture: in the shop file`,
    )
  }
  return plan.setUps.map(setUp => {
    const asMilled = asMilledOf(plan, setUp.operation)
    const safe = acrossOf(plan, setUp.tilt)
    return { name: setUp.program, text: writeProgram({ plan, fixture, setUp, asMilled, safe }) }
  })
}

function acrossOf({ fixture }: Programmed, tilt: Degree): Millimetre {
  const set = fixture?.tilts.find(known => known.tilt === tilt)
  if (!set) throw new Error(`a set-up is tilted by ${tilt}, which the plan does not set`)
  return set.across
}

function asMilledOf({ operations }: Programmed, number: number): AsMilled {
  const shape = operations.find(operation => operation.number === number)?.shape
  if (!shape) throw new Error(`a set-up belongs to operation ${number}, which the plan does not have`)
  return { boreDiameter: shape.bore[0]?.diameter ?? 0, shape, topStock: -shape.top }
}
