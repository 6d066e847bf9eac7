import type { Finding } from '../finding.ts'
import { checkFeatures } from './check-features.ts'
import { checkGrooves } from './check-grooves.ts'
import { checkNames } from './check-names.ts'
import { checkPiston } from './check-piston.ts'
import { checkPlatedBore } from './check-plated-bore.ts'
import { checkPlausible } from './check-plausible.ts'
import { checkPortExtents } from './check-port-extents.ts'
import { checkWalls } from './check-walls.ts'
import { type Part, placeOf } from './part.ts'
import type { PartFault } from './part-fault.ts'

/** What must hold between the values of a part. Each check is on its own; a new one is a file and a line here. */
const CHECKS: readonly ((part: Part) => readonly PartFault[])[] = [
  checkNames,
  checkWalls,
  checkGrooves,
  checkFeatures,
  checkPiston,
  checkPortExtents,
  checkPlatedBore,
  checkPlausible,
]

export const checkPart = (part: Part): readonly Finding[] =>
  CHECKS.flatMap(check => check(part)).map(({ path, severity = 'error', ...fault }) => ({
    ...fault,
    severity,
    at: placeOf(part, path),
  }))
