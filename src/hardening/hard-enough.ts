import { depthForPlateau, PLATEAU_SHARE, surfaceForPlateau } from '../handbook/hardness-plateau.ts'
import { depthForHardness, SHAPE, SHAPE_SOURCE, shareOfRise, surfaceForHardness } from '../handbook/hardness-profile.ts'
import { fromHandbook, fromPart, known, type Origin, told, worked } from '../known.ts'
import type { Millimetre, Vickers } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { CaseFigures } from './case-figures.ts'
import { END, ORDERED, TAKEN } from './case-origins.ts'

const ASKED = fromPart('/hardening/hardness')
const RISE = worked(`${shareOfRise.symbol}, ${shareOfRise.meaning}`)

type Hardness = {
  readonly notebook: Notebook
  readonly figures: CaseFigures
  readonly hardness: Vickers
  readonly s: Millimetre
}

/** The depth that holds the hardness asked where s comes off, by the expected model and the usual surface. */
export function hardEnough({ notebook, figures: { term, surface, core, limit }, hardness, s }: Hardness): Millimetre {
  const about = { about: 'case' }
  const H_s = known(surface.usual, 'HV', surface)
  if (term === 'SHD') {
    const given = {
      ...told(TAKEN, { s }),
      ...told(ASKED, { H: hardness }),
      H_s,
      H_c: core,
      H_L: limit,
      p: PLATEAU_SHARE.expected,
    }
    return notebook.use(depthForPlateau, given, about)
  }
  const share = (H: number, origin: Origin) =>
    notebook.use(shareOfRise, { ...told(origin, { H }), H_s, H_c: core }, about)
  const shares = { p: share(limit, END), q: share(hardness, ASKED) }
  return notebook.use(
    depthForHardness,
    { ...told(TAKEN, { s }), ...told(RISE, shares), ...told(fromHandbook(SHAPE_SOURCE), { n: SHAPE.expected }) },
    about,
  )
}

/** Surface hardness is ordered in steps of this, HV: a reading is no closer. Common practice, no source. */
const HARDNESS_STEP = 10

/** What the surface must have as hardened, so that the hardness asked is left where s comes off a case of N. */
export function leastSurface({
  notebook,
  figures: { term, core, limit, surface },
  hardness,
  s,
  N,
}: Hardness & { readonly N: Millimetre }): Vickers {
  if (hardness <= core.value || s >= N) return hardness
  const about = { about: 'case' }
  const needed =
    term === 'SHD'
      ? notebook.use(surfaceForPlateau, { H: hardness, H_c: core }, about)
      : notebook.use(
          surfaceForHardness,
          {
            ...told(ASKED, { H: hardness }),
            H_c: core,
            ...told(END, { H_L: limit }),
            ...told(TAKEN, { s }),
            ...told(ORDERED, { N }),
            ...told(fromHandbook(SHAPE_SOURCE), { n: SHAPE.expected }),
          },
          about,
        )
  const stepped = Math.ceil(Math.max(needed, hardness) / HARDNESS_STEP - 1e-6) * HARDNESS_STEP
  return needed <= surface.usual ? Math.min(stepped, surface.usual) : stepped
}
