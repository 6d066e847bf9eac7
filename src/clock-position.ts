import type { Degree } from './units.ts'

/** Half an hour on a clock face. */
const HALF_HOUR: Degree = 15
/** What an eye takes for the hour or the half itself. */
const BY_EYE: Degree = 1

/**
 * Where an azimuth stands on a clock face seen from the head, azimuth 0 at 12, as it is said on the floor: "6 o’clock", "half
 * past 2", "about half past 2". Azimuth counts counter-clockwise, so 90 is 9 o’clock. To find it again, not to set it: what a
 * rotary is turned to is printed in degrees.
 */
export function clockPosition(azimuth: Degree): string {
  const turn = ((-azimuth % 360) + 360) % 360
  const halves = Math.round(turn / HALF_HOUR)
  const hour = Math.floor((halves % 24) / 2) || 12
  const said = halves % 2 === 0 ? `${hour} o’clock` : `half past ${hour}`
  return Math.abs(turn - halves * HALF_HOUR) <= BY_EYE ? said : `about ${said}`
}
