import { fixed, inWords } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { type Part, placeOf } from '../part/part.ts'
import { type FixturePlan, type NotChecked, unmeasuredPlaces } from './fixture-plan.ts'

/** What speaks against the fixture as a whole. */
export const fixtureFindings = (part: Part, fixture: FixturePlan): readonly Finding[] => [
  ...notMeasured(part, fixture),
  ...notChecked(part, fixture),
  ...tilting(part, fixture),
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

/** What each is, as the shop file writes it. */
const KEYS: Readonly<Record<NotChecked, string>> = {
  rotary: 'rotary: {diameter, length}',
  plate: 'plate: {from, to, width, top}',
  head: 'head: {diameter, spindle-length, fully-up}',
  tilting: 'head: {fully-up}',
}
const NAMES: Readonly<Record<NotChecked, string>> = {
  rotary: 'the body of the rotary',
  plate: 'its plate',
  head: "the machine's head",
  tilting: 'what the spindle clears while the plate tilts',
}

/** A clearance that nobody reckoned is not one. */
function notChecked(part: Part, { notChecked }: FixturePlan): readonly Finding[] {
  if (notChecked.length === 0) return []
  const missing = notChecked.filter(what => what !== 'tilting' || !notChecked.includes('head'))
  return [
    {
      code: 'ports/clearance-not-checked',
      severity: 'warning',
      message: `not checked for clearance: ${notChecked.map(what => NAMES[what]).join(', ')}; the shop file does not say what they are`,
      at: placeOf(part, '/ports'),
      hint: `measure them and write \`fixture: {${missing.map(what => KEYS[what]).join(', ')}}\` into the shop file; until then see every set-up, turn of the rotary and tilt go clear with the spindle stopped`,
    },
  ]
}

/** Between set-ups the plate swings under a spindle that can go no higher than fully up. */
function tilting(part: Part, { tilting }: FixturePlan): readonly Finding[] {
  if (tilting?.fullyUp === undefined || tilting.fullyUp >= tilting.tip - 1e-6) return []
  const { reaches, tip, by, fullyUp } = tilting
  const room = fullyUp - reaches
  return [
    {
      code: 'ports/tilting-clearance',
      severity: room < 0 ? 'error' : 'warning',
      message: `while the plate tilts the ${by} rises to Z ${fixed(reaches, 2)} and ${room < 0 ? `strikes the longest tool by ${fixed(-room, 2)}` : `clears the longest tool by ${fixed(room, 2)}`} mm, its tip at Z ${fixed(fullyUp, 2)} with the spindle fully up`,
      at: placeOf(part, '/ports'),
      hint: `take the tool out of the spindle before every tilt, let it stand out ${fixed(Math.ceil((tip - fullyUp) * 10) / 10, 1)} mm less, or move the table clear in X or Y first`,
    },
  ]
}

/** A part that comes out of the jaws is thrown; jaws on a window are cut. Common practice, no source. */
function held(part: Part, fixture: FixturePlan): readonly Finding[] {
  const { grip } = fixture
  // What strikes a fixture that nobody has measured stops no plan: no program is written before it is.
  const severity = unmeasuredPlaces(fixture).length > 0 ? ('warning' as const) : ('error' as const)
  const at = placeOf(part, '/ports')
  const { length, least, most, surface, toPort, end } = grip
  const other = `hold the part by its other end (\`fixture: {head-faces: ${end === 'top' ? '+X' : '-X'}}\`), or by a plug or a bolt through the bore`
  const nearer = `set the chuck's face ${fixed(Math.ceil((least - length) * 100 - 1e-6) / 100, 2)} mm nearer to the ports, or hold the part by a plug or a bolt through the bore`
  return [
    ...(length < least - 1e-6
      ? [
          {
            code: 'ports/short-grip' as const,
            severity,
            message: `the jaws hold ${fixed(length, 2)} mm of ${surface}; ${inWords(least)} mm or more is needed to mill the ports`,
            at,
            hint: `${most < least ? `${surface} is no longer: ${other}` : nearer}; \`habits: {least-grip: …}\` in the shop file says how much the works wants`,
          },
        ]
      : []),
    ...(toPort < 0
      ? [
          {
            code: 'ports/grip-on-port' as const,
            severity,
            message: `the jaws stand ${fixed(-toPort, 2)} mm over the nearest port edge on the outside`,
            at,
            hint: 'hold the part by its other end, on a plate by a bolt through the bore, or leave more length as a stub that is cut off later',
          },
        ]
      : []),
  ]
}
