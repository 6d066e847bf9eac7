import type { Micrometre, Millimetre } from '../units.ts'

type CutOffRow = {
  readonly over: Micrometre
  readonly upTo: Micrometre
  readonly cutOff: Millimetre
  /** Length evaluated, five cut-offs. With its run-up the stylus travels about seven. */
  readonly evaluation: Millimetre
}

/** Cut-off by the Ra expected, µm, over one value up to and with the next. */
export const CUT_OFFS: { readonly source: string; readonly rows: readonly CutOffRow[] } = {
  source: 'memory: ISO 4288',
  rows: [
    { over: 0.006, upTo: 0.02, cutOff: 0.08, evaluation: 0.4 },
    { over: 0.02, upTo: 0.1, cutOff: 0.25, evaluation: 1.25 },
    { over: 0.1, upTo: 2, cutOff: 0.8, evaluation: 4 },
    { over: 2, upTo: 10, cutOff: 2.5, evaluation: 12.5 },
    { over: 10, upTo: 80, cutOff: 8, evaluation: 40 },
  ],
}

/** Nothing below or above what the standard covers. */
export const cutOffFor = (Ra: Micrometre): CutOffRow | undefined =>
  CUT_OFFS.rows.find(({ over, upTo }) => Ra > over && Ra <= upTo)

export type FinishingProcess = 'turn' | 'grind' | 'hone' | 'lap'

/** Ra that a process leaves, µm, from its best to its ordinary work. */
export const ROUGHNESS_LEFT: Readonly<
  Record<FinishingProcess, { readonly least: Micrometre; readonly most: Micrometre; readonly source: string }>
> = {
  turn: { least: 0.4, most: 6.3, source: 'engineering web table, boring and turning; a textbook has 0.4 for diamond' },
  grind: { least: 0.05, most: 6.3, source: 'GOST R 70117-2022, Table 3, cylindrical grinding, fine to semi-finish' },
  hone: { least: 0.025, most: 0.8, source: 'GOST R 70117-2022, Table 3, to 0.2; engineering web table, 0.1 to 0.8' },
  lap: { least: 0.025, most: 0.8, source: 'GOST R 70117-2022, Table 3' },
}

/** Below this Ra a liner's bore holds no oil: common practice, no source, which plans 0.2 to 0.6. */
export const MIRROR_BORE: Micrometre = 0.2
