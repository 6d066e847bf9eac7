import type { LoadKind, Trial } from '../part/trial.ts'
import { fittingsToSettle, halfInterval, smallestShown } from './fittings-needed.ts'

export type TrialPlan = {
  /** How often every liner is fitted. */
  readonly each: number
  /** Why so often. */
  readonly because: string
  /** Two orders, one the mirror of the other: a coin decides between them. One, where the file has it. */
  readonly orders: readonly string[]
  /** Shares of power, or times the spread of a fitting where that is not known. */
  readonly shown: readonly ShownBy[]
  /** Share of power, where an earlier trial gave it. */
  readonly spread?: number
  readonly keepTheSame: readonly string[]
  readonly read: readonly string[]
  readonly rejectOn: readonly string[]
  readonly cautions: readonly string[]
}

/** What a trial of so many fittings each shows. */
export type ShownBy = {
  readonly each: number
  /** Least difference shown four times in five, and nine times in ten. */
  readonly often: number
  readonly mostly: number
  readonly half: number
}

const OFFERED = [2, 4, 6, 8, 10, 12, 16]
/** Without a spread: enough that half the interval is under one spread and a third. */
const UNKNOWN = 4

/** How to run a trial: pure function of the file. */
export function planTrial(trial: Trial): TrialPlan {
  const { spread, worthwhile, budget, liners, fittingsEach, order } = trial
  const settles =
    spread === undefined
      ? undefined
      : fittingsToSettle({
          s: spread,
          worthwhile,
          others: budget,
          liners: liners.length,
          confidence: 1 - 0.05 / (liners.length - 1),
        })
  const each = fittingsEach ?? evenly(settles ?? UNKNOWN)
  const letters = liners.map(({ letter }) => letter)
  const scale = spread ?? 1
  return {
    each,
    because: becauseOf({ trial, settles, each }),
    orders: order === undefined ? ordersOf(letters, each) : [order],
    shown: OFFERED.map(n => ({
      each: n,
      often: scale * smallestShown(n, 0.8),
      mostly: scale * smallestShown(n, 0.9),
      half: scale * halfInterval(n),
    })),
    ...(spread !== undefined && { spread }),
    keepTheSame: KEEP,
    read: [...READ, ...READ_OF[trial.load.kind]],
    rejectOn: REJECT,
    cautions: CAUTIONS,
  }
}

/** A liner fitted an odd number of times stands early or late on the whole, whatever the order. */
const evenly = (n: number): number => n + (n % 2)

function becauseOf({ trial, settles, each }: { trial: Trial; settles: number | undefined; each: number }): string {
  if (trial.fittingsEach !== undefined) return 'the trial file says so'
  if (trial.spread === undefined)
    return 'the spread of a fitting is not known: fit the old liner six times first, take a line through the means, and write 1.56 times what is left as spread'
  if (settles === undefined) return 'no number settles it: what else is in the budget is too wide'
  return `${settles} settle it at the difference that matters${settles === each ? '' : ', and an even number keeps a drift out'}`
}

/** Blocks that mirror themselves, every other one begun from the other side: ABBA BAAB, or ABCCBA CBAABC. */
export function ordersOf(letters: readonly string[], each: number): readonly string[] {
  const turned = (by: number): readonly string[] => letters.map((_, i) => letters[(i + by) % letters.length] ?? '')
  const build = (start: number): string =>
    Array.from({ length: Math.ceil(each / 2) }, (_, block) => {
      const there = turned(letters.length === 2 ? start + thueMorse(block) : start + block)
      return [...there, ...there.toReversed()].join('')
    }).join(' ')
  return [build(0), build(1)]
}

/** 0 1 1 0 1 0 0 1: taking turns at taking turns, which keeps out one power of a drift more at every doubling. */
function thueMorse(n: number): number {
  let ones = 0
  for (let rest = n; rest > 0; rest >>= 1) ones += rest & 1
  return ones % 2
}

const KEEP: readonly string[] = [
  'engine, head, gasket thickness and tightening torque; crown to head measured at every fitting, within 0.02 mm',
  'piston and rings, or for each liner a worn pair of its own',
  'both liners run in for the same time before the trial: bedding-in is no drift of the engine',
  'plug, ignition timing, exhaust and its length',
  'carburettor setting, or set anew for best speed at every fitting',
  'fuel of one batch, its temperature, level in the tank',
  'load and its setting; tachometer; places of the thermometers; operator',
  'who reads the speed need not know which liner is in',
]
const READ: readonly string[] = [
  'time of day, fitting, piece',
  'speed, timed over 60 s or many turns: counting one pulse a turn for 1 s tells 60 rpm at best',
  'air at the inlet: temperature, pressure at the engine (not that of a forecast), humidity',
  'head or liner temperature three times at equal times: read the speed when what is left is under 1 K',
  'fuel: seconds between the marks, 50 s or more',
  'start attempts and time to steady, as remarks',
]
const READ_OF: Readonly<Record<LoadKind, readonly string[]>> = {
  propeller: ['thrust, where there is a load cell: by density and speed squared it must agree within 1 %', 'no wind'],
  pump: [
    'water temperature, within 2 K; level; no air in the water',
    'flow and head, where the lift is over 5 % of the head',
  ],
  'brake arm': [
    'force on the arm; the same with the engine still, brake full, before and after',
    'arm weighed up and down with dead weights; outlet water under 60 °C, steady for 30 s',
  ],
}
const REJECT: readonly string[] = [
  'air moved by more than 3 K or 3 hPa since the block began',
  'misfire',
  'temperature not steady',
]
/** Common practice, in part from published pages on engine stands. */
const CAUTIONS: readonly string[] = [
  'Local rules and the engine maker’s book come first. Nobody runs an engine alone.',
  'Bolt the engine to a stand that is itself bolted down. Guard propeller, club, coupling and belt.',
  'Nobody stands in the plane of rotation or in front; adjust from behind.',
  'Try stopping by ignition and by fuel before the first run, both within reach.',
  'A brake that runs dry or a broken coupling lets the engine run away: fit an over-speed cut-out.',
  'Turn a newly fitted liner by hand through two turns before starting: ring ends, pegs against ports, pin clips.',
  'Lead exhaust outside; carbon monoxide alarm; hearing and eye protection.',
  'Fuel away from the hot engine, a fuel extinguisher at hand. Methanol burns with a flame that is not seen.',
  'Let the engine cool before the liner is taken out.',
]
