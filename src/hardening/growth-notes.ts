import type { Elastic } from '../handbook/shell-of-bands.ts'
import { bandStretch, wallMove } from '../handbook/wall-stretch.ts'
import { fromHandbook, told, worked } from '../known.ts'
import type { Part } from '../part/part.ts'
import { type Millimetre, micrometres } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { BandGrowth, ShareSpread } from './growth.ts'
import { sidesIn, type WallSection } from './walls-along.ts'

export type Stretching = {
  readonly sections: readonly WallSection[]
  readonly elastic: Elastic
  readonly stress: ShareSpread
  readonly depth: { readonly least: Millimetre; readonly most: Millimetre }
}

const microns = (value: Millimetre): string => micrometres(value).toFixed(1)

export function noteBand(
  notebook: Notebook,
  {
    name,
    side,
    growth,
    wallMoves,
    free,
  }: Omit<BandGrowth, 'surface' | 'takesCase'> & { readonly name: string; readonly free: Millimetre },
): void {
  const more = { about: `growth of ${name}`, unit: 'mm' }
  notebook.note({
    ...more,
    symbol: 'w',
    meaning: 'movement of the wall outward, mean over the band',
    value: wallMoves.nominal,
    expression: `${microns(wallMoves.least)} to ${microns(wallMoves.most)} µm along the band, over depth and stress`,
    source:
      'derived: shell equation, rings of 0.5 mm, every length with its own wall and case; held against finite elements',
  })
  notebook.note({
    ...more,
    symbol: 'g',
    meaning: side === 'outside' ? 'growth of the radius' : 'growth into the bore',
    value: growth.nominal,
    expression: `${microns(free)} ${side === 'outside' ? '+' : '-'} ${microns(wallMoves.nominal)} µm; ${microns(growth.least)} to ${microns(growth.most)} µm`,
    source: 'derived: free growth of the surface, and the wall that carries it',
  })
}

const HANDBOOK = fromHandbook('elastic constants of the material')
const CASE = worked('middle of the depth ordered, on a side that takes case')
const WALL = worked('wall by its nominal sizes')

/** The plain wall of every length, as if it were all there is: what the movement along the part levels out between. */
export function noteWall(
  notebook: Notebook,
  { part, sections, elastic, stress, depth }: Stretching & { readonly part: Part },
): void {
  const h = (depth.least + depth.most) / 2
  for (const section of sections) {
    const { outside, bore, treated, R, t } = section
    if (sidesIn(section) === 0) continue
    const on = { about: `wall of ${outside.name}${bore && part.bore.length > 1 ? ` over ${bore.name}` : ''}` }
    const epsilon = notebook.use(
      bandStretch,
      {
        ...told(HANDBOOK, { nu: elastic.poisson, E: elastic.modulus }),
        ...told(stress, { s_0: stress.nominal }),
        ...told(CASE, { h_o: treated.outside ? h : 0, h_i: treated.bore ? h : 0 }),
        ...told(WALL, { t }),
      },
      on,
    )
    notebook.use(wallMove, { ...told(WALL, { R }), epsilon }, on)
  }
}
