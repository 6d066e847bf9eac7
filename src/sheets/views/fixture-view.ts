import { angle, fixed } from '../../figures.ts'
import type { Plan } from '../../plan/plan.ts'
import type { PlannedPort, PortWindow } from '../../ports/port.ts'
import { DASH, type PaperFigures } from './paper-figures.ts'

/** A window with its name: a bridged port has two, and the name carries which. */
export type NamedWindow = { readonly name: string; readonly window: PortWindow }

/** How the fixture is tilted, proved and picked up, and how deep each cutter goes. */
export type FixtureView = {
  /** What the jaws hold, how much of it, how far from the ports. */
  readonly hold: string
  readonly sineBar: string
  readonly tilts: readonly { readonly tilt: string; readonly stack: string; readonly x: string; readonly z: string }[]
  readonly provingMoves: readonly string[]
  /** What nobody measured and every figure rests on; empty where the works has. */
  readonly notMeasured: string
  /** How often tilt and rotary turn back, in words. */
  readonly changes: string
  readonly depths: readonly {
    readonly window: string
    readonly tool: string
    readonly flutes: string
    readonly reach: string
    readonly touch: string
    readonly through: string
    readonly farWall: string
    readonly dx: string
    readonly dz: string
  }[]
}

/** Every window once, in the order of setting where the plan has one. */
export function inOrder({ ports, fixture }: Plan): readonly NamedWindow[] {
  const named = ports.flatMap(port =>
    port.windows.map((window, index) => ({ port, number: index + 1, name: nameOf(port, index), window })),
  )
  if (!fixture) return named
  const place = ({ port, number }: (typeof named)[number]): number =>
    fixture.order.findIndex(step => step.port === port.name && step.at === port.at && step.window === number)
  return named.toSorted((a, b) => place(a) - place(b))
}

const nameOf = ({ name, windows }: PlannedPort, index: number): string =>
  windows.length > 1 ? `${name} ${index + 1} of ${windows.length}` : name

export function fixtureView(plan: Plan, figures: PaperFigures): FixtureView {
  const { fixture } = plan
  const { length } = figures
  return {
    hold: fixture ? holdWords(fixture, figures) : '',
    // A bar is known by its length as it was bought.
    sineBar: fixture ? `${fixed(fixture.sineBar, 0)} mm` : '',
    tilts: (fixture?.tilts ?? []).map(({ tilt, stack, face }) => ({
      tilt: angle(tilt, 3),
      stack: length(stack),
      x: length(face.x),
      z: length(face.z),
    })),
    provingMoves: fixture?.provingMoves ?? [],
    notMeasured: fixture ? notMeasuredWords(fixture) : '',
    changes: fixture ? changesOf(fixture) : '',
    depths: inOrder(plan).map(({ name, window }) => {
      const { plunge, needed, held, fromFace, tools } = window
      const both = (least: number | undefined, has: number | undefined): string =>
        least === undefined ? DASH : `${length(least, 1)} / ${has === undefined ? DASH : length(has, 1)}`
      return {
        window: name,
        tool: tools?.cutter ?? DASH,
        flutes: both(needed?.flutes, held?.flutes),
        reach: both(held?.stickOutNeeded ?? needed?.reach, held?.stickOut),
        touch: length(plunge.zTop, 2),
        through: length(plunge.zThrough, 2),
        farWall: length(plunge.zFarWall, 2),
        dx: fromFace ? length(fromFace.x) : DASH,
        dz: fromFace ? length(fromFace.z) : DASH,
      }
    }),
  }
}

function holdWords({ grip }: NonNullable<Plan['fixture']>, { length, unit }: PaperFigures): string {
  const { surface, diameter, end, toPort } = grip
  return `Grip ${length(grip.length, 1)} ${unit} of ${surface}, Ø ${length(diameter)} ${unit} now, at its ${end === 'bottom' ? 'lower' : 'upper'} end: no more, or holder and jaws meet. Front of the jaws ${length(grip.front, 2)} ${unit} below the finished top face, ${length(toPort, 1)} ${unit} from the nearest port edge outside.`
}

function notMeasuredWords({ assumed }: NonNullable<Plan['fixture']>): string {
  const missing = assumed.filter(figure => figure !== 'holder' && figure !== 'chuck')
  return missing.length === 0 ? '' : `Not for use: nobody measured the fixture: ${missing.join(', ')}.`
}

function changesOf({ tiltChanges, rotaryReversals }: NonNullable<Plan['fixture']>): string {
  const times = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`
  return `${times(tiltChanges, 'change')} of tilt, ${times(rotaryReversals, 'reversal')} of the rotary.`
}
