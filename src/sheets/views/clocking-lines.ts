import type { Clocking } from '../../cutting/clocking.ts'
import type { ClockingDatum } from '../../cutting/clocking-datum.ts'
import { angle, fixed, minutes, signed } from '../../figures.ts'
import type { PlannedPort } from '../../ports/port.ts'
import type { PaperFigures } from './paper-figures.ts'

/** How the batch goes through the tilts, and what clocks the part, for the one who loads. */
export function clockingLines(
  { way, passes, minutes: taken, datum }: Clocking,
  figures: PaperFigures,
): readonly string[] {
  const made = datum && (datum.drawn || way === 'the batch at each tilt') ? [madeLine(datum, figures)] : []
  if (way === 'one tilt') return made
  const other = taken.eachTilt === undefined ? '' : ` against ${minutes(taken.eachTilt)}`
  if (way === 'all tilts a piece')
    return [
      `All tilts a piece, in one clamping: ${minutes(taken.allTilts)} min of loading and tilting for the batch${other}. Do not loosen a piece before its last tilt.`,
      ...made,
    ]
  return [
    `${fixed(passes, 0)} passes of the batch, one for each tilt: ${minutes(taken.eachTilt ?? 0)} min of loading, clocking and tilting against ${minutes(taken.allTilts)} with all tilts a piece.`,
    ...made,
  ]
}

/** How 12 o'clock comes back at a loading, where that is picked up: with the other zeros. */
export function clockedLines({ way, datum }: Clocking, figures: PaperFigures): readonly string[] {
  if (!datum || (!datum.drawn && way !== 'the batch at each tilt')) return []
  const again = way === 'the batch at each tilt'
  const own = datum.clamping === 'of its own'
  // Milled with the ports, the first loading makes it, and only a later one goes by it.
  if (!again && !own) return []
  return [`12 o’clock of the part: ${usedLine(datum)}`, errorLine(datum, again, figures)]
}

function madeLine(
  { kind, name, on, at, clock, depth, rotary, x, floor, width, clamping, place }: ClockingDatum,
  figures: PaperFigures,
): string {
  const { length, unit } = figures
  const where = `at ${clock} (angle ${signed(angle(at, 1))}°)`
  if (kind === 'window key')
    return `Clock by a key in ${on}, ${where}, ${length(width ?? 0, 2)} ${unit} wide: milled in the first pass, measured there, and the key made to go in without shake.`
  const size = `${where}, ${length(depth ?? 0, 2)} ${unit} deep`
  if (clamping === 'of its own') {
    const how =
      kind === 'dowel hole'
        ? `${length(place?.radius ?? 0, 2)} ${unit} from the axis, drilled and reamed`
        : `over ${length((place?.to ?? 0) - (place?.from ?? 0), 1)} ${unit} along the part, milled`
    return `Clock by the ${name}, ${size}, ${how} in a clamping of its own: it is there before the first pass, and every pass goes by it.`
  }
  return `Clock by the ${name}, ${size}: mill it first, in the first clamping, tilt 0, rotary ${signed(angle(rotary, 3))}°, middle at X ${signed(length(x ?? 0))}, Y 0, floor at Z ${signed(length(floor ?? 0))} ${unit}. No program is written for it: by hand wheels to these figures, or typed in.`
}

function usedLine({ kind, name, clamping, rotary }: ClockingDatum): string {
  const before = clamping === 'of its own'
  const every = before ? 'at every loading' : 'at every later loading'
  switch (kind) {
    case 'flat':
      return before
        ? `${every} turn the part in the open jaws until the ${name} lies on the straight stop in the chuck, then close the jaws; check the first piece of a pass with an indicator on a window side.`
        : `${every} set tilt 0 and rotary ${signed(angle(rotary, 3))}°, run an indicator across the ${name} in Y, turn the part in the open jaws until it reads the same at both ends, close the jaws, run it again.`
    case 'notch':
      return `${every} push the same flank of the ${name} against the key of the fixture, then close the jaws; check the first piece of a pass with an indicator on ${before ? 'a window side' : 'that flank'}.`
    case 'dowel hole':
      return `${every} put the ${name} on the pin of the fixture, then close the jaws; check the first piece of a pass with an indicator on a window side.`
    case 'window key':
      return `${every} put the key in the window and against the stop of the fixture, always the same flank, then close the jaws; check the first piece of a pass with an indicator on a window side.`
  }
}

const errorLine = (
  { angle: one, between, side }: ClockingDatum,
  again: boolean,
  { length, unit }: PaperFigures,
): string =>
  `It comes back within ${angle(one, 3)}°${again ? `, between two passes ${angle(between, 3)}°: side edges ±${length(side)} ${unit} round the bore` : ''}; heights and timing do not move.`

/** How far each port may stand off round the bore, from what its place is measured from. */
export function placeLines(ports: readonly PlannedPort[], { length, unit }: PaperFigures): readonly string[] {
  const placed = ports.flatMap(({ name, place }) => (place ? [{ name, ...place }] : []))
  const [first] = placed
  if (!first) return []
  const { angle: allowed, side } = first.allowed
  const each = placed.map(
    ({ name, worstCase }) => `${name} ±${angle(worstCase.angle, 3)}°, ±${length(worstCase.side)} ${unit}`,
  )
  return [
    `Round the bore from ${first.from}, clocking, rotary and Y at their worst, with what either side edge moves: ${each.join('; ')}. Checked to ±${angle(allowed, 3)}°, ±${length(side)} ${unit}.`,
  ]
}
