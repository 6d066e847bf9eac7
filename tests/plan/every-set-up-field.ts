import type { SetUp, WindowCut } from '../../src/cutting/set-up.ts'
import type { Plan } from '../../src/plan/plan.ts'
import type { EveryField } from './every-field-of.ts'

const FIGURES = { feed: 300, depth: 0.1, passes: 4, length: 40, time: 1 }
const SLOW = { length: 1, share: 0.5 }
const ROUGH = {
  cutter: 2,
  wallStock: 0.1,
  slug: 'kept',
  levels: 5,
  throughLevels: 1,
  downShare: 0.25,
  clearShare: 2,
} as const

const WALL = { cutter: 2, levels: 2, downShare: 0.25, clearShare: 2, arc: 1 } as const
const LEFT = { after: 4, rounded: 2.5, timing: '+X' } as const

const CUTS: readonly EveryField<WindowCut>[] = [
  { kind: 'flat', ...FIGURES, shape: { kind: 'flat', cutter: 2, hole: 2.6, ramp: 2 } },
  { kind: 'drill', ...FIGURES, shape: { kind: 'drill', cutter: 2.2, slowIn: SLOW, slowOut: SLOW } },
  { kind: 'rough', ...FIGURES, shape: { kind: 'rough', ...ROUGH, down: { angle: 2, share: 0.5 } } },
  { kind: 'finish', ...FIGURES, shape: { kind: 'finish', ...WALL, rounded: 1.25 } },
  { kind: 'clear corners', ...FIGURES, shape: { kind: 'clear corners', ...WALL, ...LEFT, stocks: [0.2, 0.1] } },
  { kind: 'finish corners', ...FIGURES, shape: { kind: 'finish corners', ...WALL, ...LEFT } },
]

export const EVERY_SET_UP_FIELD: EveryField<SetUp> = {
  number: 1,
  operation: 10,
  work: 'mill windows',
  tilt: 0,
  tool: 'end mill 2',
  diameter: 2,
  pocket: 4,
  stickOut: 25,
  spindleSpeed: 9000,
  windows: [
    {
      port: 'exhaust',
      at: 0,
      window: 1,
      name: 'exhaust, window 1 of 2',
      rotary: 163,
      slug: 'kept',
      limits: { x: [40, 50], y: [-4, 4] },
      cuts: CUTS,
    },
  ],
  order: ['exhaust, window 1 of 2'],
  slug: 'kept',
  levels: [5],
  wallStock: 0.1,
  program: 'T-1-A-1.nc',
}

/** What the milling of ports needs of the works. */
export const EVERY_SHOP_FIELD: EveryField<Plan['shop']> = {
  name: 'Oxmere Pump Works',
  fixture: {
    headFaces: '+X',
    faceDistance: 80,
    pivotHeight: 50,
    positiveRotary: 'Y to Z',
    positiveTilt: 'Z to X',
    rotaryLimits: [-360, 360],
    tiltLimits: [-10, 60],
    sineBar: 127,
    ball: 6,
    holder: { diameter: 16, length: 60, spindleDiameter: 50 },
    chuck: { diameter: 80, length: 40, faceDistance: -12, kind: 'collet', force: 6000 },
    rotary: { diameter: 90, length: 100 },
    plate: { from: -160, to: 60, width: 100, top: 0, thickness: 15 },
    head: { diameter: 120, spindleLength: 110, fullyUp: 320 },
  },
  ncWords: {
    toolChange: 'T{tool} M6',
    clamp: 'M10',
    unclamp: 'M11',
    coolantOn: 'M8',
    coolantOff: 'M9',
    tiltAxis: 'B',
    tiltClamp: 'M21',
    tiltUnclamp: 'M22',
    spindleUp: 'G53 Z0',
    clamping: 'automatic',
  },
}
