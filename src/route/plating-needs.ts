import { BAKED_FROM } from '../handbook/hydrogen-bake.ts'
import { isSteel } from '../handbook/materials.ts'
import { type Plating, platingOf } from '../handbook/plating.ts'
import type { Part, PartPlating } from '../part/part.ts'

/** Names that `waive:` may give for the two heats of a plated part. */
export const PLATING_HEATS = ['stress-relieved-for-plating', 'baked-for-hydrogen'] as const

/**
 * Steel of 1000 MPa or more, which is 300 HV, and any hardened part is relieved before plating and baked after it. Where the
 * hardness of the steel is not known, it is taken for strong.
 *
 * Source: ASTM B849 and B850, ISO 9587.
 */
export const takesHydrogen = ({ material: { grade, hardness }, hardening }: Part): boolean =>
  isSteel(grade) && (hardening !== undefined || (hardness ?? BAKED_FROM) >= BAKED_FROM)

/** What the edges are broken to before plating: the drawing's chamfer, or the usual one. */
export function chamferOf({ process, chamfer }: PartPlating): Plating['portChamfer'] | undefined {
  return chamfer === undefined ? platingOf(process)?.portChamfer : { least: chamfer, most: chamfer }
}

/** What is stopped off: every surface but the plated one, the end faces among them. */
export const maskedIn = (part: Part, { surface }: PartPlating): readonly string[] => [
  ...part.outside.map(({ name }) => name),
  ...part.bore.map(({ name }) => name).filter(name => name !== surface),
  'top',
  'bottom',
]

/** Whether one of the two heats is part of the route. */
export const heatWanted = (part: Part, heat: (typeof PLATING_HEATS)[number]): boolean =>
  part.plating !== undefined && takesHydrogen(part) && !part.waive.some(({ rule }) => rule === heat)
