import type * as figures from '../../src/figures.ts'

type Figures = typeof figures

/** A number as it was handed to be written, and what was written for it. */
export type Written = { readonly raw: number; readonly text: string }

/** What a document asked to be written: figures of the job, and those of drawings, which are none. */
export type Record = { readonly figures: Written[]; readonly drawn: Set<string> }

/** The figures of the house, each kept in the record as it is written. */
export function recording(of: Figures, record: Record): Figures {
  const kept = (raw: number, text: string): string => {
    record.figures.push({ raw, text })
    return text
  }
  return {
    ...of,
    fixed: (value, places) => kept(value, of.fixed(value, places)),
    length: (value, units, places) => kept(value, of.length(value, units, places)),
    inwardLimits: (lower, upper, places, units) => {
      const [low, high] = of.inwardLimits(lower, upper, places, units)
      return [kept(lower, low), kept(upper, high)]
    },
    outwardLimits: (lower, upper, places, units) => {
      const [low, high] = of.outwardLimits(lower, upper, places, units)
      return [kept(lower, low), kept(upper, high)]
    },
    roundedDown: (value, places, units) => kept(value, of.roundedDown(value, places, units)),
    roundedUp: (value, places, units) => kept(value, of.roundedUp(value, places, units)),
    plusBetween: (value, low, high, units) => kept(value, of.plusBetween(value, low, high, units)),
    inWords: value => kept(value, of.inWords(value)),
    angle: (value, places) => kept(value, of.angle(value, places)),
    minutes: value => kept(value, of.minutes(value)),
    inHours: value => kept(value, of.inHours(value)),
    hours: value => kept(value, of.hours(value)),
    force: value => kept(value, of.force(value)),
    power: value => kept(value, of.power(value)),
    hardness: value => kept(value, of.hardness(value)),
    area: value => kept(value, of.area(value)),
    micrometre: (value, places) => kept(value, of.micrometre(value, places)),
    volume: value => kept(value, of.volume(value)),
    mass: value => kept(value, of.mass(value)),
    percent: (value, places) => kept(value, of.percent(value, places)),
    chance: value => kept(value, of.chance(value)),
    significant: (value, count) => kept(value, of.significant(value, count)),
    ofDrawing: (value, places) => {
      const text = of.ofDrawing(value, places)
      record.drawn.add(text)
      return text
    },
  }
}
