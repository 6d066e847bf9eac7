import type { PathStep } from '../pictures/picture.ts'

/**
 * Symbols of geometrical tolerances that the typeface lacks, as lines in a square of one em, y down from the top of a
 * capital letter (0) to the baseline (1). Shapes: ISO 1101, Table 1, drawn from memory.
 */
export const SYMBOLS: ReadonlyMap<string, readonly PathStep[]> = new Map([
  ['⏤', stroke([0.05, 0.5], [0.95, 0.5])],
  ['⟂', [...stroke([0.1, 0.95], [0.9, 0.95]), ...stroke([0.5, 0.95], [0.5, 0.05])]],
  ['⌖', [...ring(0.5, 0.5, 0.28), ...stroke([0, 0.5], [1, 0.5]), ...stroke([0.5, 0], [0.5, 1])]],
  ['⌭', [...ring(0.5, 0.5, 0.28), ...stroke([0.02, 0.95], [0.42, 0.05]), ...stroke([0.58, 0.95], [0.98, 0.05])]],
  ['⌒', arch()],
  ['⌓', [...arch(), { to: 'close' }]],
  ['⌯', [...stroke([0.2, 0.25], [0.8, 0.25]), ...stroke([0, 0.5], [1, 0.5]), ...stroke([0.2, 0.75], [0.8, 0.75])]],
  ['⌰', [...arrow(0), ...arrow(0.42), ...stroke([0.05, 0.95], [0.47, 0.95])]],
])

/** Splits a text where a drawn symbol stands. */
export const SYMBOL: RegExp = new RegExp(`([${[...SYMBOLS.keys()].join('')}])`, 'u')
/** Width of a drawn symbol with the room beside it, in em; the drawing itself is as high as a capital. */
export const SYMBOL_WIDTH = 0.85
export const SYMBOL_HEIGHT = 0.72

type Spot = readonly [number, number]

function stroke([x, y]: Spot, ...rest: readonly Spot[]): PathStep[] {
  return [{ to: 'move', x, y }, ...rest.map(([x, y]): PathStep => ({ to: 'line', x, y }))]
}

/** Four cubic curves; 0.5523 of the radius puts the handles where the circle is met to 0.03 %. */
function ring(x: number, y: number, r: number): PathStep[] {
  const k = 0.5523 * r
  const quarter = ({
    x1,
    y1,
    x2,
    y2,
    x,
    y,
  }: {
    readonly x1: number
    readonly y1: number
    readonly x2: number
    readonly y2: number
    readonly x: number
    readonly y: number
  }): PathStep => {
    return { to: 'curve', x1, y1, x2, y2, x, y }
  }
  return [
    { to: 'move', x: x + r, y },
    quarter({ x1: x + r, y1: y + k, x2: x + k, y2: y + r, x, y: y + r }),
    quarter({ x1: x - k, y1: y + r, x2: x - r, y2: y + k, x: x - r, y }),
    quarter({ x1: x - r, y1: y - k, x2: x - k, y2: y - r, x, y: y - r }),
    quarter({ x1: x + k, y1: y - r, x2: x + r, y2: y - k, x: x + r, y }),
    { to: 'close' },
  ]
}

function arch(): PathStep[] {
  return [
    { to: 'move', x: 0.05, y: 0.75 },
    { to: 'curve', x1: 0.05, y1: 0.05, x2: 0.95, y2: 0.05, x: 0.95, y: 0.75 },
  ]
}

function arrow(x: number): PathStep[] {
  return [...stroke([x + 0.05, 0.95], [x + 0.5, 0.08]), ...stroke([x + 0.2, 0.28], [x + 0.5, 0.08], [x + 0.54, 0.44])]
}
