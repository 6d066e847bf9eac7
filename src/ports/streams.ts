import { exitAzimuth, meetingBehindAxis, meetingFraction } from '../handbook/loop-scavenging.ts'
import type { Degree, Millimetre } from '../units.ts'

/** Where the streams of a mirrored pair meet in plan. */
export type MeetingPoint = {
  /** Behind the axis, away from the exhaust; absent where the streams run side by side. */
  readonly behind?: Millimetre
  /** The same as a share of the bore, from the exhaust side. */
  readonly fraction?: number
  /** Where an unbroken stream reaches the wall. */
  readonly exit: Degree
}

export function meetingPoint(azimuth: Degree, back: Degree, radius: Millimetre): MeetingPoint {
  const exit = exitAzimuth.value({ phi: azimuth, psi: back })
  // Nearly parallel streams meet outside any bore.
  if (Math.abs(Math.sin(((azimuth - back) * Math.PI) / 180)) < 1e-9) return { exit }
  const behind = meetingBehindAxis.value({ r: radius, phi: azimuth, psi: back })
  return { exit, behind, fraction: meetingFraction.value({ r: radius, X_back: behind }) }
}
