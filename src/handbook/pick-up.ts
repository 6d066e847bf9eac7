import { type Formula, formula, type Input } from '../formula.ts'

/**
 * Picking up a part in the tilted rotary, and what a small error of the setting does to a port edge. Axes by ISO 841, tilt
 * about +Y (Z toward X) through the pivot, which is the origin.
 */
const tilt: Input<'deg'> = { meaning: 'tilt', unit: 'deg', over: -90, under: 90 }
const H: Input<'mm'> = { meaning: 'pivot-height of the fixture', unit: 'mm' }
const R: Input<'mm'> = { meaning: 'radius of the outside that is touched', unit: 'mm', over: 0 }
const rho: Input<'mm'> = { meaning: 'radius of the ball that touches', unit: 'mm', from: 0 }
const X: Input<'mm'> = { meaning: 'X of the ball', unit: 'mm' }

const SOURCE = 'derived: homogeneous transforms, axes by ISO 841'
const rad = (degree: number): number => (degree * Math.PI) / 180

export const crownHeight: Formula<{ H: 'mm'; R: 'mm'; rho: 'mm'; X: 'mm'; tilt: 'deg' }, 'mm'> = formula({
  symbol: 'Z',
  meaning: 'Z of the tip of a ball on the highest line of the outside',
  unit: 'mm',
  expression: '(H + R + rho) / cos(tilt * pi / 180) - X * tan(tilt * pi / 180) - rho',
  inputs: { H, R, rho, X, tilt },
  source: SOURCE,
  example: { given: { H: 50, R: 27.5, rho: 3, X: 40, tilt: 15 }, gives: 69.622 },
  value: ({ H, R, rho, X, tilt }) => (H + R + rho) / Math.cos(rad(tilt)) - X * Math.tan(rad(tilt)) - rho,
})

export const crownFall: Formula<{ dX: 'mm'; tilt: 'deg' }, 'mm'> = formula({
  symbol: 'dZ',
  meaning: 'what an indicator on the highest line of the outside reads after a move in +X',
  unit: 'mm',
  expression: '-dX * tan(tilt * pi / 180)',
  inputs: { dX: { meaning: 'move in X', unit: 'mm' }, tilt },
  source: SOURCE,
  example: { given: { dX: 40, tilt: 15 }, gives: -10.718 },
  value: ({ dX, tilt }) => -dX * Math.tan(rad(tilt)),
})

/**
 * A ball fixed to the plate reads X1, Z1 at zero tilt and X2, Z2 at a tilt: the pivot stands at
 * X = (X1 + X2)/2 + k (Z2 - Z1), Z = (Z1 + Z2)/2 - k (X2 - X1), since the pivot lies on the upright bisector of the way.
 */
export const pivotFactor: Formula<{ tilt: 'deg' }, ''> = formula({
  symbol: 'k',
  meaning: 'how far the pivot lies off the middle of the way of a ball, for each mm of that way',
  unit: '',
  expression: '1 / (2 * tan(tilt * pi / 360))',
  inputs: { tilt: { meaning: 'tilt between the two readings', unit: 'deg', over: -180, under: 180 } },
  source: SOURCE,
  example: { given: { tilt: 50 }, gives: 1.0723 },
  value: ({ tilt }) => 1 / (2 * Math.tan(rad(tilt) / 2)),
})

const beta: Input<'deg'> = { meaning: 'rise of the stream, which the tilt is', unit: 'deg', over: -90, under: 90 }

export const edgePerX: Formula<{ dX: 'mm'; beta: 'deg' }, 'mm'> = formula({
  symbol: 'dh',
  meaning: 'shift of top and bottom edge along the bore',
  unit: 'mm',
  expression: 'dX / cos(beta * pi / 180)',
  inputs: { dX: { meaning: 'error in X', unit: 'mm' }, beta },
  source: SOURCE,
  example: { given: { dX: 0.05, beta: 10 }, gives: 0.0508 },
  value: ({ dX, beta }) => dX / Math.cos(rad(beta)),
})

export const xPerTilt: Formula<{ Z: 'mm'; dtilt: 'deg' }, 'mm'> = formula({
  symbol: 'dX',
  meaning: 'error in X by an error of the tilt, where X is not picked up again',
  unit: 'mm',
  expression: 'Z * dtilt * pi / 180',
  inputs: {
    Z: { meaning: "Z of the window's centre, from the pivot", unit: 'mm' },
    dtilt: { meaning: 'error of the tilt', unit: 'deg' },
  },
  source: SOURCE,
  example: { given: { Z: 85.89962, dtilt: 0.01 }, gives: 0.01499 },
  value: ({ Z, dtilt }) => Z * rad(dtilt),
})

export const sidePerRotary: Formula<{ r: 'mm'; dA: 'deg' }, 'mm'> = formula({
  symbol: 'dl',
  meaning: 'shift of the side edges round the bore; top and bottom stay',
  unit: 'mm',
  expression: 'r * dA * pi / 180',
  inputs: {
    r: { meaning: 'radius of the finished bore', unit: 'mm', over: 0 },
    dA: { meaning: 'error of the rotary, or of the azimuth 0', unit: 'deg' },
  },
  source: SOURCE,
  example: { given: { r: 24, dA: 0.1 }, gives: 0.0419 },
  value: ({ r, dA }) => r * rad(dA),
})

export const tiltPerStack: Formula<{ e: 'mm'; l: 'mm'; tilt: 'deg' }, 'deg'> = formula({
  symbol: 'dtilt',
  meaning: 'error of the tilt by an error of the stack under a sine bar',
  unit: 'deg',
  expression: '180 / pi * e / (l * cos(tilt * pi / 180))',
  inputs: {
    e: { meaning: 'error of the stack', unit: 'mm' },
    l: { meaning: 'sine bar, between roller centres', unit: 'mm', over: 0 },
    tilt,
  },
  source: SOURCE,
  example: { given: { e: 0.01, l: 100, tilt: 50 }, gives: 0.0089 },
  value: ({ e, l, tilt }) => ((180 / Math.PI) * e) / (l * Math.cos(rad(tilt))),
})
