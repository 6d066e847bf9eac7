import type { Millimetre } from '../units.ts'
import { CHUCK, closestPlace, type Setting, type Standing } from './closest-place.ts'

/** What would let a held cutter clear everything by the margin, each change alone. */
export type Remedies = {
  /** Stick-out with which it clears. */
  readonly stickOut?: Millimetre
  /** Largest nose of the holder with the cutter as it is. */
  readonly holderDiameter?: Millimetre
  /** Largest diameter over the jaws: a collet, a plate with a stub. */
  readonly chuckDiameter?: Millimetre
  /** How much farther the held end must stand from the ports: more length, or a stub to grip. */
  readonly length?: Millimetre
}

const HALVINGS = 24
/** Farther than that is another part, or another tool. */
const LONGEST: Millimetre = 100

/** Figures for whoever has to change something; one that alone cannot help is left out. */
export function remediesFor(setting: Setting, standing: Standing, stickOut: Millimetre, margin: Millimetre): Remedies {
  const clears = (changed: Setting, out: Millimetre): boolean =>
    closestPlace(changed, standing, out).room >= margin - 1e-6
  const { holder } = setting.fixture
  const chuck = setting.bodies.find(({ name }) => name === CHUCK)
  const withChuck = (change: { readonly radius?: number; readonly back?: number }): Setting => ({
    ...setting,
    bodies: setting.bodies.map(body =>
      body.name === CHUCK
        ? {
            ...body,
            radius: change.radius ?? body.radius,
            from: body.from - (change.back ?? 0),
            to: body.to - (change.back ?? 0),
          }
        : body,
    ),
  })
  const withHolder = (diameter: Millimetre): Setting => ({
    ...setting,
    fixture: { ...setting.fixture, holder: { ...holder, diameter } },
  })
  const part = Math.max(...setting.bodies.filter(({ name }) => name !== CHUCK).map(({ radius }) => radius))
  const out = nearest(stickOut, stickOut + LONGEST, value => clears(setting, value))
  const nose = nearest(holder.diameter, standing.shank, value => clears(withHolder(value), stickOut))
  const jaws = chuck && nearest(2 * chuck.radius, 2 * part, value => clears(withChuck({ radius: value / 2 }), stickOut))
  const back = nearest(0, LONGEST, value => clears(withChuck({ back: value }), stickOut))
  return {
    ...(out === undefined ? {} : { stickOut: out }),
    ...(nose === undefined ? {} : { holderDiameter: nose }),
    ...(jaws === undefined ? {} : { chuckDiameter: jaws }),
    ...(back === undefined ? {} : { length: back }),
  }
}

/** The value nearest to the present one that clears, by halving; nothing where the farthest does not. */
function nearest(present: number, farthest: number, clears: (value: number) => boolean): number | undefined {
  if (!clears(farthest)) return undefined
  let [strikes, found] = [present, farthest]
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (strikes + found) / 2
    if (clears(middle)) found = middle
    else strikes = middle
  }
  return found
}
