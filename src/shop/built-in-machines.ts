import type { Fixture, Machine } from './shop.ts'

/**
 * The machines of a small works, which sends bores out to be ground and honed. Set-up and handling are starting values: a small lathe is set up in 30 to 90 min and
 * loaded in 0.5 to 1.5 min (common practice, no source).
 */
export const BUILT_IN_MACHINES: readonly Machine[] = [
  // Common practice, no source: a bandsaw cuts a 65 mm bar unattended, so handling is the lift to the stop.
  { workCentre: 'saw', name: 'bandsaw', processes: ['saw'], power: 1.5, setup: 10, handling: 0.5 },
  // Common practice, no source: a 200 mm chuck lathe.
  {
    workCentre: 'lathe',
    name: 'CNC lathe',
    processes: ['turn', 'drill'],
    speedLimit: 4000,
    power: 11,
    setup: 45,
    handling: 1.5,
  },
  // Common practice, no source: small cutters want speed, so 12 000 rpm; the power is that of a light four-axis mill.
  {
    workCentre: 'mill',
    name: 'four-axis mill with tilted rotary',
    processes: ['mill', 'drill'],
    speedLimit: 12000,
    power: 5.5,
    setup: 60,
    handling: 3,
  },
  // Common practice, no source: the spindle turns a 350 mm wheel at 33 m/s, 1800 rpm.
  {
    workCentre: 'cylindrical grinder',
    name: 'cylindrical grinder',
    processes: ['grind'],
    speedLimit: 1900,
    power: 5.5,
    setup: 45,
    handling: 2,
  },
  // Common practice, no source.
  { workCentre: 'bench', name: 'bench', processes: ['deburr', 'mark'], setup: 5, handling: 1 },
  { workCentre: 'inspection bench', name: 'inspection bench', processes: ['inspect'], setup: 15, handling: 2 },
]

/** Invented: the tilted rotary of the demo works. A works must measure its own before a port is milled. */
export const BUILT_IN_FIXTURE: Fixture = {
  headFaces: '+X',
  faceDistance: 80,
  pivotHeight: 50,
  positiveRotary: 'Y to Z',
  positiveTilt: 'Z to X',
  rotaryLimits: [-360, 360],
  tiltLimits: [-10, 60],
  // Common practice, no source: sine bars are 100, 127 (5 in), 200; edge finders and probes end in a ball of 4 to 10.
  sineBar: 100,
  ball: 6,
  // Common practice, no source: a slim collet holder for shanks to 6 mm, and a collet chuck for liners of about 55.
  holder: { diameter: 16, length: 60, spindleDiameter: 50 },
  chuck: { diameter: 68, length: 40 },
}
