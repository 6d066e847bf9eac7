import type { Clocking, ClockingDatum } from '../../cutting/clocking.ts'
import { angle, fixed, minutes, signed } from '../../figures.ts'
import type { PaperFigures } from './paper-figures.ts'

/** How the batch goes through the tilts, and how azimuth 0 is brought back, for the one who loads. */
export function clockingLines(
  { way, passes, minutes: taken, datum }: Clocking,
  figures: PaperFigures,
): readonly string[] {
  if (way === 'one tilt') return []
  const other = taken.eachTilt === undefined ? '' : ` against ${minutes(taken.eachTilt)}`
  if (way === 'all tilts a piece')
    return [
      `All tilts a piece, in one clamping: ${minutes(taken.allTilts)} min of loading and tilting for the batch${other}. Do not loosen a piece before its last tilt.`,
    ]
  return [
    `${fixed(passes, 0)} passes of the batch, one for each tilt: ${minutes(taken.eachTilt ?? 0)} min of loading, clocking and tilting against ${minutes(taken.allTilts)} with all tilts a piece.`,
    ...(datum ? [madeLine(datum, figures), usedLine(datum), errorLine(datum, figures)] : []),
  ]
}

function madeLine({ kind, on, clock, depth, rotary, floor, width }: ClockingDatum, figures: PaperFigures): string {
  const { length, unit } = figures
  if (kind === 'window key')
    return `Clock by a key in ${on}, at ${clock} o’clock, ${length(width ?? 0, 2)} ${unit} wide: milled in the first pass, measured there, and the key made to go in without shake.`
  if (kind === 'dowel hole')
    return `Clock by the dowel hole in ${on}, at ${clock} o’clock: it is there before the first pass, and every pass goes by it.`
  return `Clock by the ${kind} on ${on}, at ${clock} o’clock, ${length(depth ?? 0, 2)} ${unit} deep: mill it first, in the first clamping, tilt 0, rotary ${signed(angle(rotary ?? 0, 3))}°, floor at Z ${signed(length(floor ?? 0))} ${unit}.`
}

function usedLine({ kind }: ClockingDatum): string {
  switch (kind) {
    case 'flat':
      return 'At every later loading set tilt 0, run an indicator across the flat in Y, turn the part in the open jaws until it reads the same at both ends, close the jaws, run it again.'
    case 'notch':
      return 'At every later loading push the same flank of the notch against the key of the fixture, then close the jaws; check the first piece of a pass with an indicator on that flank.'
    case 'dowel hole':
      return 'At every loading put the hole on the pin of the fixture, then close the jaws; check the first piece of a pass with an indicator on a window side.'
    case 'window key':
      return 'At every later loading put the key in the window and against the stop of the fixture, always the same flank, then close the jaws; check the first piece of a pass with an indicator on a window side.'
  }
}

const errorLine = ({ angle: one, between, side }: ClockingDatum, { length, unit }: PaperFigures): string =>
  `Azimuth comes back within ${angle(one, 3)}°, between two passes ${angle(between, 3)}°: side edges ±${length(side)} ${unit} round the bore; heights and timing do not move.`
