import { clockPosition } from '../clock-position.ts'
import { sidePerRotary } from '../handbook/pick-up.ts'
import {
  clearanceError,
  DATUM_SIZES,
  FLAT_AT_STOP,
  flatWidth,
  TIMING_DATUMS,
  type TimingDatum,
  touchError,
} from '../handbook/timing-datums.ts'
import { fromHandbook, fromPart, told, worked } from '../known.ts'
import { headSense } from '../machine-frame.ts'
import { type Grip, gripOf } from '../ports/grip.ts'
import { type OrderedWindow, windowName } from '../ports/window-order.ts'
import type { Degree, Millimetre } from '../units.ts'
import type { CuttingTask } from './cutting-task.ts'

export type ClockingDatum = {
  readonly kind: TimingDatum
  /** `flat on flange`: what papers and inspection call it. */
  readonly name: string
  /** Band, or window, that carries it. */
  readonly on: string
  readonly drawn: boolean
  readonly at: Degree
  /** Seen from the head, azimuth 0 at 12. */
  readonly clock: string
  readonly depth?: Millimetre
  /** Of a flat, a notch, a hole, or the window for a key. */
  readonly width?: Millimetre
  /** When it is made: with the ports, first of all, or before them in a clamping of its own, since the jaws or the spindle's way forbid it there. */
  readonly clamping?: 'with the ports' | 'of its own'
  /** What of the part carries it: depths below the finished top face, and the diameter then. A hole stands at `radius`. */
  readonly place?: {
    readonly from: Millimetre
    readonly to: Millimetre
    readonly diameter: Millimetre
    readonly radius?: Millimetre
    readonly end: 'top' | 'bottom'
  }
  /** Rotary that brings it on top. */
  readonly rotary: Degree
  /** Where it is milled with the ports, at tilt 0: X of its middle and Z of its floor. */
  readonly x?: Millimetre
  readonly floor?: Millimetre
  /** Azimuth of one loading, and between the ports of two. */
  readonly angle: Degree
  readonly between: Degree
  /** Of the side edges round the bore between two loadings. Rotation about its own axis leaves heights and timing. */
  readonly side: Millimetre
}

const PRACTICE = fromHandbook('common practice, no source')

type Drawn = NonNullable<CuttingTask['part']['datum']>

/** Drawn, or a key in the widest window that is milled level and straight at the axis: it is there after the first tilt. */
export function datumOf(task: CuttingTask, ordered: readonly OrderedWindow[]): ClockingDatum | undefined {
  const radius = ordered[0]?.window.walls.finished ?? 0
  const { datum } = task.part
  if (datum) return drawn(task, datum, radius)
  const level = ordered
    .filter(({ port, window }) => window.tilt === 0 && ordered[0]?.window.tilt === 0 && port.back === 0)
    .toSorted((a, b) => b.window.width - a.window.width)[0]
  if (!level) return undefined
  const { window } = level
  return {
    kind: 'window key',
    name: `key in ${windowName(level)}`,
    on: windowName(level),
    drawn: false,
    at: window.at,
    clock: clockPosition(window.at),
    rotary: onTop(task, window.at),
    width: window.width,
    ...errors(task, errorOf(task, 'window key', window.walls.bore), radius),
  }
}

function drawn(task: CuttingTask, { kind, on, at, depth }: Drawn, bore: Millimetre): ClockingDatum {
  const { shop, after, notebook, operation } = task
  const { outside, top } = after
  const band = outside.find(({ name }) => name === on) ?? outside.at(-1)
  if (!band) throw new Error('a part without an outside has no datum')
  const { diameter } = band
  const grip = gripOf(shop, { shape: after, topStock: 0 - top, boreDiameter: 0 })
  const hole = kind === 'dowel hole'
  const free = freeOf(band, grip)
  const clamping = hole || !free ? 'of its own' : 'with the ports'
  const { from, to } = hole ? band : (free ?? shortened(band, grip.end === 'top' ? 'bottom' : 'top'))
  const radius = hole ? diameter / 2 - DATUM_SIZES.dowelFromOutside : diameter / 2 - depth / 2
  const end = band === outside[0] && outside.length > 1 ? ('top' as const) : ('bottom' as const)
  const about = { operation: operation.number, about: on }
  return {
    kind,
    name: `${kind} ${hole ? 'in' : 'on'} ${on}`,
    on,
    drawn: true,
    at,
    clock: clockPosition(at),
    rotary: onTop(task, at),
    depth,
    width:
      kind === 'flat'
        ? notebook.use(
            flatWidth,
            { ...told(worked('band as it stands'), { D: diameter }), ...told(fromPart('/datum/depth'), { h: depth }) },
            about,
          )
        : DATUM_SIZES[kind],
    clamping,
    place: { from, to, diameter, end, ...(hole && { radius }) },
    ...(clamping === 'with the ports' && {
      x: shop.fixture.faceDistance + headSense(shop.fixture) * (top - (from + to) / 2),
      floor: shop.fixture.pivotHeight + diameter / 2 - depth,
    }),
    ...errors(task, errorOf(task, kind, radius, kind === 'flat' && clamping === 'of its own'), bore),
  }
}

function onTop({ shop: { fixture } }: CuttingTask, at: Degree): Degree {
  const upright = 0 - headSense(fixture) * at
  return (fixture.positiveRotary === 'Y to Z' ? upright : 0 - upright) + 0
}

type Stretch = { readonly from: Millimetre; readonly to: Millimetre }

/** Where the jaws leave enough of a band free for a cutter; nothing where they do not. */
function freeOf(band: Stretch, { front, end }: Grip): Stretch | undefined {
  const clear = DATUM_SIZES.clearOfJaws
  const free =
    end === 'bottom'
      ? { from: band.from, to: Math.min(band.to, front - clear) }
      : { from: Math.max(band.from, front + clear), to: band.to }
  const wanted = Math.min(band.to - band.from, DATUM_SIZES.along)
  return free.to - free.from < wanted - 1e-9 ? undefined : shortened(free, end === 'bottom' ? 'top' : 'bottom')
}

/** A long band carries it at one end only. */
function shortened({ from, to }: Stretch, at: 'top' | 'bottom'): Stretch {
  const length = Math.min(to - from, DATUM_SIZES.along)
  return at === 'top' ? { from, to: from + length } : { from: to - length, to }
}

function errorOf({ notebook, operation }: CuttingTask, kind: TimingDatum, r: Millimetre, atStop = false): Degree {
  const { clearance, touch } = atStop ? FLAT_AT_STOP : TIMING_DATUMS[kind]
  const about = { operation: operation.number, about: kind }
  return touch
    ? notebook.use(touchError, told(PRACTICE, { e: touch.reading, w: touch.along }), about)
    : notebook.use(
        clearanceError,
        { ...told(PRACTICE, { c: clearance ?? 0 }), ...told(worked('radius that the datum stands on'), { r }) },
        about,
      )
}

/** Two loadings are each off by as much, either way and apart from each other. */
function errors(
  { notebook, operation }: CuttingTask,
  angle: Degree,
  r: Millimetre,
): Pick<ClockingDatum, 'angle' | 'between' | 'side'> {
  const between = Math.SQRT2 * angle
  const about = { operation: operation.number, about: 'clocking' }
  const given = {
    ...told(worked('bore, finished'), { r }),
    ...told(worked('two loadings, each off by as much'), { dA: between }),
  }
  return { angle, between, side: notebook.use(sidePerRotary, given, about) }
}

/** Minutes to clock a piece by it. */
export const clockingMinutes = ({ kind, clamping }: ClockingDatum): number =>
  (kind === 'flat' && clamping === 'of its own' ? FLAT_AT_STOP : TIMING_DATUMS[kind]).minutes
