import type { Micrometre } from '../units.ts'

/** Thickness of the compound (white) layer. `ordered` is the limit that the order asks for, µm. */
export type CompoundLayer = {
  readonly process: string
  readonly least: Micrometre
  readonly usual: Micrometre
  readonly most: Micrometre
  readonly ordered: Micrometre
  readonly source: string
}

const OUTER_LIMITS =
  'Industrial Heating, principles of gas nitriding (5 to 50 µm by cycle and stages); the usual value memory'

export const COMPOUND_LAYERS: readonly CompoundLayer[] = [
  { process: 'gas nitriding', least: 3, usual: 10, most: 15, ordered: 15, source: `two stages: ${OUTER_LIMITS}` },
  { process: 'gas nitriding, one stage', least: 10, usual: 20, most: 50, ordered: 25, source: OUTER_LIMITS },
  { process: 'plasma nitriding', least: 0, usual: 5, most: 10, ordered: 10, source: OUTER_LIMITS },
  {
    process: 'salt-bath nitriding',
    least: 10,
    usual: 15,
    most: 20,
    ordered: 20,
    source: 'trade text on salt-bath nitrocarburising: 10 to 20 µm',
  },
  { process: 'nitrocarburising', least: 8, usual: 15, most: 25, ordered: 25, source: 'memory: 8 to 25 µm' },
]

export const compoundLayer = (process: string): CompoundLayer | undefined =>
  COMPOUND_LAYERS.find(row => row.process === process)
