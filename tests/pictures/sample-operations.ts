import { withPlaces } from '../../src/inspection/size-places.ts'
import type { Limits } from '../../src/limits.ts'
import type { OperationSize } from '../../src/operation-size.ts'
import type { PlannedOperation } from '../../src/plan/plan.ts'
import type { PlannedPort } from '../../src/ports/port.ts'
import type { Process } from '../../src/process.ts'
import type { Operation, Purpose } from '../../src/route/operation.ts'
import type { Shape } from '../../src/shape.ts'
import { samplePort } from './sample-windows.ts'

export const between = (lower: number, upper: number): Limits => ({ nominal: (lower + upper) / 2, lower, upper })
const size = (
  feature: string,
  measure: OperationSize['measure'],
  limits: readonly [number, number],
  more: Partial<OperationSize> = {},
): OperationSize => ({ feature, measure, ...between(...limits), ...more })

const shape = (
  top: number,
  bottom: number,
  flange: number,
  seat: number,
  bore: number | undefined,
  ported = false,
): Shape => ({
  top,
  bottom,
  outside: [
    { name: 'flange', from: top, to: 4, diameter: flange },
    { name: 'seat', from: 4, to: bottom, diameter: seat },
  ],
  bore: bore === undefined ? [] : [{ name: 'bore', from: top, to: bottom, diameter: bore }],
  ported,
})

const SAWN: Shape = {
  top: -1.5,
  bottom: 93.5,
  outside: [{ name: 'bar', from: -1.5, to: 93.5, diameter: 65 }],
  bore: [],
  ported: false,
}
const ROUGH = shape(-0.75, 92.5, 63, 57, 46)
const TURNED = shape(-0.15, 92, 61.97, 55.2, 47.8)
const MILLED = shape(-0.15, 92, 61.97, 55.2, 47.8, true)
const GROUND = shape(0, 92, 61.97, 54.98, 47.8, true)
const BORED = shape(0, 92, 61.97, 54.98, 47.97, true)
const HONED = shape(0, 92, 61.97, 54.98, 48.008, true)

export const PORTS: readonly PlannedPort[] = [
  samplePort({
    name: 'exhaust',
    role: 'exhaust',
    at: 0,
    opens: 106,
    top: 40.42,
    bottom: 56.52,
    width: 27,
    corner: 3,
    bridge: 2.6,
    up: 0,
    back: 0,
  }),
  samplePort({
    name: 'main transfer',
    role: 'transfer',
    at: 78,
    opens: 121,
    top: 45.79,
    bottom: 56.19,
    width: 17,
    corner: 2.6,
    up: 15,
    back: 32,
  }),
  samplePort({
    name: 'main transfer, right',
    role: 'transfer',
    at: -78,
    opens: 121,
    top: 45.79,
    bottom: 56.19,
    width: 17,
    corner: 2.6,
    up: 15,
    back: 32,
  }),
  samplePort({
    name: 'boost',
    role: 'boost',
    at: 180,
    opens: 123,
    top: 46.42,
    bottom: 56.12,
    width: 12,
    corner: 2.3,
    up: 50,
    back: 0,
  }),
]

const PORT_SIZES: readonly OperationSize[] = PORTS.flatMap(port => {
  const edges = port.windows[0]?.edges.asCut ?? { highest: port.top, lowest: port.bottom }
  return [
    size(port.name, 'depth', [edges.highest - 0.05, edges.highest + 0.05], { edge: 'top' }),
    size(port.name, 'depth', [edges.lowest - 0.1, edges.lowest + 0.1], { edge: 'bottom' }),
    size(port.name, 'width', [port.width - 0.1, port.width + 0.1]),
  ]
})

type Given = readonly [
  Purpose,
  string,
  Process,
  'house' | 'outside',
  readonly string[],
  Shape,
  readonly OperationSize[],
]
const GIVEN: readonly Given[] = [
  ['saw-blanks', 'saw blanks', 'saw', 'house', ['length'], SAWN, [size('length', 'length', [94.5, 95.5])]],
  [
    'rough-turn',
    'rough turn',
    'turn',
    'house',
    ['flange', 'seat', 'bore', 'top', 'bottom'],
    ROUGH,
    [
      size('flange', 'diameter', [62.9, 63.1]),
      size('seat', 'diameter', [56.9, 57.1]),
      size('bore', 'diameter', [45.9, 46.1]),
      size('length', 'length', [93.1, 93.4]),
    ],
  ],
  ['stress-relieve', 'stress relieve', 'stress-relieve', 'outside', [], ROUGH, []],
  [
    'finish-turn',
    'finish turn',
    'turn',
    'house',
    ['flange', 'seat', 'bore', 'top', 'bottom'],
    TURNED,
    [
      size('flange', 'diameter', [61.926, 62], { drawn: '62 h9' }),
      size('flange', 'length', [4.05, 4.15]),
      size('seat', 'diameter', [55.17, 55.22], { drawn: '55 g6', roughness: 1.6 }),
      size('bore', 'diameter', [47.78, 47.83], { drawn: '48 H6', roughness: 1.6 }),
      size('length', 'length', [92.1, 92.2], { drawn: '92 ±0.05' }),
    ],
  ],
  ['mill-ports', 'mill ports', 'mill', 'house', PORTS.map(port => port.name), MILLED, PORT_SIZES],
  ['deburr-soft', 'break port edges', 'deburr', 'house', PORTS.map(port => port.name), MILLED, []],
  ['nitride', 'gas nitride', 'nitride', 'outside', ['flange', 'seat', 'bore', 'top', 'bottom'], MILLED, []],
  [
    'grind-outside',
    'grind seat and top face',
    'grind',
    'outside',
    ['seat', 'top'],
    GROUND,
    [
      size('seat', 'diameter', [54.971, 54.99], { drawn: '55 g6', roughness: 0.8 }),
      size('length', 'length', [91.95, 92.05], { drawn: '92 ±0.05' }),
    ],
  ],
  [
    'grind-bore',
    'grind bore',
    'grind',
    'outside',
    ['bore'],
    BORED,
    [size('bore', 'diameter', [47.96, 47.98], { drawn: '48 H6' })],
  ],
  [
    'hone-bore',
    'hone bore',
    'hone',
    'outside',
    ['bore'],
    HONED,
    [size('bore', 'diameter', [48, 48.016], { drawn: '48 H6', roughness: 0.3 })],
  ],
  ['deburr-ports', 'break port edges again', 'deburr', 'house', PORTS.map(port => port.name), HONED, []],
  ['final-inspection', 'final inspection', 'inspect', 'house', [], HONED, []],
]

const LOCATED_BY: Partial<Record<Purpose, readonly string[]>> = {
  'finish-turn': ['bore', 'bottom'],
  'mill-ports': ['seat', 'top'],
  'grind-outside': ['bore'],
  'hone-bore': ['seat', 'top'],
}

export const OPERATIONS: readonly PlannedOperation[] = GIVEN.map(
  ([purpose, name, process, place, surfaces, leaves, sizes], index): PlannedOperation => ({
    ...({ number: (index + 1) * 10, purpose, name, process, place, surfaces } satisfies Partial<Operation>),
    workCentre: 'lathe',
    holding: 'three-jaw chuck',
    locatedBy: LOCATED_BY[purpose] ?? [],
    because: [],
    waits: [],
    cautions: [],
    sizes: withPlaces({
      part: { ...leaves, ports: PORTS },
      operation: { number: (index + 1) * 10 },
      sizes,
      checked: { operations: [], characteristics: [] },
    }),
    steps: [],
    time: { setup: 30, each: 3, batch: 90 },
    shape: leaves,
    firms: [],
  }),
)
