import type { Contour } from '../../src/ports/contour.ts'
import { roundedRectangle } from '../../src/ports/contour.ts'
import { type CutFrame, cutFrame } from '../../src/ports/cut-frame.ts'
import { radians } from '../../src/units.ts'

/** A plain slot about a point of the finished bore. */
export type Slot = {
  readonly r: number
  readonly R: number
  readonly phi: number
  readonly psi: number
  readonly beta: number
  readonly W: number
  readonly H: number
  readonly rho: number
  readonly z: number
}

export function slotOf({ r, phi, psi, beta, W, H, rho, z }: Slot): {
  frame: CutFrame
  m: number
  b: number
  contour: Contour
} {
  const frame = cutFrame(phi, psi, beta)
  const m = r * Math.sin(radians(psi))
  const b = frame.sin * r * Math.cos(radians(psi)) + frame.cos * z
  const contour: Contour = roundedRectangle({ l: m - W / 2, b: b - H / 2 }, { l: m + W / 2, b: b + H / 2 }, rho)
  return { frame, m, b, contour }
}

export const G1: Slot = { r: 10, R: 12.5, phi: 0, psi: 0, beta: 0, W: 8, H: 5, rho: 1.5, z: -16 }
export const G2: Slot = { r: 10, R: 12.5, phi: 180, psi: 0, beta: 50, W: 5, H: 3, rho: 1, z: -18.5 }
export const G3: Slot = { r: 10, R: 12.5, phi: 72, psi: 25, beta: 10, W: 6, H: 3.6, rho: 1, z: -18 }
export const G4: Slot = { ...G3, phi: -72, psi: -25 }
export const G5: Slot = { r: 12, R: 15, phi: 70, psi: 35, beta: 15, W: 6.5, H: 4, rho: 1.25, z: -18.5 }
export const G6: Slot = { r: 12, R: 15, phi: 0, psi: 0, beta: -8, W: 14, H: 6, rho: 2, z: -16 }
export const G7: Slot = { r: 33, R: 38, phi: 60, psi: 40, beta: 18, W: 18, H: 12, rho: 3, z: -46 }
export const G8: Slot = { r: 12, R: 15, phi: 130, psi: -20, beta: 25, W: 5, H: 4, rho: 2, z: -19 }

// Every contour point sent along the stream as a ray and met with the cylinders by the quadratic, separately.
// Two arcs and a wall of that table were rounded twice: they are 6.84655, 25.66450 and 3.47705.
export type SlotWindow = {
  readonly slot: Slot
  readonly m: number
  readonly ds: number
  readonly phiOut: number
  readonly zOut: number
  readonly wall: number
  readonly high: number
  readonly at: number
  readonly low: number
  readonly sides: readonly [number, number]
  readonly arc: number
  readonly chord: number
}

export const WINDOWS: readonly SlotWindow[] = [
  {
    slot: G1,
    m: 0,
    ds: 2.5,
    phiOut: 0,
    zOut: -16.0,
    wall: 2.5,
    high: -13.5,
    at: 0,
    low: -18.5,
    sides: [-23.578, 23.578],
    arc: 8.2303,
    chord: 8.0,
  },
  {
    slot: G2,
    m: 0,
    ds: 2.5,
    phiOut: 180,
    zOut: -21.479,
    wall: 3.8893,
    high: -16.02,
    at: 180 - 9.3531,
    low: -20.834,
    sides: [165.52, 194.48],
    arc: 5.0536,
    chord: 5.0,
  },
  {
    slot: G3,
    m: 4.2262,
    ds: 2.7008,
    phiOut: 66.761,
    zOut: -18.476,
    wall: 2.7425,
    high: -15.944,
    at: 86.555,
    low: -19.95,
    sides: [54.043, 93.271],
    arc: 6.8465,
    chord: 6.7136,
  },
  {
    slot: G4,
    m: -4.2262,
    ds: 2.7008,
    phiOut: -66.761,
    zOut: -18.476,
    wall: 2.7425,
    high: -15.944,
    at: -86.555,
    low: -19.95,
    sides: [-93.271, -54.043],
    arc: 6.8465,
    chord: 6.7136,
  },
  {
    slot: G5,
    m: 6.8829,
    ds: 3.4978,
    phiOut: 62.314,
    zOut: -19.437,
    wall: 3.6212,
    high: -15.901,
    at: 85.482,
    low: -20.882,
    sides: [52.622, 92.609],
    arc: 8.3747,
    chord: 8.2058,
  },
  {
    slot: G6,
    m: 0,
    ds: 3.0,
    phiOut: 0,
    zOut: -15.578,
    wall: 3.0295,
    high: -12.971,
    at: 0,
    low: -19.187,
    sides: [-35.685, 35.685],
    arc: 14.948,
    chord: 14.0,
  },
  {
    slot: G7,
    m: 21.212,
    ds: 6.2491,
    phiOut: 53.932,
    zOut: -48.03,
    wall: 6.5707,
    high: -37.184,
    at: 80.201,
    low: -53.649,
    sides: [41.719, 86.279],
    arc: 25.664,
    chord: 25.023,
  },
  {
    slot: G8,
    m: -4.1042,
    ds: 3.1513,
    phiOut: 134.12,
    zOut: -20.469,
    wall: 3.477,
    high: -16.665,
    at: 125.46,
    low: -21.304,
    sides: [116.61, 142.32],
    arc: 5.3844,
    chord: 5.3393,
  },
]
