import type { Degree } from './units.ts'

/**
 * Where an azimuth stands on a clock face seen from the head, azimuth 0 at 12: azimuth counts counter-clockwise, so 90 is
 * 9 o'clock. To the minute, which is half a degree.
 */
export function clockPosition(azimuth: Degree): string {
  const minutes = (((Math.round(-azimuth * 2) % 720) + 720) % 720) + 0
  const [hour, minute] = [Math.floor(minutes / 60), minutes % 60]
  return `${hour === 0 ? 12 : hour}:${String(minute).padStart(2, '0')}`
}
