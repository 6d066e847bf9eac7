import { type Formula, formula, type Input } from '../formula.ts'
import type { Celsius, Millimetre } from '../units.ts'

/**
 * A piston in its bore, cold and hot. Temperatures by place and the bands in use: common practice, no source; the thermal part is
 * derived. Expansion, 1e-6/K: memory, makers' data of piston alloys.
 */
export const PISTON_SOURCE = 'common practice, no source'

/** Where a piston's clearance is reckoned, from the crown down. */
export type PistonPlace = 'crown land' | 'second land' | 'skirt top' | 'skirt'

type PlaceRow = {
  readonly place: PistonPlace
  readonly aluminium: { readonly temperature: Celsius; readonly usual: readonly [number, number] }
  readonly iron: { readonly temperature: Celsius; readonly usual: readonly [number, number] }
}

/** Running temperatures, and cold clearances in use in µm on diameter for each mm of bore. */
export const PISTON_PLACES: readonly PlaceRow[] = [
  { place: 'crown land', aluminium: { temperature: 270, usual: [4, 6] }, iron: { temperature: 300, usual: [2.5, 4] } },
  { place: 'second land', aluminium: { temperature: 220, usual: [3, 4.5] }, iron: { temperature: 260, usual: [2, 3] } },
  { place: 'skirt top', aluminium: { temperature: 170, usual: [2, 3] }, iron: { temperature: 210, usual: [1, 1.5] } },
  { place: 'skirt', aluminium: { temperature: 140, usual: [1, 2.5] }, iron: { temperature: 180, usual: [0.7, 1.5] } },
]

/** Of the running piston, by grade; others take that of their group. */
export const PISTON_EXPANSION: Readonly<Partial<Record<string, number>>> = {
  'EN AW-2618A': 22,
  'EN AW-4032': 19.5,
  'EN AC-48000': 19.5,
}

/** Of the liner's wall where the piston runs, and what the oil film takes on diameter. */
export const LINER_TEMPERATURE: Celsius = 110
export const OIL_FILM: Millimetre = 0.015

const D: Input<'mm'> = { meaning: 'bore, cold', unit: 'mm', over: 0 }
const aL: Input<'1e-6/K'> = { meaning: 'expansion of the liner', unit: '1e-6/K', over: 0 }
const TL: Input<'K'> = { meaning: 'liner warmer than 20 °C by', unit: 'K', from: 0 }
const aP: Input<'1e-6/K'> = { meaning: 'expansion of the piston', unit: '1e-6/K', over: 0 }
const TP: Input<'K'> = { meaning: 'piston warmer than 20 °C by', unit: 'K', from: 0 }
const film: Input<'mm'> = { meaning: 'oil film, on diameter', unit: 'mm', from: 0 }

export const coldClearance: Formula<{ D: 'mm'; aL: '1e-6/K'; TL: 'K'; aP: '1e-6/K'; TP: 'K'; film: 'mm' }, 'mm'> =
  formula({
    symbol: 'C',
    meaning: 'cold clearance on diameter that leaves the oil film when both are warm',
    unit: 'mm',
    expression: 'D - (D * (1 + aL * TL / 10^6) - film) / (1 + aP * TP / 10^6)',
    inputs: { D, aL, TL, aP, TP, film },
    source: 'derived: linear expansion',
    example: { given: { D: 48, aL: 11.7, TL: 90, aP: 19.5, TP: 250, film: 0.015 }, gives: 0.1975 },
    value: ({ D, aL, TL, aP, TP, film }) => D - (D * (1 + (aL * TL) / 1e6) - film) / (1 + (aP * TP) / 1e6),
  })

export const warmClearance: Formula<{ D: 'mm'; d: 'mm'; aL: '1e-6/K'; TL: 'K'; aP: '1e-6/K'; TP: 'K' }, 'mm'> = formula(
  {
    symbol: 'C_w',
    meaning: 'clearance on diameter when both are warm',
    unit: 'mm',
    expression: 'D * (1 + aL * TL / 10^6) - d * (1 + aP * TP / 10^6)',
    inputs: { D, d: { meaning: 'piston, cold', unit: 'mm', over: 0 }, aL, TL, aP, TP },
    source: 'derived: linear expansion',
    example: { given: { D: 48, d: 47.8025, aL: 11.7, TL: 90, aP: 19.5, TP: 250 }, gives: 0.015, digits: 3 },
    value: ({ D, d, aL, TL, aP, TP }) => D * (1 + (aL * TL) / 1e6) - d * (1 + (aP * TP) / 1e6),
  },
)

/** Of an oval skirt, at an angle from the thrust direction. */
export const ovalDiameter: Formula<{ D: 'mm'; ov: 'mm'; phi: 'deg' }, 'mm'> = formula({
  symbol: 'D_phi',
  meaning: 'diameter of an oval skirt',
  unit: 'mm',
  expression: 'D - ov * sin(phi * pi / 180)^2',
  inputs: {
    D: { meaning: 'diameter in the thrust direction', unit: 'mm', over: 0 },
    ov: { meaning: 'ovality', unit: 'mm', from: 0 },
    phi: { meaning: 'angle from the thrust direction', unit: 'deg' },
  },
  source: 'derived: geometry',
  example: { given: { D: 47.93, ov: 0.12, phi: 30 }, gives: 47.9 },
  value: ({ D, ov, phi }) => D - ov * Math.sin((phi * Math.PI) / 180) ** 2,
})

/** The main skirt is turned round; each side then with the turning axis moved along the pin axis, away from that side. */
export const ovalOffset: Formula<{ delta: 'mm'; phi0: 'deg' }, 'mm'> = formula({
  symbol: 'e',
  meaning: 'offset of the turning axis that relieves a side of the skirt',
  unit: 'mm',
  expression: 'delta / (1 - cos(phi0 * pi / 180))',
  inputs: {
    delta: { meaning: 'relief at the pin axis, per side', unit: 'mm', from: 0 },
    phi0: { meaning: 'angle from the pin axis at which it fades out', unit: 'deg', over: 0, upTo: 90 },
  },
  source: 'derived: geometry, first order',
  example: { given: { delta: 0.1, phi0: 60 }, gives: 0.2 },
  value: ({ delta, phi0 }) => delta / (1 - Math.cos((phi0 * Math.PI) / 180)),
})

export const ovalToolRadius: Formula<{ R: 'mm'; e: 'mm'; phi0: 'deg' }, 'mm'> = formula({
  symbol: 'R_t',
  meaning: 'radius that the tool is set to, from the moved axis',
  unit: 'mm',
  expression: 'sqrt(R^2 + e^2 + 2 * R * e * cos(phi0 * pi / 180))',
  inputs: {
    R: { meaning: 'radius of the skirt', unit: 'mm', over: 0 },
    e: { meaning: 'offset of the turning axis', unit: 'mm', from: 0 },
    phi0: { meaning: 'angle from the pin axis at which the relief fades out', unit: 'deg', over: 0, upTo: 90 },
  },
  source: 'derived: geometry',
  example: { given: { R: 23.965, e: 0.2, phi0: 60 }, gives: 24.0656 },
  value: ({ R, e, phi0 }) => Math.sqrt(R ** 2 + e ** 2 + 2 * R * e * Math.cos((phi0 * Math.PI) / 180)),
})

export const domeRadius: Formula<{ D: 'mm'; h: 'mm' }, 'mm'> = formula({
  symbol: 'R_d',
  meaning: 'radius of a domed crown',
  unit: 'mm',
  expression: '(D^2 / 4 + h^2) / (2 * h)',
  inputs: {
    D: { meaning: 'diameter of the crown land', unit: 'mm', over: 0 },
    h: { meaning: 'height of the dome', unit: 'mm', over: 0 },
  },
  source: 'derived: geometry',
  example: { given: { D: 47.75, h: 3 }, gives: 96.503 },
  value: ({ D, h }) => (D ** 2 / 4 + h ** 2) / (2 * h),
})

/** A groove for a wire clip, full round. */
export const clipFloor: Formula<{ b: 'mm'; k: ''; d: 'mm' }, 'mm'> = formula({
  symbol: 'd_g',
  meaning: 'floor of the groove of a wire clip',
  unit: 'mm',
  expression: 'b + 2 * k * d',
  inputs: {
    b: { meaning: 'pin bore', unit: 'mm', over: 0 },
    k: {
      meaning: 'share of the wire that lies in the groove; under 0.5 the clip is pushed out',
      unit: '',
      from: 0.5,
      upTo: 1,
    },
    d: { meaning: 'wire of the clip', unit: 'mm', over: 0 },
  },
  source: 'memory: DIN 73130; no table seen',
  example: { given: { b: 14, k: 0.55, d: 1.2 }, gives: 15.32 },
  value: ({ b, k, d }) => b + 2 * k * d,
})

/** The share usually taken, and the tolerance of the floor. */
export const CLIP = { share: 0.55, tolerance: 0.1 } as const

/** What a ring's height is smaller than it is called; published pairs of rings and grooves agree. */
export const RING_HEIGHT = { upper: -0.01, lower: -0.03, source: 'memory: ISO 6621-4' } as const
/** Clearance of a ring in its groove, axially: less it sticks, more it hammers. */
export const RING_CLEARANCE = { least: 0.02, most: 0.08 } as const
/** Least crown over the inside, and least wall behind a ring groove, by material: shares of the diameter, and mm. */
export const CROWN = { aluminium: 0.07, iron: 0.05, behindGroove: 1.5 } as const
/** Angle at which a relief that is turned off centre fades out. */
export const RELIEF_FADES = 60
