import type { Part, Port } from '../../src/part/part.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import type { Fixture, Shop } from '../../src/shop/shop.ts'
import type { AsMilled } from '../../src/stock/stock.ts'

const drawn = (nominal: number) => ({ nominal, lower: nominal, upper: nominal, written: String(nominal) })

export type Asked = Partial<Port> & { readonly at: number }

export function portOf(asked: Asked, index = 0): Port {
  const sized = asked.height === undefined && asked.bottom === undefined ? { height: 10 } : {}
  const placed = asked.opens === undefined && asked.top === undefined ? { top: 40 } : {}
  const wide = asked.width === undefined && asked.arc === undefined ? { width: 12 } : {}
  return {
    name: `port ${index + 1}`,
    role: 'other',
    corner: { on: 'bore', radius: 2.5 },
    up: 0,
    back: 0,
    cut: 'level',
    path: `/ports/${index}`,
    ...sized,
    ...placed,
    ...wide,
    ...asked,
  }
}

/** A plain ported liner, finished sizes. */
export function linerOf(ports: readonly Asked[], changes: Partial<Part> & { readonly boreSize?: number } = {}): Part {
  const { boreSize = 48, ...others } = changes
  const length = drawn(92)
  return {
    number: 'T-1',
    title: 'Liner',
    revision: 'A',
    kind: 'liner',
    material: { grade: '42CrMo4', written: '42CrMo4' },
    length,
    outside: [],
    bore: [{ name: 'bore', size: drawn(boreSize), from: 0, to: length, path: '/body/bore' }],
    top: { path: '/body/top' },
    bottom: { path: '/body/bottom' },
    stock: {},
    ports: ports.map(portOf),
    generalTolerance: 'm',
    waive: [],
    features: [],
    places: new Map(ports.map((_, i) => [`/ports/${i}`, { file: 'liner.yaml', line: i + 10, column: 5 }])),
    file: 'liner.yaml',
    ...others,
  }
}

/** As milled: bore and outside diameters, with a flange down to 4 mm. */
export function milledAt(bore: number, outside: number, topStock = 0): AsMilled {
  const flange = outside + 7
  const band = (name: string, from: number, to: number, diameter: number) => ({ name, from, to, diameter })
  return {
    boreDiameter: bore,
    topStock,
    shape: {
      top: -topStock,
      bottom: 92,
      outside: [band('flange', 0, 4, flange), band('seat', 4, 92, outside)],
      bore: [band('bore', 0, 92, bore)],
      ported: false,
    },
  }
}

export const FIXTURE: Fixture = {
  headFaces: '+X',
  faceDistance: 80,
  pivotHeight: 50,
  positiveRotary: 'Y to Z',
  positiveTilt: 'Z to X',
  rotaryLimits: [-360, 360],
  tiltLimits: [-60, 60],
  sineBar: 100,
  ball: 6,
  holder: { diameter: 16, length: 60, spindleDiameter: 50 },
  chuck: { diameter: 80, length: 40 },
}

/** What the shop file says of its fixture, where it says all that places a cut. */
const MEASURED: ReadonlySet<string> = new Set(
  ['head-faces', 'face-distance', 'pivot-height', 'positive-rotary', 'positive-tilt'].map(key => `/fixture/${key}`),
)

export const shopWith = (fixture: Partial<Fixture> = {}, changes: Partial<Shop> = {}): Shop => ({
  ...BUILT_IN_SHOP,
  set: MEASURED,
  ...changes,
  fixture: { ...FIXTURE, ...fixture },
})
