import type { HardnessAfter } from '../../src/hardening/case-plan.ts'
import type { Characteristic } from '../../src/inspection/characteristic.ts'
import { withLadderPlaces, withPlaces } from '../../src/inspection/size-places.ts'
import type { Plan } from '../../src/plan/plan.ts'
import type { GasExchange, Uncovering } from '../../src/ports/gas-exchange.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { withSteps } from '../../src/stock/ladder-steps.ts'
import type { Ladder, StockEntry } from '../../src/stock/stock.ts'
import { ERRORS, EVERY_FIXTURE_FIELD } from '../plan/every-fixture-field.ts'
import { between, OPERATIONS, PORTS } from './sample-operations.ts'

const FINAL: readonly (readonly [string, string, string, number | undefined, number | undefined])[] = [
  ['bore diameter', 'bore', 'mm', 48, 48.016],
  ['bore roughness Ra', 'bore', 'µm', undefined, 0.3],
  ['bore cylindricity', 'bore', 'mm', undefined, 0.006],
  ['seat diameter', 'seat', 'mm', 54.971, 54.99],
  ['seat runout', 'seat', 'mm', undefined, 0.015],
  ['top face flatness', 'top', 'mm', undefined, 0.01],
  ['length', 'length', 'mm', 91.95, 92.05],
  ['exhaust top edge', 'exhaust', 'mm', 40.37, 40.47],
  ['boost top edge', 'boost', 'mm', 46.37, 46.47],
  ['surface hardness', 'coupon', 'HV', 550, undefined],
]

const CHARACTERISTICS: readonly Characteristic[] = OPERATIONS.flatMap(operation => [
  ...(operation.purpose === 'final-inspection'
    ? FINAL.map(([name, feature, unit, lower, upper]) => ({
        name,
        feature,
        unit,
        ...(lower !== undefined && { lower }),
        ...(upper !== undefined && { upper }),
        gauge: 'as the plan says',
        uncertainty: 0.002,
        accept: {},
        places: 3,
        operation: operation.number,
        stage: 'final' as const,
        critical: false,
        sample: 12,
        plan: 'every piece',
      }))
    : []),
  ...operation.sizes.map(({ feature, measure, edge, nominal, lower, upper }) => ({
    name: `${feature} ${edge ?? ''} ${measure}`,
    nominal,
    lower,
    upper,
    unit: 'mm',
    gauge: measure === 'diameter' ? 'micrometer' : 'depth gauge',
    uncertainty: 0.002,
    accept: { lower, upper },
    places: upper - lower < 0.03 ? 3 : 2,
    operation: operation.number,
    stage: 'in-process' as const,
    feature,
    critical: false,
    sample: 3,
    plan: 'common practice',
  })),
]).map((characteristic, index) => ({ number: index + 1, ...characteristic }))

const state = (operation: number, name: string, lower: number, upper: number): Ladder['states'][number] => ({
  operation,
  name,
  ...between(lower, upper),
})
const LADDERS: readonly Ladder[] = [
  {
    surface: 'seat',
    kind: 'outside',
    states: [
      state(10, 'saw blanks', 64, 66),
      state(20, 'rough turn', 56.9, 57.1),
      state(40, 'finish turn', 55.17, 55.22),
      state(90, 'gas nitride', 55.178, 55.24),
      state(110, 'grind seat', 54.971, 54.99),
    ],
  },
  {
    surface: 'bore',
    kind: 'bore',
    states: [
      state(20, 'rough turn', 45.9, 46.1),
      state(40, 'finish turn', 47.78, 47.83),
      state(90, 'gas nitride', 47.76, 47.822),
      state(120, 'grind bore', 47.96, 47.98),
      state(130, 'hone bore', 48, 48.016),
    ],
  },
  {
    surface: 'top',
    kind: 'face',
    states: [state(40, 'finish turn', 92.1, 92.2), state(110, 'grind top face', 91.95, 92.05)],
  },
]

const entry = (
  surface: string,
  kind: StockEntry['kind'],
  operation: number,
  least: number,
  most: number,
  worst: readonly [number, number, number],
): StockEntry => ({
  surface,
  kind,
  operation,
  onDiameter: { least, nominal: (least + most) / 2, most },
  perSide: { least: worst[0], most: worst[1], needed: worst[2] },
  margin: { cleanUp: worst[0] - worst[2], case: 0.03 },
  hardnessAtFinish: 620,
  verdict: 'ok',
  eccentricity: 0.01,
  told: { value: 0.001 },
  form: 0.01,
})
const ENTRIES: readonly StockEntry[] = [
  entry('seat', 'outside', 110, 0.188, 0.269, [0.074, 0.155, 0.03]),
  entry('bore', 'bore', 120, 0.138, 0.22, [0.05, 0.13, 0.03]),
  entry('bore', 'bore', 130, 0.02, 0.056, [0.01, 0.028, 0.01]),
  entry('top', 'face', 110, 0.1, 0.5, [0.05, 0.25, 0.03]),
]

const BAND = { low: 500, expected: 560, high: 620 }
const after = (surface: string, least: number, most: number): HardnessAfter => ({
  surface,
  off: { least, nominal: (least + most) / 2, most },
  least: BAND,
  nominal: BAND,
  most: BAND,
})

const hump = (opens: number, most: number): readonly Uncovering[] =>
  Array.from({ length: 61 }, (_, index) => {
    const angle = opens + ((360 - 2 * opens) * index) / 60
    return { angle, area: most * Math.sin((Math.PI * index) / 60) }
  })
const GAS: GasExchange = {
  sweptVolume: 97_716,
  bottomDeadCentre: 180,
  meanPistonSpeed: 7.56,
  blowdown: { angle: 15, from: 106, to: 121, time: 0.6, angleArea: 990, specificTimeArea: 0.0004 },
  areas: [
    { role: 'exhaust', angleArea: 37_400, specificTimeArea: 0.0152, uncovered: hump(106, 380) },
    { role: 'transfer', angleArea: 22_100, specificTimeArea: 0.009, uncovered: hump(121, 280) },
    { role: 'boost', angleArea: 5570, specificTimeArea: 0.0023, uncovered: hump(123, 73) },
  ],
  together: [{ roles: ['transfer', 'boost'], angleArea: 27_670, specificTimeArea: 0.0113 }],
  streams: [],
  references: [],
}

const CHECKED = { operations: OPERATIONS, characteristics: CHARACTERISTICS }

/** The Oxmere liner as a plan written by hand: invented figures, for the tests of pictures only. */
export const SAMPLE_PLAN: Plan = {
  part: { number: 'OX-098-21', title: 'Cylinder liner', revision: 'B', kind: 'liner' },
  shop: { name: 'Oxmere Pump Works', fixture: { ...BUILT_IN_SHOP.fixture, faceDistance: 80, pivotHeight: 50 } },
  batch: { number: '2631', quantity: 12, start: 15, confidence: 0.9, yield: 0.9, extras: [], numbered: 15 },
  operations: OPERATIONS.map(operation => ({
    ...operation,
    sizes: withPlaces({
      part: { ...operation.shape, ports: PORTS },
      operation,
      sizes: operation.sizes,
      checked: CHECKED,
    }),
  })),
  stock: ENTRIES,
  ladders: withLadderPlaces(
    withSteps(LADDERS, ENTRIES, { operation: 90, ordered: { least: 0.4, most: 0.5 } }),
    CHECKED,
  ),
  case: {
    process: 'gas nitriding',
    ordered: { least: 0.4, most: 0.5 },
    growth: {
      outside: { least: 0.004, nominal: 0.007, most: 0.01, from: 'handbook', source: 'estimate' },
      bore: { least: 0.004, nominal: 0.007, most: 0.01, from: 'handbook', source: 'estimate' },
      bands: [],
      face: { least: 0.004, nominal: 0.007, most: 0.01, from: 'handbook', source: 'estimate' },
      along: { least: 0, nominal: 0, most: 0, from: 'handbook', source: 'estimate' },
      sections: [],
    },
    records: [],
    left: { least: 0.23, most: 0.44 },
    asked: 0.2,
    limit: { least: 0.75, by: 'wall', because: 'the wall bears no more', source: 'invented' },
    definition: 'NHD to core hardness + 50 HV',
    time: { least: 40, nominal: 55, most: 70 },
    temperature: 520,
    stages: [{ temperature: 520, hours: 100 }],
    compoundLayer: { nominal: 0.012, most: 0.02 },
    limitHardness: 350,
    hardnessAfter: [after('seat', 0.074, 0.155), after('bore', 0.05 + 0.01, 0.13 + 0.028), after('top', 0.05, 0.25)],
    surfaceHardness: 680,
    coreHardness: 300,
    profile: Array.from({ length: 41 }, (_, index) => {
      const depth = index * 0.02
      const at = (reach: number): number => 300 + 380 * Math.exp(-((depth / reach) ** 2))
      return { depth, low: at(0.28), expected: at(0.32), high: at(0.37) }
    }),
    testLoad: 'HV 5',
  },
  ports: PORTS,
  features: [],
  setUps: [],
  fixture: {
    ...EVERY_FIXTURE_FIELD,
    tilts: [0, 15, 50].flatMap(tilt => EVERY_FIXTURE_FIELD.tilts.map(setting => ({ ...setting, tilt }))),
    provingMoves: [],
    order: PORTS.flatMap(({ name, at, windows }) =>
      windows.map(({ tilt, rotary, cutter }, i) => ({
        port: name,
        at,
        window: i + 1,
        tilt,
        rotary,
        cutter,
        clock: '12 o’clock',
        errors: ERRORS,
      })),
    ),
    tiltChanges: 2,
    rotaryReversals: 0,
    assumed: [],
  },
  gasExchange: GAS,
  inspection: { characteristics: CHARACTERISTICS },
  kit: [],
  orders: [],
  material: {
    grade: '42CrMo4',
    barDiameter: 65,
    barSupply: 'rolled',
    blankLength: 95,
    pitch: 98,
    piecesPerBar: 30,
    bars: 1,
    barLength: 3000,
    mass: 78,
    blankMass: 2.5,
    offcut: 60,
  },
  findings: [],
  workings: [],
  ...{ fingerprint: 'sample', date: '2026-11-25', program: 'linerwright 0.1.0' },
}
