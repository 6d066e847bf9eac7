import { type Degree, type Millimetre, radians } from '../units.ts'
import { arc, type Contour, type Jet, type Piece, roundedRectangle, straight } from './contour.ts'
import { type CutFrame, nearWall, type PlanePoint } from './cut-frame.ts'

/** A window on the finished bore: side edges as azimuths from the cutter's side, edges as heights above the finished top face. */
export type BoreWindow = {
  readonly radius: Millimetre
  readonly from: Degree
  readonly to: Degree
  readonly floor: Millimetre
  readonly roof: Millimetre
}

/** Level edges and corners drawn on the developed bore, carried along the stream into the cutter's plane. */
export function levelContour(frame: CutFrame, window: BoreWindow, corner: Millimetre): Contour {
  const { radius, floor, roof } = window
  const developed = roundedRectangle(
    { l: radius * radians(window.from), b: floor },
    { l: radius * radians(window.to), b: roof },
    corner,
  )
  return developed.map(piece => alongStream(frame, radius, piece))
}

/** A curve on the developed bore (arc length, height) as the cutter sees it. */
const alongStream =
  (frame: CutFrame, radius: Millimetre, piece: Piece): Piece =>
  parameter => {
    const u = piece(parameter)
    const sin = Math.sin(u.l / radius)
    const cos = Math.cos(u.l / radius)
    const { dl, db, ddl, ddb } = u
    return {
      l: radius * sin,
      b: frame.sin * radius * cos + frame.cos * u.b,
      dl: cos * dl,
      db: -frame.sin * sin * dl + frame.cos * db,
      ddl: cos * ddl - (sin * dl ** 2) / radius,
      ddb: frame.sin * (-sin * ddl - (cos * dl ** 2) / radius) + frame.cos * ddb,
    }
  }

/** Level edges on the bore with corners rounded in the cutter's own plane. */
export function levelContourCutCorners(frame: CutFrame, window: BoreWindow, corner: Millimetre): Contour {
  const { radius } = window
  const right = radius * Math.sin(radians(window.to))
  const left = radius * Math.sin(radians(window.from))
  const fillet = (side: number, toward: 1 | -1, height: Millimetre, edge: 1 | -1): Fillet =>
    filletOf({ edge: levelEdge(frame, radius, height), side, toward, outward: edge, radius: corner })
  const [lowRight, highRight, highLeft, lowLeft] = [
    fillet(right, 1, window.floor, -1),
    fillet(right, 1, window.roof, 1),
    fillet(left, -1, window.roof, 1),
    fillet(left, -1, window.floor, -1),
  ]
  const turn = 2 * Math.PI
  return [
    levelPiece({ frame, radius, height: window.floor, from: lowLeft.onEdge, to: lowRight.onEdge }),
    arc(lowRight.centre, corner, lowRight.angle, 0),
    straight({ l: right, b: lowRight.centre.b }, { l: right, b: highRight.centre.b }),
    arc(highRight.centre, corner, 0, highRight.angle),
    levelPiece({ frame, radius, height: window.roof, from: highRight.onEdge, to: highLeft.onEdge }),
    arc(highLeft.centre, corner, highLeft.angle, turn / 2),
    straight({ l: left, b: highLeft.centre.b }, { l: left, b: lowLeft.centre.b }),
    arc(lowLeft.centre, corner, turn / 2, lowLeft.angle + turn),
  ]
}

/** Whether two fillets meet before the edge between them ends: the edges then run backward. */
export const filletsOverrun = (contour: Contour): boolean => {
  const [floor, , right, , roof, , left] = contour.map(piece => piece(0.5))
  return !(floor && right && roof && left && floor.dl > 0 && right.db > 0 && roof.dl < 0 && left.db < 0)
}

type Edge = (l: Millimetre) => { readonly b: Millimetre; readonly slope: number }
type Fillet = { readonly centre: PlanePoint; readonly angle: number; readonly onEdge: Millimetre }

const levelEdge =
  (frame: CutFrame, radius: Millimetre, height: Millimetre): Edge =>
  l => ({
    b: frame.sin * nearWall(radius, l) + frame.cos * height,
    slope: (-frame.sin * l) / nearWall(radius, l),
  })

/** The circle inside a side edge and a level edge: its centre is found by halving along the level edge. */
function filletOf({
  edge,
  side,
  toward,
  outward,
  radius,
}: {
  readonly edge: Edge
  readonly side: Millimetre
  readonly toward: 1 | -1
  readonly outward: 1 | -1
  readonly radius: Millimetre
}): Fillet {
  const wanted = side - toward * radius
  const centreFrom = (l: Millimetre): PlanePoint => {
    const { b, slope } = edge(l)
    const length = Math.hypot(1, slope)
    return { l: l + (outward * radius * slope) / length, b: b - (outward * radius) / length }
  }
  let [near, far] = [side - toward * 3 * radius, side]
  for (let halving = 0; halving < 60; halving++) {
    const middle = (near + far) / 2
    if (toward * (centreFrom(middle).l - wanted) < 0) near = middle
    else far = middle
  }
  const onEdge = (near + far) / 2
  const { slope } = edge(onEdge)
  return { centre: { l: wanted, b: centreFrom(onEdge).b }, angle: Math.atan2(outward, -outward * slope), onEdge }
}

const levelPiece =
  ({
    frame,
    radius,
    height,
    from,
    to,
  }: {
    readonly frame: CutFrame
    readonly radius: Millimetre
    readonly height: Millimetre
    readonly from: Millimetre
    readonly to: Millimetre
  }): Piece =>
  (parameter): Jet => {
    const dl = to - from
    const l = from + parameter * dl
    const n = nearWall(radius, l)
    return {
      l,
      b: frame.sin * n + frame.cos * height,
      dl,
      db: (-frame.sin * l * dl) / n,
      ddl: 0,
      ddb: (-frame.sin * radius ** 2 * dl ** 2) / n ** 3,
    }
  }
