import type { Engine, Port } from '../part/part.ts'
import type { Millimetre } from '../units.ts'
import type { PlannedPort } from './port.ts'
import type { Crank } from './timing.ts'

/**
 * When the skirt's lower edge clears the inlet's floor on the way up and covers it again on the way down. Nothing where it
 * never does, or where the part does not say how long the skirt is. Source: derived, the crown's edge moved down by the skirt.
 */
export function inletTiming(
  engine: Engine | undefined,
  { role, name }: Port,
  floor: Millimetre,
  crank: Crank | undefined,
): Pick<PlannedPort, 'bySkirt'> {
  const bySkirt = role === 'inlet' && crank ? skirtTiming({ engine, name, floor, crank }) : undefined
  return bySkirt ? { bySkirt } : {}
}

/** The same for any depth of the floor. */
export function skirtTiming({
  engine,
  name,
  floor,
  crank,
}: {
  readonly engine: Engine | undefined
  readonly name: string
  readonly floor: Millimetre
  readonly crank: Crank
}): PlannedPort['bySkirt'] {
  if (engine?.skirt === undefined) return undefined
  // Where the crown's edge is when the skirt's edge is level with the floor.
  const crown = floor - engine.skirt
  const travel = crown - engine.crownBelowTop
  if (!(travel > 0 && travel < engine.stroke)) return undefined
  const about = { about: `${name}, by the skirt` }
  const [closesAfter, opensBefore] = [crank.opensAt(crown, about), 360 - crank.closesAt(crown, about)]
  return { opensBefore, closesAfter, duration: opensBefore + closesAfter }
}
