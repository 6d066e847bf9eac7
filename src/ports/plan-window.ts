import { HELIX_HOLE } from '../handbook/helical-entry.ts'
import { finishingPath, largestCutterForCorner } from '../handbook/port-window.ts'
import { crossOffset, rotarySetting, settingX, settingZ, tiltSetting } from '../handbook/tilted-rotary.ts'
import { fromPart, told, worked } from '../known.ts'
import { headSense, toMachine } from '../machine-frame.ts'
import type { Port } from '../part/part.ts'
import { setting } from '../shop/origin.ts'
import type { Shop } from '../shop/shop.ts'
import { toolNamed } from '../shop/tools-to-get.ts'
import { type Millimetre, radians } from '../units.ts'
import type { Notebook } from '../working.ts'
import { chooseCutter } from './choose-cutter.ts'
import { closestPlace } from './closest-place.ts'
import { sampled } from './contour.ts'
import { developedArea, flowArea, girth, tightestCorner } from './contour-measures.ts'
import { cornerGiving } from './corner-giving.ts'
import { azimuthOn, type CutFrame, heightOn, nearWall, runToFarWall, runToNearWall } from './cut-frame.ts'
import { edgesOn } from './edges-on.ts'
import { entryPlace, roomiest } from './entry-hole.ts'
import { greatest, least } from './extreme.ts'
import { direction, proveDirection, provePlace, withinLimits } from './fixture-setting.ts'
import { flutesNeeded } from './flutes-needed.ts'
import type { Body } from './height-under.ts'
import { heldCutter, stickOutNeeded } from './held-cutter.ts'
import { limitFaults } from './limit-faults.ts'
import type { EdgePoint, PortWindow } from './port.ts'
import { type PortDesign, sideOf, type WindowDesign } from './port-design.ts'
import type { PortFault } from './port-finding.ts'
import { portLimit } from './port-limit.ts'
import { shoulderRoom } from './reach-needed.ts'
import { drillHeld, roughingHeld, standingOf } from './tools-held.ts'
import { type AsCut, milledContour } from './walls-as-milled.ts'

/** Cut past the bore at the last contour point. Common practice, no source. */
export const BREAK_THROUGH: Millimetre = 0.3
/** The entry hole is searched for in a coarser outline. */
const SEARCH_TOLERANCE: Millimetre = 0.01
/** Chords of the drawn outlines stand off by at most this. */
const OUTLINE_TOLERANCE: Millimetre = 0.001

const HEADING = worked('heading of the stream, from `back` and the place of the window')
const MIDDLE = worked('middle of the window on the finished bore, geometry')
const CENTRE = worked('middle of the window below the top face as it stands, geometry')
const WINDOW = worked("outline of the window in the cutter's plane, geometry")

/** Setting, cutter and measures of one window. */
export function planWindow({
  port,
  design,
  window,
  shop,
  asCut,
  bodies,
  notebook,
}: {
  readonly port: Port
  readonly design: PortDesign
  readonly window: WindowDesign
  readonly shop: Shop
  readonly asCut: AsCut
  readonly bodies: readonly Body[]
  readonly notebook: Notebook
}): { readonly window: PortWindow; readonly faults: readonly PortFault[] } {
  const about = { about: port.name }
  const { frame, heading } = design
  const { contour: drawn, middle, radius } = window
  const contour = milledContour(drawn, asCut)
  const { fixture } = shop
  const s = headSense(fixture)
  const head = told(setting(shop, 'fixture', 'head-faces'), { s })
  const tilt =
    notebook.use(tiltSetting, { ...head, ...told(fromPart(`${port.path}/up`), { beta: port.up }) }, about) + 0
  // Adding zero turns a negative zero into a plain one.
  const yToZ =
    notebook.use(
      rotarySetting,
      { ...head, ...told(fromPart(`${port.path}/at`), { phi: port.at }), ...told(HEADING, { psi: heading }) },
      about,
    ) + 0
  const h = asCut.topStock - window.centreHeight
  const onBore = { ...head, ...told(fromPart('/body/bore'), { r: radius }), ...told(MIDDLE, { alpha: middle }) }
  const given = {
    ...onBore,
    ...told(setting(shop, 'fixture', 'face-distance'), { D: fixture.faceDistance }),
    ...told(setting(shop, 'fixture', 'pivot-height'), { H: fixture.pivotHeight }),
    ...told(CENTRE, { h }),
    tilt,
  }
  const offset = notebook.use(crossOffset, onBore, about) + 0
  const x = notebook.use(settingX, given, about)
  const z = notebook.use(settingZ, given, about)
  const stand = { tilt, rotary: yToZ }
  proveDirection(fixture, stand, direction(port.at + 180 - heading, port.up))
  const [px, py] = direction(frame.toCutter + middle, 0)
  provePlace(toMachine(fixture, stand, [radius * px, radius * py, -h]), [x, offset, z])
  const signed = fixture.positiveRotary === 'Y to Z' ? yToZ : 0 - yToZ
  const rotary = withinLimits(signed, fixture.rotaryLimits)

  const centre = centreOf(frame, window)
  const inMachine = ({ l, b }: { l: number; b: number }): { x: number; y: number } => ({
    x: x + s * (b - centre.b),
    y: offset - s * (l - centre.l),
  })
  const zAt = (run: number): Millimetre => z + centre.run - run
  const zTop = zAt(least(contour, point => runToNearWall(frame, asCut.outside, point), 0).value)
  const zThrough = zAt(greatest(contour, point => runToNearWall(frame, asCut.bore, point), 0).value)
  const zFarWall = zAt(least(contour, point => runToFarWall(frame, asCut.bore, point), 0).value)

  const points = sampled(contour, OUTLINE_TOLERANCE, 20)
  const hole = roomiest(sampled(contour, SEARCH_TOLERANCE, 3), sideOf(port.at))
  const tightest = tightestCorner(contour)
  const largest = notebook.use(largestCutterForCorner, told(WINDOW, { R: tightest }), about)
  const flutes = (cutter: Millimetre, shank: Millimetre): Millimetre =>
    flutesNeeded({ frame, walls: asCut, contour: points, cutter, shank }) + BREAK_THROUGH
  const margin = portLimit(shop, 'holder-clearance', 'least')
  const reach = zTop - zThrough + BREAK_THROUGH + margin
  const cutterPlane = points.map(p => ({ x: s * (p.b - centre.b), y: -s * (p.l - centre.l) }))
  const held = {
    fixture,
    tilt,
    bodies,
    window: { x: extent(cutterPlane.map(p => x + p.x)), y: extent(cutterPlane.map(p => offset + p.y)) },
    tip: zThrough - BREAK_THROUGH,
  }
  const around = girth(contour)
  const chosen = chooseCutter(shop, {
    tightestCorner: tightest,
    largest,
    girth: around,
    room: hole.room,
    flutes,
    reach,
    stickOut: cutter => stickOutNeeded(held, cutter, margin),
    clears: mill => closestPlace(held, standingOf(mill), mill.reach).room >= margin - 1e-6,
    corner: port.corner.radius,
    cornerOn: port.corner.on === 'bore' && port.cut === 'level' ? 'on the bore' : "in the cutter's plane",
    cornerFor: wanted => cornerGiving(window, port.corner.radius, wanted),
  })
  // As much room as a flat for the drill wants.
  const entry = entryPlace(
    cutterPlane.map(p => ({ x: x + p.x, y: offset + p.y })),
    { ...inMachine(hole), room: hole.room },
    Math.max(chosen.drill, HELIX_HOLE.least * chosen.entered) / 2,
    { side: sideOf(port.at), away: (port.role === 'inlet') === s > 0 ? 1 : -1 },
  )
  const tool = toolNamed(shop, 'end mill', chosen.tools.cutter)
  const shank = tool?.shank ?? chosen.cutter
  const standing = tool ? standingOf(tool) : { diameter: chosen.cutter, shank }
  const stickOut = tool?.reach ?? Math.max(reach, stickOutNeeded(held, chosen.cutter, margin))
  const deepest = greatest(contour, point => runToNearWall(frame, asCut.bore, point), 0).value + BREAK_THROUGH
  const shankEnd = deepest - (tool?.fluteLength ?? Number.POSITIVE_INFINITY)
  const rooms = asCut.shoulders.map(shoulder =>
    shoulderRoom({ frame, contour, shoulder, cutter: chosen.cutter, shank, shankEnd }),
  )
  const face = toMachine(fixture, stand, [0, 0, 0])
  const pathLength = notebook.use(
    finishingPath,
    { ...told(WINDOW, { P: around }), ...told(worked('cutter chosen'), { D: chosen.cutter }) },
    about,
  )
  const finishedPoints = asCut.growth ? sampled(drawn, OUTLINE_TOLERANCE, 20) : points
  const outlineOn = (q: Millimetre, of = points): readonly EdgePoint[] =>
    of.toReversed().map(p => ({ azimuth: azimuthOn(frame, q, p.l), depth: -heightOn(frame, q, p) }))

  const holeOn = (q: Millimetre): EdgePoint => {
    const [l, b] = [centre.l - s * (entry.y - offset), centre.b + s * (entry.x - x)]
    return { azimuth: azimuthOn(frame, q, l), depth: -heightOn(frame, q, { l, b }) }
  }

  return {
    window: {
      at: window.at,
      rotary: rotary ?? signed,
      tilt,
      crossOffset: offset,
      x,
      z,
      area: { window: developedArea(frame, radius, drawn), flow: flowArea(drawn) },
      width: 2 * radius * Math.sin(radians((window.to - window.from) / 2)),
      height: design.height,
      entryHole: { diameter: chosen.drill, ...entry, outside: holeOn(asCut.outside), bore: holeOn(asCut.bore) },
      edges: {
        finished: edgesOn({ frame, contour: drawn, radius, middle: centre.l, above: 0 }),
        asCut: edgesOn({ frame, contour, radius: asCut.bore, middle: centre.l, above: asCut.topStock }),
      },
      cutter: chosen.cutter,
      largestCutter: largest,
      tools: chosen.tools,
      tightestCorner: tightest,
      walls: {
        outside: asCut.outside,
        bore: asCut.bore,
        finished: radius,
        ...(asCut.growth && { growth: asCut.growth }),
      },
      needed: { flutes: flutes(chosen.cutter, shank), reach },
      held: heldCutter(held, standing, stickOut, margin),
      ...roughingHeld(held, chosen, shop, { flutes, margin }),
      ...drillHeld(held, chosen, shop, { ...entry, margin }),
      ...(rooms.length === 0 ? {} : { shoulderRoom: Math.min(...rooms) }),
      farWallRoom: zThrough - BREAK_THROUGH - zFarWall,
      fromFace: { x: x - face[0], z: z - face[2] },
      plunge: {
        zTop,
        zThrough,
        zFarWall,
        wall: (nearWall(asCut.outside, centre.l) - nearWall(asCut.bore, centre.l)) / frame.cos,
      },
      ...(port.cut === 'straight' ? { roofFall: roofFallOf(frame, window, port.corner.radius) } : {}),
      pathLength,
      outline: {
        finished: outlineOn(radius, finishedPoints),
        ...(asCut.growth && { unhardened: outlineOn(radius) }),
        asCut: outlineOn(asCut.bore),
        outside: outlineOn(asCut.outside),
        cutterPlane,
      },
    },
    faults: [...limitFaults({ port, fixture, tilt, rotary: signed, reached: rotary }), ...chosen.faults],
  }
}

const extent = (values: readonly number[]): readonly [number, number] => [Math.min(...values), Math.max(...values)]

/** From the highest point of the edge to the lowest of the roof between its corners. */
function roofFallOf(frame: CutFrame, { contour, radius }: WindowDesign, corner: Millimetre): Millimetre {
  const high = greatest(contour, point => heightOn(frame, radius, point), 0)
  const roof = greatest(contour, ({ b }) => b, 0).point.b
  const sides = [greatest(contour, ({ l }) => l, 0).value - corner, least(contour, ({ l }) => l, 0).value + corner]
  const low = Math.min(...sides.map(l => heightOn(frame, radius, { l, b: roof })))
  const [right = 0, left = 0] = sides
  const middle = left < 0 && right > 0 ? heightOn(frame, radius, { l: 0, b: roof }) : low
  return high.value - Math.min(low, middle)
}

function centreOf(
  frame: CutFrame,
  { radius, middle, centreHeight }: WindowDesign,
): { l: number; b: number; run: number } {
  const [l, n] = [radius * Math.sin(radians(middle)), radius * Math.cos(radians(middle))]
  return { l, b: frame.sin * n + frame.cos * centreHeight, run: frame.sin * centreHeight - frame.cos * n }
}
