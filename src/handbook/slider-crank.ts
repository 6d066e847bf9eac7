import { type Formula, formula, type Input } from '../formula.ts'

/**
 * The slider-crank with an offset, both ways. Crank angles are degrees after top dead centre, the real highest position of
 * the piston. With an offset the throw is not half the stroke, and the downstroke is not half a turn.
 *
 * Domain: the rod must pass a quarter turn, L > R + |e|. `linkageLocks` asks before any of the formulas below is used.
 */
const R: Input<'mm'> = { meaning: 'throw of the crank', unit: 'mm', over: 0 }
const L: Input<'mm'> = { meaning: 'connecting rod, centre to centre', unit: 'mm', over: 0 }
const e: Input<'mm'> = {
  meaning: "offset of the pin's path, positive toward the crankpin on the downstroke",
  unit: 'mm',
}
const S: Input<'mm'> = { meaning: 'stroke', unit: 'mm', over: 0 }
const x: Input<'mm'> = { meaning: 'travel of the piston below top dead centre', unit: 'mm', from: 0 }
const theta: Input<'deg'> = { meaning: 'crank angle after top dead centre', unit: 'deg' }
const theta_T: Input<'deg'> = { meaning: 'crank angle of top dead centre from the cylinder line', unit: 'deg' }

const LAW_OF_COSINES = 'derived: geometry, law of cosines on crank, rod and line of stroke'

/** Whether the rod is too short to carry the crank past a quarter turn. */
export const linkageLocks = (throwOfCrank: number, rod: number, offset: number): boolean =>
  !(rod > throwOfCrank + Math.abs(offset))

const clampedAcos = (cosine: number): number => Math.acos(Math.min(1, Math.max(-1, cosine)))

export const crankThrow: Formula<{ S: 'mm'; L: 'mm'; e: 'mm' }, 'mm'> = formula({
  symbol: 'R',
  meaning: 'throw of the crank that gives the stroke',
  unit: 'mm',
  expression: 'S / 2 * sqrt(1 - e^2 / (L^2 - S^2 / 4))',
  inputs: { S, L, e },
  source: LAW_OF_COSINES,
  example: { given: { S: 22, L: 40, e: 1 }, gives: 10.99628 },
  value: ({ S, L, e }) => (S / 2) * Math.sqrt(1 - e ** 2 / (L ** 2 - S ** 2 / 4)),
})

export const topDeadCentre: Formula<{ R: 'mm'; L: 'mm'; e: 'mm' }, 'deg'> = formula({
  symbol: 'theta_T',
  meaning: 'crank angle of top dead centre from the cylinder line',
  unit: 'deg',
  expression: 'asin(e / (L + R)) * 180 / pi',
  inputs: { R, L, e },
  source: LAW_OF_COSINES,
  example: { given: { R: 10.99628, L: 40, e: 1 }, gives: 1.1236 },
  value: ({ R, L, e }) => (Math.asin(e / (L + R)) * 180) / Math.PI,
})

export const bottomDeadCentre: Formula<{ R: 'mm'; L: 'mm'; e: 'mm' }, 'deg'> = formula({
  symbol: 'theta_B',
  meaning: 'crank angle of bottom dead centre from the cylinder line',
  unit: 'deg',
  expression: '180 + asin(e / (L - R)) * 180 / pi',
  inputs: { R, L, e },
  source: LAW_OF_COSINES,
  example: { given: { R: 10.99628, L: 40, e: 1 }, gives: 181.9759 },
  value: ({ R, L, e }) => 180 + (Math.asin(e / (L - R)) * 180) / Math.PI,
})

export const pistonTravel: Formula<{ R: 'mm'; L: 'mm'; e: 'mm'; theta: 'deg'; theta_T: 'deg' }, 'mm'> = formula({
  symbol: 'x',
  meaning: 'travel of the piston below top dead centre',
  unit: 'mm',
  expression:
    'sqrt((L + R)^2 - e^2) - R * cos((theta + theta_T) * pi / 180) - sqrt(L^2 - (R * sin((theta + theta_T) * pi / 180) - e)^2)',
  inputs: { R, L, e, theta, theta_T },
  source: LAW_OF_COSINES,
  example: { given: { R: 11, L: 40, e: 0, theta: 105, theta_T: 0 }, gives: 15.284, digits: 4 },
  value: ({ R, L, e, theta, theta_T }) => {
    const t = ((theta + theta_T) * Math.PI) / 180
    return Math.sqrt((L + R) ** 2 - e ** 2) - R * Math.cos(t) - Math.sqrt(L ** 2 - (R * Math.sin(t) - e) ** 2)
  },
})

/** Half the turn for which an edge is covered: the opening and the closing lie either side of it. */
export const coveredHalfTurn: Formula<{ R: 'mm'; L: 'mm'; e: 'mm'; x: 'mm' }, 'deg'> = formula({
  symbol: 'a',
  meaning: 'half the turn for which the edge is covered',
  unit: 'deg',
  expression:
    'acos((R^2 + (sqrt((L + R)^2 - e^2) - x)^2 + e^2 - L^2) / (2 * R * sqrt((sqrt((L + R)^2 - e^2) - x)^2 + e^2))) * 180 / pi',
  inputs: { R, L, e, x },
  source: LAW_OF_COSINES,
  example: { given: { R: 11, L: 40, e: 0, x: 14.5 }, gives: 100.53, digits: 3 },
  value: ({ R, L, e, x }) => {
    const q = Math.hypot(Math.sqrt((L + R) ** 2 - e ** 2) - x, e)
    return (clampedAcos((R ** 2 + q ** 2 - L ** 2) / (2 * R * q)) * 180) / Math.PI
  },
})

/** How far the middle of the covered turn lies after top dead centre: nothing without an offset. */
export const coveredTurnShift: Formula<{ R: 'mm'; L: 'mm'; e: 'mm'; x: 'mm'; theta_T: 'deg' }, 'deg'> = formula({
  symbol: 'g',
  meaning: 'how far the middle of the covered turn lies after top dead centre',
  unit: 'deg',
  expression: 'atan(e / (sqrt((L + R)^2 - e^2) - x)) * 180 / pi - theta_T',
  inputs: { R, L, e, x, theta_T },
  source: LAW_OF_COSINES,
  example: { given: { R: 10.99628, L: 40, e: 1, x: 14.5, theta_T: 1.1236 }, gives: 0.446, digits: 3 },
  value: ({ R, L, e, x, theta_T }) => (Math.atan(e / (Math.sqrt((L + R) ** 2 - e ** 2) - x)) * 180) / Math.PI - theta_T,
})

export const openingAngle: Formula<{ a: 'deg'; g: 'deg' }, 'deg'> = formula({
  symbol: 'theta_open',
  meaning: 'opening, after top dead centre',
  unit: 'deg',
  expression: 'a + g',
  inputs: {
    a: { meaning: 'half the turn for which the edge is covered', unit: 'deg' },
    g: { meaning: 'how far the middle of the covered turn lies after top dead centre', unit: 'deg' },
  },
  source: 'derived: geometry',
  example: { given: { a: 100.5385, g: 0.4465 }, gives: 100.985, digits: 3 },
  value: ({ a, g }) => a + g,
})

export const closingAngle: Formula<{ a: 'deg'; g: 'deg' }, 'deg'> = formula({
  symbol: 'theta_close',
  meaning: 'closing, after top dead centre and round',
  unit: 'deg',
  expression: '360 - a + g',
  inputs: openingAngle.inputs,
  source: 'derived: geometry',
  example: { given: { a: 100.5385, g: 0.4465 }, gives: 259.908, digits: 3 },
  value: ({ a, g }) => 360 - a + g,
})

export const travelPerDegree: Formula<{ R: 'mm'; L: 'mm'; e: 'mm'; theta: 'deg'; theta_T: 'deg' }, 'mm/deg'> = formula({
  symbol: 'dx_dtheta',
  meaning: 'travel of the piston for each crank degree',
  unit: 'mm/deg',
  expression:
    'pi / 180 * R * (sin((theta + theta_T) * pi / 180) + cos((theta + theta_T) * pi / 180) * (R * sin((theta + theta_T) * pi / 180) - e) / sqrt(L^2 - (R * sin((theta + theta_T) * pi / 180) - e)^2))',
  inputs: { R, L, e, theta, theta_T },
  source: 'derived: the travel differentiated by the crank angle',
  example: { given: { R: 11, L: 40, e: 0, theta: 120, theta_T: 0 }, gives: 0.14273, digits: 5 },
  value: ({ R, L, e, theta, theta_T }) => {
    const t = ((theta + theta_T) * Math.PI) / 180
    const across = R * Math.sin(t) - e
    return (Math.PI / 180) * R * (Math.sin(t) + (Math.cos(t) * across) / Math.sqrt(L ** 2 - across ** 2))
  },
})

export const edgeDepth: Formula<{ h_0: 'mm'; x: 'mm' }, 'mm'> = formula({
  symbol: 'h',
  meaning: 'depth of the port edge below the top face',
  unit: 'mm',
  expression: 'h_0 + x',
  inputs: { h_0: { meaning: 'piston crown edge below the top face at top dead centre', unit: 'mm' }, x },
  source: 'derived: geometry',
  example: { given: { h_0: 0.2, x: 15.28 }, gives: 15.48 },
  value: ({ h_0, x }) => h_0 + x,
})
