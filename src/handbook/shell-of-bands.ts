import type { Millimetre } from '../units.ts'

/** A length of tube with one wall and one case, between two places along the axis. */
export type ShellBand = {
  readonly from: Millimetre
  readonly to: Millimetre
  /** Mean radius. */
  readonly R: Millimetre
  readonly t: Millimetre
  /** Force of the case for each mm, N/mm, and its depth: outside and in the bore. */
  readonly outside: { readonly F: number; readonly h: Millimetre }
  readonly bore: { readonly F: number; readonly h: Millimetre }
  /** Share of the circumference that is metal, where windows break the ring: it then bears no hoop force. */
  readonly land?: number
}

/** The case on a face that stands across the axis: it widens the ring that it lies on. */
export type FaceLoad = {
  readonly at: Millimetre
  /** Force of the case, N/mm, radial height of the face and its middle radius. */
  readonly F: number
  readonly height: Millimetre
  readonly R: Millimetre
}

/** The wall of a band, whatever case it takes. */
type ShellWall = Omit<ShellBand, 'outside' | 'bore'>

/** How far a shell moves under the case of its bands, walled as it is, and under that of its faces. */
export type ShellUnder = (bands: readonly ShellBand[], faces: readonly FaceLoad[]) => readonly Movement[]

export type Movement = { readonly z: Millimetre; readonly w: Millimetre }
export type Elastic = { readonly modulus: number; readonly poisson: number }

const LONGEST = 0.5

/**
 * How far a tube of several walls moves outward under the force of its case, along the axis. Each band is a ring on springs
 * that bend: `(D_s w'')'' + k w = p - M''`, with `D_s = E t³ / (12 (1 - nu²))`, `k = E t / R²`, `p = (1 - nu) (F_o + F_i) / R`
 * and the moment `M = F_o (t/2 - h_o/2) - F_i (t/2 - h_i/2)`. Beam elements of 0.5 mm or less, ends free. A face adds the ring
 * load `(1 - nu) F a / R`. What resists is the same for every case of one tube: it is worked out once.
 *
 * Source: derived: thin shell free of axial force; against finite elements within 0.3 µm, but for a groove (0.7), a step (0.7)
 * and one wall of a free end (1.3). Range: R/t from about 3; thicker walls are off by some 3 % at 5.
 */
export function shellOfBands(walls: readonly ShellWall[], { modulus: E, poisson: nu }: Elastic): ShellUnder {
  const zs: Millimetre[] = [walls[0]?.from ?? 0]
  const elements = walls.flatMap((wall, of) => {
    const count = Math.max(1, Math.ceil((wall.to - wall.from) / LONGEST - 1e-9))
    const l = (wall.to - wall.from) / count
    return Array.from({ length: count }, (_, index) => {
      zs.push(wall.from + (index + 1) * l)
      return { wall, of, l }
    })
  })
  const size = 2 * zs.length
  const K = new Float64Array(size * HALF)
  for (const [index, { wall, l }] of elements.entries()) {
    const { R, t, land } = wall
    const D = ((land ?? 1) * E * t ** 3) / (12 * (1 - nu ** 2) * l ** 3)
    const k = land === undefined ? (E * t * l) / (420 * R ** 2) : 0
    const stiff = BENDING(l)
    const spring = BEDDING(l)
    for (let i = 0; i < 4; i++)
      for (let j = 0; j <= i; j++) {
        const at = (2 * index + i) * HALF + (i - j)
        K[at] = (K[at] ?? 0) + (D * (stiff[i]?.[j] ?? 0) + k * (spring[i]?.[j] ?? 0))
      }
  }
  factorise(K, size)
  return (bands, faces) => {
    const load = new Float64Array(size)
    const push = (row: number, force: number) => {
      load[row] = (load[row] ?? 0) + force
    }
    for (const [index, { of, l }] of elements.entries()) {
      const band = bands[of]
      if (!band) continue
      const { R, t, outside, bore, land } = band
      const p = land === undefined ? ((1 - nu) * (outside.F + bore.F)) / R : 0
      const M = (land ?? 1) * (outside.F * (t / 2 - outside.h / 2) - bore.F * (t / 2 - bore.h / 2))
      push(2 * index, (p * l) / 2)
      push(2 * index + 1, (p * l * l) / 12 + M)
      push(2 * index + 2, (p * l) / 2)
      push(2 * index + 3, -(p * l * l) / 12 - M)
    }
    for (const { at, F, height, R } of faces) push(2 * nearest(zs, at), ((1 - nu) * F * height) / R)
    const moved = solved(K, load, size)
    return zs.map((z, index) => ({ z, w: moved[2 * index] ?? 0 }))
  }
}

/**
 * A tube no longer than two of these has no middle that its ends leave alone: mm.
 * Source: derived; `pi / beta` with `beta = (3 (1 - nu²))^(1/4) / sqrt(R t)`.
 */
export const endsReach = ({ R, t }: Pick<ShellBand, 'R' | 't'>, { poisson: nu }: Elastic): Millimetre =>
  (Math.PI * Math.sqrt(R * t)) / (3 * (1 - nu ** 2)) ** (1 / 4)

/**
 * How an even tube moves outward when the case of one side is ground away: `F` is what goes along the circumference, N/mm, with
 * the core's share; `t` and `R` are those of what is left, `lever` is half of the wall before. Any length.
 */
export function releaseOf({ side, F, R, t, lever, length }: Released, elastic: Elastic): readonly Movement[] {
  // The moment of a layer is F (t/2 - h/2): a depth of t less the wall before gives it the lever of that wall.
  const gone = { F: -F, h: t - 2 * lever }
  const none = { F: 0, h: 0 }
  const sides = side === 'outside' ? { outside: gone, bore: none } : { outside: none, bore: gone }
  const bands = [{ from: 0, to: length, R, t, ...sides }]
  return shellOfBands(bands, elastic)(bands, [])
}

type Released = {
  readonly side: 'outside' | 'bore'
  readonly F: number
  readonly R: Millimetre
  readonly t: Millimetre
  readonly lever: Millimetre
  readonly length: Millimetre
}

/** Of the matrix a row keeps its diagonal and the three before it. */
const HALF = 4

const BENDING = (l: number): readonly (readonly number[])[] => [
  [12],
  [6 * l, 4 * l * l],
  [-12, -6 * l, 12],
  [6 * l, 2 * l * l, -6 * l, 4 * l * l],
]

const BEDDING = (l: number): readonly (readonly number[])[] => [
  [156],
  [22 * l, 4 * l * l],
  [54, 13 * l, 156],
  [-13 * l, -3 * l * l, -22 * l, 4 * l * l],
]

function nearest(zs: readonly Millimetre[], at: Millimetre): number {
  let best = 0
  for (const [index, z] of zs.entries()) if (Math.abs(z - at) < Math.abs((zs[best] ?? 0) - at)) best = index
  return best
}

/** Cholesky of a band matrix, in its place. */
function factorise(K: Float64Array, size: number): void {
  for (let row = 0; row < size; row++) {
    const own = row * HALF + row
    const least = Math.max(0, row - HALF + 1)
    for (let column = least; column <= row; column++) {
      const other = column * HALF + column
      let sum = K[own - column] ?? 0
      for (let k = least; k < column; k++) sum -= (K[own - k] ?? 0) * (K[other - k] ?? 0)
      K[own - column] = row === column ? Math.sqrt(sum) : sum / (K[other - column] ?? 0)
    }
  }
}

/** Forward and back through the factor. */
function solved(K: Float64Array, load: Float64Array, size: number): Float64Array {
  const at = (row: number, column: number): number => K[row * HALF + (row - column)] ?? 0
  const x = Float64Array.from(load)
  for (let row = 0; row < size; row++) {
    let sum = x[row] ?? 0
    for (let k = Math.max(0, row - HALF + 1); k < row; k++) sum -= at(row, k) * (x[k] ?? 0)
    x[row] = sum / at(row, row)
  }
  for (let row = size - 1; row >= 0; row--) {
    let sum = x[row] ?? 0
    for (let k = row + 1; k < Math.min(size, row + HALF); k++) sum -= at(k, row) * (x[k] ?? 0)
    x[row] = sum / at(row, row)
  }
  return x
}
