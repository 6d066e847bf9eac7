import { clockPosition } from '../clock-position.ts'
import type { Shop } from '../shop/shop.ts'
import type { AsMilled } from '../stock/stock.ts'
import type { Degree, Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'
import { type Grip, gripToPort } from './grip.ts'
import type { Body } from './height-under.ts'
import { type PickUp, pickUpOf, STACK_ERROR, type TiltSetting, tiltSettings } from './pick-up.ts'
import type { PlannedPort } from './port.ts'
import { type Tilting, tiltingOf } from './safe-heights.ts'
import { SETTING_ERROR, type SettingErrors, settingErrors } from './setting-errors.ts'
import { orderedWindows } from './window-order.ts'
import { type Wrap, wrapOf } from './wrap.ts'

/** One window in the order of cutting. */
export type SettingStep = {
  readonly port: string
  /** Azimuth of the port, and which of its windows, counted from 1. */
  readonly at: Degree
  readonly window: number
  readonly tilt: Degree
  readonly rotary: Degree
  readonly cutter: Millimetre
  /** Middle of the window on a clock face seen from the head, azimuth 0 at 12. */
  readonly clock: string
  readonly errors: SettingErrors
}

/** How the fixture is set, proved and picked up. */
export type FixturePlan = {
  /** What the jaws hold the part by, and from their front to the nearest port edge on the outside. */
  readonly grip: Grip & { readonly toPort: Millimetre }
  readonly pickUp: PickUp
  readonly wrap: Wrap
  /** The works' own, or the built-in one. */
  readonly sineBar: Millimetre
  /** In the order of setting. */
  readonly tilts: readonly TiltSetting[]
  /** The errors of touch, stack, tilt and rotary that `errors` and `perStack` are reckoned for. */
  readonly errorsOf: typeof SETTING_ERROR & { readonly stack: Millimetre }
  /** One line each, in the imperative: what to see move before the first chip. */
  readonly provingMoves: readonly string[]
  /** Fewest changes of tilt; at each tilt the rotary goes one way, and the other way at the next. */
  readonly order: readonly SettingStep[]
  readonly tiltChanges: number
  readonly rotaryReversals: number
  /** What rises while the plate tilts, which the spindle must be clear of; absent where nothing is tilted. */
  readonly tilting?: Tilting
  /** What the works says nothing of: no clearance to it is known. */
  readonly notChecked: readonly NotChecked[]
  /** What the works did not measure, as the shop file names it: the built-in figures stand for it. */
  readonly assumed: readonly FixtureFigure[]
}

const BODIES = ['rotary', 'plate', 'head'] as const
/** Of the fixture and the machine; and the way that all goes while it tilts. */
export type NotChecked = (typeof BODIES)[number] | 'tilting'

const FIGURES = [
  'head-faces',
  'face-distance',
  'pivot-height',
  'positive-rotary',
  'positive-tilt',
  'holder',
  'chuck',
  'sine-bar',
] as const
export type FixtureFigure = (typeof FIGURES)[number]
/** Of these the place of every cut in the part. */
const PLACES: ReadonlySet<FixtureFigure> = new Set(FIGURES.slice(0, 5))

/** What no program can do without: empty once the works has measured its fixture. */
export const unmeasuredPlaces = ({ assumed }: Pick<FixturePlan, 'assumed'>): readonly FixtureFigure[] =>
  assumed.filter(figure => PLACES.has(figure))

/** Setting, proving and order of all windows together. */
export function planFixture({
  ports,
  shop: { fixture, set, ncWords },
  asMilled,
  grip,
  bodies,
  longest,
  notebook,
}: {
  readonly ports: readonly PlannedPort[]
  readonly shop: Pick<Shop, 'fixture' | 'set' | 'ncWords'>
  readonly asMilled: AsMilled
  readonly grip: Grip
  /** All that tilts with the part. */
  readonly bodies: readonly Body[]
  /** Stick-out of the longest tool that may be in the spindle. */
  readonly longest: Millimetre
  readonly notebook: Notebook
}): FixturePlan {
  const order = orderOf(ports, notebook)
  const tilts = order.map(({ tilt }) => tilt).filter((tilt, i, all) => all.indexOf(tilt) === i)
  const tiltAxis = ncWords?.tiltAxis
  const tilting = tiltingOf({ fixture, bodies, tilts, stickOut: longest })
  const asked = { fixture, shop: { set }, tiltAxis, asMilled, grip, bodies, ports, tilts, notebook }
  return {
    grip: { ...grip, toPort: gripToPort(grip, ports) },
    pickUp: pickUpOf(asked),
    wrap: wrapOf(ports, asMilled.shape),
    sineBar: fixture.sineBar,
    tilts: tiltSettings(asked),
    errorsOf: { ...SETTING_ERROR, stack: STACK_ERROR },
    provingMoves: provingMoves(fixture, tiltAxis),
    order,
    tiltChanges: Math.max(0, tilts.length - 1),
    rotaryReversals: reversals(order.map(({ rotary }) => rotary)),
    ...(tilting ? { tilting } : {}),
    notChecked: [
      ...BODIES.filter(what => fixture[what] === undefined),
      ...(tilting && tilting.fullyUp === undefined ? (['tilting'] as const) : []),
    ],
    assumed: FIGURES.filter(key => !set.has(`/fixture/${key}`)).filter(
      key => key !== 'positive-tilt' || (tiltAxis !== undefined && tilts.some(tilt => tilt !== 0)),
    ),
  }
}

function orderOf(ports: readonly PlannedPort[], notebook: Notebook): readonly SettingStep[] {
  return orderedWindows(ports).map(({ port, window, number }) => ({
    port: port.name,
    at: port.at,
    window: number,
    tilt: window.tilt,
    rotary: window.rotary,
    cutter: window.cutter,
    clock: clockPosition(window.at),
    errors: settingErrors(port, window, notebook),
  }))
}

/** How often the rotary turns back on its way. */
function reversals(angles: readonly Degree[]): number {
  const moves = angles.slice(1).map((angle, i) => Math.sign(angle - (angles[i] ?? angle)))
  const turns = moves.filter(move => move !== 0)
  return turns.slice(1).filter((move, i) => move !== turns[i]).length
}

function provingMoves(
  { positiveRotary, positiveTilt, headFaces }: Shop['fixture'],
  tiltAxis: string | undefined,
): readonly string[] {
  const toward = positiveRotary === 'Y to Z' ? '−Y' : '+Y'
  // Of a tilt of ours; an axis of the machine may count the other way.
  const ours = tiltAxis === undefined || positiveTilt === 'Z to X'
  const headMoves = (headFaces === '+X') === ours ? 'down' : 'up'
  return [
    'Set tilt 0 and rotary 0: the 12 o’clock mark of the part, seen from the head, must face the spindle.',
    `Index the rotary to +90: the mark must go toward ${toward}.`,
    `${tiltAxis === undefined ? 'Tilt by' : `Turn ${tiltAxis} to`} +5: the head end must go ${headMoves}.`,
    'Move Y by +5: the cutter must go to the +Y side of the rotary centre line.',
  ]
}
