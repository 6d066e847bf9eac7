import type { Millimetre } from '../units.ts'
import type { PlanePoint } from './cut-frame.ts'

/** A point of a curve with its first and second derivatives by the curve's parameter. */
export type Jet = PlanePoint & {
  readonly dl: number
  readonly db: number
  readonly ddl: number
  readonly ddb: number
}

/** A smooth piece of curve, parameter 0 to 1. */
export type Piece = (parameter: number) => Jet

/** A closed line in the plane of the cutter, counter-clockwise: l to the right, b up. */
export type Contour = readonly Piece[]

export const straight =
  (from: PlanePoint, to: PlanePoint): Piece =>
  parameter => {
    const dl = to.l - from.l
    const db = to.b - from.b
    return { l: from.l + parameter * dl, b: from.b + parameter * db, dl, db, ddl: 0, ddb: 0 }
  }

/** Counter-clockwise, angles in radians from +l. */
export const arc =
  (centre: PlanePoint, radius: Millimetre, from: number, to: number): Piece =>
  parameter => {
    const turn = to - from
    const angle = from + parameter * turn
    const l = radius * Math.cos(angle)
    const b = radius * Math.sin(angle)
    return {
      l: centre.l + l,
      b: centre.b + b,
      dl: -b * turn,
      db: l * turn,
      ddl: -l * turn ** 2,
      ddb: -b * turn ** 2,
    }
  }

/** A rectangle with rounded corners; sides that the corners use up altogether are left out. */
export function roundedRectangle(lower: PlanePoint, upper: PlanePoint, radius: Millimetre): Contour {
  const [left, right, floor, roof] = [lower.l + radius, upper.l - radius, lower.b + radius, upper.b - radius]
  const quarter = Math.PI / 2
  const across = right - left > 1e-12
  const up = roof - floor > 1e-12
  return [
    ...(across ? [straight({ l: left, b: lower.b }, { l: right, b: lower.b })] : []),
    arc({ l: right, b: floor }, radius, -quarter, 0),
    ...(up ? [straight({ l: upper.l, b: floor }, { l: upper.l, b: roof })] : []),
    arc({ l: right, b: roof }, radius, 0, quarter),
    ...(across ? [straight({ l: right, b: upper.b }, { l: left, b: upper.b })] : []),
    arc({ l: left, b: roof }, radius, quarter, 2 * quarter),
    ...(up ? [straight({ l: lower.l, b: roof }, { l: lower.l, b: floor })] : []),
    arc({ l: left, b: floor }, radius, 2 * quarter, 3 * quarter),
  ]
}

/**
 * The points of a contour, close enough together that no chord stands off it by more than the tolerance, and at least
 * `least` chords a piece that runs across, since a straight line of the plane is then curved on a cylinder. The first
 * point is not repeated.
 */
export function sampled(contour: Contour, tolerance: Millimetre, least = 6): readonly Jet[] {
  return contour.flatMap(piece => {
    const across = Math.abs(piece(0.5).dl) > 1e-9
    const chords = Math.max(across ? least : 1, ...[0, 0.5, 1].map(at => chordsFor(piece(at), tolerance)))
    return Array.from({ length: chords }, (_, i) => piece(i / chords))
  })
}

/** Chords for a whole piece that bends throughout as it does here: the sagitta of a chord c is c²·κ/8. */
function chordsFor(jet: Jet, tolerance: Millimetre): number {
  const speed = Math.hypot(jet.dl, jet.db)
  return speed === 0 ? 1 : Math.ceil(speed * Math.sqrt(Math.abs(curvature(jet)) / (8 * tolerance)))
}

/** Positive where the contour turns to the left: in the inside corners of a pocket. */
export const curvature = ({ dl, db, ddl, ddb }: Jet): number => (dl * ddb - db * ddl) / Math.hypot(dl, db) ** 3

/** Gauss-Legendre quadrature with eight points: Abramowitz and Stegun, table 25.4, abscissas and weights on (-1, 1). */
export const QUADRATURE: readonly (readonly [abscissa: number, weight: number])[] = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
]

/** A contour moved outward, square to itself. A jet's second derivative lacks what runs along the curve, which no curvature sees. */
export const offsetBy = (contour: Contour, by: Millimetre): Contour =>
  by === 0
    ? contour
    : contour.map(
        (piece): Piece =>
          parameter => {
            const { l, b, dl, db, ddl, ddb } = piece(parameter)
            const speed = Math.hypot(dl, db)
            const stretched = 1 + (by * (dl * ddb - db * ddl)) / speed ** 3
            return {
              l: l + (by * db) / speed,
              b: b - (by * dl) / speed,
              dl: stretched * dl,
              db: stretched * db,
              ddl: stretched * ddl,
              ddb: stretched * ddb,
            }
          },
      )
