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

export type Movement = { readonly z: Millimetre; readonly w: Millimetre }
export type Elastic = { readonly modulus: number; readonly poisson: number }

const LONGEST = 0.5

/**
 * How far a tube of several walls moves outward under the force of its case, along the axis. Each band is a ring on springs
 * that bend: `(D_s w'')'' + k w = p - M''`, with `D_s = E t³ / (12 (1 - nu²))`, `k = E t / R²`, `p = (1 - nu) (F_o + F_i) / R`
 * and the moment `M = F_o (t/2 - h_o/2) - F_i (t/2 - h_i/2)`. Beam elements of 0.5 mm or less, ends free. A face adds the ring
 * load `(1 - nu) F a / R`.
 *
 * Source: derived: thin shell free of axial force; against finite elements within 0.3 µm, but for a groove (0.7), a step (0.7)
 * and one wall of a free end (1.3). Range: R/t from about 3; thicker walls are off by some 3 % at 5.
 */
export function shellOfBands(
  bands: readonly ShellBand[],
  faces: readonly FaceLoad[],
  { modulus: E, poisson: nu }: Elastic,
): readonly Movement[] {
  const zs: Millimetre[] = [bands[0]?.from ?? 0]
  const elements = bands.flatMap(band => {
    const count = Math.max(1, Math.ceil((band.to - band.from) / LONGEST - 1e-9))
    const l = (band.to - band.from) / count
    return Array.from({ length: count }, (_, index) => {
      zs.push(band.from + (index + 1) * l)
      return { band, l }
    })
  })
  const size = 2 * zs.length
  const K = new Float64Array(size * HALF)
  const load = new Float64Array(size)
  const add = (row: number, column: number, value: number) => {
    if (column <= row) K[row * HALF + (row - column)] = (K[row * HALF + (row - column)] ?? 0) + value
  }
  for (const [index, { band, l }] of elements.entries()) {
    const { R, t, outside, bore, land } = band
    const share = land ?? 1
    const D = (share * E * t ** 3) / (12 * (1 - nu ** 2) * l ** 3)
    const k = land === undefined ? (E * t * l) / (420 * R ** 2) : 0
    const p = land === undefined ? ((1 - nu) * (outside.F + bore.F)) / R : 0
    const M = share * (outside.F * (t / 2 - outside.h / 2) - bore.F * (t / 2 - bore.h / 2))
    const stiff = BENDING(l)
    const spring = BEDDING(l)
    for (let i = 0; i < 4; i++)
      for (let j = 0; j <= i; j++)
        add(2 * index + i, 2 * index + j, D * (stiff[i]?.[j] ?? 0) + k * (spring[i]?.[j] ?? 0))
    const forces = [(p * l) / 2, (p * l * l) / 12 + M, (p * l) / 2, -(p * l * l) / 12 - M]
    for (const [i, force] of forces.entries()) load[2 * index + i] = (load[2 * index + i] ?? 0) + force
  }
  for (const { at, F, height, R } of faces) {
    const node = nearest(zs, at)
    load[2 * node] = (load[2 * node] ?? 0) + ((1 - nu) * F * height) / R
  }
  const moved = solved(K, load, size)
  return zs.map((z, index) => ({ z, w: moved[2 * index] ?? 0 }))
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

/** Cholesky of a band matrix, then forward and back. */
function solved(K: Float64Array, load: Float64Array, size: number): Float64Array {
  const at = (row: number, column: number): number => K[row * HALF + (row - column)] ?? 0
  for (let row = 0; row < size; row++) {
    for (let column = Math.max(0, row - HALF + 1); column <= row; column++) {
      let sum = at(row, column)
      for (let k = Math.max(0, row - HALF + 1); k < column; k++) sum -= at(row, k) * at(column, k)
      K[row * HALF + (row - column)] = row === column ? Math.sqrt(sum) : sum / at(column, column)
    }
  }
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
