import type { Plan } from '../../src/plan/plan.ts'
import type { EveryField } from './every-field-of.ts'
import { EVERY_SIZE_FIELD } from './every-size-field.ts'

const RANGE = { least: 1, most: 3 }
const BANDS = [{ name: 'seat', from: 0, to: 92, diameter: 55 }]

export const EVERY_OPERATION_FIELD: EveryField<Plan>['operations'] = [
  {
    number: 10,
    purpose: 'finish-turn',
    name: 'Finish turn',
    process: 'turn',
    place: 'house',
    workCentre: 'lathe',
    holding: 'Hold in soft jaws.',
    setTrue: 0.0075,
    locatedBy: ['seat'],
    locatedAs: 'turned',
    heldIn: 'jaws',
    gripsAt: 'bottom',
    chuckings: [
      {
        number: 1,
        end: 'top',
        grip: { surface: 'seat', length: 10 },
        stop: 'a shoulder',
        heldWith: 'hard jaws',
        jawForce: { jaws: 3, set: 3960, ask: 4000, left: 3500, step: 'rough seat', against: 'tilt' },
        clocking: 'by eye',
      },
    ],
    axialLocator: { face: 'shoulder', band: 'flange' },
    checks: [{ kind: 'receipt', of: [30], text: 'count', because: 'a fault made outside' }],
    marks: 'flange',
    surfaces: ['bore'],
    because: ['first'],
    waits: [{ side: 'after', operation: 20, rule: 'r', because: 'b', otherwise: 'o', source: 's' }],
    cautions: ['guard'],
    sizes: [EVERY_SIZE_FIELD],
    steps: [
      {
        tool: 'finishing tool',
        action: 'finish seat',
        feature: 'seat',
        chucking: 1,
        setUp: 1,
        window: 'exhaust, window 1 of 2',
        cuttingSpeed: 150,
        spindleSpeed: 900,
        feed: 0.1,
        feedUnit: 'mm/rev',
        tableFeed: 90,
        depth: 0.3,
        passes: 2,
        time: 1.5,
        force: 100,
        forceBand: RANGE,
        power: 1,
        wornOut: 3,
        wear: 0.12,
        deflection: 2,
        wheel: { speed: 30, spindleSpeed: 1600 },
        breakageMargin: 4,
        limitedBy: 'spindle speed limit',
        remarks: ['flood'],
      },
    ],
    time: { setup: 45, each: 5, batch: 125 },
    shape: { top: 0, bottom: 92, outside: BANDS, bore: BANDS, ported: true },
    firms: [{ name: 'Quillfen Hardening', leadTime: 10 }],
  },
]
