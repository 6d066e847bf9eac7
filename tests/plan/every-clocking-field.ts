import type { Clocking } from '../../src/cutting/clocking.ts'
import type { EveryField } from './every-field-of.ts'

export const EVERY_CLOCKING_FIELD: EveryField<Clocking> = {
  way: 'the batch at each tilt',
  passes: 3,
  tilts: 3,
  minutes: { load: 3, change: 8, clock: 0.5, allTilts: 486, eachTilt: 213 },
  datum: {
    kind: 'flat',
    name: 'flat on flange',
    on: 'flange',
    drawn: true,
    at: 0,
    clock: '12 o’clock',
    depth: 0.5,
    width: 11.1,
    rotary: 0,
    floor: 80.5,
    x: 78,
    clamping: 'with the ports',
    place: { from: 0, to: 4, diameter: 62, radius: 28, end: 'top' },
    angle: 0.072,
    between: 0.1,
    side: 0.04,
  },
}
