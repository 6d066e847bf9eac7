import type { Limits } from '../limits.ts'
import { middleOf, toleranceOf } from '../limits.ts'
import type { Millimetre } from '../units.ts'

/** One cut of a tolerance chart: from the face that locates to the face that is cut. */
export type WorkingDimension = {
  readonly kind: 'cut'
  readonly symbol: string
  readonly operation: number
  readonly from: string
  readonly to: string
  /** Whether the face that is cut lies below the one that locates, or above. */
  readonly direction: 'down' | 'up'
  readonly limits: Limits
}

/** Free growth in hardening: treated faces that look up rise by it, faces that look down sink by it. */
export type FaceGrowth = {
  readonly kind: 'growth'
  readonly symbol: string
  readonly operation: number
  readonly up: readonly string[]
  readonly down: readonly string[]
  readonly limits: Limits
}

/** The stretch along the length in hardening, a fraction: every face sinks by it times its distance from the top face. */
export type Stretch = {
  readonly kind: 'stretch'
  readonly symbol: string
  readonly operation: number
  readonly faces: readonly { readonly face: string; readonly depth: Millimetre }[]
  readonly limits: { readonly nominal: number; readonly lower: number; readonly upper: number }
}

export type ChartLine = WorkingDimension | FaceGrowth | Stretch

/** A length that the growth of each millimetre is taken over is written to the micrometre. */
const PLACES = 3

/** A sum of working dimensions, each times its coefficient: where a face stands, below the first face. */
type Sum = ReadonlyMap<string, number>

export type Resultant = {
  readonly name: string
  /** `W2 - W3 + W4`. */
  readonly expression: string
  readonly nominal: Millimetre
  /** Half widths: every term at its limit; root of the sum of squares. */
  readonly worstCase: Millimetre
  readonly rootSumSquare: Millimetre
}

export type ChartResult = {
  readonly stocks: readonly (Resultant & { readonly face: string; readonly operation: number })[]
  readonly distance: (from: string, to: string, name: string) => Resultant
}

/**
 * A tolerance chart: every face's place is traced through the cuts as a sum of working dimensions. What a cut takes off a
 * face is where the face was less where it is; a drawing dimension is the difference of two faces when all is done.
 *
 * Source: derived: geometry; root sum of squares memory: Chase, tolerance charting.
 */
export function axialChart(lines: readonly ChartLine[]): ChartResult {
  const limits = new Map(lines.map(line => [line.symbol, line.limits]))
  const order = lines.map(({ symbol }) => symbol)
  const places = new Map<string, Sum>()
  const placeOf = (face: string): Sum => {
    const place = places.get(face)
    if (!place) throw new Error(`face "${face}" has not been cut yet`)
    return place
  }
  const stocks: ChartResult['stocks'][number][] = []
  for (const line of lines) {
    if (line.kind === 'growth') {
      for (const face of line.up) places.set(face, plus(placeOf(face), line.symbol, -1))
      for (const face of line.down) places.set(face, plus(placeOf(face), line.symbol, 1))
      continue
    }
    if (line.kind === 'stretch') {
      for (const { face, depth } of line.faces) places.set(face, plus(placeOf(face), line.symbol, depth))
      continue
    }
    if (places.size === 0) places.set(line.from, new Map())
    const now = plus(placeOf(line.from), line.symbol, line.direction === 'down' ? 1 : -1)
    const before = places.get(line.to)
    // Metal lies below a face that looks up and above one that looks down; a cut always goes into it.
    if (before) {
      const into = line.direction === 'up' ? minus(now, before) : minus(before, now)
      stocks.push({
        ...resultant(`stock on ${line.to}`, into, limits, order),
        face: line.to,
        operation: line.operation,
      })
    }
    places.set(line.to, now)
  }
  return {
    stocks,
    distance: (from, to, name) => resultant(name, minus(placeOf(to), placeOf(from)), limits, order),
  }
}

function resultant(name: string, sum: Sum, limits: ReadonlyMap<string, Limits>, order: readonly string[]): Resultant {
  const terms = order.flatMap(symbol => {
    const coefficient = Number((sum.get(symbol) ?? 0).toFixed(6))
    const size = limits.get(symbol)
    return coefficient !== 0 && size ? [{ symbol, coefficient, size }] : []
  })
  const half = terms.map(({ coefficient, size }) => (Math.abs(coefficient) * toleranceOf(size)) / 2)
  return {
    name,
    expression: terms
      .map(({ symbol, coefficient }, index) => {
        const sign = coefficient < 0 ? (index === 0 ? '-' : ' - ') : index === 0 ? '' : ' + '
        const size = Number(Math.abs(coefficient).toFixed(PLACES))
        return `${sign}${size === 1 ? '' : `${size} * `}${symbol}`
      })
      .join(''),
    nominal: terms.reduce((total, { coefficient, size }) => total + coefficient * middleOf(size), 0),
    worstCase: half.reduce((total, width) => total + width, 0),
    rootSumSquare: Math.hypot(...half),
  }
}

const plus = (sum: Sum, symbol: string, by: number): Sum => new Map(sum).set(symbol, (sum.get(symbol) ?? 0) + by)

const minus = (a: Sum, b: Sum): Sum => [...b].reduce<Sum>((left, [symbol, by]) => plus(left, symbol, -by), a)
