import type { FixturePlan } from '../../src/ports/fixture-plan.ts'
import type { EveryField } from './every-field-of.ts'

const SHIFT = { edge: 0.01, crank: 0.02 }
export const ERRORS: EveryField<FixturePlan['order'][number]['errors']> = {
  x: SHIFT,
  tilt: SHIFT,
  rotary: { side: 0.04 },
}

export const EVERY_FIXTURE_FIELD: EveryField<FixturePlan> = {
  grip: {
    surface: 'seat',
    diameter: 55.1,
    end: 'bottom',
    length: 10,
    most: 88,
    least: 10,
    front: 82,
    chuckFace: -2,
    toPort: 23,
  },
  pickUp: {
    ball: 6,
    surface: 'seat',
    diameter: 55.1,
    rotary: 40,
    clock: 'about half past 1',
    side: 30.55,
    crown: 77.55,
    face: { on: 'top face', x: 83, z: 74 },
    pivot: { tilt: 50, factor: 1.0723 },
  },
  wrap: { from: 4, below: 4.06 },
  sineBar: 100,
  tilts: [
    {
      tilt: 15,
      axis: { letter: 'B', at: -15 },
      across: 120,
      stack: 25.9,
      blocksUnder: 'chuck end',
      perStack: 0.006,
      check: { x: 24, z: 73.9, move: 40, fall: -10.718 },
    },
  ],
  errorsOf: { x: 0.01, tilt: 0.01, rotary: 0.1, stack: 0.01 },
  provingMoves: ['Set tilt 0.'],
  order: [{ port: 'exhaust', at: 0, window: 1, tilt: 0, rotary: 180, cutter: 2, clock: '12 o’clock', errors: ERRORS }],
  tiltChanges: 1,
  rotaryReversals: 0,
  tilting: { reaches: 118, tip: 123, by: 'chuck', fullyUp: 250 },
  notChecked: ['plate'],
  assumed: ['holder', 'chuck'],
}
