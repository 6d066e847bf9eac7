import type { Millimetre, SpindleSpeed } from '../units.ts'
/** Inclusive range, crank degrees or revolutions a minute. */
export type Band = readonly [from: number, to: number]

/** What crankcase-scavenged engines with a piston-controlled exhaust run, by class. Openings in degrees after top dead centre. */
export type TimingClass = {
  readonly name: string
  readonly speed: Band
  readonly exhaust: Band
  readonly transfer: Band
  readonly boostDelay: Band
  readonly blowdown: Band
}

export const TIMING_CLASSES_SOURCE =
  'memory: Jennings 1973, Bell, Blair 1990 and 1996, Bossaglia; a range in use, not a limit'

const TIMING_CLASSES: readonly TimingClass[] = [
  {
    name: 'low-speed utility',
    speed: [3000, 6000],
    exhaust: [105, 115],
    transfer: [118, 128],
    boostDelay: [0, 4],
    blowdown: [8, 18],
  },
  {
    name: 'mid-speed',
    speed: [6000, 9000],
    exhaust: [95, 106],
    transfer: [115, 122],
    boostDelay: [0, 4],
    blowdown: [15, 25],
  },
  {
    name: 'sport',
    speed: [9000, 12_000],
    exhaust: [87, 97],
    transfer: [113, 119],
    boostDelay: [0, 4],
    blowdown: [22, 30],
  },
  {
    name: 'racing',
    speed: [12_000, Number.POSITIVE_INFINITY],
    exhaust: [79, 88],
    transfer: [113, 117],
    boostDelay: [0, 3],
    blowdown: [28, 36],
  },
]

/** Stroke of the engines that the speeds of the table are about: other strokes are compared at equal mean piston speed. */
const STROKE = 57

/**
 * The classes of an engine by its speed and by its mean piston speed: a small engine at 12 000 rpm is loaded like a
 * large one at a third of that. One class where both agree. Slower engines count as the slowest class.
 */
export function timingClasses(speed: SpindleSpeed, stroke: Millimetre): readonly TimingClass[] {
  const of = (rpm: number): TimingClass | undefined => TIMING_CLASSES.find(({ speed: [, to] }) => rpm <= to)
  const found = [of(speed), of((speed * stroke) / STROKE)].flatMap(row => (row ? [row] : []))
  return found.filter((row, i) => found.indexOf(row) === i)
}
