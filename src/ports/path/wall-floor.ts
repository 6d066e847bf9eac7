import type { Millimetre } from '../../units.ts'
import type { PortWindow } from '../port.ts'
import { arcFor, floorAlong, roundTheWall, type WallLine, wallLoops } from './along-wall.ts'
import { apart, type Flat } from './closed-line.ts'
import { cornerLines, type Rounded } from './corners.ts'
import type { Floor } from './floors.ts'
import { remembered } from './remembered.ts'
import type { CutShape, TimingSide } from './tool-path.ts'

export type AlongWall = Exclude<CutShape, { kind: 'flat' | 'wind down' | 'drill' | 'rough' | 'cut through' }>

/**
 * The ways of a cut along the wall at one level: of finishing one, of corners one for each, which goes down all its levels
 * before the next.
 */
export const wallFloors = (window: PortWindow, shape: AlongWall): readonly Floor[] =>
  remembered(window, `floors ${wayOf(shape)}`, () =>
    linesOf(window, shape).map(lines => {
      const cleared = 'after' in shape ? wallLoops(window, shape.after, shape.rounded) : []
      return floorAlong(window, { cutter: shape.cutter, arc: shape.arc, cleared }, lines)
    }),
  )

/** Finishing and spring pass go one way, at whatever feeds and levels. */
function wayOf({ kind, levels: _levels, downShare: _down, clearShare: _clear, ...way }: AlongWall): string {
  return JSON.stringify({ ...way, kind: kind.replace('spring', 'finish') })
}

function linesOf(window: PortWindow, shape: AlongWall): readonly (readonly WallLine[])[] {
  switch (shape.kind) {
    case 'finish':
    case 'spring':
      return [roundTheWall(window, shape.cutter, shape.rounded)]
    case 'clear corners':
      return clearingLines(window, shape.cutter, shape, shape.stocks)
    default:
      return cornerLines(window, shape.cutter, shape).map(line => [line])
  }
}

/** Corner by corner; in each the thickest stock first. */
function clearingLines(
  window: PortWindow,
  cutter: Millimetre,
  { after, rounded }: Rounded,
  stocks: readonly Millimetre[],
): readonly (readonly WallLine[])[] {
  const at = (stock: Millimetre): readonly WallLine[] => cornerLines(window, cutter, { after, rounded, stock })
  const ways = stocks.flatMap(at)
  // The least stock has the most corners.
  const corners = at(stocks.at(-1) ?? 0)
  const cornerOf = (way: WallLine): number => {
    const offs = corners.map(corner => apart(middleOf(corner), middleOf(way)))
    return offs.indexOf(Math.min(...offs))
  }
  return corners.map((_, i) => ways.filter(way => cornerOf(way) === i))
}

const middleOf = (line: WallLine): Flat => line[Math.floor(line.length / 2)] ?? { x: 0, y: 0 }
/** Largest arcs on which a cutter comes to the wall that it finishes and leaves it. */
export const finishArc = (window: PortWindow, cutter: Millimetre, rounded?: Millimetre): Millimetre =>
  remembered(window, `arc ${cutter} ${rounded}`, () => arcFor(window, cutter, roundTheWall(window, cutter, rounded)))

/** The same in corners. */
export const cornerArc = (
  window: PortWindow,
  cutter: Millimetre,
  left: Rounded & { readonly timing: TimingSide },
): Millimetre =>
  remembered(window, `arc in corners ${cutter} ${JSON.stringify(left)}`, () =>
    arcFor(window, cutter, cornerLines(window, cutter, left)),
  )
