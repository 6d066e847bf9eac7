import type { Plan } from '../../src/plan/plan.ts'
import { EVERY_CASE_FIELD } from './every-case-field.ts'
import { EVERY_CLOCKING_FIELD } from './every-clocking-field.ts'
import { EVERY_DATE_AND_PRICE } from './every-date-and-price.ts'
import { EVERY_FEATURE_FIELD, EVERY_FIT_FIELD } from './every-feature-field.ts'
import type { EveryField } from './every-field-of.ts'
import { EVERY_FIXTURE_FIELD } from './every-fixture-field.ts'
import { EVERY_GAS_FIELD } from './every-gas-field.ts'
import { EVERY_MILLING_GRIP_FIELD } from './every-milling-grip-field.ts'
import { EVERY_OPERATION_FIELD } from './every-operation-field.ts'
import { EVERY_ORDER } from './every-order-field.ts'
import { EVERY_PORT_FIELD } from './every-port-field.ts'
import { EVERY_QUENCH_FIELD } from './every-quench-field.ts'
import { EVERY_SET_UP_FIELD, EVERY_SHOP_FIELD } from './every-set-up-field.ts'

const PLACE = { file: 'part.yaml', line: 1, column: 1 }
const ORIGIN = { from: 'measured', source: 'shop: measured on 24 pieces' } as const
const FIGURE = { figure: 'growth per side', value: 0.01, unit: 'mm', ...ORIGIN } as const
const SPREAD = { least: 1, nominal: 2, most: 3 }
const RANGE = { least: 1, most: 3 }
const LIMITS = { nominal: 2, lower: 1, upper: 3 }

/** Not a plan that anybody could work to: it is there for its keys. */
export const EVERY_FIELD: EveryField<Plan> = {
  part: { number: 'T-1', title: 'Liner', revision: 'A', kind: 'liner' },
  shop: EVERY_SHOP_FIELD,
  batch: {
    number: '2631',
    quantity: 12,
    begins: '2026-12-07',
    heat: '7745A',
    start: 16,
    confidence: 0.95,
    yield: 0.9,
    extras: [{ what: 'coupon', pieces: 1, marks: ['C'] }],
    numbered: 15,
    goOnWith: [{ operation: 10, pieces: 15 }],
  },
  operations: EVERY_OPERATION_FIELD,
  stock: [
    {
      surface: 'seat',
      kind: 'outside',
      operation: 10,
      onDiameter: SPREAD,
      perSide: { least: 1, most: 2, needed: 1 },
      margin: { cleanUp: 0.01, case: 0.1, plating: 0.01 },
      hardnessAtFinish: 560,
      hardnessBand: { low: 500, high: 590 },
      bears: { runout: 0.027, ovality: 0.046, bow: 0.03, growth: 0.007 },
      afterwards: {
        operation: 150,
        middle: -0.0004,
        ends: -0.0015,
        taper: { least: 0.002, nominal: 0.003, most: 0.004 },
      },
      eats: { input: 'run-out', stock: 0.04, halved: { stock: 0.02, case: 0.02, hours: 9 } },
      verdict: 'ok',
      eccentricity: 0.02,
      form: 0.02,
      told: { value: 0.0015, gauge: 'outside micrometer set on a block', uncertainty: 0.003 },
      spread: { worstCase: 0.04, rootSumSquare: 0.03, nearlyAll: { share: 0.9973, ...RANGE } },
      basis: [FIGURE],
      firstArticle: { stock: 0.01, case: 0.01 },
      chance: {
        piece: { notCleanedUp: 0.001, tooLittleCase: 0.001 },
        batch: { notCleanedUp: 0.01, tooLittleCase: 0.01 },
      },
    },
  ],
  ladders: [
    {
      surface: 'seat',
      kind: 'outside',
      states: [{ ...LIMITS, operation: 10, name: 'Finish turn', taken: RANGE, caseLeft: 0.3, places: 3 }],
    },
  ],
  axial: {
    dimensions: [
      { kind: 'cut', symbol: 'W1', operation: 10, from: 'top', to: 'bottom', direction: 'down', limits: LIMITS },
    ],
    growth: { kind: 'growth', symbol: 'g', operation: 20, up: ['top'], down: ['bottom'], limits: LIMITS },
    stretch: {
      kind: 'stretch',
      symbol: 'e',
      operation: 20,
      faces: [{ face: 'bottom', depth: 92 }],
      limits: { nominal: 0, lower: -0.001, upper: 0.001 },
    },
    resultants: [
      {
        name: 'length',
        expression: 'W1',
        nominal: 92,
        worstCase: 0.03,
        rootSumSquare: 0.03,
        drawn: { ...LIMITS, feature: 'length', places: 2 },
      },
    ],
  },
  case: EVERY_CASE_FIELD,
  quench: EVERY_QUENCH_FIELD,
  plating: {
    process: 'hard chrome',
    surface: 'bore',
    base: { hardness: 300, temper: 620 },
    asked: RANGE,
    aim: 0.08,
    left: SPREAD,
    layer: SPREAD,
    stock: SPREAD,
    honeStock: 0.03,
    before: { ...LIMITS, places: 3 },
    plated: { ...LIMITS, places: 3 },
    finished: { ...LIMITS, places: 3 },
    chamfer: RANGE,
    masked: ['top'],
    relieved: true,
    bake: { hours: 8, least: 190, most: 220, startWithin: 3 },
    hardness: { asked: 900, usual: RANGE, testLoad: 'HV0.1' },
    time: RANGE,
    honedWith: 'stones for chrome',
    ringPartner: 'cast-iron rings',
  },
  ports: [EVERY_PORT_FIELD],
  features: [EVERY_FEATURE_FIELD],
  fit: EVERY_FIT_FIELD,
  setUps: [EVERY_SET_UP_FIELD],
  millingGrip: EVERY_MILLING_GRIP_FIELD,
  clocking: EVERY_CLOCKING_FIELD,
  fixture: EVERY_FIXTURE_FIELD,
  gasExchange: EVERY_GAS_FIELD,
  inspection: {
    characteristics: [
      {
        number: 1,
        name: 'bore',
        ...LIMITS,
        unit: 'mm',
        gauge: 'air plug',
        uncertainty: 0.0015,
        accept: { lower: 1, upper: 3 },
        places: 4,
        operation: 10,
        written: 'hole',
        stage: 'final',
        feature: 'bore',
        critical: true,
        sample: 12,
        plan: 'all',
        remark: 'clear of the ports',
        readAt: 1,
      },
    ],
  },
  kit: [{ what: 'drill 40', kind: 'drill', operation: 20, quantity: 1, have: true }],
  orders: [EVERY_ORDER],
  material: {
    grade: '42CrMo4',
    barDiameter: 65,
    barSupply: 'peeled',
    blankLength: 94,
    pitch: 96,
    piecesPerBar: 30,
    bars: 1,
    barLength: 3000,
    mass: 78,
    blankMass: 2.4,
    offcut: 100,
    because: ['next size up'],
  },
  ...EVERY_DATE_AND_PRICE,
  findings: [{ code: 'input/converted', severity: 'note', message: 'planned as 302 HV', at: PLACE, hint: 'test it' }],
  workings: [
    {
      operation: 10,
      about: 'bore',
      symbol: 'x',
      meaning: 'figure',
      value: 1,
      unit: 'mm',
      expression: '1',
      formula: 'a',
      source: 'derived: geometry',
      inputs: [{ symbol: 'a', value: 1, unit: 'mm', ...ORIGIN }],
    },
  ],
  fingerprint: '0123456789ab',
  date: '2026-11-25',
  program: 'linerwright 0.1.0',
  replaces: { fingerprint: '0bd5bebc6b1f', date: '2026-11-24' },
}
