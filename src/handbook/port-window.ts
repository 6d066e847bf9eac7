import { type Formula, formula, type Input } from '../formula.ts'

/** Windows in a round wall: widths on the bore, and what a slanted cut does between one cylinder and another. */
const r: Input<'mm'> = { meaning: 'radius of the finished bore', unit: 'mm', over: 0 }
const beta: Input<'deg'> = { meaning: 'rise of the stream toward the head', unit: 'deg', over: -90, under: 90 }
const l: Input<'mm'> = { meaning: "distance of the point from the liner's axis, across the stream", unit: 'mm' }
const h: Input<'mm'> = { meaning: 'depth of the point on the finished bore', unit: 'mm' }

export const spannedAngle: Formula<{ c: 'mm'; r: 'mm' }, 'deg'> = formula({
  symbol: 'w',
  meaning: 'angle that the port spans on the finished bore',
  unit: 'deg',
  expression: '2 * asin(c / (2 * r)) * 180 / pi',
  inputs: { c: { meaning: 'chord, side edge to side edge', unit: 'mm', from: 0 }, r },
  source: 'derived: geometry',
  example: { given: { c: 14, r: 12 }, gives: 71.371 },
  value: ({ c, r }) => (2 * Math.asin(c / (2 * r)) * 180) / Math.PI,
})

export const chordOf: Formula<{ w: 'deg'; r: 'mm' }, 'mm'> = formula({
  symbol: 'c',
  meaning: 'chord, side edge to side edge',
  unit: 'mm',
  expression: '2 * r * sin(w * pi / 360)',
  inputs: { w: { meaning: 'angle spanned', unit: 'deg', over: 0, upTo: 180 }, r },
  source: 'derived: geometry',
  example: { given: { w: 71.371, r: 12 }, gives: 14.0, digits: 3 },
  value: ({ w, r }) => 2 * r * Math.sin((w * Math.PI) / 360),
})

/**
 * A cut that slants stands at another height on every cylinder. Rising ports move down, and open later, when the bore is
 * enlarged after the ports were cut.
 */
export const depthOnCylinder: Formula<{ h: 'mm'; beta: 'deg'; q: 'mm'; r: 'mm'; l: 'mm'; g: 'mm' }, 'mm'> = formula({
  symbol: 'h_q',
  meaning: 'depth of the edge on the bore as cut, below the top face as it then stands',
  unit: 'mm',
  expression: 'h + tan(beta * pi / 180) * (sqrt(q^2 - l^2) - sqrt(r^2 - l^2)) + g',
  inputs: {
    h,
    beta,
    q: { meaning: 'radius of the cylinder looked at', unit: 'mm', over: 0 },
    r,
    l,
    g: { meaning: 'stock still on the top face', unit: 'mm' },
  },
  source: 'derived: geometry of a prism cut along the stream',
  example: { given: { h: 10, beta: 50, q: 10, r: 9.9, l: 2.5, g: 0 }, gives: 10.12313, digits: 5 },
  value: ({ h, beta, q, r, l, g }) =>
    h + Math.tan((beta * Math.PI) / 180) * (Math.sqrt(q ** 2 - l ** 2) - Math.sqrt(r ** 2 - l ** 2)) + g,
})

export const anglePerTenth: Formula<{ dx_dtheta: 'mm/deg' }, 'deg'> = formula({
  symbol: 'dtheta_tenth',
  meaning: 'crank degrees that the opening moves for 0.1 mm of the top edge',
  unit: 'deg',
  expression: '0.1 / dx_dtheta',
  inputs: { dx_dtheta: { meaning: 'travel of the piston for each crank degree', unit: 'mm/deg', over: 0 } },
  source: 'derived: geometry',
  example: { given: { dx_dtheta: 0.14273 }, gives: 0.7006, digits: 4 },
  value: ({ dx_dtheta }) => 0.1 / dx_dtheta,
})

export const ignoredShiftAngle: Formula<{ dh: 'mm'; dx_dtheta: 'mm/deg' }, 'deg'> = formula({
  symbol: 'dtheta',
  meaning: 'crank degrees that the port would open late if it were cut to the finished depth',
  unit: 'deg',
  expression: 'dh / dx_dtheta',
  inputs: {
    dh: { meaning: 'shift of the timing edge between the bore as cut and finished', unit: 'mm' },
    dx_dtheta: { meaning: 'travel of the piston for each crank degree', unit: 'mm/deg', over: 0 },
  },
  source: 'derived: geometry',
  example: { given: { dh: 0.1208, dx_dtheta: 0.16324 }, gives: 0.74, digits: 3 },
  value: ({ dh, dx_dtheta }) => dh / dx_dtheta,
})

/** The rule of practice keeps the cutter off dwelling in a corner of its own radius. */
export const largestCutterForCorner: Formula<{ R: 'mm' }, 'mm'> = formula({
  symbol: 'D',
  meaning: 'largest cutter for the tightest corner in its plane',
  unit: 'mm',
  expression: '1.6 * R',
  inputs: { R: { meaning: 'tightest corner, in the plane of the cutter', unit: 'mm', over: 0 } },
  source: 'common practice, no source',
  example: { given: { R: 1.5 }, gives: 2.4, digits: 1 },
  value: ({ R }) => 1.6 * R,
})

export const finishingPath: Formula<{ P: 'mm'; D: 'mm' }, 'mm'> = formula({
  symbol: 'l_path',
  meaning: "length of the finishing path of the cutter's centre",
  unit: 'mm',
  expression: 'P - pi * D',
  inputs: {
    P: { meaning: "girth of the window in the cutter's plane", unit: 'mm', over: 0 },
    D: { meaning: 'diameter of the cutter', unit: 'mm', over: 0 },
  },
  source: 'derived: a smooth closed line offset inward by D/2 loses pi times D',
  example: { given: { P: 33.4248, D: 2 }, gives: 27.14, digits: 2 },
  value: ({ P, D }) => P - Math.PI * D,
})
