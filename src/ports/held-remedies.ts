import type { Millimetre } from '../units.ts'
import { closestPlace, type Setting, type Standing } from './closest-place.ts'
import type { RoundBody } from './height-under.ts'

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
  const chuck = setting.bodies.find((body): body is RoundBody => body.of === 'chuck')
  const withChuck = (radius: Millimetre): Setting => ({
    ...setting,
    bodies: setting.bodies.map(body => (body.of === 'chuck' ? { ...body, radius } : body)),
  })
  // A stub takes all that holds the part away from it.
  const withStub = (back: Millimetre): Setting => ({
    ...setting,
    bodies: setting.bodies.map(body =>
      body.of === 'part' ? body : { ...body, from: body.from - back, to: body.to - back },
    ),
  })
  const withHolder = (diameter: Millimetre): Setting => ({
    ...setting,
    fixture: { ...setting.fixture, holder: { ...holder, diameter } },
  })
  const part = Math.max(...setting.bodies.map(body => (body.of === 'part' ? body.radius : 0)))
  const out = nearest(stickOut, stickOut + LONGEST, value => clears(setting, value))
  const nose = nearest(holder.diameter, standing.shank, value => clears(withHolder(value), stickOut))
  const jaws = chuck && nearest(2 * chuck.radius, 2 * part, value => clears(withChuck(value / 2), stickOut))
  const back = nearest(0, LONGEST, value => clears(withStub(value), stickOut))
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
