import type { Celsius, Micrometre } from '../units.ts'

/** Part of a nitriding cycle. The temperature of a stage without one is the part's, the process's or the works' own. */
type CycleStage = {
  readonly temperature?: Celsius
  /** Of the whole time at temperature. */
  readonly share: number
}

/**
 * One way to nitride, its stages and the compound (white) layer that it leaves, µm. `ordered` is the limit that the order
 * asks for and that the stock is planned for; `most` is what may be left where nothing is asked.
 */
export type CompoundLayer = {
  readonly process: string
  readonly stages: readonly CycleStage[]
  readonly least: Micrometre
  readonly usual: Micrometre
  readonly most: Micrometre
  readonly ordered: Micrometre
  readonly source: string
}

const ONE_STAGE: readonly CycleStage[] = [{ share: 1 }]

/**
 * Cool and rich in nitrogen first, then hotter and leaner, so that the layer thins while the case deepens.
 *
 * Source: Doroshenko, p. 31, 500 to 510 °C, then 540 to 560 °C; a quarter of the time in the first stage: common practice,
 * no source. The cooler end of the second stage softens and bends the least.
 */
const TWO_STAGES = { first: 505, second: { least: 540, most: 560 }, firstShare: 0.25 } as const

const OUTER_LIMITS =
  'Industrial Heating, principles of gas nitriding (5 to 50 µm by cycle and stages); the usual value memory'

export const COMPOUND_LAYERS: readonly CompoundLayer[] = [
  {
    process: 'gas nitriding',
    stages: [
      { temperature: TWO_STAGES.first, share: TWO_STAGES.firstShare },
      { temperature: TWO_STAGES.second.least, share: 1 - TWO_STAGES.firstShare },
    ],
    least: 3,
    usual: 10,
    most: 15,
    ordered: 15,
    source: `two stages: ${OUTER_LIMITS}`,
  },
  {
    process: 'gas nitriding',
    stages: ONE_STAGE,
    least: 10,
    usual: 20,
    most: 50,
    ordered: 25,
    source: `one stage: ${OUTER_LIMITS}`,
  },
  {
    process: 'plasma nitriding',
    stages: ONE_STAGE,
    least: 0,
    usual: 5,
    most: 10,
    ordered: 10,
    source: OUTER_LIMITS,
  },
  {
    process: 'salt-bath nitriding',
    stages: ONE_STAGE,
    least: 10,
    usual: 15,
    most: 20,
    ordered: 20,
    source: 'trade text on salt-bath nitrocarburising: 10 to 20 µm',
  },
  {
    process: 'nitrocarburising',
    stages: ONE_STAGE,
    least: 8,
    usual: 15,
    most: 25,
    ordered: 25,
    source: 'memory: 8 to 25 µm',
  },
]

/**
 * A layer that is kept and run on: how far under the usual thickness it may come, how much is polished off at most, and what
 * must be left, µm. Polishing takes 2 to 5 µm: common practice; the rest estimate.
 */
export const KEPT_LAYER = { under: 4, polished: 5, left: 5, source: 'common practice/estimate' } as const

/** Thin processes whose layer is meant to be run on, as it comes or polished. */
export const leavesLayerToRunOn = (process: string): boolean =>
  process === 'nitrocarburising' || process === 'salt-bath nitriding'

/** The least to ask of a layer that is kept; nothing where it is too thin, or too brittle, to be run on. */
export function keptLayer({ process, usual }: CompoundLayer): Micrometre | undefined {
  const least = usual - KEPT_LAYER.under
  return leavesLayerToRunOn(process) && least - KEPT_LAYER.polished >= KEPT_LAYER.left ? least : undefined
}

/** The ways that a process is run in, with most stages first. */
export const cyclesOf = (process: string): readonly CompoundLayer[] =>
  COMPOUND_LAYERS.filter(row => row.process === process)
