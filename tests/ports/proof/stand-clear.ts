import type { Box, Manifold } from 'manifold-3d'
import { parse } from 'yaml'
import type { Plan } from '../../../src/plan/plan.ts'
import { namedToGet } from '../../../src/shop/tools-to-get.ts'
import type { AsMilled } from '../../../src/stock/stock.ts'
import type { Move, NcRead, Place } from './nc-reader.ts'
import { blankOf, CrossSection, FAR, outOfPart, Solid, swept, tiltOf, turnedBy } from './solids.ts'

type ToolAsListed = {
  readonly name: string
  readonly shank?: number
  'flute-length': number
  readonly diameter: number
}
type ShopAsWritten = {
  readonly tools: readonly ToolAsListed[]
  readonly fixture: {
    readonly holder: { diameter: number; length: number; 'spindle-diameter': number }
    readonly chuck: { diameter: number; length: number }
    readonly rotary?: { diameter: number; length: number }
    readonly plate?: { from: number; to: number; width: number; top: number; thickness?: number }
    readonly head?: { diameter: number; 'spindle-length': number }
    readonly 'pivot-height': number
  }
}

/** What stands on the tilting plate, and what hangs from the spindle, built from the shop file as it was written. */
export type Stand = {
  /** At zero tilt in the machine: what holds the part. */
  readonly holding: Manifold
  readonly blank: Manifold
  readonly shop: ShopAsWritten
}

export function standOf(shopText: string, plan: Plan, asMilled: AsMilled): Stand {
  const shop = parse(shopText) as ShopAsWritten
  const { fixture } = shop
  const grip = plan.fixture?.grip
  if (!grip) throw new Error('nothing holds the part')
  const round = (diameter: number, from: number, to: number): Manifold =>
    Solid.cylinder(to - from, diameter / 2, diameter / 2, 96)
      .rotate(0, 90, 0)
      .translate(from, 0, fixture['pivot-height'])
  const face = grip.chuckFace
  const behind = face - fixture.chuck.length
  const { rotary, plate } = fixture
  const holding = Solid.union([
    // A tube: what the jaws hold of the part stands in it.
    round(fixture.chuck.diameter, behind, face).subtract(round(grip.diameter + 0.02, behind - 1, face + 1)),
    ...(rotary ? [round(rotary.diameter, behind - rotary.length, behind)] : []),
    ...(plate
      ? [
          Solid.cube([plate.to - plate.from, plate.width, plate.thickness ?? 20]).translate(
            plate.from,
            -plate.width / 2,
            plate.top - (plate.thickness ?? 20),
          ),
        ]
      : []),
  ])
  return { holding, blank: blankOf(asMilled), shop }
}

/** Highest place of all that tilts, whatever the rotary stands at: the blank is round. */
export function topAt({ holding, blank }: Stand, head: NcRead['head'], tilt: number): number {
  const tops = [holding.transform(turnedBy(tilt)), blank.transform(outOfPart(head, 0, tilt))].map(solid => {
    const { max } = solid.boundingBox()
    solid.delete()
    return max[2]
  })
  return Math.max(...tops)
}

/**
 * mm³ of part and fixture that holder, spindle and head stand in while one window is cut, and of the fixture that the cutter
 * does, all of them wherever the path goes at the lowest place of it; and of the part that the shank does.
 */
export function struckBy(stand: Stand, read: NcRead, moves: readonly Move[], part: Manifold): number {
  const { head } = read
  const { fixture, tools } = stand.shop
  const tool = tools.find(({ name }) => name === head.get('tool')) ?? toGet(head.get('tool') ?? '')
  if (!tool) throw new Error(`the shop has no ${head.get('tool')}`)
  const out = Number(head.get('stick-out'))
  const flutes = tool['flute-length']
  const { holder } = fixture
  const steps = [
    [holder.diameter, out],
    [holder['spindle-diameter'], out + holder.length],
    ...(fixture.head ? [[fixture.head.diameter, out + holder.length + fixture.head['spindle-length']]] : []),
  ]
  const places = moves.flatMap(({ from, to }) => [from, to])
  const low = Math.min(...places.map(({ z }) => z))
  // A window is milled about its middle: the convex outline of the whole path is the widest that anything sweeps.
  const outline = CrossSection.hull([[...places.map(({ x, y }): [number, number] => [x, y]), ...shifted(places)]])
  const round = (diameter: number, above: number): Manifold =>
    outline
      .offset(diameter / 2, 'Round', 2, 48)
      .extrude(FAR - low - above)
      .translate(0, 0, low + above)
  const used: Manifold[] = []
  const keep = (solid: Manifold): Manifold => {
    used.push(solid)
    return solid
  }
  const holding = keep(stand.holding.transform(turnedBy(tiltOf(read))))
  const hung = keep(Solid.union(steps.map(([diameter = 0, above = 0]) => keep(round(diameter, above)))))
  const cutter = keep(round(Number(head.get('cutter')), 0))
  // The tip follows the wall, so the shank goes as deep as its flutes let it only here and there: move by move.
  const raised = moves.map(move => ({ ...move, from: over(move.from, flutes), to: over(move.to, flutes) }))
  const shank = (tool.shank ?? tool.diameter) - HAIR
  const shankOver = (solid: Manifold): Manifold => {
    const boxes = solid.decompose().map(piece => keep(piece).boundingBox())
    return keep(
      swept(
        raised.filter(move => boxes.some(box => mayTouch(box, move, shank))),
        shank,
        SHANK_SIDES,
      ),
    )
  }
  const struck = [
    keep(Solid.union([hung, shankOver(part)])).intersect(part),
    keep(Solid.union([hung, shankOver(holding), cutter])).intersect(holding),
  ].map(keep)
  const volume = struck.reduce((sum, solid) => sum + Math.abs(solid.volume()), 0)
  for (const solid of used) solid.delete()
  return volume
}

/** A tool that the works lacks and the plan names to get, as a shop file would list it. */
function toGet(wanted: string): ToolAsListed | undefined {
  const tool = namedToGet(wanted)
  if (!tool || !('fluteLength' in tool && 'shank' in tool)) return undefined
  const { name, diameter, shank, fluteLength } = tool
  return { name, diameter, shank, 'flute-length': fluteLength }
}

/** Whether a round tool, from its face upward, may touch on a move what lies within a box. */
const mayTouch = (
  { min: [left, near], max: [right, far, top] }: Box,
  { from, to }: Pick<Move, 'from' | 'to'>,
  diameter: number,
): boolean =>
  Math.min(from.z, to.z) < top &&
  Math.min(from.x, to.x) - diameter < right &&
  Math.max(from.x, to.x) + diameter > left &&
  Math.min(from.y, to.y) - diameter < far &&
  Math.max(from.y, to.y) + diameter > near

/** Its polygon stands out by as much at its corners. */
const [SHANK_SIDES, HAIR] = [16, 0.06]

const over = ({ x, y, z }: Place, by: number): Place => ({ x, y, z: z + by })

/** A hair beside: a drill goes down at one place, which has no outline. */
const shifted = (places: readonly Place[]): [number, number][] =>
  places.slice(0, 1).flatMap(({ x, y }): [number, number][] => [
    [x + 1e-3, y],
    [x, y + 1e-3],
  ])

/**
 * Least that the tip stands over the highest of all that tilts: on every move across and at every turn of the rotary; and,
 * from where one program leaves it, while the plate goes to the tilt of the next and at the end back to 0.
 */
export function leastOver(reads: readonly NcRead[], stand: Stand): number {
  let [tilt, z, least] = [0, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]
  let head: NcRead['head'] | undefined
  const tops = new Map<string, number>()
  const top = (at: number): number => {
    const key = at.toFixed(2)
    const known = tops.get(key) ?? topAt(stand, head ?? new Map(), at)
    tops.set(key, known)
    return known
  }
  const goTo = (next: number): void => {
    const steps = Math.ceil(Math.abs(next - tilt))
    for (let step = 1; step <= steps; step++) least = Math.min(least, z - top(tilt + ((next - tilt) * step) / steps))
    tilt = next
  }
  for (const read of reads) {
    head = read.head
    goTo(tiltOf(read))
    for (const { at } of read.turns) least = Math.min(least, at.z - top(tilt))
    for (const { rapid, from, to } of read.moves) {
      const across = from.x !== to.x || from.y !== to.y
      if (rapid && across && Number.isFinite(from.x)) least = Math.min(least, Math.min(from.z, to.z) - top(tilt))
    }
    z = read.endsAt
    // A tilt axis is brought back by the program itself.
    if (read.tilts.length > 1) goTo(0)
  }
  goTo(0)
  return least
}
