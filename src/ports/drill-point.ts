import type { Millimetre } from '../units.ts'

/** Half the point angle of a drill for entry holes. Common practice, no source: 140°. */
const HALF_POINT = (70 * Math.PI) / 180

/** How far a drill's point goes ahead of its full diameter. */
export const pointOf = (diameter: Millimetre): Millimetre => diameter / 2 / Math.tan(HALF_POINT)
