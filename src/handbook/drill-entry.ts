import { type Formula, formula, type Input } from '../formula.ts'

/** A drill that meets a tilted or curved face, and leaves it again into a bore. */
const D: Input<'mm'> = { meaning: 'diameter of the drill', unit: 'mm', over: 0, upTo: 500 }
const sigma: Input<'deg'> = { meaning: 'point angle', unit: 'deg', from: 30, upTo: 180 }
const theta: Input<'deg'> = {
  meaning: 'angle between the hole and the normal of the face',
  unit: 'deg',
  from: 0,
  upTo: 85,
}

export const pointLength: Formula<{ D: 'mm'; sigma: 'deg' }, 'mm'> = formula({
  symbol: 'l_p',
  meaning: "length of the drill's point",
  unit: 'mm',
  expression: 'D / (2 * tan(sigma * pi / 360))',
  inputs: { D, sigma },
  source: 'derived: geometry',
  example: { given: { D: 8.5, sigma: 140 }, gives: 1.547 },
  value: ({ D, sigma }) => D / (2 * Math.tan((sigma * Math.PI) / 360)),
})

/** From first touch to full diameter; the same again where the drill breaks through. */
export const entryLength: Formula<{ D: 'mm'; theta: 'deg'; sigma: 'deg' }, 'mm'> = formula({
  symbol: 'L_e',
  meaning: 'travel of the drill from first touch to full diameter',
  unit: 'mm',
  expression: 'D / 2 * (tan(theta * pi / 180) + 1 / tan(sigma * pi / 360))',
  inputs: { D, theta, sigma },
  source: 'derived: geometry; the point must touch before the corner, theta under 90 deg less half the point angle',
  example: { given: { D: 2, theta: 15, sigma: 118 }, gives: 0.8688 },
  value: ({ D, theta, sigma }) => (D / 2) * (Math.tan((theta * Math.PI) / 180) + 1 / Math.tan((sigma * Math.PI) / 360)),
})

export const slopeOfEntry: Formula<{ theta: 'deg'; q: '' }, 'deg'> = formula({
  symbol: 'phi',
  meaning: 'angle between the hole and the normal of the outside where it enters',
  unit: 'deg',
  expression: 'acos(cos(theta * pi / 180) * cos(asin(q))) * 180 / pi',
  inputs: {
    theta: { meaning: 'tilt', unit: 'deg', from: 0, under: 90 },
    q: { meaning: "the hole's distance from the axis plane over the outside radius", unit: '', from: 0, upTo: 1 },
  },
  source: 'derived: geometry',
  example: { given: { theta: 15, q: 5 / 30 }, gives: 17.75 },
  value: ({ theta, q }) => (Math.acos(Math.cos((theta * Math.PI) / 180) * Math.cos(Math.asin(q))) * 180) / Math.PI,
})

/** Source: common practice, no source, for the carbide drill that a small works uses; feed as a share of the full feed. */
export const ENTRY_POLICY: readonly {
  readonly upTo: number
  readonly feedShare: number
  readonly first: 'nothing' | 'mill a flat'
}[] = [
  { upTo: 3, feedShare: 1, first: 'nothing' },
  { upTo: 8, feedShare: 0.5, first: 'nothing' },
  { upTo: 90, feedShare: 0.5, first: 'mill a flat' },
]

/** Feed over the last stretch into the bore, and travel beyond it. Source: common practice, no source. */
export const BREAKTHROUGH = { feedShare: 0.5, beyond: 0.5, clearance: 1 } as const
