import type { Plan } from '../../src/plan/plan.ts'
import type { EveryField } from './every-field-of.ts'

export const EVERY_FEATURE_FIELD: EveryField<Plan['features'][number]> = {
  name: 'O-ring',
  kind: 'groove',
  band: 'seat',
  operation: 60,
  written: '2.4 +0.2/0 wide, floor Ø51.6 h11',
  side: 'outside',
  line: [{ depth: 70, radius: 25.8 }],
  end: { cut: 54.09, finished: 54.2 },
  deep: 1.8,
  corner: 0.3,
  angle: 15,
  at: [90],
  through: 'wall',
  offset: 0.5,
  clip: 1.2,
  sphere: 96.5,
  relief: { offset: 0.2, radius: 24.07, fades: 60 },
  middle: { depth: 60, radius: 27.5 },
  across: { width: 3, height: 3 },
  roughness: 1.6,
  square: 0.01,
}

const LIMITS = { nominal: 2, lower: 1, upper: 3 }

export const EVERY_FIT_FIELD: EveryField<NonNullable<Plan['fit']>> = {
  mate: 'OX-098-21',
  bore: LIMITS,
  rows: [
    {
      place: 'skirt',
      band: 'skirt',
      piston: LIMITS,
      cold: { least: 0.045, most: 0.1 },
      needed: 0.07,
      warm: { least: 0.01, most: 0.06 },
      usual: { least: 0.05, most: 0.12 },
      temperature: 140,
    },
  ],
}
