import type { MillingGrip } from '../../src/cutting/milling-grip.ts'
import type { EveryField } from './every-field-of.ts'

export const EVERY_MILLING_GRIP_FIELD: EveryField<MillingGrip> = {
  needed: 5170,
  ask: 5200,
  for: 'drill the entry hole, boost',
  cutForce: 640,
  arm: 52,
  slip: 2100,
  tilt: 4800,
  friction: { tangential: 0.1, axial: 0.13, source: 'table of a chuck maker' },
  set: 5000,
  lengthNeeded: 12,
}
