import { PLATEAU_SHARE, plateauHardness, plateauMiddle, plateauWidth } from '../handbook/hardness-plateau.ts'
import { hardnessAtDepth, profileScale, SHAPE, SHAPE_SOURCE, shareOfRise } from '../handbook/hardness-profile.ts'
import { fromHandbook, known, told } from '../known.ts'
import type { Spread } from '../limits.ts'
import type { Millimetre, Vickers } from '../units.ts'
import { type About, type Notebook, SCRATCH } from '../working.ts'
import type { CaseFigures } from './case-figures.ts'
import { END, ORDERED, TAKEN } from './case-origins.ts'
import type { CasePlan, HardnessAfter, HardnessBand } from './case-plan.ts'

/**
 * Low, expected and high: the models' shapes, through the least, usual and most hardness of the surface, and all through
 * the limit hardness at the depth.
 */
export type CaseProfile = {
  readonly at: (depth: Millimetre) => HardnessBand
  /** With workings. */
  readonly noted: (notebook: Notebook, depth: Millimetre, about: About) => HardnessBand
}

type Shape = keyof typeof SHAPE
const SHAPES = Object.keys(SHAPE) as readonly Shape[]

/** Over the limit hardness, HV: a surface that is hardly over it has no curve to draw. */
const RISE = 20

type Curve = (notebook: Notebook, depth: Millimetre, about: About) => Vickers

/** Requires a limit hardness between core and surface. Depths outside the metal count as the surface. */
export function caseProfile({
  notebook,
  figures,
  N,
  surfaceLeast,
}: {
  readonly notebook: Notebook
  readonly figures: CaseFigures
  readonly N: Millimetre
  /** Of what is accepted as hardened. */
  readonly surfaceLeast: Vickers
}): CaseProfile {
  const { surface, limit, term } = figures
  const accepted = Math.min(surface.usual, Math.max(surface.least, surfaceLeast))
  const least = accepted > limit + RISE ? accepted : surface.usual
  const H_s: Readonly<Record<Shape, Vickers>> = { low: least, expected: surface.usual, high: surface.most }
  const curve = term === 'SHD' ? plateau : stretched
  const curves = Object.fromEntries(
    SHAPES.map(shape => [shape, curve({ notebook, figures, N, shape, H_s: H_s[shape] })]),
  ) as Record<Shape, Curve>
  return {
    at: depth => band(shape => curves[shape](SCRATCH, depth, { about: 'case' })),
    noted: (book, depth, { about, ...where }) =>
      band(shape => curves[shape](book, depth, { ...where, about: `${about}, ${shape} model` })),
  }
}

type CurveOf = {
  readonly notebook: Notebook
  readonly figures: CaseFigures
  readonly N: Millimetre
  readonly shape: Shape
  readonly H_s: Vickers
}

function stretched({ notebook, figures: { surface, core: H_c, limit }, N, shape, H_s: value }: CurveOf): Curve {
  const about = { about: `case, ${shape} model` }
  const H_s = known(value, 'HV', surface)
  const { n } = told(fromHandbook(SHAPE_SOURCE), { n: SHAPE[shape] })
  const p = notebook.use(shareOfRise, { ...told(END, { H: limit }), H_s, H_c }, about)
  const w = notebook.use(profileScale, { ...told(ORDERED, { N }), p, n }, about)
  return (book, depth, at) =>
    book.use(hardnessAtDepth, { H_s, H_c, ...told(TAKEN, { z: Math.max(0, depth) }), w, n }, at)
}

/** Hardened by induction: as hard as at the surface almost to the depth. */
function plateau({ notebook, figures: { surface, core: H_c, limit: H_L }, N, shape, H_s: value }: CurveOf): Curve {
  const about = { about: `case, ${shape} model` }
  const H_s = known(value, 'HV', surface)
  const q = notebook.use(plateauWidth, { SHD: N, H_s, H_c, H_L, p: PLATEAU_SHARE[shape] }, about)
  const z_0 = notebook.use(plateauMiddle, { SHD: N, H_s, H_c, H_L, q }, about)
  return (book, depth, at) => book.use(plateauHardness, { H_s, H_c, z: Math.max(0, depth), z_0, q }, at)
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
