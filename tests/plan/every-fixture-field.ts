import type { FixturePlan } from '../../src/ports/fixture-plan.ts'
import type { EveryField } from './every-field-of.ts'

const FACE = { x: 80, z: 50 }

export const EVERY_FIXTURE_FIELD: EveryField<FixturePlan> = {
  grip: {
    surface: 'seat',
    diameter: 55.1,
    end: 'bottom',
    length: 10,
    least: 10,
    front: 82,
    chuckFace: -2,
    toPort: 23,
  },
  sineBar: 100,
  tilts: [{ tilt: 15, stack: 25.9, face: FACE }],
  provingMoves: ['Set tilt 0.'],
  order: [{ port: 'exhaust', at: 0, window: 1, tilt: 0, rotary: 180, cutter: 2 }],
  tiltChanges: 1,
  rotaryReversals: 0,
  assumed: ['holder', 'chuck'],
}
