import { fixed, inWords } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { type Part, placeOf } from '../part/part.ts'
import { type FixturePlan, unmeasuredPlaces } from './fixture-plan.ts'

/** What speaks against the fixture as a whole. */
export const fixtureFindings = (part: Part, fixture: FixturePlan): readonly Finding[] => [
  ...notMeasured(part, fixture),
  ...held(part, fixture),
]

/** Every figure of every setting rests on these. */
function notMeasured(part: Part, fixture: FixturePlan): readonly Finding[] {
  const missing = unmeasuredPlaces(fixture)
  if (missing.length === 0) return []
  return [
    {
      code: 'ports/fixture-not-measured',
      severity: 'warning',
      message: `the settings stand on built-in figures: the shop file does not give the fixture's ${missing.join(', ')}`,
      at: placeOf(part, '/ports'),
      hint: 'measure the fixture and write `fixture:` into the shop file; no program is written before',
    },
  ]
}

/** A part that comes out of the jaws is thrown; jaws on a window are cut. Common practice, no source. */
function held(part: Part, { grip }: FixturePlan): readonly Finding[] {
  const at = placeOf(part, '/ports')
  const { length, least, surface, toPort } = grip
  return [
    ...(length < least - 1e-6
      ? [
          {
            code: 'ports/short-grip' as const,
            severity: 'error' as const,
            message: `the jaws hold ${fixed(length, 2)} mm of ${surface}; ${inWords(least)} mm or more is needed to mill the ports`,
            at,
            hint: `set the chuck's face ${fixed(Math.ceil((least - length) * 100 - 1e-6) / 100, 2)} mm nearer to the ports, or hold the part by a plug or a bolt through the bore; \`habits: {least-grip: …}\` in the shop file says how much the works wants`,
          },
        ]
      : []),
    ...(toPort < 0
      ? [
          {
            code: 'ports/grip-on-port' as const,
            severity: 'error' as const,
            message: `the jaws stand ${fixed(-toPort, 2)} mm over the nearest port edge on the outside`,
            at,
            hint: 'hold the part by its other end, on a plate by a bolt through the bore, or leave more length as a stub that is cut off later',
          },
        ]
      : []),
  ]
}
