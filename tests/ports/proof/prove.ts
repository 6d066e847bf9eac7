import type { Manifold } from 'manifold-3d'
import type { NcProgram } from '../../../src/nc/nc-programs.ts'
import type { PlannedPort, PortWindow } from '../../../src/ports/port.ts'
import type { AsMilled } from '../../../src/stock/stock.ts'
import { type Move, type NcRead, readNc } from './nc-reader.ts'
import { boreOf, CrossSection, intoPart, outOfPart, Solid, swept, tiltOf } from './solids.ts'
import { leastOver, type Stand, struckBy, topAt } from './stand-clear.ts'

export type Measured = { readonly azimuth: number; readonly depth: number }
export type Proof = {
  /** Points of the windows' edges on the finished bore, below the finished top face. */
  readonly edges: readonly Measured[]
  /** mm³ of the blank taken outside the windows; and by rapid moves. */
  readonly strayVolume: number
  readonly rapidVolume: number
  /** mm³ of part and fixture in which shank, holder, spindle or head stand, or of the fixture in which the cutter does. */
  readonly struckVolume: number
  /** Least that a tip stands over all that tilts while it goes across, while the rotary turns and while the plate tilts, mm. */
  readonly over: number
}

/** Runs the programs on the blank, bores it to size and looks at what is left. */
export function prove(
  programs: readonly NcProgram[],
  ports: readonly PlannedPort[],
  asMilled: AsMilled,
  finished: number,
  stand: Stand,
): Proof {
  const { blank } = stand
  const used: Manifold[] = []
  const keep = (solid: Manifold): Manifold => {
    used.push(solid)
    return solid
  }
  let solid = blank
  let [rapidVolume, strayVolume, struckVolume] = [0, 0, 0]
  const reads = programs.map(({ text }) => readNc(text))
  for (const read of reads) {
    const diameter = Number(read.head.get('cutter'))
    const top = topAt(stand, read.head, tiltOf(read))
    for (const rotary of new Set(read.moves.map(move => move.rotary))) {
      if (Number.isNaN(rotary)) continue
      const back = intoPart(read, rotary)
      const moved = read.moves.filter(move => move.rotary === rotary && Number.isFinite(move.from.x + move.from.z))
      // On the way in nothing is cut yet; on the way out the window is.
      const down = moved.filter(({ from, to }) => Math.min(from.z, to.z) < top)
      const rapids = moved.filter(({ rapid }) => rapid)
      const takenBy = (moves: readonly Move[]): number => {
        // A hair thinner, since on its way out the cutter touches the walls that it has just cut.
        const body = keep(swept(moves, diameter - 0.004).transform(back))
        return Math.abs(keep(solid.intersect(body)).volume())
      }
      rapidVolume += takenBy(rapids.filter(({ from, to }) => to.z <= from.z))
      const cut = keep(
        swept(
          moved.filter(({ rapid }) => !rapid),
          diameter,
        ).transform(back),
      )
      const [taken, left] = solid.split(cut).map(keep)
      if (!taken || !left) throw new Error('the solid could not be split')
      solid = left
      rapidVolume += takenBy(rapids.filter(({ from, to }) => to.z > from.z))
      const here = keep(solid.transform(outOfPart(read.head, rotary, tiltOf(read))))
      for (const moves of byWindow(down)) struckVolume += struckBy(stand, read, moves, here)
      const windows = ports.flatMap(port => port.windows).filter(window => isHere(window, read, rotary))
      const allowed = keep(Solid.union(windows.map(prismOf)).transform(back))
      strayVolume += Math.abs(keep(taken.subtract(allowed)).volume())
    }
  }
  const bored = keep(solid.subtract(keep(boreOf(finished))))
  // A slug that was kept has come loose and fallen out.
  const pieces = bored.decompose().map(keep)
  const whole = pieces.reduce((a, b) => (b.volume() > a.volume() ? b : a))
  const edges = edgesOf(whole, finished / 2, asMilled)
  for (const solidOf of used) solidOf.delete()
  return { edges, strayVolume, rapidVolume, struckVolume, over: leastOver(reads, stand) }
}

/** The moves of each window, which its comment names, apart. */
function byWindow(moves: readonly Move[]): readonly (readonly Move[])[] {
  const windows = new Map<string, Move[]>()
  for (const move of moves) {
    const name = move.about.findLast(words => / at -?[\d.]+$/.test(words)) ?? ''
    windows.set(name, [...(windows.get(name) ?? []), move])
  }
  return [...windows.values()]
}

const isHere = (window: PortWindow, read: NcRead, rotary: number): boolean =>
  Math.abs(window.rotary - rotary) < 1e-3 && Math.abs(window.tilt - tiltOf(read)) < 1e-3

/** The window's outline, a hundredth larger, from above the blank down to before the far wall. */
function prismOf(window: PortWindow): Manifold {
  const outline = window.outline.cutterPlane.map(({ x, y }): [number, number] => [window.x + x, window.crossOffset + y])
  const low = window.plunge.zFarWall + 0.5
  return CrossSection.ofPolygons([outline])
    .offset(0.01, 'Round', 2, 64)
    .extrude(400 - low)
    .translate([0, 0, low])
}

/** Corners of the mesh on the finished bore, ends left out: they lie on the windows' edges. */
function edgesOf(solid: Manifold, radius: number, { shape, topStock }: AsMilled): readonly Measured[] {
  const { vertProperties, numProp } = solid.getMesh()
  const edges: Measured[] = []
  for (let i = 0; i < vertProperties.length; i += numProp) {
    const [x = 0, y = 0, z = 0] = vertProperties.slice(i, i + 3)
    const depth = -z - topStock
    const inside = depth > shape.top + 0.01 && depth < shape.bottom - 0.01
    if (inside && Math.abs(Math.hypot(x, y) - radius) < 1e-3) {
      edges.push({ azimuth: (Math.atan2(y, x) * 180) / Math.PI, depth })
    }
  }
  return edges
}
