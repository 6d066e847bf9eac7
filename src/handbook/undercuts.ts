import type { Millimetre } from '../units.ts'

export type UndercutRow = {
  readonly radius: Millimetre
  /** Below the cylinder, +0.1/0. */
  readonly depth: Millimetre
  /** Along the cylinder, +0.2/0. */
  readonly width: Millimetre
  /** On the face side. */
  readonly reach: Millimetre
  /** Form F: into the face, +0.05/0. */
  readonly face: Millimetre
}

/** Undercuts at shoulders. Form E relieves the cylinder, F cylinder and face. One row a radius and depth. */
export const UNDERCUTS: { readonly source: string; readonly rows: readonly UndercutRow[] } = {
  source: 'DIN 509:1998, extract',
  rows: [
    { radius: 0.2, depth: 0.1, width: 1, reach: 0.9, face: 0.1 },
    { radius: 0.4, depth: 0.2, width: 2, reach: 1.1, face: 0.1 },
    { radius: 0.6, depth: 0.2, width: 2, reach: 1.4, face: 0.1 },
    { radius: 0.6, depth: 0.3, width: 2.5, reach: 2.1, face: 0.2 },
    { radius: 0.8, depth: 0.3, width: 2.5, reach: 2.4, face: 0.2 },
    { radius: 1, depth: 0.2, width: 2.5, reach: 1.8, face: 0.1 },
    { radius: 1.2, depth: 0.2, width: 2.5, reach: 2, face: 0.1 },
    { radius: 1, depth: 0.4, width: 4, reach: 3.2, face: 0.3 },
    { radius: 1.2, depth: 0.4, width: 4, reach: 3.4, face: 0.3 },
    { radius: 1.6, depth: 0.3, width: 4, reach: 3.1, face: 0.2 },
  ],
}

/** Deviations of depth and width, and of the radius either way. Source as above. */
export const UNDERCUT_TOLERANCES = { depth: 0.1, width: 0.2, radius: 0.1 } as const

/** The row that a drawing names, `0.8 x 0.3`. */
export const undercutOf = (radius: Millimetre, depth: Millimetre): UndercutRow | undefined =>
  UNDERCUTS.rows.find(row => row.radius === radius && row.depth === depth)
