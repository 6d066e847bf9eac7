import type { EdgePoint, PlannedPort, PortWindow } from '../../src/ports/port.ts'
import { degrees, radians, wrapped } from '../../src/units.ts'

const BORE = 24
const BORE_AS_MILLED = 23.9
const OUTSIDE = 27.6
const TOP_STOCK = 0.15

/** A window of the invented Oxmere liner, its outlines made by sending every edge point along the cut, ray by ray. */
export function sampleWindow(port: SamplePort, at: number, width: number, corner: number): PortWindow {
  const { top, bottom, up, back } = port
  const heading = Math.sign(port.at) * back
  const plan = radians(port.at + 180 - (Math.abs(port.at) === 180 ? 0 : heading))
  const half = degrees(Math.asin(width / 2 / BORE))
  const finished = roundedOutline(at, half, top, bottom, corner)
  const onto = (radius: number): readonly EdgePoint[] =>
    finished.map(({ azimuth, depth }) => {
      const [x, y] = [BORE * Math.cos(radians(azimuth)), BORE * Math.sin(radians(azimuth))]
      const along = x * Math.cos(plan) + y * Math.sin(plan)
      const run = -along - Math.sqrt(along ** 2 - (BORE ** 2 - radius ** 2))
      return {
        azimuth: degrees(Math.atan2(y + run * Math.sin(plan), x + run * Math.cos(plan))),
        depth: depth - run * Math.tan(radians(up)),
      }
    })
  const rotary = wrapped(-(port.at - heading))
  const crossOffset = -BORE * Math.sin(radians(at - (port.at - heading)))
  const along = 80 - (top + bottom) / 2
  const height = 50 + BORE * Math.cos(radians(at - (port.at - heading)))
  const tilt = radians(up)
  const z = -along * Math.sin(tilt) + height * Math.cos(tilt)
  const asCut = onto(BORE_AS_MILLED)
  const depths = asCut.map(point => point.depth)
  return {
    at,
    rotary,
    tilt: up,
    crossOffset,
    x: along * Math.cos(tilt) + height * Math.sin(tilt),
    z,
    area: { window: width * (bottom - top), flow: width * (bottom - top) * Math.cos(tilt) },
    width,
    height: bottom - top,
    entryHole: { diameter: 2.7, x: 0, y: crossOffset, room: 2 },
    tools: {},
    walls: { outside: OUTSIDE, bore: BORE_AS_MILLED, finished: BORE },
    edges: {
      finished: { highest: top, lowest: bottom },
      asCut: { highest: Math.min(...depths) + TOP_STOCK, lowest: Math.max(...depths) + TOP_STOCK },
    },
    cutter: 3,
    largestCutter: 4,
    plunge: { zTop: z + 6, zThrough: z - 2, zFarWall: z - 30, wall: 4.2 },
    pathLength: 2 * width + 2 * (bottom - top),
    outline: { finished, asCut, outside: onto(OUTSIDE), cutterPlane: [] },
  }
}

/** Counter-clockwise seen from inside the bore, where azimuth runs to the left: down the left side, azimuth falling. */
function roundedOutline(at: number, half: number, top: number, bottom: number, corner: number): readonly EdgePoint[] {
  const turn = degrees(corner / BORE)
  const corners = [
    { azimuth: at + half - turn, depth: top + corner, from: 90 },
    { azimuth: at + half - turn, depth: bottom - corner, from: 180 },
    { azimuth: at - half + turn, depth: bottom - corner, from: 270 },
    { azimuth: at - half + turn, depth: top + corner, from: 0 },
  ]
  const rounded = corners.flatMap(({ azimuth, depth, from }) =>
    Array.from({ length: 9 }, (_, index) => {
      const angle = radians(from + (index * 90) / 8)
      return { azimuth: azimuth - turn * Math.cos(angle), depth: depth - corner * Math.sin(angle) }
    }),
  )
  // A level edge is curved where it leaves the bore, so it is followed in small steps.
  return rounded.flatMap((a, index) => {
    const b = rounded[(index + 1) % rounded.length] ?? a
    const steps = index % 9 === 8 ? 20 : 1
    return Array.from({ length: steps }, (_, step) => ({
      azimuth: a.azimuth + ((b.azimuth - a.azimuth) * step) / steps,
      depth: a.depth + ((b.depth - a.depth) * step) / steps,
    }))
  })
}

export type SamplePort = Pick<
  PlannedPort,
  'name' | 'role' | 'at' | 'up' | 'back' | 'top' | 'bottom' | 'width' | 'corner'
> & {
  readonly opens?: number
  readonly bridge?: number
}

export function samplePort(port: SamplePort): PlannedPort {
  const { bridge, opens, ...given } = port
  const side = bridge === undefined ? undefined : sideWindow(port.width, bridge)
  const windows = side
    ? [1, -1].map(sign => sampleWindow(port, port.at + sign * side.at, side.width, port.corner))
    : [sampleWindow(port, port.at, port.width, port.corner)]
  return {
    ...given,
    cut: 'level',
    ...(opens !== undefined && { opens, closes: 360 - opens, duration: 360 - 2 * opens, dAnglePerTenth: 0.24 }),
    height: port.bottom - port.top,
    arc: 2 * degrees(Math.asin(port.width / 2 / BORE)),
    area: { window: 400, flow: 390 },
    windows,
  }
}

function sideWindow(width: number, bridge: number): { readonly at: number; readonly width: number } {
  const [outer, inner] = [width, bridge].map(chord => degrees(Math.asin(chord / 2 / BORE))) as [number, number]
  return { at: (outer + inner) / 2, width: 2 * BORE * Math.sin(radians((outer - inner) / 2)) }
}
