import { type Formula, formula, type Input } from '../formula.ts'
import type { Degree, Millimetre, Minute } from '../units.ts'

/**
 * What brings azimuth 0 of a part back when it is loaded again. Sizes, clearances and minutes: common practice, no source;
 * the errors follow from them.
 */
export type TimingDatum = 'flat' | 'notch' | 'dowel hole' | 'window key'

type Row = {
  /** Total clearance between part and fixture: hole less pin, slot less key. */
  readonly clearance?: Millimetre
  /** Reading of an indicator, and the length of face that it goes along. */
  readonly touch?: { readonly reading: Millimetre; readonly along: Millimetre }
  /** To clock one piece. */
  readonly minutes: Minute
}

export const TIMING_DATUMS: Readonly<Record<TimingDatum, Row>> = {
  // An indicator along the flat.
  flat: { touch: { reading: 0.01, along: 8 }, minutes: 1.5 },
  // 3 wide H9 on a key h9.
  notch: { clearance: 0.05, minutes: 0.3 },
  // 3 H7 on a pin 3 g6, and 0.004 for the place of the pin in the fixture.
  'dowel hole': { clearance: 0.022, minutes: 0.3 },
  // Key 0.02 to 0.05 narrower than the window.
  'window key': { clearance: 0.03, minutes: 0.5 },
}

/** More than that at the bore, or of azimuth, is told. Common practice, no source. */
export const MOST_CLOCKING_ERROR = { angle: 0.1, side: 0.05 } as const
/** Against a straight stop in the chuck, square within that reading over the flat. Common practice, no source. */
export const FLAT_AT_STOP: Row = { touch: { reading: 0.01, along: 11 }, minutes: 0.4 }

/** How well a rotary comes back to an angle: 10 to 60 seconds of arc. Common practice, no source. */
export const ROTARY_INDEX: Degree = 1 / 60
/** Reading by which Y is halved between the sides of the part. Common practice, no source. */
export const Y_PICKED_UP: Millimetre = 0.01

/** Sizes of the datums themselves. Common practice, no source. */
export const DATUM_SIZES = {
  /** Width of a notch, 3 H9, and diameter of a hole, 3 H7. */
  notch: 3,
  'dowel hole': 3,
  /** Middle of a hole from the outside: a diameter of wall stays outside it. */
  dowelFromOutside: 3,
  /** Of a long band as much carries the datum. */
  along: 8,
  /** Between cutter and jaws. */
  clearOfJaws: 5,
  /** What a notch's cutter is narrower, and a drill before the reamer. */
  cutterUnder: 0.2,
  drillUnder: 0.15,
} as const

const SOURCE = 'derived: geometry'
const DEGREES = 180 / Math.PI
const r: Input<'mm'> = { meaning: 'radius at which the datum is touched', unit: 'mm', over: 0 }

export const clearanceError: Formula<{ c: 'mm'; r: 'mm' }, 'deg'> = formula({
  symbol: 'dphi',
  meaning: 'azimuth by half the clearance, either way',
  unit: 'deg',
  expression: '180 / pi * c / (2 * r)',
  inputs: { c: { meaning: 'clearance in all', unit: 'mm', from: 0 }, r },
  source: SOURCE,
  example: { given: { c: 0.022, r: 28 }, gives: 0.0225 },
  value: ({ c, r }) => (DEGREES * c) / (2 * r),
})

export const touchError: Formula<{ e: 'mm'; w: 'mm' }, 'deg'> = formula({
  symbol: 'dphi',
  meaning: 'azimuth by the reading of an indicator along a flat',
  unit: 'deg',
  expression: '180 / pi * e / w',
  inputs: {
    e: { meaning: 'reading', unit: 'mm', from: 0 },
    w: { meaning: 'length that it goes along', unit: 'mm', over: 0 },
  },
  source: SOURCE,
  example: { given: { e: 0.01, w: 8 }, gives: 0.0716 },
  value: ({ e, w }) => (DEGREES * e) / w,
})

export const offsetAngle: Formula<{ dY: 'mm'; r: 'mm'; psi: 'deg' }, 'deg'> = formula({
  symbol: 'dphi',
  meaning: 'azimuth by an error in Y',
  unit: 'deg',
  expression: '180 / pi * dY / (r * cos(psi * pi / 180))',
  inputs: {
    dY: { meaning: 'error in Y', unit: 'mm', from: 0 },
    r: { meaning: 'radius of the finished bore', unit: 'mm', over: 0 },
    psi: { meaning: 'heading of the stream at the bore', unit: 'deg', over: -90, under: 90 },
  },
  source: SOURCE,
  example: { given: { dY: 0.05, r: 10, psi: 25 }, gives: 0.3161 },
  value: ({ dY, r, psi }) => (DEGREES * dY) / (r * Math.cos((psi * Math.PI) / 180)),
})

export const flatWidth: Formula<{ D: 'mm'; h: 'mm' }, 'mm'> = formula({
  symbol: 'w',
  meaning: 'width of a flat',
  unit: 'mm',
  expression: '2 * sqrt(h * (D - h))',
  inputs: {
    D: { meaning: 'diameter that it is cut into', unit: 'mm', over: 0 },
    h: { meaning: 'depth of the flat', unit: 'mm', over: 0 },
  },
  source: SOURCE,
  example: { given: { D: 62, h: 0.5 }, gives: 11.091 },
  value: ({ D, h }) => 2 * Math.sqrt(Math.max(0, h * (D - h))),
})

const n: Input<''> = { meaning: 'pieces started', unit: '', from: 1 }
const t: Input<''> = { meaning: 'tilts', unit: '', from: 1 }
const change: Input<'min'> = { meaning: 'to set a tilt and prove it', unit: 'min', from: 0 }
const load: Input<'min'> = { meaning: 'to load a piece', unit: 'min', from: 0 }

export const allTiltsEach: Formula<{ n: ''; t: ''; load: 'min'; change: 'min' }, 'min'> = formula({
  symbol: 'T',
  meaning: 'loading and tilting where each piece goes through all tilts in one clamping',
  unit: 'min',
  expression: 'n * (load + t * change)',
  inputs: { n, t, load, change },
  source: 'derived: count of loadings and tilts',
  example: { given: { n: 18, t: 3, load: 3, change: 8 }, gives: 486 },
  value: ({ n, t, load, change }) => n * (load + t * change),
})

export const batchEachTilt: Formula<{ n: ''; t: ''; load: 'min'; clock: 'min'; change: 'min' }, 'min'> = formula({
  symbol: 'T',
  meaning: 'loading, clocking and tilting where the batch goes through once for each tilt',
  unit: 'min',
  expression: 't * change + n * t * (load + clock)',
  inputs: { n, t, load, clock: { meaning: 'to clock a piece', unit: 'min', from: 0 }, change },
  source: 'derived: count of loadings and tilts',
  example: { given: { n: 18, t: 3, load: 2.5, clock: 0.5, change: 8 }, gives: 186 },
  value: ({ n, t, load, clock, change }) => t * change + n * t * (load + clock),
})
