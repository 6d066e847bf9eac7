import { fromHandbook, type Told, told, worked } from '../known.ts'
import type { Millimetre, Newton } from '../units.ts'
import type { About, Notebook } from '../working.ts'
import {
  arcFactor,
  elasticModulusOf,
  inwardAtJaw,
  loadedLength,
  lobing,
  outwardBetweenJaws,
  THIN_RING,
} from './chuck-distortion.ts'
import { type BoredJaws, HOLDING, JAWS } from './holding.ts'

const PRACTICE = fromHandbook('common practice, no source')
const WALL = worked('wall between what the jaws hold and the bore that is cut')

/** A thin wall as the jaws find it. */
export type HeldRing = { readonly R: Millimetre; readonly t: Millimetre; readonly length: Millimetre }

/** The wall between two diameters, where it is a thin ring. */
export function ringBetween(outside: Millimetre, bore: Millimetre, length: Millimetre): HeldRing | undefined {
  const t = (outside - bore) / 2
  const R = (outside + bore) / 4
  return t > 0 && R / t >= THIN_RING ? { R, t, length } : undefined
}

/** Lobes that a bore cut round is left with when the jaws let go: radial, peak to valley. */
export function lobesInJaws({
  use,
  about,
  ring: { R, t, length },
  grade,
  jaws,
  gripped,
  force,
}: {
  readonly use: Notebook['use']
  readonly about: About
  readonly ring: HeldRing
  readonly grade: string
  readonly jaws: BoredJaws
  /** How much of the length the jaws are on. */
  readonly gripped: Told<Millimetre>
  /** Of each jaw. */
  readonly force: Told<Newton>
}): Millimetre {
  const b = use(loadedLength, { l_j: gripped, ...told(WALL, { R, L: length }) }, about)
  const { E, source } = elasticModulusOf(grade)
  const pressed = {
    F: force,
    ...told(WALL, { R, t }),
    ...told(worked(`${loadedLength.symbol}, ${loadedLength.meaning}`), { b }),
    ...told(fromHandbook(source), { E }),
    ...told(PRACTICE, { N: HOLDING.jaws }),
  }
  return use(
    lobing,
    {
      delta_L: use(inwardAtJaw, pressed, about),
      delta_M: use(outwardBetweenJaws, pressed, about),
      k: use(arcFactor, told(PRACTICE, { arc: JAWS[jaws].arc }), about),
    },
    about,
  )
}
