import { type Origin, worked } from '../known.ts'

/** Where the figures of the case come from that its formulas hand to each other. */
export const TAKEN: Origin = worked('most taken off a surface')
export const ORDERED: Origin = worked('least of the depth ordered')
export const LEFT: Origin = worked('least of the case left')
/** Of the hardness depth: core and 50 HV, 550 HV, or a share of what is asked. */
export const END: Origin = worked('hardness at which the hardness depth ends')
