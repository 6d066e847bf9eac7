import { angle, fixed, inWords, signed } from '../../figures.ts'
import { type WindowAsCut, windowAsCut } from '../../pictures/windows-cut.ts'
import type { Plan } from '../../plan/plan.ts'
import type { SettingStep } from '../../ports/fixture-plan.ts'
import type { PlannedPort, PortWindow } from '../../ports/port.ts'
import { clockedLines, clockingLines, placeLines } from './clocking-lines.ts'
import { DASH, type PaperFigures } from './paper-figures.ts'

/** A window with its name: a bridged port has two, and the name carries which. */
export type NamedWindow = {
  readonly name: string
  /** In the set-ups. */
  readonly is: { readonly port: string; readonly at: number; readonly window: number }
  readonly window: PortWindow
  /** As the set-ups cut it; absent where none does. */
  readonly asCut?: WindowAsCut
  /** Its place in the order of setting, where the plan has one. */
  readonly step?: SettingStep
}

/** How the fixture is tilted, proved and picked up, and how deep each cutter goes. */
export type FixtureView = {
  /** What the jaws hold, how much of it, how far from the ports. */
  readonly hold: string
  /** How often the batch goes through, and what brings the part's azimuth back, one line each. */
  readonly passes: readonly string[]
  readonly sineBar: string
  /** What is touched at tilt 0, one line each, in order. */
  readonly pickUp: readonly string[]
  readonly tilts: readonly {
    readonly tilt: string
    /** Where the machine's tilt axis stands for it; a dash where it is set by hand. */
    readonly axis: string
    readonly across: string
    readonly stack: string
    readonly under: string
    readonly perStack: string
    readonly x: string
    readonly z: string
    readonly move: string
    readonly fall: string
  }[]
  /** Errors of the setting that the table below is for: of a touch, of a tilt, of a rotary, of a stack. */
  readonly errorsOf: { readonly x: string; readonly tilt: string; readonly rotary: string; readonly stack: string }
  readonly errors: readonly {
    readonly window: string
    readonly x: string
    readonly xCrank: string
    readonly tilt: string
    readonly tiltCrank: string
    readonly side: string
  }[]
  readonly provingMoves: readonly string[]
  /** What nobody measured and every figure rests on; empty where the works has. */
  readonly notMeasured: string
  /** Against what every clearance was reckoned, and what nobody reckoned. */
  readonly checked: string
  /** How high the work rises while it tilts, and the spindle over it; empty where nothing is tilted. */
  readonly tilting: string
  /** Letter of the axis that sets the tilt; empty where it is set by hand. */
  readonly tiltAxis: string
  /** How often tilt and rotary turn back, in words. */
  readonly changes: string
  readonly depths: readonly {
    readonly window: string
    readonly tool: string
    /** What of the window it cuts. */
    readonly does: string
    readonly flutes: string
    readonly reach: string
    readonly touch: string
    readonly through: string
    readonly farWall: string
  }[]
}

/** Every window once, in the order of setting where the plan has one. */
export function inOrder(plan: Plan): readonly NamedWindow[] {
  const { ports, fixture } = plan
  const named = ports.flatMap(port =>
    port.windows.map((window, index): NamedWindow => {
      const is = { port: port.name, at: port.at, window: index + 1 }
      const asCut = windowAsCut(plan, is)
      return { is, name: nameOf(port, index), window, ...(asCut && { asCut }) }
    }),
  )
  if (!fixture) return named
  const place = ({ is }: NamedWindow): number =>
    fixture.order.findIndex(step => step.port === is.port && step.at === is.at && step.window === is.window)
  return named
    .toSorted((a, b) => place(a) - place(b))
    .map(item => {
      const step = fixture.order[place(item)]
      return { ...item, ...(step && { step }) }
    })
}

const nameOf = ({ name, windows }: PlannedPort, index: number): string =>
  windows.length > 1 ? `${name} ${index + 1} of ${windows.length}` : name

export function fixtureView(plan: Plan, figures: PaperFigures): FixtureView {
  const { fixture } = plan
  const { length } = figures
  return {
    passes: plan.clocking ? clockingLines(plan.clocking, figures) : [],
    hold: fixture ? [holdWords(fixture, figures), ...gripWords(plan)].join(' ') : '',
    // A bar is known by its length as it was bought.
    sineBar: fixture ? `${inWords(fixture.sineBar)} mm` : '',
    pickUp: [
      ...(fixture ? pickUpLines(fixture.pickUp, figures) : []),
      ...(plan.clocking ? clockedLines(plan.clocking, figures) : []),
      ...placeLines(plan.ports, figures),
    ],
    tilts: (fixture?.tilts ?? []).map(({ tilt, axis, across, stack, blocksUnder, perStack, check }) => ({
      tilt: signed(angle(tilt, 3)),
      axis: axis ? signed(angle(axis.at, 3)) : DASH,
      across: signed(length(across, 1)),
      stack: length(stack),
      under: blocksUnder === 'none' ? DASH : blocksUnder,
      perStack: angle(perStack, 4),
      x: signed(length(check.x)),
      z: signed(length(check.z)),
      move: signed(length(check.move)),
      fall: signed(length(check.fall)),
    })),
    errorsOf: {
      x: fixture ? length(fixture.errorsOf.x) : '',
      tilt: fixture ? inWords(fixture.errorsOf.tilt) : '',
      rotary: fixture ? inWords(fixture.errorsOf.rotary) : '',
      stack: fixture ? length(fixture.errorsOf.stack) : '',
    },
    errors: inOrder(plan).flatMap(({ name, step }) => {
      if (!step) return []
      const { x, tilt, rotary } = step.errors
      const crank = (degree: number | undefined): string => (degree === undefined ? DASH : angle(degree, 2))
      return [
        {
          window: name,
          x: length(x.edge),
          xCrank: crank(x.crank),
          tilt: length(tilt.edge),
          tiltCrank: crank(tilt.crank),
          side: length(rotary.side),
        },
      ]
    }),
    provingMoves: fixture?.provingMoves ?? [],
    notMeasured: fixture ? notMeasuredWords(fixture) : '',
    checked: fixture ? checkedWords(fixture, plan.shop) : '',
    tilting: fixture ? tiltingWords(fixture, figures) : '',
    tiltAxis: fixture?.tilts[0]?.axis?.letter ?? '',
    changes: fixture ? changesOf(fixture) : '',
    depths: inOrder(plan).flatMap(named => depthRows(named, figures)),
  }
}

/** A line for each end mill that cuts the window, in the order of cutting; of the one chosen where nothing is cut. */
function depthRows({ name, window, asCut }: NamedWindow, { length }: PaperFigures): FixtureView['depths'] {
  const { plunge, needed, held, tools, roughing } = window
  const both = (least: number | undefined, has: number | undefined): string =>
    least === undefined ? DASH : `${length(least, 1)} / ${has === undefined ? DASH : length(has, 1)}`
  const mills = asCut?.mills ?? [{ tool: tools.cutter ?? DASH, does: DASH }]
  return mills.map(({ tool, does }) => {
    const isRougher = tool === tools.rougher
    const stands = isRougher ? roughing?.held : held
    return {
      window: name,
      tool,
      does,
      flutes: both(isRougher ? roughing?.flutes : needed?.flutes, stands?.flutes),
      reach: both(stands?.stickOutNeeded ?? needed?.reach, stands?.stickOut),
      touch: length(plunge.zTop, 2),
      through: length(plunge.zThrough, 2),
      farWall: length(plunge.zFarWall, 2),
    }
  })
}

function pickUpLines(
  { ball, surface, diameter, rotary, clock, side, crown, face, pivot }: NonNullable<Plan['fixture']>['pickUp'],
  { length, unit }: PaperFigures,
): readonly string[] {
  const at = (millimetre: number): string => `${signed(length(millimetre))} ${unit}`
  return [
    `Tilt 0. Rotary ${signed(angle(rotary, 1))}°: the wall at ${clock}, which no window cuts, is on top. Ball Ø ${length(ball)} ${unit} in the spindle: X and Y are its middle, Z its tip.`,
    `Touch ${surface}, Ø ${length(diameter)} ${unit} now, on both sides: halfway between, set the display to Y 0. Against either side it then shows Y ±${length(side)} ${unit}.`,
    `Touch the crown of ${surface}: set the display to Z ${at(crown)}. Every cutter and drill likewise by its own tip, all at tilt 0; with a gauge block under it, the block more.`,
    face.on === 'top face'
      ? `Touch the top face on its rim, tip at Z ${at(face.z)}, Y 0: set the display to X ${at(face.x)}.`
      : `With the jaws empty touch the shoulder that the top face stops against, tip at Z ${at(face.z)}, Y 0: set the display to X ${at(face.x)}. Every part is pushed home against it.`,
    ...(pivot
      ? [
          `Where the pivot is not known: fix a ball to the plate, read X and Z over it at tilt 0 (1) and at tilt ${signed(angle(pivot.tilt, 1))}° (2). The pivot stands at X = half of X1 + X2, plus ${fixed(pivot.factor, 4).replace('-', '−')} times Z2 − Z1; Z = half of Z1 + Z2, less ${fixed(pivot.factor, 4).replace('-', '−')} times X2 − X1.`,
        ]
      : []),
  ]
}

function holdWords({ grip }: NonNullable<Plan['fixture']>, { length, unit }: PaperFigures): string {
  const { surface, diameter, end, toPort } = grip
  return `Grip ${length(grip.length, 1)} ${unit} of ${surface}, Ø ${length(diameter)} ${unit} now, at its ${end === 'bottom' ? 'lower' : 'upper'} end, no more. ${end === 'bottom' ? 'Top face outward.' : 'Top face in the jaws, against their shoulder.'} Front of the jaws ${length(grip.front, 2)} ${unit} below the finished top face, ${length(toPort, 1)} ${unit} from the nearest port edge outside.`
}

function gripWords({ millingGrip }: Plan): readonly string[] {
  if (!millingGrip) return []
  const { needed, ask: least, set, for: cut } = millingGrip
  const ask = `Jaws or collet must press with ${fixed(least, 0)} N together (${cut})`
  return [
    needed > set ? `${ask}; set to ${fixed(set, 0)} they do not hold it.` : `${ask}; they are set to ${fixed(set, 0)}.`,
  ]
}

const NAMES = {
  rotary: 'body of the rotary',
  plate: 'its plate',
  head: 'head of the machine',
  tilting: 'the way up before a tilt',
} as const

function checkedWords({ notChecked }: NonNullable<Plan['fixture']>, { fixture }: Plan['shop']): string {
  const others = (['rotary', 'plate', 'head'] as const).filter(what => fixture?.[what] !== undefined)
  const known = ['part', 'chuck', ...others.map(what => NAMES[what])]
  const left = notChecked.map(what => NAMES[what])
  return `Clearances are reckoned of cutter, shank, holder and spindle to ${known.join(', ')}.${left.length === 0 ? '' : ` Not checked: ${left.join(', ')}: see them go clear with the spindle stopped.`}`
}

function tiltingWords({ tilting }: NonNullable<Plan['fixture']>, { length, unit }: PaperFigures): string {
  if (!tilting) return ''
  const { reaches, tip, by, fullyUp } = tilting
  const up = fullyUp === undefined ? '' : ` Fully up the longest tool stands at Z ${signed(length(fullyUp, 1))}.`
  return `Take the spindle fully up before any tilt: the ${by} rises to Z ${signed(length(reaches, 1))} ${unit} on the way, and a tip left under Z ${signed(length(tip, 1))} stands in it.${up}`
}

function notMeasuredWords({ assumed }: NonNullable<Plan['fixture']>): string {
  const missing = assumed.filter(figure => figure !== 'holder' && figure !== 'chuck')
  return missing.length === 0 ? '' : `Not for use: nobody measured the fixture: ${missing.join(', ')}.`
}

function changesOf({ tiltChanges, rotaryReversals }: NonNullable<Plan['fixture']>): string {
  const times = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`
  return `${times(tiltChanges, 'change')} of tilt, ${times(rotaryReversals, 'reversal')} of the rotary.`
}
