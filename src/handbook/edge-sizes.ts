import { type Formula, formula, type Input } from '../formula.ts'

/**
 * Chamfers, leads and undercuts that are turned before their surface or their end is ground: cut larger, so that the drawing's
 * size is left. Stock and facing count as they come off, after growth; even growth lengthens a chamfer by less than 0.015 mm.
 */
const SOURCE = 'derived: geometry of a cone and the cylinder that is ground'

const c: Input<'mm'> = { meaning: 'length of the chamfer along the axis, finished', unit: 'mm', from: 0 }
const alpha: Input<'deg'> = { meaning: 'angle between surface and chamfer', unit: 'deg', over: 0, under: 90 }

export const chamferAsCut: Formula<{ c: 'mm'; s: 'mm'; alpha: 'deg'; f: 'mm' }, 'mm'> = formula({
  symbol: 'c_t',
  meaning: 'length of the chamfer as it is turned',
  unit: 'mm',
  expression: 'c + s / tan(alpha * pi / 180) + f',
  inputs: {
    c,
    s: { meaning: 'ground off the surface later, per side', unit: 'mm', from: 0 },
    alpha,
    f: { meaning: 'ground off the end later', unit: 'mm', from: 0 },
  },
  source: SOURCE,
  example: { given: { c: 1.5, s: 0.1, alpha: 15, f: 0.2 }, gives: 2.0732 },
  value: ({ c, s, alpha, f }) => c + s / Math.tan((alpha * Math.PI) / 180) + f,
})

/** Of an outside; a bore's is larger by as much. */
export const smallEnd: Formula<{ D: 'mm'; c: 'mm'; alpha: 'deg' }, 'mm'> = formula({
  symbol: 'd_c',
  meaning: 'small end of the chamfer',
  unit: 'mm',
  expression: 'D - 2 * c * tan(alpha * pi / 180)',
  inputs: { D: { meaning: 'diameter of the surface', unit: 'mm', over: 0 }, c, alpha },
  source: SOURCE,
  example: { given: { D: 55, c: 1.5, alpha: 15 }, gives: 54.196 },
  value: ({ D, c, alpha }) => D - 2 * c * Math.tan((alpha * Math.PI) / 180),
})

/** The run-out of an undercut of DIN 509 leaves the cylinder at 15°. */
export const undercutWidthAsCut: Formula<{ f: 'mm'; z: 'mm' }, 'mm'> = formula({
  symbol: 'f_t',
  meaning: 'width of the undercut as it is turned',
  unit: 'mm',
  expression: 'f + z / tan(pi / 12)',
  inputs: {
    f: { meaning: 'width along the finished surface', unit: 'mm', over: 0 },
    z: { meaning: 'ground off the surface later, per side', unit: 'mm', from: 0 },
  },
  source: 'derived: run-out of 15°; equals e1 of DIN 509, memory',
  example: { given: { f: 2.5, z: 0.1 }, gives: 2.8732 },
  value: ({ f, z }) => f + z / Math.tan(Math.PI / 12),
})
