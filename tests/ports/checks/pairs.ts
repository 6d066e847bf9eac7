import type { Engine } from '../../../src/part/part.ts'
import type { Fixture } from '../../../src/shop/shop.ts'
import type { Asked } from '../liner.ts'

export type Case = {
  readonly ports: readonly Asked[]
  readonly engine?: Partial<Engine>
  readonly outside?: number
  readonly fixture?: Partial<Fixture>
  /** Outside bands as finished, from the top face down: name, end, diameter. */
  readonly bands?: readonly (readonly [string, number, number])[]
}

const EXHAUST: Asked = { name: 'exhaust', role: 'exhaust', at: 0, opens: 106, bottom: 54.4, width: 27 }
const MAIN: Asked = { name: 'main', role: 'transfer', at: 90, opens: 121, bottom: 54.4, width: 15, up: 10, back: 25 }
const OTHER: Asked = { ...MAIN, name: 'other main', at: -90 }
const BOOST: Asked = { name: 'boost', role: 'boost', at: 180, opens: 123, bottom: 54.4, width: 10, up: 40 }

const AUX: Asked = { name: 'side exhaust', role: 'aux exhaust', at: 52, opens: 110, height: 5, width: 7 }

const aux = (changes: Partial<Asked> = {}): Asked => ({ ...AUX, ...changes })
const exhaust = (changes: Partial<Asked> = {}): Asked => ({ ...EXHAUST, ...changes })
const main = (changes: Partial<Asked> = {}): Asked => ({ ...MAIN, ...changes })
const other = (changes: Partial<Asked> = {}): Asked => ({ ...OTHER, ...changes })
const boost = (changes: Partial<Asked> = {}): Asked => ({ ...BOOST, ...changes })
const pair = { role: 'transfer', bottom: 54, width: 15, up: 10, back: 25 } as const
const blind = { at: 0, top: 40, height: 8, width: 12 } as const

const inlet = { role: 'inlet', at: 180, top: 60, height: 12, width: 18 } as const
const grooveAt = (depth: number): NonNullable<Case['bands']> => [
  ['flange', 4, 62],
  ['seat', depth, 55],
  ['groove', depth + 2.6, 51],
  ['lower seat', 92, 55],
]

/** Nothing to say about this one. */
export const SOUND: Case = { ports: [exhaust(), main(), other(), boost()] }

/** For each rule a design that it speaks up about, and one that only just passes. */
export const PAIRS: Readonly<Record<string, { readonly trips: Case; readonly passes: Case }>> = {
  'exhaust-before-transfer': {
    trips: { ports: [exhaust(), main({ opens: 110.9 })] },
    passes: { ports: [exhaust(), main({ opens: 111.1 })] },
  },
  // Opening at 106 it is open for 360 - 2 x 106 = 148 degrees.
  'duration-as-drawn': {
    trips: { ports: [exhaust({ opens: 106, duration: 148.6 })] },
    passes: { ports: [exhaust({ opens: 106, duration: 147.6 })] },
  },
  // 18.2 degrees at 3000 rpm last 1.01 ms, 17.8 degrees 0.99 ms.
  'blowdown-time': {
    trips: { ports: [exhaust(), main({ opens: 124.2 })], engine: { speed: 3000 } },
    passes: { ports: [exhaust(), main({ opens: 123.8 })], engine: { speed: 3000 } },
  },
  'aux-exhaust-timing': {
    trips: { ports: [exhaust(), aux({ opens: 120.1 }), main()] },
    passes: { ports: [exhaust(), aux({ opens: 119.9 }), main()] },
  },
  'boost-after-main': {
    trips: { ports: [main(), boost({ opens: 120.9 })] },
    passes: { ports: [main(), boost({ opens: 121 })] },
  },
  'timing-in-class': {
    trips: { ports: [exhaust({ opens: 104.9 })] },
    passes: { ports: [exhaust({ opens: 105.1 })] },
  },
  'pair-symmetry': {
    trips: {
      ports: [
        { ...pair, at: 90, top: 44 },
        { ...pair, at: -90, top: 44.04 },
      ],
    },
    passes: {
      ports: [
        { ...pair, at: 90, top: 44 },
        { ...pair, at: -90, top: 44.02 },
        // A row of its own above them.
        { ...pair, name: 'upper', at: 90, top: 22 },
        { ...pair, name: 'upper, mirrored', at: -90, top: 22 },
      ],
    },
  },
  'offset-symmetry': {
    trips: { ports: [exhaust()], engine: { pinOffset: 0.5 } },
    passes: { ports: [exhaust()] },
  },
  // 12 mm of chord is 28.96 degrees.
  'windows-overlap': {
    trips: { ports: [blind, { ...blind, at: 28.5 }] },
    passes: { ports: [blind, { ...blind, at: 29.5 }] },
  },
  'thin-land': {
    trips: { ports: [{ ...blind, bridge: 1.9 }] },
    passes: { ports: [{ ...blind, bridge: 2.1 }] },
  },
  'exhaust-width': {
    trips: { ports: [exhaust({ width: 29.8 })] },
    passes: { ports: [exhaust({ width: 29.7 })] },
  },
  'transfer-width': {
    trips: { ports: [main({ width: 21.7, back: 10 })] },
    passes: { ports: [main({ width: 21.5, back: 10 })] },
  },
  'porting-share': {
    trips: {
      ports: [0, 90, 180, -90].map(at => ({ at, top: 40, height: 8, arc: 67.6 })),
    },
    passes: {
      ports: [0, 90, 180, -90].map(at => ({ at, top: 40, height: 8, arc: 67.4 })),
    },
  },
  'land-to-flange': {
    trips: { ports: [{ ...blind, top: 5.4 }] },
    passes: { ports: [{ ...blind, top: 5.6 }] },
  },
  'floor-at-bottom': {
    trips: { ports: [exhaust({ bottom: 54.75 })] },
    passes: { ports: [exhaust({ bottom: 54.65 })] },
  },
  'short-circuit': {
    trips: { ports: [main({ back: -2, width: 10 })] },
    passes: { ports: [main({ back: 2, width: 10 })] },
  },
  'streams-meet': {
    trips: { ports: [main({ at: 60, back: 31, width: 10 })] },
    passes: { ports: [main({ at: 60, back: 29, width: 10 })] },
  },
  'boost-rise': { trips: { ports: [boost({ up: 29 })] }, passes: { ports: [boost({ up: 30 })] } },
  'main-rise': { trips: { ports: [main({ up: 26 })] }, passes: { ports: [main({ up: 25 })] } },
  // The exhaust's edge lies at 34.23 degrees, half a main of 15 mm spans 18.21 degrees.
  'transfer-near-exhaust': {
    trips: { ports: [exhaust(), main({ at: 62 })] },
    passes: { ports: [exhaust(), main({ at: 63 })] },
  },
  // 6 % of 48 mm are 2.88 mm.
  'thin-wall': { trips: { ports: [blind], outside: 53.7 }, passes: { ports: [blind], outside: 53.8 } },
  // Near the tangent the bore is 2 · 10.3 mm across: a high, rising window breaks through at its top as deep as that.
  'far-wall-strike': {
    trips: { ports: [{ at: 60, back: 40, width: 20, up: 30, top: 20, height: 50 }] },
    passes: { ports: [{ at: 60, back: 40, width: 20, up: 30, top: 20, height: 47 }] },
  },
  // A stream that falls into the bore brings the cutter from the flange's side.
  'shoulder-clearance': {
    trips: { ports: [{ ...blind, up: -30, top: 8 }] },
    passes: { ports: [{ ...blind, up: -30, top: 20 }] },
  },
  'holder-clearance': {
    trips: { ports: [exhaust()], fixture: { chuck: { diameter: 110, length: 40, faceDistance: 17.5 } } },
    passes: { ports: [exhaust()], fixture: { chuck: { diameter: 110, length: 40, faceDistance: 16.5 } } },
  },
  // 18.2 and 17.9 degrees; the slowest class runs up to 18.
  'blowdown-in-class': {
    trips: { ports: [exhaust(), main({ opens: 124.2 })] },
    passes: { ports: [exhaust(), main({ opens: 123.9 })] },
  },
  // 68.53 cm³ are trapped: 9 times over a head of 8.566 cm³.
  'trapped-ratio': {
    trips: { ports: [exhaust()], engine: { headVolume: 8.5 } },
    passes: { ports: [exhaust()], engine: { headVolume: 8.6 } },
  },
  // 27 mm of chord are 34.23 degrees either side.
  'ring-peg': {
    trips: { ports: [exhaust()], engine: { rings: { from: 3, to: 8, pegs: [39.1] } } },
    passes: { ports: [exhaust()], engine: { rings: { from: 3, to: 8, pegs: [39.3, 150] } } },
  },
  // 15 % of 27 mm are 4.05 mm.
  'ring-corner': {
    trips: { ports: [exhaust({ corner: { on: 'bore', radius: 4 } })], engine: { rings: { pegs: [] } } },
    passes: { ports: [exhaust({ corner: { on: 'bore', radius: 4.1 } })], engine: { rings: { pegs: [] } } },
  },
  'ring-crosses-bridge': {
    trips: { ports: [exhaust({ bridge: 5 })], engine: { rings: { pegs: [] } } },
    passes: { ports: [exhaust({ bridge: 5 })], engine: { rings: 'none' } },
  },
  // The floor lies 54.4 mm below the top face, the crown 0.4 mm at top dead centre.
  'free-port': {
    trips: { ports: [exhaust()], engine: { skirt: 54.9 } },
    passes: { ports: [exhaust()], engine: { skirt: 55.1 } },
  },
  'inlet-masked': {
    trips: { ports: [inlet], engine: { skirt: 59.7 } },
    passes: { ports: [inlet], engine: { skirt: 59.5 } },
  },
  // The window ends at 48 mm.
  'land-to-groove': {
    trips: { ports: [blind], bands: grooveAt(49.4) },
    passes: { ports: [blind], bands: grooveAt(49.6) },
  },
  'edge-falls-away': {
    trips: { ports: [{ ...blind, cut: 'straight', up: 4, corner: { on: 'cutter', radius: 2 } }] },
    passes: { ports: [{ ...blind, cut: 'straight', up: 1, corner: { on: 'cutter', radius: 2 } }] },
  },
  'acute-edge': { trips: { ports: [boost({ up: 46 })] }, passes: { ports: [boost({ up: 45 })] } },
}
