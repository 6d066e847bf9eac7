import type { PlannedPort } from '../../src/ports/port.ts'
import type { EveryField } from './every-field-of.ts'

const AREAS = { window: 400, flow: 300 }
const EDGES = { highest: 30, lowest: 31, highestAt: 0, lowestAt: 10 }
const OUTLINE = [{ azimuth: 1, depth: 30 }]
const REMEDIES = { stickOut: 30, holderDiameter: 10, chuckDiameter: 60, length: 12 }
const FACE = { x: 80, z: 50 }

export const EVERY_PORT_FIELD: EveryField<PlannedPort> = {
  name: 'exhaust',
  role: 'exhaust',
  at: 0,
  up: 0,
  back: 0,
  cut: 'level',
  opens: 106,
  closes: 254,
  duration: 148,
  top: 38,
  bottom: 54,
  height: 16,
  width: 27,
  arc: 68,
  corner: 3,
  area: AREAS,
  bySkirt: { opensBefore: 56, closesAfter: 56, duration: 112 },
  dAnglePerTenth: 0.15,
  ignoredShift: 0,
  leftRight: { top: 0, bottom: 0, arc: 0 },
  uncovered: [{ angle: 110, area: 20 }],
  windows: [
    {
      at: 17,
      rotary: 163,
      tilt: 0,
      crossOffset: 0,
      ...FACE,
      area: AREAS,
      width: 12,
      height: 16,
      entryHole: { diameter: 2.2, x: 40, y: 0, room: 1.5 },
      edges: { finished: EDGES, asCut: EDGES },
      cutter: 2,
      largestCutter: 3,
      tools: { cutter: 'end mill 2', rougher: 'end mill 3', drill: 'drill 2.2' },
      tightestCorner: 1.4,
      plunge: { zTop: 78, zThrough: 73, zFarWall: 26, wall: 4 },
      roofFall: 0,
      walls: { outside: 27.6, bore: 23.9, finished: 24 },
      needed: { flutes: 5, reach: 12 },
      held: {
        stickOut: 25,
        stickOutNeeded: 24.8,
        shank: 6,
        flutes: 10,
        room: 2.1,
        by: 'holder',
        to: 'seat',
        remedies: REMEDIES,
      },
      drillHeld: {
        stickOut: 28,
        stickOutNeeded: 26,
        shank: 4,
        flutes: 14,
        room: 3,
        by: 'holder',
        to: 'seat',
        remedies: REMEDIES,
      },
      shoulderRoom: 4,
      farWallRoom: 40,
      fromFace: FACE,
      pathLength: 48,
      outline: { finished: OUTLINE, asCut: OUTLINE, outside: OUTLINE, cutterPlane: [{ x: 1, y: 1 }] },
    },
  ],
}
