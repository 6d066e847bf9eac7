import { hardnessAtDepth, profileScale, SHAPE } from '../handbook/hardness-profile.ts'
import { known } from '../known.ts'
import type { Spread } from '../limits.ts'
import type { Millimetre } from '../units.ts'
import { type About, type Notebook, SCRATCH } from '../working.ts'
import type { CaseFigures } from './case-figures.ts'
import type { CasePlan, HardnessAfter, HardnessBand } from './case-plan.ts'

/** The three profiles through one surface hardness and one limit hardness at the depth. */
export type CaseProfile = {
  readonly at: (depth: Millimetre) => HardnessBand
  /** With workings. */
  readonly noted: (notebook: Notebook, depth: Millimetre, about: About) => HardnessBand
}

type Shape = keyof typeof SHAPE
const SHAPES = Object.keys(SHAPE) as readonly Shape[]

/** Requires a limit hardness between core and surface. Depths outside the metal count as the surface. */
export function caseProfile(notebook: Notebook, { surface, core, limit }: CaseFigures, N: Millimetre): CaseProfile {
  const H_s = known(surface.usual, 'HV', surface)
  const p = (limit - core.value) / (H_s.value - core.value)
  const scales = Object.fromEntries(
    SHAPES.map(shape => [
      shape,
      notebook.use(profileScale, { N, p, n: SHAPE[shape] }, { about: `case, ${shape} model` }),
    ]),
  ) as Record<Shape, number>
  const given = (shape: Shape, depth: Millimetre) => ({
    H_s,
    H_c: core,
    z: Math.max(0, depth),
    w: scales[shape],
    n: SHAPE[shape],
  })

  return {
    at: depth => band(shape => SCRATCH.use(hardnessAtDepth, given(shape, depth))),
    noted: (book, depth, { about, ...where }) =>
      band(shape => book.use(hardnessAtDepth, given(shape, depth), { ...where, about: `${about}, ${shape} model` })),
  }
}

/** Beyond the hardness depth the models' order turns round: low and high are what they say, not which model says it. */
function band(hardness: (shape: Shape) => number): HardnessBand {
  const low = hardness('low')
  const expected = hardness('expected')
  const high = hardness('high')
  return { low: Math.min(low, expected, high), expected, high: Math.max(low, expected, high) }
}

/** For the curve: from the surface to one and a half times the depth. */
export function profilePoints({ at }: CaseProfile, N: Millimetre): CasePlan['profile'] {
  const steps = 60
  return Array.from({ length: steps + 1 }, (_, index) => {
    const depth = (1.5 * N * index) / steps
    return { depth, ...at(depth) }
  })
}

export function hardnessAfter(
  notebook: Notebook,
  profile: CaseProfile,
  removal: readonly ({ readonly surface: string } & Spread)[],
): readonly HardnessAfter[] {
  return removal.map(({ surface, least, nominal, most }) => ({
    surface,
    off: { least, nominal, most },
    least: profile.at(least),
    nominal: profile.at(nominal),
    most: profile.noted(notebook, most, { about: `${surface}, where most comes off` }),
  }))
}
